#include "physics/gasoline.hpp"

#include "near.hpp"

namespace sw::physics {
namespace {

constexpr double psi_pa = 6894.757293168361, k_per_f = 1 / 1.8;
constexpr double from_f(double f) { return (f + 459.67) * k_per_f; }

// US EPA AP-42, chapter 7.1, table 7.1-2: gasoline of RVP 10, S = 3 (from memory): 5.2 psia at 60 degF, and the
// equation's constant A = 11.724.
TEST(Gasoline, TrueVapourPressure) {
  const auto v = gasoline_vapour_pressure(10 * psi_pa, from_f(60), 3 * k_per_f);
  EXPECT_NEAR(v.pressure_pa / psi_pa, 5.2, 0.05);
  EXPECT_NEAR(v.constant_a, 11.724, 0.002);
  EXPECT_NEAR(v.constant_b_k * 1.8, 5237.3, 0.5);
  EXPECT_TRUE(v.valid);
  expect_share(gasoline_vapour_pressure(10 * psi_pa, from_f(100), 3 * k_per_f).pressure_pa / psi_pa, 10.66, 0.005);
}

TEST(Gasoline, VapourPressureSlope) {
  auto p = [](double t) { return gasoline_vapour_pressure(9 * psi_pa, t, 3 * k_per_f).pressure_pa; };
  for (double t : {270.0, 300.0, 330.0})
    expect_slope(gasoline_vapour_pressure(9 * psi_pa, t, 3 * k_per_f).slope_pa_k, p, t);
  EXPECT_FALSE(gasoline_vapour_pressure(9 * psi_pa, 330, 3 * k_per_f).valid);
}

// EN 228: density at 15 degC from 720 to 775 kg/m3 (from memory).
TEST(Gasoline, TypicalDensityLiesInTheStandardsWindow) {
  EXPECT_GE(gasoline(288.15).density_kg_m3, 720);
  EXPECT_LE(gasoline(288.15).density_kg_m3, 775);
  EXPECT_GT(gasoline(273.15).viscosity_pa_s, gasoline(313.15).viscosity_pa_s);
  EXPECT_FALSE(gasoline(350).valid);
}

// ASTM D4814, table 1 (from memory): class A is 9.0 psi, 62 kPa.
TEST(Gasoline, ClassLimits) {
  EXPECT_EQ(gasoline_class_limit_pa(1), 62e3);
  expect_share(gasoline_class_limit_pa(1), 9.0 * psi_pa, 0.002);
  expect_share(gasoline_class_limit_pa(5), 15.0 * psi_pa, 0.005);
}

}  // namespace
}  // namespace sw::physics
