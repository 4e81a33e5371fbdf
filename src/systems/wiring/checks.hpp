#pragma once
// What each requirement of the wiring reads and how it is judged. The table of them is requirements.cpp; the
// evaluations stand in load_requirements.cpp (the network solved at a row) and fuse_requirements.cpp (standing rules).
#include <algorithm>
#include <array>
#include <optional>

#include "systems/wiring/carries.hpp"
#include "systems/wiring/network_block.hpp"

namespace sw::wiring {

/// What it takes to solve the network again at a row: the bus first, then all the block reads, then the fans fitted.
inline constexpr auto bus_needs = [] {
  std::array<Port, 1 + network::read_count + 1> all{};
  all.front() = {"bus.voltage", &kind::voltage};
  for (std::size_t i = 0; i < network::read_count; ++i) all[1 + i] = network::reads[i];
  all.back() = {"fans.fitted", &kind::current};
  return all;
}();
inline constexpr int n_first_read = 1, n_fitted = n_first_read + network::read_count;

inline constexpr const char* outside_table =
    "the wire's size or insulation lies outside the ampacity table, which begins with 18 AWG: no fuse is known to "
    "protect a thinner one";

/// The network solved again at the end of the duty with every electric fan on: that is what their wires and those
/// before them must stand, whether or not a fan happens to run at that instant. `run` reads bus_needs.
dc::Solution solve_all_fans(const Model& m, const Evidenced& run);
/// Whether the network came to a solution; where not, the finding says so and gives no number.
bool solved(const Model& m, const dc::Solution& s, std::vector<Verdict>& out);

/// Current in each wire against what it carries for good.
namespace heat {
inline constexpr std::string_view chain[] = {"load.current", "bus.voltage"};
inline constexpr auto needs = [] {
  std::array<Port, bus_needs.size() + 1> all{};
  std::copy(bus_needs.begin(), bus_needs.end(), all.begin());
  all.back() = {"bay.temperature", &kind::temperature};
  return all;
}();
inline constexpr int n_bay = n_fitted + 1;
void evaluate(const void* model, const Evidenced& run, std::vector<Verdict>& out);
}  // namespace heat

/// Volts lost in each load's own feed and ground.
namespace feed {
void evaluate(const void* model, const Evidenced& run, std::vector<Verdict>& out);
}  // namespace feed

namespace lamps {
inline constexpr std::string_view chain[] = {"bus.voltage"};
void evaluate(const void* model, const Evidenced& run, std::vector<Verdict>& out);
}  // namespace lamps

namespace stray {
inline constexpr std::string_view duties[] = {"*running", "*cranking"};
inline constexpr std::string_view chain[] = {"starter.current"};
void evaluate(const void* model, const Evidenced& run, std::vector<Verdict>& out);
}  // namespace stray

/// Current in a switch's contact, and volts at a relay's coil (switch_requirements.cpp).
namespace contact {
void evaluate(const void* model, const Evidenced& run, std::vector<Verdict>& out);
}  // namespace contact
namespace coil {
inline constexpr std::string_view duties[] = {"*running", "*cranking"};
void evaluate(const void* model, const Evidenced& run, std::vector<Verdict>& out);
}  // namespace coil

/// A motor that stands, and what a load draws as it is switched on (motor_requirements.cpp).
namespace stall {
void evaluate(const void* model, const Evidenced& run, std::vector<Verdict>& out);
}  // namespace stall
namespace inrush {
void evaluate(const void* model, const Evidenced& run, std::vector<Verdict>& out);
}  // namespace inrush

/// What must be fed and what must be dead in the states of the car (states.hpp, states_requirements.cpp).
namespace must_run {
void evaluate(const void* model, const Evidenced& run, std::vector<Verdict>& out);
}  // namespace must_run
namespace must_stop {
void evaluate(const void* model, const Evidenced& run, std::vector<Verdict>& out);
}  // namespace must_stop

/// One fault at a time (faults.hpp, fault_requirements.cpp).
namespace one_fault {
inline constexpr std::string_view duties[] = {"night-rain", "parked", "*cranking"};
void evaluate(const void* model, const Evidenced& run, std::vector<Verdict>& out);
}  // namespace one_fault

/// Air under the bonnet a wire is held to: it follows in minutes. `run` reads heat::needs.
double bay_of(const Evidenced& run);
/// The network's feed at a row, of a run that reads bus_needs.
Feed feed_at(const Evidenced& run, std::size_t row);
/// The network solved with it, relays as they are asked.
dc::Solution solve(const Model& m, const Feed& feed);

/// Volts at each load that says what it needs.
namespace least {
void evaluate(const void* model, const Evidenced& run, std::vector<Verdict>& out);
}  // namespace least

/// A fuse no larger than its wire carries. Both figures decide harm: neither has a stand-in.
namespace protects {
void evaluate(const void* model, const Evidenced& run, std::vector<Verdict>& out);
inline constexpr Port needs[] = {{"fans.fitted", &kind::current}};
}  // namespace protects

/// A fuse that carries its load for good.
namespace carries {
void evaluate(const void* model, const Evidenced& run, std::vector<Verdict>& out);
}  // namespace carries

namespace through {
void evaluate(const void* model, const Evidenced& run, std::vector<Verdict>& out);
}  // namespace through

/// The old charge path behind a new machine: each run of it must carry the machine's whole output.
namespace path {
inline constexpr Port needs[] = {{"alternator.greatest", &kind::current}};
void evaluate(const void* model, const Evidenced& run, std::vector<Verdict>& out);
}  // namespace path

}  // namespace sw::wiring
