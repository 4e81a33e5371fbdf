#include "physics/atmosphere.hpp"

#include <cmath>

#include "quantity/customary.hpp"

namespace sw::physics {

double air_density(double pressure_pa, double temperature_k) {
  return pressure_pa / (air_gas_constant_j_kg_k * temperature_k);
}

double air_viscosity(double temperature_k) {
  return 1.458e-6 * temperature_k * std::sqrt(temperature_k) / (temperature_k + 110.4);
}

double air_conductivity(double temperature_k) {
  return 2.64638e-3 * temperature_k * std::sqrt(temperature_k) /
         (temperature_k + 245.4 * std::pow(10.0, -12.0 / temperature_k));
}

bool air_valid(double pressure_pa, double temperature_k) {
  return temperature_k >= 200 && temperature_k <= 500 && pressure_pa > 0 && pressure_pa <= 1e6;
}

Atmosphere standard_atmosphere(double altitude_m) {
  constexpr double earth_radius_m = 6356766.0, lapse_k_m = 0.0065;
  constexpr double exponent = standard_gravity_m_s2 / (air_gas_constant_j_kg_k * lapse_k_m);
  const double geopotential_m = earth_radius_m * altitude_m / (earth_radius_m + altitude_m);
  Atmosphere a;
  a.valid = geopotential_m >= -5000 && geopotential_m <= 11000;
  a.temperature_k = standard_temperature_k - lapse_k_m * geopotential_m;
  a.pressure_pa = standard_pressure_pa * std::pow(a.temperature_k / standard_temperature_k, exponent);
  a.density_kg_m3 = air_density(a.pressure_pa, a.temperature_k);
  a.viscosity_pa_s = air_viscosity(a.temperature_k);
  return a;
}

}  // namespace sw::physics
