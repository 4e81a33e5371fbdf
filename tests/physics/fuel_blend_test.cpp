#include "physics/fuel_blend.hpp"

#include <gtest/gtest.h>

#include "near.hpp"
#include "physics/gasoline.hpp"

namespace sw::physics {
namespace {

constexpr double psi = 6894.757293168361;

TEST(FuelBlend, EthanolRaisesTheVapourPressureByOnePsiAtTen) {  // 40 CFR 1090.215 (from memory)
  EXPECT_NEAR(ethanol_vapour_rise_pa(0.10).value, psi, 1);
  EXPECT_EQ(ethanol_vapour_rise_pa(0).value, 0);
  EXPECT_TRUE(ethanol_vapour_rise_pa(0.15).valid);
  EXPECT_FALSE(ethanol_vapour_rise_pa(0.85).valid);
}

// Inside the table of AP-42 it is that law: 5.2 psia at 60 degF for 10 psi (table 7.1-2).
TEST(FuelBlend, IsTheLawOfTheTanks) {
  expect_share(fuel_vapour_pressure_pa(10 * psi, 0, 288.71).value, 5.2 * psi, 0.01);
  expect_slope(
      fuel_vapour_pressure_pa(9 * psi, 0.1, 320).slope,
      [](double t) { return fuel_vapour_pressure_pa(9 * psi, 0.1, t).value; }, 320);
}

// The continuation: n-hexane has 4.96 psi at 100 degF (CRC Handbook: 34.2 kPa) and boils at 68.7 degC; the law, made
// for mixtures, is 31 K beyond its table within an eighth.
TEST(FuelBlend, ContinuedBeyondItsTable) {
  const auto v = fuel_vapour_pressure_pa(4.96 * psi, 0, 273.15 + 68.7);
  EXPECT_TRUE(v.valid);
  expect_share(v.value, 101325, 0.125);
  EXPECT_FALSE(fuel_vapour_pressure_pa(9 * psi, 0, 380).valid);
  EXPECT_FALSE(fuel_vapour_pressure_pa(9 * psi, 0.3, 310).valid);
  EXPECT_FALSE(fuel_vapour_pressure_pa(16 * psi, 0, 310).valid);
}

TEST(FuelBlend, BubbleIsTheInverse) {
  const double t = fuel_bubble_k(9 * psi, 0.1, 101325);
  expect_share(fuel_vapour_pressure_pa(9 * psi, 0.1, t).value, 101325, 1e-9);
}

// E10 holds 3 to 4 % less heat a gallon than gasoline (US DOE, fuel economy guide, from memory: about 3 %).
TEST(FuelBlend, TenPercentCostsThreeToFourInHeat) {
  const double volume = blend_mass_ratio(0.1) * 745 / blend_density_kg_m3(0.1, 745, 288.15);
  EXPECT_GT(volume, 1.03);
  EXPECT_LT(volume, 1.04);
  EXPECT_DOUBLE_EQ(blend_mass_ratio(0), 1);
}

}  // namespace
}  // namespace sw::physics
