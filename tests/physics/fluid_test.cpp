#include "physics/fluid.hpp"

#include "near.hpp"

namespace sw::physics {
namespace {

constexpr double c0 = 273.15;

TEST(CoolantTable, AMixtureIsItsOwnPolynomials) {
  for (double w : {0.1, 0.3, 0.527, 0.6})
    for (Fluid f : {Fluid::ethylene_glycol, Fluid::propylene_glycol}) {
      const auto table = *CoolantTable::make(f, w);
      for (double t = table.freezing_k(); t < c0 + 140; t += 6.1) {
        const auto s = table.at(t);
        const auto full = fluid_state(f, w, t, 2e5);
        expect_share(s.density_kg_m3, full.density_kg_m3, 1e-12);
        expect_share(s.specific_heat_j_kg_k, full.specific_heat_j_kg_k, 1e-12);
        expect_share(table.transport_at(t).viscosity_pa_s, full.viscosity_pa_s, 1e-12);
        expect_share(table.transport_at(t).conductivity_w_m_k, full.conductivity_w_m_k, 1e-12);
        EXPECT_TRUE(s.valid);
        EXPECT_EQ(s.extrapolated, t > c0 + 100);
      }
      EXPECT_FALSE(table.at(table.freezing_k() - 1).valid);
      EXPECT_FALSE(table.at(c0 + 141).valid);
    }
}

TEST(CoolantTable, WaterStaysCloseToIapws) {
  const auto table = *CoolantTable::make(Fluid::water, 0);
  for (double t = c0; t <= c0 + 140; t += 0.5) {
    const auto s = table.at(t);
    const auto full = water(t, 4e5);
    expect_share(s.density_kg_m3, full.density_kg_m3, 1e-4);
    expect_share(s.specific_heat_j_kg_k, full.specific_heat_j_kg_k, 5e-4);
    expect_share(table.transport_at(t).conductivity_w_m_k, full.conductivity_w_m_k, 2e-3);
    expect_share(table.transport_at(t).viscosity_pa_s, full.viscosity_pa_s, 2e-3);
    EXPECT_FALSE(s.extrapolated);
  }
}

TEST(CoolantTable, SlopesAreTheDerivatives) {
  for (double w : {0.0, 0.45}) {
    const auto table = *CoolantTable::make(Fluid::ethylene_glycol, w);
    for (double t = c0 + 2; t < c0 + 138; t += 9.7) {
      expect_slope(
          table.at(t).density_slope, [&](double x) { return table.at(x).density_kg_m3; }, t, 1e-4);
      // specific heat of water has a flat least near 35 degC: compare on the scale of 1 J/(kg K) a kelvin
      const double h = 1e-3,
                   d = (table.at(t + h).specific_heat_j_kg_k - table.at(t - h).specific_heat_j_kg_k) / (2 * h);
      EXPECT_NEAR(table.at(t).specific_heat_slope, d, 1e-5);
    }
  }
}

TEST(CoolantTable, RefusesWhatIsNoCoolant) {
  EXPECT_FALSE(CoolantTable::make(Fluid::air, 0));
  EXPECT_FALSE(CoolantTable::make(Fluid::ethylene_glycol, 0.7));
  EXPECT_FALSE(CoolantTable::make(Fluid::ethylene_glycol, -0.1));
}

// IAPWS: water boils at 100 degC less 0.026 K at 101.325 kPa (ITS-90).
TEST(Fluid, BoilingByName) {
  EXPECT_NEAR(boiling_temperature(Fluid::water, 0, 101325).value - c0, 99.974, 0.002);
  EXPECT_FALSE(boiling_temperature(Fluid::gasoline, 0, 101325).valid);
  EXPECT_GT(boiling_temperature(Fluid::ethylene_glycol, 0.5, 101325).value, c0 + 105);
}

}  // namespace
}  // namespace sw::physics
