#include "physics/brake_disc.hpp"

namespace sw::physics {

Slope disc_torque_n_m(double friction, double pressure_pa, double piston_area_m2, double radius_m) {
  const double slope = 2 * friction * piston_area_m2 * radius_m;
  if (pressure_pa < 0) return {0, 0, false};
  return {slope * pressure_pa, slope};
}

double pad_radius_m(double inner_m, double outer_m) {
  return 2.0 / 3 * (outer_m * outer_m + outer_m * inner_m + inner_m * inner_m) / (outer_m + inner_m);
}

}  // namespace sw::physics
