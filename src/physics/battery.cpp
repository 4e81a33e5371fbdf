#include "physics/battery.hpp"

#include <algorithm>
#include <cmath>

namespace sw::physics {
namespace {

constexpr double warm_k = 298.15;  // 25 degC
constexpr double empty_cell_v = 11.8 / 6, full_cell_v = 12.7 / 6;
constexpr double cell_v_per_k = 0.2e-3;
constexpr double cold_rise_per_k = 0.014, least_charge = 0.15;
constexpr double charge_span_v_cell = 1.6 / 6, trickle_per_s = 1.0 / (150 * 3600.0), slow_over_instant = 1;

double cold_factor(double temperature_k) { return std::exp(cold_rise_per_k * (warm_k - temperature_k)); }

}  // namespace

Slope battery_open_volts(double state_of_charge, double temperature_k, int cells) {
  const double s = std::clamp(state_of_charge, 0.0, 1.0), span = full_cell_v - empty_cell_v;
  const double cell = empty_cell_v + span * s + cell_v_per_k * (temperature_k - warm_k);
  return {cells * cell, s == state_of_charge ? cells * span : 0};
}

double battery_charge_from_volts(double open_v, double temperature_k, int cells) {
  const double cell = open_v / cells - cell_v_per_k * (temperature_k - warm_k);
  return std::clamp((cell - empty_cell_v) / (full_cell_v - empty_cell_v), 0.0, 1.0);
}

Slope battery_resistance(double full_25c_ohm, double state_of_charge, double temperature_k) {
  const double s = std::clamp(state_of_charge, least_charge, 1.0), base = full_25c_ohm * cold_factor(temperature_k);
  return {base * (1 + 0.25 * (1 / s - 1)), s == state_of_charge ? -0.25 * base / (s * s) : 0};
}

double battery_resistance_from_cranking(double cranking_a, int cells) {
  constexpr double test_k = 255.15;  // -18 degC
  const double drop = battery_open_volts(1, test_k, cells).value - 1.2 * cells;
  return drop / cranking_a / cold_factor(test_k);
}

double battery_usable_current(double open_v, double resistance_ohm, double least_v) {
  return std::max(0.0, (open_v - least_v) / resistance_ohm);
}

Slope battery_discharge_time(double capacity_c, double rated_time_s, double exponent, double current_a) {
  const double t = rated_time_s * std::pow(capacity_c / current_a / rated_time_s, exponent);
  return {t, -exponent * t / current_a};
}

double battery_reserve_charge_c(double reserve_s) { return reserve_test_current_a * reserve_s; }

Slope battery_charge_limit(double capacity_c, double state_of_charge, double temperature_k) {
  const double missing = std::max(0.0, 1 - state_of_charge);
  const double per_missing = 4 * capacity_c / 3600 * std::exp2(-std::max(0.0, warm_k - temperature_k) / 15);
  return {per_missing * missing, missing > 0 ? -per_missing : 0};
}

double battery_charge_share(double state_of_charge) {
  return 0.95 - 0.35 * std::clamp((state_of_charge - 0.8) / 0.2, 0.0, 1.0);
}

Slope battery_polarization(const BatteryFigures& b, double current_a, double state_of_charge, double temperature_k) {
  double ohm;
  if (current_a > 0) {
    const double most = battery_charge_limit(b.capacity_c, state_of_charge, temperature_k).value;
    ohm = charge_span_v_cell * b.cells / std::max(most, b.capacity_c * trickle_per_s);
  } else {
    ohm = slow_over_instant * battery_resistance(b.full_25c_ohm, state_of_charge, temperature_k).value;
  }
  return {current_a * ohm, ohm};
}

double battery_charging_volts(double temperature_k, int cells) {
  return cells * (2.40 - 4e-3 * (temperature_k - warm_k));
}

double battery_self_discharge_per_s(double share_per_day_20c, double temperature_k) {
  return share_per_day_20c / 86400 * std::exp2((temperature_k - 293.15) / 10);
}

}  // namespace sw::physics
