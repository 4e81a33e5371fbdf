#include "physics/starter.hpp"

#include <algorithm>
#include <cmath>
#include <numbers>

namespace sw::physics {
namespace {

/// Motor current that gives `torque` at its own shaft.
double current_for_torque(const Starter& s, double torque_n_m) {
  const double i = std::sqrt(torque_n_m / s.torque_per_a2_n_m);
  return i <= s.saturation_a ? i : torque_n_m / (s.torque_per_a2_n_m * s.saturation_a);
}

double flux_current(const Starter& s, double current_a) { return std::min(current_a, s.saturation_a); }

}  // namespace

Starter starter_from_stall(double stall_v, double stall_a, double stall_torque_n_m, double ratio) {
  return {
      .resistance_ohm = stall_v / stall_a, .torque_per_a2_n_m = stall_torque_n_m / (stall_a * stall_a), .ratio = ratio};
}

StarterPoint starter_at(const Starter& s, double volts, double engine_speed_rad_s) {
  const double w = engine_speed_rad_s * s.ratio, cw = s.torque_per_a2_n_m * w;
  double i = volts / (s.resistance_ohm + cw), slope = 1 / (s.resistance_ohm + cw);
  if (i > s.saturation_a) i = (volts - cw * s.saturation_a) / s.resistance_ohm, slope = 1 / s.resistance_ohm;
  return {i, slope, s.torque_per_a2_n_m * i * flux_current(s, i) * s.ratio * s.gear_efficiency};
}

double oil_viscosity_m2_s(double temperature_k, double viscosity_40c_m2_s, double viscosity_100c_m2_s) {
  const auto loglog = [](double v_m2_s) { return std::log10(std::log10(v_m2_s * 1e6 + 0.7)); };
  const double low = std::log10(313.15), high = std::log10(373.15);
  const double b = (loglog(viscosity_40c_m2_s) - loglog(viscosity_100c_m2_s)) / (high - low);
  const double z = loglog(viscosity_40c_m2_s) - b * (std::log10(temperature_k) - low);
  return 1e-6 * (std::pow(10, std::pow(10, z)) - 0.7);
}

Slope crank_factor(double oil_temperature_k, double viscosity_40c_m2_s, double viscosity_100c_m2_s) {
  const auto factor = [&](double t_k) {
    return std::pow(oil_viscosity_m2_s(t_k, viscosity_40c_m2_s, viscosity_100c_m2_s) /
                        oil_viscosity_m2_s(crank_reference_k, viscosity_40c_m2_s, viscosity_100c_m2_s),
                    crank_viscosity_power);
  };
  const double t = std::clamp(oil_temperature_k, coldest_crank_k, warmest_crank_k);
  if (t != oil_temperature_k) return {factor(t), 0, false};
  constexpr double h = 0.01;  // K; the law is smooth, so a central difference is good to 1e-8 of the slope
  return {factor(t), (factor(t + h) - factor(t - h)) / (2 * h)};
}

Slope cranking_torque(double displacement_m3, double oil_temperature_k, double viscosity_40c_m2_s,
                      double viscosity_100c_m2_s, double friction_20c_pa) {
  const double warm = friction_20c_pa * displacement_m3 / (4 * std::numbers::pi);
  const Slope factor = crank_factor(oil_temperature_k, viscosity_40c_m2_s, viscosity_100c_m2_s);
  return {warm * factor.value, warm * factor.slope, factor.valid};
}

Slope motor_speed(const MotorPoint& known, double resistance_ohm, double volts, double current_a) {
  const double back_v = known.volts - known.current_a * resistance_ohm;
  if (!(back_v > 0)) return {0, 0, false};
  const double per_volt = known.speed_rad_s / back_v, now_v = volts - current_a * resistance_ohm;
  return now_v > 0 ? Slope{per_volt * now_v, per_volt} : Slope{};
}

CrankPoint crank(const Starter& s, double emf_v, double resistance_ohm, double engine_torque_n_m) {
  const double i = current_for_torque(s, engine_torque_n_m / (s.ratio * s.gear_efficiency));
  const double volts = emf_v - i * resistance_ohm, back_v = volts - i * s.resistance_ohm;
  if (back_v <= 0) {  // stalls: the current is what the circuit lets through
    const double stall = emf_v / (resistance_ohm + s.resistance_ohm);
    return {0, stall, emf_v - stall * resistance_ohm, false};
  }
  return {back_v / (s.torque_per_a2_n_m * flux_current(s, i)) / s.ratio, i, volts, true};
}

}  // namespace sw::physics
