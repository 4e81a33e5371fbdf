#include <algorithm>
#include <cmath>

#include "model/outside.hpp"
#include "physics/alternator.hpp"
#include "physics/battery.hpp"
#include "physics/starter.hpp"
#include "systems/charging/charging.hpp"

namespace sw::charging {
namespace {

constexpr Port charge_port{"battery.charge", &kind::number, "%", "battery charge"};
constexpr Port polarization_port{"battery.polarization", &kind::voltage, "V", "battery polarization"};
constexpr Port winding_port{"alternator.temperature", &kind::temperature, "degC", "alternator winding"};
constexpr Port alternator_speed{"belts.alternator_speed", &kind::shaft_speed, "rpm"};
constexpr Port bay{"bay.temperature", &kind::temperature, "degC"};

/// What the sources can give at this instant.
namespace sources {
constexpr double oil_40_m2_s = 110e-6, oil_100_m2_s = 14.5e-6;  ///< 15W-40 (data-sheet class values, from memory)

enum Read { r_speed, r_winding, r_bay, r_charge, r_polarization, r_ambient, r_cranking, r_oil, read_count };
constexpr Port reads[] = {alternator_speed,
                          winding_port,
                          bay,
                          charge_port,
                          polarization_port,
                          outside::ambient,
                          outside::cranking,
                          {"engine.oil_temperature", &kind::temperature}};
static_assert(std::size(reads) == read_count);
enum Write { w_available, w_set, w_emf, w_resistance, w_starter, w_greatest, write_count };
constexpr Port writes[] = {{"alternator.available", &kind::current, "A", "current the alternator can give"},
                           {"regulator.voltage", &kind::voltage, "V", "regulator set-point"},
                           {"battery.emf", &kind::voltage, "V", "battery's own voltage"},
                           {"battery.resistance", &kind::resistance, "mohm", "battery resistance"},
                           {"starter.asked", &kind::current, "A", "current the starter asks for"},
                           {"alternator.greatest", &kind::current, "A", "greatest output of the machine, cold"}};
static_assert(std::size(writes) == write_count);
ValidRange winding_range(const void* model) {
  return {0, physics::alternator_hottest_k(static_cast<const Model*>(model)->hot)};
}
constexpr Validity validity[] = {
    {outside::ambient.name, {physics::battery_coldest_k, physics::battery_hottest_k}, "the battery's figures"},
    {winding_port.name, {}, "the figures of a hot alternator", winding_range},
    {"engine.oil_temperature",
     {physics::coldest_crank_k, physics::warmest_crank_k},
     "the figures of cranking",
     nullptr,
     outside::cranking.name}};

void evaluate(const void* model, View& v) {
  auto& m = *static_cast<const Model*>(model);
  v.set(w_available, m.output->at(v.in(r_speed)).value * physics::alternator_hot_factor(m.hot, v.in(r_winding)).value);
  // The regulator sits on or near the machine and follows the air under the bonnet.
  v.set(w_set, m.set_v + m.set_slope_v_k * (v.in(r_bay)-298.15));
  const double charge = std::clamp(v.in(r_charge), 0.0, 1.0);
  v.set(w_emf, open_circuit_v(m, charge, v.in(r_ambient)) + v.in(r_polarization));
  v.set(w_resistance, resistance_ohm(m, charge, v.in(r_ambient)));
  v.set(w_greatest, m.output->at(m.output->last()).value);
  v.set(w_starter,
        v.in(r_cranking) > 0 ? m.starter_a * physics::crank_factor(v.in(r_oil), oil_40_m2_s, oil_100_m2_s).value : 0.0);
}
}  // namespace sources

/// What the network's currents do to machine and battery.
namespace after {
constexpr double winding_lag_s = 240;  ///< thermal time constant of a winding (common practice)
constexpr double lost_a_day =
    0.002;  ///< self-discharge at 20 degC, between calcium and antimonial plates (battery.hpp)
constexpr double empty_share = 0.01;  ///< of the capacity: below it what can be drawn fades out

enum Read {
  r_speed,
  r_volts,
  r_current,
  r_available,
  r_battery,
  r_charge,
  r_polarization,
  r_winding,
  r_bay,
  r_ambient,
  read_count
};
constexpr Port reads[] = {alternator_speed,
                          {"alternator.voltage", &kind::voltage},
                          {"alternator.current", &kind::current},
                          {"alternator.available", &kind::current},
                          {"battery.current", &kind::current},
                          charge_port,
                          polarization_port,
                          winding_port,
                          bay,
                          outside::ambient};
static_assert(std::size(reads) == read_count);
enum Write { w_torque, write_count };
constexpr Port writes[] = {{"alternator.torque", &kind::torque, "lb-ft", "torque at the alternator's shaft"}};
static_assert(std::size(writes) == write_count);

double start_charge(const void*, const Duty& d) { return d.charge.value_or(0.9); }
double start_polarization(const void*, const Duty&) { return 0.0; }
constexpr double warm_start_k = 60;  ///< of a winding over the air in a car that comes in warm (common practice)
double start_winding(const void*, const Duty& d) {
  return d.start == StartFrom::cold ? d.ambient->si : d.ambient->si + warm_start_k;
}
enum StateIndex { s_charge, s_polarization, s_winding, state_count };
constexpr StateInfo states[] = {{charge_port, start_charge, 0.02, in_all},
                                {polarization_port, start_polarization, 0.1, in_all},
                                {winding_port, start_winding, 2.0}};
static_assert(std::size(states) == state_count);

void evaluate(const void* model, View& v) {
  auto& m = *static_cast<const Model*>(model);
  v.set(w_torque, physics::alternator_load(v.in(r_volts), v.in(r_current), m.efficiency, v.in(r_speed)).torque_n_m);
  const double into = v.in(r_battery), charge = std::clamp(v.in(r_charge), 0.0, 1.0);
  // An empty battery has nothing left to give, whatever is still switched on.
  const double kept =
      into > 0 ? into * physics::battery_charge_share(charge) : into * std::min(1.0, charge / empty_share);
  v.rate(s_charge, kept / m.capacity_c - physics::battery_self_discharge_per_s(lost_a_day, v.in(r_ambient)) * charge);
  const physics::BatteryFigures battery{m.capacity_c, m.resistance_ohm, static_cast<int>(m.cells)};
  const double target = physics::battery_polarization(battery, into, charge, v.in(r_ambient)).value;
  v.rate(s_polarization, (target - v.in(r_polarization)) / physics::battery_polarization_lag_s);
  const double use = v.in(r_available) > 1 ? std::min(1.0, v.in(r_current) / v.in(r_available)) : 0.0;
  v.rate(s_winding, (v.in(r_bay) + m.rise_k * use - v.in(r_winding)) / winding_lag_s);
}
}  // namespace after

/// How fast the starter turns the engine.
namespace cranked {
enum Read { r_cranking, r_volts, r_current, read_count };
constexpr Port reads[] = {outside::cranking, {"starter.voltage", &kind::voltage}, {"starter.current", &kind::current}};
static_assert(std::size(reads) == read_count);
constexpr Port writes[] = {{"starter.engine_speed", &kind::shaft_speed, "rpm", "engine speed the starter turns it at"}};
void evaluate(const void* model, View& v) {
  auto& m = *static_cast<const Model*>(model);
  if (!(v.in(r_cranking) > 0)) return v.set(0, 0);
  v.set(0,
        physics::motor_speed({m.starter_v, m.starter_a, m.crank_rad_s}, m.starter_ohm, v.in(r_volts), v.in(r_current))
            .value);
}
}  // namespace cranked

constexpr Block all[] = {
    {.name = "charging.sources",
     .reads = sources::reads,
     .writes = sources::writes,
     .evaluate = sources::evaluate,
     .validity = sources::validity},
    {"charging.after", after::reads, after::writes, after::states, {}, after::evaluate},
    {"charging.cranked", cranked::reads, cranked::writes, {}, {}, cranked::evaluate},
};

}  // namespace

std::span<const Block> System::blocks() { return all; }

}  // namespace sw::charging
