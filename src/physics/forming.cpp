#include "physics/forming.hpp"

#include <cmath>
#include <numbers>

namespace sw::physics {

double flare_strain(double tube_m, double flare_m) { return std::log(flare_m / tube_m); }

double bend_strain(double outside_m, double radius_m) { return outside_m / (2 * radius_m); }

double ring_shear_pa(double torque_nm, double thread_m, double ring_m, double wall_m) {
  constexpr double nut_factor = 0.2;
  return torque_nm / (nut_factor * thread_m) / (2 * std::numbers::pi * ring_m * wall_m);
}

}  // namespace sw::physics
