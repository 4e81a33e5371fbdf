#pragma once
// The states of a car that strand it or burn it: key, engine, gear, a crash. The network is solved in each of them, so
// that what reaches a load by a way nobody meant (through a lamp, a relay's coil, the machine itself) is seen as well.
#include "systems/wiring/wiring.hpp"

namespace sw::wiring {

/// One state by its words (logic.hpp) and how it is told.
struct CarState {
  std::string_view told;
  unsigned bits = 0;
};
namespace state {
extern const CarState parked, after_run, off_turning, accessory, just_on, stalled, cranked, cranked_in_gear, driving,
    night, cooled, hit;
}
/// All of them, in the order of a drive.
std::span<const CarState> states();

/// The network in a state, with a charged battery and, while the engine runs or coasts, a machine that gives what is
/// asked: what is fed and what is not, not what exactly it gets. The starter draws where its solenoid is fed.
struct StateRun {
  dc::Network network;
  dc::Solution solution;
  bool usable() const { return solution.summary.usable(); }
  double volts_at(const Model& m, std::size_t load) const;
};
StateRun run_state(const Model& m, unsigned bits);

/// Solves with relays as they are: one whose coil gets less than it pulls in at stays open, whatever asks it to close.
void settle(const Model& m, dc::Network& network, dc::Solution& solution);

/// Less than that a voltmeter by the tenth does not show.
inline constexpr double shown_v = 0.05;
/// A load that gets volts though no metal joins it to battery or machine: backwards, through other loads.
struct FedBack {
  std::size_t load = 0;
  std::vector<std::size_t> through;  ///< loads that join what a source feeds to what none does
};
std::vector<FedBack> fed_back(const Model& m, const StateRun& run);

/// What a load must get, or must not, in a state.
struct Demand {
  std::string_view load;
  const CarState* state = nullptr;
  bool fed = true;
  const char* fix_hint = "";
  /// Whether `run`, of that state, gives it so at the load `index`.
  bool holds(const Model& m, const StateRun& run, std::size_t index) const;
};
std::span<const Demand> demands();

/// Fed enough to work: the load's own least volts, else half the car's nominal (common practice).
double works_from_v(const Model& m, const LoadModel& load);
/// So little that nothing works, a coil makes no spark and a pump stands: a quarter of the nominal volts (common
/// practice).
double dead_below_v(const Model& m);

/// Whether a node is one of the grounds: the earthed post, block, body, the machine's case, dash, support.
bool is_ground(const Model& m, dc::NodeIndex node);
/// Volts at the fuel pump in the states that decide, once a word of key, engine or crash stands in its own feed or in a
/// switch on its way.
PumpFed pump_fed(const Model& m);

}  // namespace sw::wiring
