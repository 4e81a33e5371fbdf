#include "physics/convection.hpp"

#include <cmath>

namespace sw::physics {
namespace {

Slope churchill_chu(double rayleigh, double prandtl, double still, double prandtl_mark) {
  const double damping = std::pow(1 + std::pow(prandtl_mark / prandtl, 9.0 / 16), 8.0 / 27);
  const double moving = 0.387 * std::pow(rayleigh, 1.0 / 6) / damping;
  const double root = still + moving;
  const double slope = rayleigh > 0 ? 2 * root * moving / (6 * rayleigh) : 0;
  return {root * root, slope, rayleigh >= 0 && rayleigh <= 1e12 && prandtl > 0};
}

}  // namespace

Slope nusselt_dittus_boelter(double reynolds, double prandtl, bool fluid_heated) {
  const double nu = 0.023 * std::pow(reynolds, 0.8) * std::pow(prandtl, fluid_heated ? 0.4 : 0.3);
  return {nu, 0.8 * nu / reynolds, reynolds >= 1e4 && prandtl >= 0.6 && prandtl <= 160};
}

Slope nusselt_gnielinski(double reynolds, double prandtl, double darcy_factor) {
  const double g = darcy_factor / 8;
  const double slope = g * prandtl / (1 + 12.7 * std::sqrt(g) * (std::pow(prandtl, 2.0 / 3) - 1));
  return {slope * (reynolds - 1000), slope, reynolds >= 3000 && reynolds <= 5e6 && prandtl >= 0.5 && prandtl <= 2000};
}

double smooth_tube_factor(double reynolds) { return std::pow(0.790 * std::log(reynolds) - 1.64, -2); }

Slope nusselt_vertical_plate(double rayleigh, double prandtl) { return churchill_chu(rayleigh, prandtl, 0.825, 0.492); }
Slope nusselt_lying_cylinder(double rayleigh, double prandtl) { return churchill_chu(rayleigh, prandtl, 0.60, 0.559); }

}  // namespace sw::physics
