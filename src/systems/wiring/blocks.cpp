#include <cmath>
#include <limits>

#include "systems/wiring/network_block.hpp"
#include "systems/wiring/states.hpp"

namespace sw::wiring {

/// Volts at the electric fuel pump in the states of the car that decide (states.hpp).
namespace fed {
constexpr double not_told = -1;  ///< of a state the wiring says nothing of
enum Write { w_stalled, w_hit, w_cranked, w_primed, write_count };
constexpr Port writes[] = {
    {"fuel_pump.stalled", &kind::voltage, "V", "volts at the fuel pump, key on, engine stopped"},
    {"fuel_pump.hit", &kind::voltage, "V", "volts at the fuel pump once the car was hit"},
    {"fuel_pump.cranked", &kind::voltage, "V", "volts at the fuel pump, cranked without oil pressure"},
    {"fuel_pump.primed", &kind::voltage, "V", "volts at the fuel pump as the key comes on"}};
static_assert(std::size(writes) == write_count);
void evaluate(const void* model, View& v) {
  const auto& pump = static_cast<const Model*>(model)->pump_fed;
  v.set(w_stalled, pump.stalled_v.value_or(not_told));
  v.set(w_hit, pump.hit_v.value_or(not_told));
  v.set(w_cranked, pump.cranking_v.value_or(not_told));
  v.set(w_primed, pump.prime_v.value_or(not_told));
}
}  // namespace fed

namespace network {

enum Write {
  w_bus,
  w_battery_v,
  w_battery_a,
  w_stud,
  w_current,
  w_load,
  w_fan_v,
  w_fan_a,
  w_starter_v,
  w_starter_a,
  w_ground,
  w_lead,
  w_pump,
  w_ignition,
  w_cluster,
  w_exciter,
  w_at_body,
  w_at_block,
  w_at_dash,
  w_at_support,
  write_count
};
constexpr Port writes[] = {
    {"bus.voltage", &kind::voltage, "V", "bus"},
    {"battery.voltage", &kind::voltage, "V", "battery posts"},
    {"battery.current", &kind::current, "A", "current into the battery"},
    {"alternator.voltage", &kind::voltage, "V", "alternator, stud to case"},
    {"alternator.current", &kind::current, "A", "alternator current"},
    {"load.current", &kind::current, "A", "all loads together"},
    {"fans.voltage", &kind::voltage, "V", "volts at the fans"},
    {"fans.current", &kind::current, "A", "fan current"},
    {"starter.voltage", &kind::voltage, "V", "volts at the starter"},
    {"starter.current", &kind::current, "A", "starter current"},
    {"ground.drop", &kind::voltage, "V", "alternator case against the battery's earthed post"},
    {"charge.lead_drop", &kind::voltage, "V", "output stud above bus"},
    {"fuel_pump.voltage", &kind::voltage, "V", "volts at the fuel pump"},
    {"ignition.voltage", &kind::voltage, "V", "volts at the ignition"},
    {"cluster.voltage", &kind::voltage, "V", "volts at the gauges"},
    {"exciter.current", &kind::current, "A", "current that wakes the alternator, key on"},
    {"ground.body", &kind::voltage, "V", "body above the battery's earthed post"},
    {"ground.block", &kind::voltage, "V", "block above the battery's earthed post"},
    {"ground.dash", &kind::voltage, "V", "ground of the dash above the battery's earthed post"},
    {"ground.support", &kind::voltage, "V", "radiator support above the battery's earthed post"}};
static_assert(std::size(writes) == write_count);

constexpr double unfed_v = 1e-3;  ///< below it a load is not fed: two grounds differ by so much

struct Work {
  dc::Network network;
  dc::Solution solution;
  double exciter_a = 0;  ///< that wakes the machine: a state of its own, and the same in every duty
};

/// What flows into the machine's exciter, key on, engine standing.
double exciter_current(const Model& m) {
  if (!m.field) return 0;
  const auto run = run_state(m, state::stalled.bits);
  return run.usable() ? std::abs(run.solution.current_a[*m.field]) : 0.0;
}

std::shared_ptr<void> scratch(const void* model) {
  auto w = std::make_shared<Work>();
  w->network = static_cast<const Model*>(model)->network;
  w->exciter_a = exciter_current(*static_cast<const Model*>(model));
  return w;
}

/// At the load of that name, none while it is off; where there is none it hangs on the bus.
double volts_at(const Model& m, const Work& work, const std::optional<std::size_t>& load) {
  if (!load) return work.solution.node_v[m.n_bus];
  const std::size_t branch = m.loads[*load].wire.branch;
  return work.network.branches[branch].closed ? std::abs(work.solution.load_v[branch]) : 0.0;
}

void evaluate(const void* model, View& v) {
  auto& m = *static_cast<const Model*>(model);
  auto& work = v.scratch<Work>();
  set_feed(m, feed_from([&](int i) { return v.in(i); }), work.network);
  const auto& summary = dc::solve(work.network, work.solution);
  auto& s = work.solution;
  // What did not converge must not look like a figure.
  const double bad = summary.usable() ? 0.0 : std::numeric_limits<double>::quiet_NaN();
  // What is used is used, with its two ends named the other way round too.
  double load = std::abs(s.current_a[m.fans]);
  // Loads behind an open switch join two grounds that are not quite the same: microamperes, and no load.
  for (auto& l : m.loads)
    if (std::abs(s.load_v[l.wire.branch]) > unfed_v) load += std::abs(s.current_a[l.wire.branch]);
  for (auto& relay : m.switches)
    if (relay.coil) load += std::abs(s.current_a[*relay.coil]);
  // What passes a charge lamp while the machine turns comes back to its stud.
  if (m.to_exciter) load -= std::abs(s.current_a[*m.to_exciter]);
  v.set(w_bus, s.node_v[m.n_bus]);
  v.set(w_battery_v, s.node_v[m.n_battery]);
  v.set(w_battery_a, -s.current_a[m.battery]);
  v.set(w_stud, s.node_v[m.n_alternator] - s.node_v[m.n_case]);
  v.set(w_current, s.current_a[m.alternator]);
  v.set(w_load, load);
  v.set(w_fan_v, std::abs(s.load_v[m.fans]));
  v.set(w_fan_a, std::abs(s.current_a[m.fans]));
  v.set(w_starter_v, s.node_v[m.n_starter] - s.node_v[m.n_block]);
  v.set(w_starter_a, s.current_a[m.starter]);
  v.set(w_ground, std::abs(s.node_v[m.n_case]));
  v.set(w_lead, s.current_a[m.alternator] > 0 ? s.node_v[m.n_alternator] - s.node_v[m.n_bus] : 0.0);
  v.set(w_pump, volts_at(m, work, m.fuel_pump));
  v.set(w_ignition, volts_at(m, work, m.ignition));
  v.set(w_cluster, volts_at(m, work, m.cluster));
  v.set(w_exciter, work.exciter_a);
  v.set(w_at_body, s.node_v[m.n_body]);
  v.set(w_at_block, s.node_v[m.n_block]);
  v.set(w_at_dash, s.node_v[m.n_dash]);
  v.set(w_at_support, s.node_v[m.n_support]);
  for (int w = w_bus; w < write_count; ++w) v.set(w, v.out(w) + bad);
}

std::string trouble_of(const void* model, const void* work) {
  return trouble(*static_cast<const Model*>(model), static_cast<const Work*>(work)->solution.summary);
}

constexpr Block all[] = {
    {.name = "wiring.network",
     .reads = reads,
     .writes = writes,
     .evaluate = evaluate,
     .scratch = scratch,
     .trouble = trouble_of},
    {.name = "wiring.states", .writes = fed::writes, .evaluate = fed::evaluate},
};

}  // namespace network

std::span<const Block> System::blocks() { return network::all; }

}  // namespace sw::wiring
