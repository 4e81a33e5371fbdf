#include "physics/gasoline.hpp"

#include <array>
#include <cmath>

#include "quantity/customary.hpp"

namespace sw::physics {

FluidState gasoline(double temperature_k) {
  const double rise_k = temperature_k - 288.15;
  FluidState s;
  s.density_kg_m3 = gasoline_15c_kg_m3 * (1 - 0.00095 * rise_k);
  s.specific_heat_j_kg_k = 2060 + 4.0 * rise_k;
  s.conductivity_w_m_k = 0.117;
  s.viscosity_pa_s = 0.60e-3 * std::exp(1050 * (1 / temperature_k - 1 / 288.15));
  s.valid = temperature_k >= 240 && temperature_k <= 340;
  return s;
}

VapourPressure gasoline_vapour_pressure(double reid_pa, double temperature_k, double slope_k_percent) {
  constexpr double rankine_k = 1.8;
  const double reid_psi = reid_pa / psi_pa, slope_f = rankine_k * slope_k_percent;
  const double root = std::sqrt(slope_f), log_r = std::log(reid_psi);
  const double a = 15.64 - 1.854 * root - (0.8742 - 0.3280 * root) * log_r;
  const double b = 8742 - 1042 * root - (1049 - 179.4 * root) * log_r;
  const double t = rankine_k * temperature_k;
  VapourPressure v;
  v.constant_a = a;
  v.constant_b_k = b / rankine_k;
  v.pressure_pa = psi_pa * std::exp(a - b / t);
  v.slope_pa_k = v.pressure_pa * b / (t * t) * rankine_k;
  v.valid = reid_psi > 2 && reid_psi < 15 && slope_f >= 2 - 1e-9 && slope_f <= 4 + 1e-9 &&
            temperature_k >= 255.37 - 0.01 && temperature_k <= 310.93 + 0.01;
  return v;
}

double gasoline_class_limit_pa(int class_index) {
  constexpr std::array<double, 6> kpa = {54, 62, 69, 79, 93, 103};
  return 1e3 * kpa.at(static_cast<std::size_t>(class_index));
}

}  // namespace sw::physics
