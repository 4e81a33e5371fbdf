#pragma once
// Gasoline: typical liquid properties, and vapour pressure.
//
// Properties (typical of summer pump fuel, common practice; from memory): density 745 kg/m3 at 15 degC falling
// 0.00095 of it a kelvin (petroleum measurement tables' coefficient for this density), specific heat 2060 J/(kg K) at
// 15 degC rising 4.0 a kelvin, conductivity 0.117 W/(m K), viscosity 0.60 mPa s at 15 degC with exp(1050 K (1/T -
// 1/288.15 K)). A given fuel differs by 4 % in density (EN 228 allows 720 to 775 kg/m3) and 20 % in viscosity.
// Range: 240 to 340 K; outside continued, `valid` false.
//
// True vapour pressure of a gasoline from its Reid vapour pressure:
//   ln(p / psi) = A - B / T,  T in degR
//   A = 15.64 - 1.854 sqrt(S) - (0.8742 - 0.3280 sqrt(S)) ln(R)
//   B = 8742 - 1042 sqrt(S) - (1049 - 179.4 sqrt(S)) ln(R)      degR
// R Reid vapour pressure in psi, S slope of the ASTM distillation curve at 10 % evaporated, degF a percent (gasoline
// 3). Range: 2 < R < 15 psi, 2 <= S <= 4, 0 to 100 degF; outside continued, `valid` false. Source: US EPA AP-42,
// chapter 7.1 Organic Liquid Storage Tanks, figure 7.1-14b (from memory, constants checked against table 7.1-2).
#include "physics/law.hpp"
#include "physics/water.hpp"

namespace sw::physics {

inline constexpr double gasoline_15c_kg_m3 = 745;
FluidState gasoline(double temperature_k);

struct VapourPressure {
  double pressure_pa = 0;
  double slope_pa_k = 0;    ///< d pressure / d temperature
  double constant_a = 0;    ///< for psi and degR
  double constant_b_k = 0;  ///< B as a step, in kelvin
  bool valid = true;
};
VapourPressure gasoline_vapour_pressure(double reid_pa, double temperature_k, double slope_k_percent);

/// Greatest vapour pressure at 37.8 degC of the volatility classes AA, A, B, C, D, E (index 0 to 5), Pa.
/// Source: ASTM D4814, table 1 (from memory): 54, 62, 69, 79, 93, 103 kPa.
double gasoline_class_limit_pa(int class_index);

}  // namespace sw::physics
