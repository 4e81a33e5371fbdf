#include "physics/alternator.hpp"

#include <algorithm>
#include <cmath>

namespace sw::physics {

ShaftLoad alternator_load(double volts, double current_a, double efficiency, double rotor_speed_rad_s) {
  const double power = volts * current_a / efficiency;
  if (rotor_speed_rad_s <= 0) return {power, 0, 0};
  return {power, power / rotor_speed_rad_s, volts / efficiency / rotor_speed_rad_s};
}

std::optional<AlternatorCurve> alternator_curve(double cut_in_rad_s, double idle_speed_rad_s, double idle_a,
                                                double rated_speed_rad_s, double rated_a) {
  const double x1 = idle_speed_rad_s - cut_in_rad_s, x2 = rated_speed_rad_s - cut_in_rad_s;
  const double ratio = idle_a / rated_a;
  if (!(x1 > 0 && x2 > x1 && ratio > x1 / x2 && ratio < 1)) return {};
  // (1 - e^(-x1/b)) / (1 - e^(-x2/b)) falls with b from 1 to x1/x2: bisect its logarithm.
  double low = x1 / 50, high = 1000 * x2;
  for (int i = 0; i < 200; ++i) {
    const double b = std::sqrt(low * high);
    (std::expm1(-x1 / b) / std::expm1(-x2 / b) > ratio ? low : high) = b;
  }
  const double b = std::sqrt(low * high);
  return AlternatorCurve{cut_in_rad_s, rated_a / -std::expm1(-x2 / b), b};
}

namespace {
constexpr double least_hot_share = 0.2, greatest_cold_share = 1.2;  ///< how far a line through two points is trusted
double hot_slope(const HotLine& line) { return (line.share - 1) / (line.hot_k - line.cold_k); }
}  // namespace

double alternator_hottest_k(const HotLine& line) { return line.cold_k + (least_hot_share - 1) / hot_slope(line); }

Slope alternator_hot_factor(const HotLine& line, double winding_k) {
  const double slope = hot_slope(line), factor = 1 + slope * (winding_k - line.cold_k);
  if (factor < least_hot_share) return {least_hot_share, 0, false};
  return factor > greatest_cold_share ? Slope{greatest_cold_share, 0} : Slope{factor, slope};
}

AlternatorOutput alternator_output(const AlternatorCurve& c, double rotor_speed_rad_s, double winding_k,
                                   const HotLine& line) {
  const double over = rotor_speed_rad_s - c.cut_in_rad_s, heat = alternator_hot_factor(line, winding_k).value;
  if (over <= 0) return {0, 0};
  const double left = std::exp(-over / c.bend_rad_s);
  return {heat * c.end_a * (1 - left), heat * c.end_a * left / c.bend_rad_s};
}

}  // namespace sw::physics
