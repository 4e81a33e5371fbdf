#include "physics/fuel_blend.hpp"

#include <cmath>

#include "physics/gasoline.hpp"
#include "quantity/customary.hpp"

namespace sw::physics {
namespace {

constexpr double full_rise_pa = psi_pa, full_at = 0.05, known_to = 0.15;
constexpr double usual_slope_k_percent = 3 / 1.8;  ///< AP-42 for gasoline: 3 degF a percent
constexpr double coldest_k = 255.37, table_end_k = 310.93;
constexpr double ethanol_kg_m3 = 789, ethanol_at_k = 293.15, ethanol_swells_1_k = 0.00109;

}  // namespace

Slope ethanol_vapour_rise_pa(double share) {
  const bool valid = share >= 0 && share <= known_to;
  if (share >= full_at) return {full_rise_pa, 0, valid};
  return {full_rise_pa * share / full_at, full_rise_pa / full_at, valid};
}

Slope fuel_vapour_pressure_pa(double reid_pa, double ethanol_share, double temperature_k) {
  const Slope rise = ethanol_vapour_rise_pa(ethanol_share);
  const double reid = reid_pa + rise.value;
  const auto v = gasoline_vapour_pressure(reid, temperature_k, usual_slope_k_percent);
  const bool law = gasoline_vapour_pressure(reid, table_end_k, usual_slope_k_percent).valid;
  return {v.pressure_pa, v.slope_pa_k,
          law && rise.valid && temperature_k >= coldest_k && temperature_k <= hottest_vapour_k};
}

double fuel_bubble_k(double reid_pa, double ethanol_share, double pressure_pa) {
  // ln p = A - B / T: two values of it tell A and B.
  const double t1 = 300, t2 = 320;
  const double l1 = std::log(fuel_vapour_pressure_pa(reid_pa, ethanol_share, t1).value),
               l2 = std::log(fuel_vapour_pressure_pa(reid_pa, ethanol_share, t2).value);
  const double b = (l2 - l1) / (1 / t1 - 1 / t2), a = l1 + b / t1;
  return b / (a - std::log(pressure_pa));
}

double blend_mass_ratio(double share) {
  const double ethanol = share * ethanol_kg_m3, gasoline = (1 - share) * gasoline_15c_kg_m3;
  const double heat =
      (ethanol * ethanol_heating_value_j_kg + gasoline * gasoline_heating_value_j_kg) / (ethanol + gasoline);
  return gasoline_heating_value_j_kg / heat;
}

double blend_density_kg_m3(double share, double gasoline_kg_m3, double temperature_k) {
  return (1 - share) * gasoline_kg_m3 +
         share * ethanol_kg_m3 * (1 - ethanol_swells_1_k * (temperature_k - ethanol_at_k));
}

}  // namespace sw::physics
