// U.S. Standard Atmosphere, 1976: tables 1 (temperature, pressure, density) and 2 (viscosity, conductivity) at
// geometric altitude, printed digits.
#include "physics/atmosphere.hpp"

#include "near.hpp"

namespace sw::physics {
namespace {

struct Row {
  double altitude_m, temperature_k, pressure_pa, density_kg_m3, viscosity_pa_s;
};
// From memory; the row at 1500 m also stands, as printed, in open-source implementations of the standard.
constexpr Row table[] = {{0, 288.150, 101325, 1.2250, 1.7894e-5},
                         {1500, 278.402, 84556, 1.0581, 1.7419e-5},
                         {5000, 255.676, 54048, 0.73643, 1.6282e-5},
                         {10000, 223.252, 26500, 0.41351, 1.4577e-5}};

TEST(Atmosphere, AgreesWithTheStandardsTables) {
  for (auto& r : table) {
    const auto a = standard_atmosphere(r.altitude_m);
    expect_share(a.temperature_k, r.temperature_k, 1e-5, "temperature");
    expect_share(a.pressure_pa, r.pressure_pa, 1e-4, "pressure");
    expect_share(a.density_kg_m3, r.density_kg_m3, 1e-4, "density");
    expect_share(a.viscosity_pa_s, r.viscosity_pa_s, 1e-4, "viscosity");
    EXPECT_TRUE(a.valid);
  }
}

TEST(Atmosphere, IsNotValidAboveTheLowestLayer) {
  EXPECT_FALSE(standard_atmosphere(11500).valid);
  EXPECT_FALSE(standard_atmosphere(-5100).valid);
}

TEST(Air, ConductivityAtSeaLevel) {
  EXPECT_NEAR(air_conductivity(288.15), 2.5326e-2, 2e-6);  // the standard's table, from memory
}

TEST(Air, DensityAtOneBarAnd300Kelvin) {
  EXPECT_NEAR(air_density(100e3, 300), 1.1614, 3e-4);  // Incropera, table A.4, printed at 1 bar (from memory)
}

}  // namespace
}  // namespace sw::physics
