#pragma once
// Liquid water and its saturation line.
//
//   density, specific heat   IAPWS-IF97 region 1: g(p, T) / RT = sum n_i (7.1 - pi)^I_i (tau - 1.222)^J_i,
//                            pi = p / 16.53 MPa, tau = 1386 K / T;  rho = p / (pi g_pi R T), c_p = -R tau^2 g_tautau
//   saturation               IAPWS-IF97 region 4 (one quadratic, solved for p or for T)
//   viscosity                IAPWS 2008 release, mu0(T) mu1(rho, T); without the critical factor, which is 1 but near
//                            the critical point
//   conductivity             IAPWS 2011 release, lambda0 lambda1; without the critical term, below 0.5 % here
//
// Range: 273.15 to 473.15 K, up to 10 MPa and not below the saturation pressure (superheated liquid is continued and
// `valid` is false). Saturation: 273.15 to 623.15 K.
// Sources: IAPWS R7-97(2012), equations 7, 30, 31 and tables 2, 34; IAPWS R12-08, tables 1 and 2; IAPWS R15-11,
// tables 1 and 2.
#include "physics/law.hpp"

namespace sw::physics {

/// A liquid's (or gas's) properties at a state.
struct FluidState {
  double density_kg_m3 = 0;
  double specific_heat_j_kg_k = 0;
  double conductivity_w_m_k = 0;
  double viscosity_pa_s = 0;
  bool valid = true;
};

FluidState water(double temperature_k, double pressure_pa);

Slope water_saturation_pressure(double temperature_k);   ///< Pa, Pa/K
Slope water_saturation_temperature(double pressure_pa);  ///< K, K/Pa

/// The parts, for tests against the releases' own tables.
struct WaterCaloric {
  double density_kg_m3, specific_heat_j_kg_k;
};
WaterCaloric water_caloric(double temperature_k, double pressure_pa);
double water_viscosity(double temperature_k, double density_kg_m3);
double water_conductivity(double temperature_k, double density_kg_m3);

}  // namespace sw::physics
