#include "physics/radiation.hpp"

#include <cmath>
#include <numbers>

namespace sw::physics {

double parallel_cylinders_view(double radius_m, double other_radius_m, double gap_m) {
  const double k = other_radius_m / radius_m, c = 1 + k + gap_m / radius_m;
  const double sum = std::numbers::pi + std::sqrt(c * c - (k + 1) * (k + 1)) - std::sqrt(c * c - (k - 1) * (k - 1)) +
                     (k - 1) * std::acos((k - 1) / c) - (k + 1) * std::acos((k + 1) / c);
  return sum / (2 * std::numbers::pi);
}

Slope radiant_heat_w_m2(double view, double emissivity, double hot_k, double own_k) {
  const double f = view * emissivity * stefan_boltzmann_w_m2k4;
  return {f * (std::pow(hot_k, 4) - std::pow(own_k, 4)), -4 * f * std::pow(own_k, 3)};
}

}  // namespace sw::physics
