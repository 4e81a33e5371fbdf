#include "physics/engine.hpp"

#include <cctype>
#include <charconv>
#include <cmath>
#include <numbers>

namespace sw::physics {
namespace {

constexpr double pi = std::numbers::pi;

}  // namespace

double shaft_power_w(double torque_n_m, double speed_rad_s) { return torque_n_m * speed_rad_s; }

double mean_effective_pressure_pa(double torque_n_m, double displacement_m3) {
  return 4 * pi * torque_n_m / displacement_m3;
}

double mean_pressure_torque_n_m(double pressure_pa, double displacement_m3) {
  return pressure_pa * displacement_m3 / (4 * pi);
}

double displacement_m3(double bore_m, double stroke_m, double cylinders) {
  return pi / 4 * bore_m * bore_m * stroke_m * cylinders;
}

AirFlow engine_air(double displacement_m3, double speed_rad_s, double volumetric_efficiency) {
  const double slope = displacement_m3 * volumetric_efficiency / (4 * pi);
  return {slope * speed_rad_s, slope};
}

double fuel_mass_flow_kg_s(double power_w, double bsfc_kg_j) { return power_w * bsfc_kg_j; }

double brake_efficiency(double bsfc_kg_j, double heating_value_j_kg) { return 1 / (bsfc_kg_j * heating_value_j_kg); }

WillansLine willans_line(double idle_heat_w, double idle_speed_rad_s, double heat_w, double power_w,
                         double speed_rad_s) {
  return {idle_heat_w, idle_speed_rad_s, (heat_w - idle_heat_w * speed_rad_s / idle_speed_rad_s) / power_w};
}

FuelHeat willans_heat(const WillansLine& line, double power_w, double speed_rad_s) {
  const double per_speed = line.idle_heat_w / line.idle_speed_rad_s, per_power = power_w > 0 ? line.heat_per_power : 0;
  return {per_speed * speed_rad_s + per_power * power_w, per_power, per_speed};
}

FuelRate willans_fuel(const WillansIn& in, double power_w, double speed_rad_s) {
  // Friction work a radian over indicated efficiency is the line's heat a radian without load.
  const double per_power = 1 / in.indicated_efficiency;
  const WillansLine line{in.friction_pa * in.displacement_m3 / (4 * pi) * per_power, 1, per_power};
  const FuelHeat heat = willans_heat(line, power_w, speed_rad_s);
  return {heat.heat_w / in.heating_value_j_kg, heat.slope_power / in.heating_value_j_kg, heat.heat_w};
}

double otto_efficiency(double compression_ratio, double heat_ratio) {
  return 1 - std::pow(compression_ratio, 1 - heat_ratio);
}

CoolantHeat coolant_heat(double power_w, double share_coolant, double share_shaft) {
  const double slope = share_coolant / share_shaft;
  return {slope * power_w, slope};
}

CoolantHeat coolant_heat(const WillansLine& line, const CoolantShares& shares, double power_w, double speed_rad_s) {
  const double at_load = power_w > 0 ? shares.load * line.heat_per_power : 0;
  return {shares.idle * line.idle_heat_w * std::sqrt(speed_rad_s / line.idle_speed_rad_s) + at_load * power_w, at_load};
}

double power_correction(double dry_pressure_pa, double temperature_k) {
  return 1.180 * (99000 / dry_pressure_pa) * std::sqrt((temperature_k - 273.15 + 273) / 298) - 0.18;
}

std::optional<double> stoichiometric_air_fuel(std::string_view formula) {
  double carbon = 0, hydrogen = 0, oxygen = 0, nitrogen = 0;
  for (std::size_t i = 0; i < formula.size();) {
    double* atoms = nullptr;
    switch (formula[i]) {
      case 'C':
        atoms = &carbon;
        break;
      case 'H':
        atoms = &hydrogen;
        break;
      case 'O':
        atoms = &oxygen;
        break;
      case 'N':
        atoms = &nitrogen;
        break;
      default:
        return {};
    }
    ++i;
    double count = 1;
    if (i < formula.size() && std::isdigit(static_cast<unsigned char>(formula[i]))) {
      const auto [end, error] =
          std::from_chars(formula.data() + i, formula.data() + formula.size(), count, std::chars_format::fixed);
      if (error != std::errc{}) return {};
      i = static_cast<std::size_t>(end - formula.data());
    }
    *atoms += count;
  }
  const double fuel_kg = 12.011 * carbon + 1.008 * hydrogen + 15.999 * oxygen + 14.007 * nitrogen;
  const double oxygen_moles = carbon + hydrogen / 4 - oxygen / 2;
  if (!(fuel_kg > 0) || !(oxygen_moles > 0)) return {};
  return oxygen_moles * 28.965 / 0.2095 / fuel_kg;
}

double injector_mass_flow_kg_s(double power_w, double bsfc_kg_j, double count, double duty) {
  return power_w * bsfc_kg_j / (count * duty);
}

double injector_at_pressure_kg_s(double rated_kg_s, double rated_pa, double pressure_pa) {
  return rated_kg_s * std::sqrt(pressure_pa / rated_pa);
}

double coil_energy_j(double inductance_h, double current_a) { return 0.5 * inductance_h * current_a * current_a; }

double coil_current_a(double inductance_h, double resistance_ohm, double supply_v, double time_s) {
  if (resistance_ohm == 0) return supply_v * time_s / inductance_h;
  return -supply_v / resistance_ohm * std::expm1(-time_s * resistance_ohm / inductance_h);
}

std::optional<double> coil_time_s(double inductance_h, double resistance_ohm, double supply_v, double current_a) {
  if (resistance_ohm == 0) return supply_v > 0 ? std::optional(current_a * inductance_h / supply_v) : std::nullopt;
  const double share = current_a * resistance_ohm / supply_v;
  if (!(share < 1)) return {};
  return -inductance_h / resistance_ohm * std::log1p(-share);
}

double dwell_share(double dwell, double cylinders) { return dwell * cylinders / (2 * pi); }

double dwell_time_s(double dwell, double engine_speed_rad_s) { return dwell / (engine_speed_rad_s / 2); }

}  // namespace sw::physics
