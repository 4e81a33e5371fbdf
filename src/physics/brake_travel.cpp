#include "physics/brake_travel.hpp"

#include "quantity/customary.hpp"

namespace sw::physics {
namespace {

constexpr double most_pressure_pa = 14e6, most_rise_k = 150;

}  // namespace

Slope brake_uptake(const Uptake& u, double pressure_pa) {
  const double slope = (u.pistons * u.area_m2 * u.give_m + u.lines_m3) / u.at_pa;
  return {u.pistons * u.area_m2 * u.clearance_m + slope * pressure_pa, slope,
          pressure_pa >= 0 && pressure_pa <= most_pressure_pa};
}

Slope uptake_pressure(const Uptake& u, double volume_m3) {
  const Slope touch = brake_uptake(u, 0);
  if (volume_m3 <= touch.value) return {0, 0, volume_m3 >= 0};
  const double p = (volume_m3 - touch.value) / touch.slope;
  return {p, 1 / touch.slope, p <= most_pressure_pa};
}

Slope trapped_pressure(double fluid_m3, double rise_k, double compliance_m3_pa) {
  const double slope = fluid_m3 * brake_fluid_expansion_1_k / compliance_m3_pa;
  return {slope * rise_k, slope, rise_k >= 0 && rise_k <= most_rise_k};
}

Slope fluid_head(double height_m) {
  constexpr double slope = brake_fluid_density_kg_m3 * standard_gravity_m_s2;
  return {slope * height_m, slope};
}

}  // namespace sw::physics
