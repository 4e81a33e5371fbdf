#include "physics/glycol.hpp"

#include "near.hpp"
#include "physics/water.hpp"

namespace sw::physics {
namespace {

constexpr double c0 = 273.15;

// Melinder (2010), ethylene glycol - water at 50 % by mass, as the open-source CoolProp library gives it.
TEST(Glycol, EthyleneAtHalfByMass) {
  expect_share(glycol_water(Glycol::ethylene, 0.5, c0 + 40).density_kg_m3, 1053.4, 0.003);
  expect_share(glycol_water(Glycol::ethylene, 0.5, c0 + 80).specific_heat_j_kg_k, 3582, 0.005);
  expect_share(glycol_water(Glycol::ethylene, 0.5, c0 + 80).conductivity_w_m_k, 0.4257, 0.01);
  expect_share(glycol_water(Glycol::ethylene, 0.5, c0 + 20).viscosity_pa_s, 3.69e-3, 0.02);
  EXPECT_NEAR(glycol_freezing(Glycol::ethylene, 0.5).value - c0, -36.03, 0.5);
}

// Propylene glycol, 50 % by mass: ASHRAE Handbook Fundamentals, physical properties of secondary coolants (from
// memory): 1.041 at 20 degC relative to water at 4 degC; freezing at -33 degC within the scatter of published tables.
TEST(Glycol, PropyleneAtHalfByMass) {
  expect_share(glycol_water(Glycol::propylene, 0.5, c0 + 20).density_kg_m3, 1041, 0.004);
  EXPECT_NEAR(glycol_freezing(Glycol::propylene, 0.5).value - c0, -33, 1.5);
}

// Without glycol the polynomials must give water: IAPWS, at the edges of the data and beyond.
TEST(Glycol, WithoutGlycolIsWater) {
  struct Row {
    double c, density, heat, conductivity, viscosity;
  };
  for (auto glycol : {Glycol::ethylene, Glycol::propylene})
    for (auto& r : {Row{5, 0.001, 0.003, 0.02, 0.02}, Row{50, 0.001, 0.003, 0.01, 0.03},
                    Row{100, 0.001, 0.003, 0.01, 0.04}, Row{120, 0.003, 0.005, 0.005, 0.12}}) {
      const auto mixed = glycol_water(glycol, 0, c0 + r.c), pure = water(c0 + r.c, 3e5);
      expect_share(mixed.density_kg_m3, pure.density_kg_m3, r.density, "density");
      expect_share(mixed.specific_heat_j_kg_k, pure.specific_heat_j_kg_k, r.heat, "specific heat");
      expect_share(mixed.conductivity_w_m_k, pure.conductivity_w_m_k, r.conductivity, "conductivity");
      expect_share(mixed.viscosity_pa_s, pure.viscosity_pa_s, r.viscosity, "viscosity");
      EXPECT_EQ(mixed.valid, r.c <= 100);
    }
}

TEST(Glycol, FreezesAtZeroWithoutGlycol) {
  EXPECT_NEAR(glycol_freezing(Glycol::ethylene, 0).value, c0, 0.05);
  EXPECT_NEAR(glycol_freezing(Glycol::propylene, 0).value, c0, 0.5);
  EXPECT_FALSE(glycol_freezing(Glycol::ethylene, 0.65).valid);
  for (double w = 0.05; w < 0.6; w += 0.05)
    expect_slope(
        glycol_freezing(Glycol::ethylene, w).slope, [](double x) { return glycol_freezing(Glycol::ethylene, x).value; },
        w);
}

// ASTM D3306: a coolant of 50 % by volume boils at 108 degC or above at 101.325 kPa (from memory).
TEST(Glycol, BoilingOfHalfByVolume) {
  const double w = mass_fraction_of(Glycol::ethylene, 0.5);
  EXPECT_NEAR(glycol_boiling_temperature(Glycol::ethylene, w, 101325).value - c0, 108, 1.5);
  // 15 psi cap: 129 to 130 degC (265 degF) is printed on coolant containers, common practice
  EXPECT_NEAR(glycol_boiling_temperature(Glycol::ethylene, w, 101325 + 15 * 6894.757).value - c0, 129.4, 1.5);
}

// Normal boiling points 197.3 and 187.6 degC (CRC Handbook, from memory): the Antoine constants alone.
TEST(Glycol, PureGlycolsBoilWhereTheyShould) {
  EXPECT_NEAR(glycol_boiling_temperature(Glycol::ethylene, 1, 101325).value - c0, 197.3, 0.5);
  EXPECT_NEAR(glycol_boiling_temperature(Glycol::propylene, 1, 101325).value - c0, 187.6, 0.5);
}

TEST(Glycol, BoilingWithoutGlycolIsWaterAndRunsBothWays) {
  EXPECT_NEAR(glycol_boiling_temperature(Glycol::ethylene, 0, 101325).value, water_saturation_temperature(101325).value,
              1e-5);
  for (double w : {0.2, 0.527, 0.6})
    for (double p : {7e4, 1e5, 2.1e5}) {
      const Slope t = glycol_boiling_temperature(Glycol::ethylene, w, p);
      expect_share(glycol_vapour_pressure(Glycol::ethylene, w, t.value).value, p, 1e-8);
      expect_slope(
          t.slope, [w](double x) { return glycol_boiling_temperature(Glycol::ethylene, w, x).value; }, p, 1e-4);
    }
}

// Definition, with the densities of the pure liquids at 20 degC.
TEST(Glycol, FractionsByMassAndVolume) {
  EXPECT_NEAR(mass_fraction_of(Glycol::ethylene, 0.5), 1113.2 / (1113.2 + 998.2), 1e-12);
  for (double v : {0.0, 0.33, 0.5, 1.0})
    EXPECT_NEAR(volume_fraction_of(Glycol::propylene, mass_fraction_of(Glycol::propylene, v)), v, 1e-12);
}

}  // namespace
}  // namespace sw::physics
