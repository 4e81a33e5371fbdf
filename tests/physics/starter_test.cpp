#include "physics/starter.hpp"

#include <gtest/gtest.h>

#include <cmath>

using namespace sw::physics;

namespace {

Starter typical() {
  Starter s = starter_from_stall(4.0, 600, 16, 12);
  s.saturation_a = 400;
  return s;
}

TEST(Starter, StallPointIsGivenBack) {
  const Starter s = starter_from_stall(4.0, 600, 16, 12);
  const StarterPoint p = starter_at(s, 4.0, 0);
  EXPECT_NEAR(p.current_a, 600, 1e-9);
  EXPECT_NEAR(p.engine_torque_n_m, 16 * 12 * 0.85, 1e-9);
}

TEST(Starter, SlopeIsTheDerivative) {
  for (double v : {5.0, 8.0, 10.0})
    for (double w : {5.0, 20.0}) {
      const double h = 1e-6;
      EXPECT_NEAR(starter_at(typical(), v, w).slope_s,
                  (starter_at(typical(), v + h, w).current_a - starter_at(typical(), v - h, w).current_a) / (2 * h),
                  1e-4);
    }
}

TEST(Starter, PowerIsConserved) {  // electrical in = heat in the winding + shaft (before the gear's loss)
  const StarterPoint p = starter_at(typical(), 9, 15);
  EXPECT_NEAR(9 * p.current_a, p.current_a * p.current_a * typical().resistance_ohm + p.engine_torque_n_m / 0.85 * 15,
              1e-9);
}

TEST(Starter, CrankingHoldsItsTorque) {
  const CrankPoint c = crank(typical(), 12.4, 0.008, 90);
  ASSERT_TRUE(c.turns);
  const StarterPoint p = starter_at(typical(), c.volts, c.engine_speed_rad_s);
  EXPECT_NEAR(p.engine_torque_n_m, 90, 1e-9);
  EXPECT_NEAR(p.current_a, c.current_a, 1e-9);
  EXPECT_NEAR(c.volts, 12.4 - 0.008 * c.current_a, 1e-12);
  EXPECT_FALSE(crank(typical(), 10, 0.03, 400).turns);
  EXPECT_LT(crank(typical(), 12.4, 0.015, 90).engine_speed_rad_s, c.engine_speed_rad_s);
}

TEST(Starter, OilThickensInTheCold) {
  // Walther's form passes its two points; SAE 30 class oil 100 and 11 mm2/s, several thousand at -10 degC (from memory)
  EXPECT_NEAR(oil_viscosity_m2_s(313.15, 100e-6, 11e-6), 100e-6, 1e-12);
  EXPECT_NEAR(oil_viscosity_m2_s(373.15, 100e-6, 11e-6), 11e-6, 1e-12);
  EXPECT_GT(oil_viscosity_m2_s(263.15, 100e-6, 11e-6), 2e-3);
  EXPECT_LT(oil_viscosity_m2_s(263.15, 100e-6, 11e-6), 20e-3);
  const CrankTorque warm = cranking_torque(5.7e-3, 293.15, 100e-6, 11e-6),
                    cold = cranking_torque(5.7e-3, 255.15, 100e-6, 11e-6);
  EXPECT_NEAR(warm.value_n_m, 1.5e5 * 5.7e-3 / (4 * 3.14159265358979), 1e-6);
  EXPECT_GT(cold.value_n_m, 2 * warm.value_n_m);
  EXPECT_LT(cold.slope_n_m_k, 0);
  const double wide = (cranking_torque(5.7e-3, 256.15, 100e-6, 11e-6).value_n_m -
                       cranking_torque(5.7e-3, 254.15, 100e-6, 11e-6).value_n_m) /
                      2;
  EXPECT_NEAR(cold.slope_n_m_k, wide, 0.02 * std::abs(wide));
}

}  // namespace
