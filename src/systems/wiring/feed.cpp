// What the network is fed with, and what is told where it has no solution.
#include <algorithm>

#include "quantity/print.hpp"
#include "systems/wiring/wiring.hpp"

namespace sw::wiring {
namespace {

constexpr double regulation_ohm =
    0.001;  ///< fall of the regulated voltage with current: 0.1 V over 100 A (common practice)

/// Share of the nominal volts down to which the starter keeps its current, which the engine's torque holds (common
/// practice).
constexpr double starter_kept_from = 0.4;

}  // namespace

std::optional<std::size_t> load_named(const Model& m, std::string_view name) {
  for (std::size_t i = 0; i < m.loads.size(); ++i)
    if (m.loads[i].wire.place == name) return i;
  return std::nullopt;
}

std::string trouble(const Model& m, const dc::Summary& s) {
  if (s.usable()) return {};
  std::string text = "the car's electrical network (wiring) has no solution: " + std::string(s.reason);
  if (s.outcome == dc::Outcome::not_converged)
    return text + "; " + print(s.worst_residual_a, kind::current, "A", 3) + " are left over at " +
           m.node_names.at(s.worst_node);
  const auto named = [&](const Conductor& c) {
    if (s.worst_branch >= 0 && c.branch == static_cast<std::size_t>(s.worst_branch)) text += ", of " + c.place;
  };
  for (auto& c : m.runs) named(c);
  for (auto& l : m.loads) named(l.wire);
  for (auto& sw : m.switches)
    if (s.worst_branch >= 0 && sw.branch == static_cast<std::size_t>(s.worst_branch)) text += ", of " + sw.place;
  named(m.fan_feed);
  return text;
}

void set_feed(const Model& m, const Feed& feed, dc::Network& n) {
  n.branches[m.battery].law = dc::Battery{feed.emf_v, feed.battery_ohm};
  n.branches[m.alternator].law = dc::RegulatedSource{feed.set_v, std::max(0.0, feed.alternator_a), regulation_ohm};
  n.branches[m.alternator].closed = feed.alternator_a > 0;
  n.branches[m.starter].law = dc::ConstantCurrent{feed.starter_a, starter_kept_from * m.nominal_v};
  n.branches[m.starter].closed = feed.starter_a > 0;
  n.branches[m.fans].law = dc::PowerLaw{std::max(feed.fan_a, 1e-6), feed.fan_v, 1};
  n.branches[m.fans].closed = feed.fan_a > 0;
  for (auto& load : m.loads) n.branches[load.wire.branch].closed = load.when.holds(feed.state);
  for (auto& s : m.switches) {
    n.branches[s.branch].closed = s.closed.holds(feed.state);
    if (s.coil) n.branches[*s.coil].closed = n.branches[s.branch].closed;
  }
  if (!m.field) return;
  const bool gives = feed.alternator_a > 0;
  n.branches[*m.to_exciter].closed = gives;
  n.branches[*m.field].closed = !gives;
}

}  // namespace sw::wiring
