#include "systems/wiring/states.hpp"

#include <cmath>

namespace sw::wiring {
namespace {

constexpr unsigned always = bit(Condition::always), accessory_bit = bit(Condition::accessory),
                   key = bit(Condition::key), turning = bit(Word::turning), oil = bit(Word::oil_pressure);
constexpr unsigned driven = always | key | accessory_bit | bit(Condition::running) | turning | oil | bit(Word::in_gear);

/// What the search leaves at a node that nothing feeds.
constexpr double nothing_v = 1e-4;
/// Rest volts of a battery and set volts of a machine over the nominal, a battery's resistance, a starter's amperes a
/// nominal volt, and a machine that gives whatever is asked: what is fed does not hang on them (common practice).
constexpr double rest_share = 1.05, set_share = 1.175, battery_ohm = 0.01, machine_a = 1000, starter_share_a = 12;

/// With the starter still: who feeds its solenoid decides whether it turns. A battery that is charged takes nothing
/// from a machine that gives.
Feed feed_of(const Model& m, unsigned bits) {
  const bool gives = (bits & turning) != 0 && (bits & bit(Condition::start)) == 0;
  return {.alternator_a = gives ? machine_a : 0,
          .set_v = set_share * m.nominal_v,
          .emf_v = (gives ? set_share : rest_share) * m.nominal_v,
          .battery_ohm = battery_ohm,
          .starter_a = 0,
          .state = bits};
}

/// Key at start, and nothing keeps the solenoid from pulling in; one that is not drawn is taken to be fed.
bool starter_turns(const Model& m, unsigned bits, const StateRun& run) {
  if (!(bits & bit(Condition::start))) return false;
  const auto solenoid = load_named(m, "starter_solenoid");
  return !solenoid || run.volts_at(m, *solenoid) >= works_from_v(m, m.loads[*solenoid]);
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
const CarState cooled{"driving on a hot day, A/C on", driven | bit(Condition::air_conditioning) | bit(Word::hot)};
const CarState hit{"just hit", driven | bit(Word::hit)};
}  // namespace state

std::span<const CarState> states() {
  using namespace state;
  static const CarState all[] = {parked, just_on, stalled, cranked,     cranked_in_gear, driving,
                                 night,  cooled,  hit,     off_turning, after_run,       state::accessory};
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
  if (!run.usable() || !starter_turns(m, bits, run)) return run;
  Feed cranking = feed_of(m, bits);
  cranking.starter_a = starter_share_a * m.nominal_v;
  set_feed(m, cranking, run.network);
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

/// The nodes metal joins to a source: the battery's post, and the machine's stud and exciter while it gives.
std::vector<bool> joined_to_source(const Model& m, const dc::Network& n) {
  std::vector<bool> joined(n.node_count, false);
  joined[m.n_battery] = true;
  if (n.branches[m.alternator].closed) joined[m.n_alternator] = true;
  std::vector<std::size_t> metal;
  for (auto& c : m.runs) metal.push_back(c.branch);
  for (auto& s : m.switches) metal.push_back(s.branch);
  if (m.to_exciter) metal.push_back(*m.to_exciter);
  for (bool grows = true; grows;) {
    grows = false;
    for (auto branch : metal) {
      const auto& b = n.branches[branch];
      if (!b.closed || joined[b.from] == joined[b.to]) continue;
      const bool one_way = std::holds_alternative<dc::Diode>(b.law);
      if (one_way && !joined[b.from]) continue;
      const dc::NodeIndex next = joined[b.from] ? b.to : b.from;
      if (is_ground(m, next)) continue;
      joined[next] = grows = true;
    }
  }
  return joined;
}

}  // namespace

std::vector<FedBack> fed_back(const Model& m, const StateRun& run) {
  const auto joined = joined_to_source(m, run.network);
  const auto live = [&](dc::NodeIndex node) { return joined[node]; };
  std::vector<FedBack> all;
  for (std::size_t l = 0; l < m.loads.size(); ++l) {
    const auto& own = run.network.branches[m.loads[l].wire.branch];
    if (live(own.from) || live(own.to) || run.volts_at(m, l) < shown_v) continue;
    FedBack back{.load = l, .through = {}};
    for (std::size_t other = 0; other < m.loads.size(); ++other) {
      const auto& b = run.network.branches[m.loads[other].wire.branch];
      const bool bridges = live(b.from) != live(b.to) && !is_ground(m, b.from) && !is_ground(m, b.to);
      if (b.closed && bridges) back.through.push_back(other);
    }
    all.push_back(std::move(back));
  }
  return all;
}

PumpFed pump_fed(const Model& m) {
  if (!m.fuel_pump) return {};
  const unsigned words = words_before(m, m.loads[*m.fuel_pump]);
  const auto volts = [&](const CarState& s) -> std::optional<double> {
    const auto run = run_state(m, s.bits);
    return run.usable() ? std::optional(run.volts_at(m, *m.fuel_pump)) : std::nullopt;
  };
  // `running` alone only says when it draws: who stops it is then told by the build's own words (fuel.cut_off). Where
  // any word of key or engine is drawn in its feed, the network tells, and what is not drawn there is not there.
  if (!(words & ~(always | bit(Condition::running) | bit(Condition::start)))) return {};
  return {.stalled_v = volts(state::stalled),
          .hit_v = volts(state::hit),
          .cranking_v = volts(state::cranked),
          .prime_v = volts(state::just_on)};
}

}  // namespace sw::wiring
