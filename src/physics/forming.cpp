#include "physics/forming.hpp"

#include <cmath>
#include <numbers>

#include "physics/bolt.hpp"

namespace sw::physics {

double flare_strain(double tube_m, double flare_m) { return std::log(flare_m / tube_m); }

double bend_strain(double outside_m, double radius_m) { return outside_m / (2 * radius_m); }

double bent_wall_m(double outside_m, double wall_m, double radius_m) {
  return wall_m / (1 + bend_strain(outside_m, radius_m));
}

double ring_shear_pa(double torque_nm, double thread_m, double ring_m, double wall_m) {
  const Thread thread{.diameter_m = thread_m, .pitch_m = 0, .inch = true};
  const double torque_per_load = torque_by_factor_n_m(thread, dry_nut_factor, 1).slope;
  return torque_nm / torque_per_load / (2 * std::numbers::pi * ring_m * wall_m);
}

}  // namespace sw::physics
