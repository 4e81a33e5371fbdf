#include "physics/coil.hpp"

#include <algorithm>
#include <cmath>
#include <numbers>

namespace sw::physics {
namespace {

double total_ohm(const CoilCircuit& c) { return c.coil_ohm + c.ballast_ohm; }

}  // namespace

CoilRise coil_rise(const CoilCircuit& c, double volts, double closed_s) {
  const double drive = volts - c.drop_v, r = total_ohm(c), lag = c.inductance_h / r;
  CoilRise out{.held_from_s = closed_s};
  if (drive <= 0 || closed_s <= 0) return out;
  const double most = drive / r, gone = std::exp(-closed_s / lag);
  out.current_a = most * (1 - gone);
  out.slope_time = drive / c.inductance_h * gone;
  out.slope_volts = (1 - gone) / r;
  if (out.current_a >= c.limit_a) {
    out = {.current_a = c.limit_a, .held = true, .held_from_s = -lag * std::log(1 - c.limit_a / most)};
  }
  out.energy_j = 0.5 * c.inductance_h * out.current_a * out.current_a;
  return out;
}

CoilHeat coil_heat(const CoilCircuit& c, double volts, double closed_s, double period_s) {
  const CoilRise rise = coil_rise(c, volts, closed_s);
  if (rise.current_a <= 0 || period_s <= 0) return {};
  const double r = total_ohm(c), lag = c.inductance_h / r, most = (volts - c.drop_v) / r;
  const double t = rise.held_from_s, held_s = closed_s - t, once = -std::expm1(-t / lag),
               twice = -std::expm1(-2 * t / lag);
  const double charge = most * (t - lag * once) + rise.current_a * held_s;
  const double square =
      most * most * (t - 2 * lag * once + 0.5 * lag * twice) + rise.current_a * rise.current_a * held_s;
  const double left = rise.held ? (volts - c.drop_v - rise.current_a * r) * rise.current_a * held_s : 0;
  return {charge / period_s, c.coil_ohm * square / period_s, c.ballast_ohm * square / period_s,
          (c.drop_v * charge + left) / period_s};
}

CoilHeat coil_standing(const CoilCircuit& c, double volts) {
  const double r = total_ohm(c), a = std::min(std::max(0.0, volts - c.drop_v) / r, c.limit_a);
  return {a, c.coil_ohm * a * a, c.ballast_ohm * a * a, a * (volts - a * r)};
}

Slope spark_period_s(double speed, double sparks) {
  const double period = 4 * std::numbers::pi / (speed * sparks);
  return {period, -period / speed};
}

}  // namespace sw::physics
