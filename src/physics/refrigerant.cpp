#include "physics/refrigerant.hpp"

#include <algorithm>
#include <cmath>

#include "physics/atmosphere.hpp"

namespace sw::physics {
namespace {

constexpr double critical_pa = 4.05629e6;

}  // namespace

Slope r134a_saturation_pa(double temperature_k) {
  const double t = std::clamp(temperature_k, r134a_coldest_k, r134a_hottest_k), theta = t / r134a_hottest_k;
  const double s = 1 - theta, root = std::sqrt(s);
  const double sum = -7.686556 * s + 2.311791 * s * root - 2.039554 * s * s - 3.583758 * s * s * s * s;
  const double slope = -7.686556 + 1.5 * 2.311791 * root - 2 * 2.039554 * s - 4 * 3.583758 * s * s * s;
  const double p = critical_pa * std::exp(sum / theta);
  // d(sum/theta)/dT with ds = -dtheta.
  const double d = (-slope / theta - sum / (theta * theta)) / r134a_hottest_k;
  return {p, p * d, t == temperature_k};
}

// The logarithm of the pressure is nearly straight over 1/T, so Newton's steps there reach the last digit in three or
// four, from a straight line between the ends.
Slope r134a_saturation_k(double pressure_pa) {
  constexpr double low = r134a_coldest_k, high = r134a_hottest_k, aim = 1e-13;
  constexpr int most_steps = 20;
  static const double least = std::log(r134a_saturation_pa(low).value),
                      most = std::log(r134a_saturation_pa(high).value);
  const double wanted = std::log(pressure_pa);
  double inverse = 1 / low + (wanted - least) / (most - least) * (1 / high - 1 / low);
  inverse = std::clamp(inverse, 1 / high, 1 / low);
  Slope p = r134a_saturation_pa(1 / inverse);
  for (int i = 0; i < most_steps; ++i) {
    const double t = 1 / inverse, by = (std::log(p.value) - wanted) * p.value / (t * t * p.slope);
    const double next = std::clamp(inverse + by, 1 / high, 1 / low);
    const bool there = std::abs(next - inverse) <= aim * inverse;
    inverse = next;
    p = r134a_saturation_pa(1 / inverse);
    if (there) break;
  }
  return {1 / inverse, 1 / p.slope, wanted >= least && wanted <= most};
}

Slope condensing_k(double air_in_k, double heat_w, double effectiveness, double air_w_k) {
  const double rise = heat_w / (effectiveness * air_w_k);
  return {air_in_k + rise, -rise / air_w_k};
}

Slope air_rise_k(double heat_w, double air_kg_s) {
  const double rate = air_kg_s * air_specific_heat_j_kg_k;
  return {heat_w / rate, 1 / rate};
}

}  // namespace sw::physics
