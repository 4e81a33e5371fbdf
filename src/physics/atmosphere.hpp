#pragma once
// The standard atmosphere and dry air as an ideal gas.
//
//   H = r z / (r + z)                         geopotential altitude, r = 6 356 766 m
//   T = 288.15 - 0.0065 H                     K
//   p = 101 325 (T / 288.15)^5.25588          Pa; exponent g0 M / (R* 0.0065)
//   rho = p / (R T), R = 287.053 J/(kg K)     kg/m3
//   mu = 1.458e-6 T^1.5 / (T + 110.4)         Pa s (Sutherland)
//   k = 2.64638e-3 T^1.5 / (T + 245.4 * 10^(-12/T))   W/(m K)
//   c_p = 3.5 R                               J/(kg K): ratio of specific heats 1.40, as the standard takes it
//
// z geometric altitude in m. Range of the atmosphere: geopotential altitude -5 to 11 km (one lapse rate); outside the
// formula is continued and `valid` is false. Range of air: 200 to 500 K and up to 1 MPa, where ideal-gas density is
// within 1 % and c_p within 3 % of measured values.
// Source: U.S. Standard Atmosphere, 1976 (NOAA-S/T 76-1562), equations 18, 23, 33a, 42, 51 and 53; tables 2 and 4.
namespace sw::physics {

inline constexpr double standard_pressure_pa = 101325.0;
inline constexpr double standard_temperature_k = 288.15;
inline constexpr double air_gas_constant_j_kg_k = 8314.32 / 28.9644;  ///< the standard's own R* and molar mass
/// Air as an engine's figures are taken to be corrected to: 25 degC and 101.325 kPa, to four digits.
inline constexpr double reference_air_density_kg_m3 = 1.184;

struct Atmosphere {
  double pressure_pa = 0;
  double temperature_k = 0;
  double density_kg_m3 = 0;
  double viscosity_pa_s = 0;
  bool valid = true;
};
Atmosphere standard_atmosphere(double altitude_m);

double air_density(double pressure_pa, double temperature_k);
double air_viscosity(double temperature_k);
double air_conductivity(double temperature_k);
inline constexpr double air_specific_heat_j_kg_k = 3.5 * air_gas_constant_j_kg_k;
bool air_valid(double pressure_pa, double temperature_k);

}  // namespace sw::physics
