#include "physics/brake_hydraulic.hpp"

#include <numbers>

namespace sw::physics {
namespace {

constexpr double disc_area(double diameter_m) { return std::numbers::pi / 4 * diameter_m * diameter_m; }

}  // namespace

Slope line_pressure_pa(double pedal_force_n, double pedal_ratio, double bore_m, double boost_n) {
  const double area = disc_area(bore_m);
  return {(pedal_force_n * pedal_ratio + boost_n) / area, pedal_ratio / area};
}

double booster_area_m2(std::span<const double> diameters_m) {
  double area = 0;
  for (double d : diameters_m) area += disc_area(d);
  return area;
}

Slope booster_assist_n(double vacuum_pa, double area_m2, double efficiency, double spring_n) {
  const double force = efficiency * vacuum_pa * area_m2 - spring_n;
  if (force <= 0) return {0, 0};
  return {force, efficiency * area_m2};
}

Slope booster_knee_n(double assist_n, double gain) { return {assist_n / (gain - 1), 1 / (gain - 1), gain > 1}; }

BoosterForce booster_output(double input_n, double gain, double assist_n) {
  if (input_n * (gain - 1) < assist_n) return {input_n * gain, gain, 0, false};
  return {input_n + assist_n, 1, 1, true};
}

BoosterForce booster_input(double output_n, double gain, double assist_n) {
  const double at_gain = output_n / gain;
  if (at_gain * (gain - 1) < assist_n) return {at_gain, 1 / gain, 0, false};
  return {output_n - assist_n, 1, -1, true};
}

}  // namespace sw::physics
