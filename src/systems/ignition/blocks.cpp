#include "model/outside.hpp"
#include "systems/ignition/ignition.hpp"

namespace sw::ignition {
namespace {

/// The coil at this instant: its current as the switch opens, what of it becomes spark, and what becomes heat.
namespace coil {
enum Read { r_running, r_cranking, r_speed, r_crank_speed, r_volts, read_count };
constexpr Port reads[] = {outside::running,
                          outside::cranking,
                          {"engine.speed", &kind::shaft_speed},
                          {"starter.engine_speed", &kind::shaft_speed},
                          {"ignition.voltage", &kind::voltage}};
static_assert(std::size(reads) == read_count);
enum Write { w_dwell, w_current, w_spark, w_coil, w_switch, w_mean, write_count };
constexpr Port writes[] = {{"ignition.dwell", &kind::time, "ms", "time the coil is fed for a spark"},
                           {"ignition.coil_current", &kind::current, "A", "coil current as the switch opens"},
                           {"ignition.spark_energy", &kind::energy, "mJ", "energy of the spark"},
                           {"ignition.coil_heat", &kind::power, "W", "heat in the coil"},
                           {"ignition.switch_heat", &kind::power, "W", "heat in what switches the coil"},
                           {"ignition.mean_current", &kind::current, "A", "mean current of one coil"}};
static_assert(std::size(writes) == write_count);
void evaluate(const void* model, View& v) {
  auto& m = *static_cast<const Model*>(model);
  for (int w = 0; w < write_count; ++w) v.set(w, 0);
  const bool cranking = v.in(r_cranking) > 0;
  const double speed = cranking ? v.in(r_crank_speed) : v.in(r_running) > 0 ? v.in(r_speed) : 0.0;
  if (!(speed > 0)) return;
  const Dwell dwell = dwell_at(m, speed, v.in(r_volts));
  const auto c = circuit(m, cranking);
  const auto rise = physics::coil_rise(c, v.in(r_volts), dwell.closed_s);
  const auto heat = physics::coil_heat(c, v.in(r_volts), dwell.closed_s, dwell.period_s);
  v.set(w_dwell, dwell.closed_s);
  v.set(w_current, rise.current_a);
  v.set(w_spark, m.transfer * rise.energy_j);
  v.set(w_coil, heat.coil_w);
  v.set(w_switch, heat.switch_w);
  v.set(w_mean, heat.mean_a);
}
}  // namespace coil

/// What a tachometer has to count.
namespace signal {
enum Write { w_pulses, w_volts, write_count };
constexpr Port writes[] = {{"ignition.pulses_per_turn", &kind::number, "", "ignition pulses a turn of the crankshaft"},
                           {"ignition.signal_voltage", &kind::voltage, "V", "height of the pulses for the tachometer"}};
static_assert(std::size(writes) == write_count);
void evaluate(const void* model, View& v) {
  auto& m = *static_cast<const Model*>(model);
  v.set(w_pulses, 0.5 * m.sparks);
  v.set(w_volts, m.signal_v);
}
}  // namespace signal

constexpr Block all[] = {
    {.name = "ignition.coil", .reads = coil::reads, .writes = coil::writes, .evaluate = coil::evaluate},
    {.name = "ignition.signal", .writes = signal::writes, .evaluate = signal::evaluate},
};

}  // namespace

std::span<const Block> System::blocks() { return all; }

}  // namespace sw::ignition
