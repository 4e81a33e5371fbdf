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

Slope r134a_saturation_k(double pressure_pa) {
  double low = r134a_coldest_k, high = r134a_hottest_k;
  const bool inside = pressure_pa >= r134a_saturation_pa(low).value && pressure_pa <= r134a_saturation_pa(high).value;
  for (int i = 0; i < 60; ++i) {
    const double mid = 0.5 * (low + high);
    (r134a_saturation_pa(mid).value < pressure_pa ? low : high) = mid;
  }
  return {high, 1 / r134a_saturation_pa(high).slope, inside};
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
