#include "systems/wiring/states.hpp"

#include <cmath>

namespace sw::wiring {
namespace {

constexpr unsigned always = bit(Condition::always), accessory_bit = bit(Condition::accessory),
                   key = bit(Condition::key), turning = bit(Word::turning), oil = bit(Word::oil_pressure);
constexpr unsigned driven = always | key | accessory_bit | bit(Condition::running) | turning | oil | bit(Word::in_gear);

/// What the search leaves at a node that nothing feeds.
constexpr double nothing_v = 1e-4;
/// Rest volts of a battery over the nominal, its resistance, and a machine that gives enough: what is fed does not hang
/// on them (common practice).
constexpr double rest_share = 1.05, set_share = 1.175, battery_ohm = 0.01, machine_a = 60, starter_share_a = 12;

Feed feed_of(const Model& m, unsigned bits) {
  const bool starts = (bits & bit(Condition::start)) != 0, turns = (bits & turning) != 0;
  return {.alternator_a = turns && !starts ? machine_a : 0,
          .set_v = set_share * m.nominal_v,
          .emf_v = rest_share * m.nominal_v,
          .battery_ohm = battery_ohm,
          .starter_a = starts ? starter_share_a * m.nominal_v : 0,
          .state = bits};
}

}  // namespace

namespace state {
const CarState parked{"parked", always};
const CarState after_run{"key just off after a hot run", always | bit(Word::after_run) | bit(Word::hot)};
const CarState off_turning{"key off, engine still turning", always | turning | oil};
const CarState accessory{"key at accessory", always | accessory_bit};
const CarState just_on{"key just turned on", always | accessory_bit | key | bit(Word::prime)};
const CarState stalled{"key on, engine stopped", always | accessory_bit | key};
const CarState cranked{"cranked, no oil pressure yet", always | key | bit(Condition::start) | turning};
const CarState cranked_in_gear{"key at start, in gear",
                               always | key | bit(Condition::start) | turning | bit(Word::in_gear)};
const CarState driving{"driving", driven};
const CarState night{"driving by night, brake on", driven | bit(Condition::night) | bit(Condition::rain) |
                                                       bit(Condition::heat) | bit(Condition::brake)};
const CarState hit{"just hit", driven | bit(Word::hit)};
}  // namespace state

std::span<const CarState> states() {
  using namespace state;
  static const CarState all[] = {parked, just_on, stalled,     cranked,   cranked_in_gear, driving,
                                 night,  hit,     off_turning, after_run, state::accessory};
  return all;
}

double StateRun::volts_at(const Model& m, std::size_t load) const {
  const std::size_t branch = m.loads[load].wire.branch;
  const double v = network.branches[branch].closed ? std::abs(solution.load_v[branch]) : 0.0;
  return v < nothing_v ? 0.0 : v;
}

void settle(const Model& m, dc::Network& network, dc::Solution& solution) {
  dc::solve(network, solution);
  // Each round opens at least one relay or is the last. A contact that is closed with its coil off is stuck.
  for (std::size_t round = 0; round < m.switches.size() && solution.summary.usable(); ++round) {
    bool changed = false;
    for (auto& s : m.switches)
      if (s.coil && network.branches[*s.coil].closed && network.branches[s.branch].closed &&
          std::abs(solution.load_v[*s.coil]) < s.pull_in_v) {
        network.branches[s.branch].closed = false;
        changed = true;
      }
    if (!changed) return;
    dc::solve(network, solution);
  }
}

StateRun run_state(const Model& m, unsigned bits) {
  StateRun run{.network = m.network, .solution = {}};
  set_feed(m, feed_of(m, bits), run.network);
  settle(m, run.network, run.solution);
  return run;
}

double works_from_v(const Model& m, const LoadModel& load) {
  return load.least_v > 0 ? load.least_v : 0.5 * m.nominal_v;
}
double dead_below_v(const Model& m) { return 0.25 * m.nominal_v; }

bool is_ground(const Model& m, dc::NodeIndex node) {
  for (auto ground : {dc::NodeIndex{dc::ground}, m.n_block, m.n_body, m.n_case, m.n_dash, m.n_support})
    if (node == ground) return true;
  return false;
}

namespace {

/// Every word named by the switches on a load's own way from the bus, and on the ways of their relays' coils.
unsigned words_before(const Model& m, const LoadModel& load) {
  unsigned words = load.when.words();
  std::vector<bool> seen(m.network.node_count, false);
  for (dc::NodeIndex end : {m.n_bus, m.n_battery, m.n_alternator}) seen[end] = true;
  std::vector<dc::NodeIndex> queue;
  const auto visit = [&](dc::NodeIndex node) {
    if (seen[node] || is_ground(m, node)) return;
    seen[node] = true;
    queue.push_back(node);
  };
  const auto& own = m.network.branches[load.wire.branch];
  visit(own.from);
  visit(own.to);
  for (std::size_t head = 0; head < queue.size(); ++head) {
    const auto touches = [&](std::size_t branch) {
      auto& b = m.network.branches[branch];
      return b.from == queue[head] || b.to == queue[head];
    };
    const auto cross = [&](std::size_t branch) {
      visit(m.network.branches[branch].from);
      visit(m.network.branches[branch].to);
    };
    for (auto& c : m.runs)
      if (touches(c.branch)) cross(c.branch);
    for (auto& s : m.switches) {
      if (!touches(s.branch)) continue;
      words |= s.closed.words();
      cross(s.branch);
      if (s.coil) cross(*s.coil);
    }
  }
  return words;
}

}  // namespace

PumpFed pump_fed(const Model& m) {
  if (!m.fuel_pump) return {};
  const unsigned words = words_before(m, m.loads[*m.fuel_pump]);
  const auto volts = [&](const CarState& s) -> std::optional<double> {
    const auto run = run_state(m, s.bits);
    return run.usable() ? std::optional(run.volts_at(m, *m.fuel_pump)) : std::nullopt;
  };
  PumpFed fed;
  if (words & (bit(Word::prime) | turning | oil)) {
    fed.stalled_v = volts(state::stalled);
    fed.cranking_v = volts(state::cranked);
    fed.prime_v = volts(state::just_on);
  }
  if (words & bit(Word::hit)) fed.hit_v = volts(state::hit);
  return fed;
}

}  // namespace sw::wiring
