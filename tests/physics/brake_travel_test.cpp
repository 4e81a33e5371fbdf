#include "physics/brake_travel.hpp"

#include <gtest/gtest.h>
#include <rapidcheck/gtest.h>

#include <cmath>
#include <numbers>

using namespace sw::physics;

namespace {

constexpr double inch = 0.0254, in2 = inch * inch, in3 = inch * in2, psi = 6894.757293168;

// By hand: two calipers of 6.79 in2 move 0.006 + 0.020 in at 900 psi, hoses 0.03 in3: 0.383 in3; half the give at 450.
TEST(BrakeTravel, FluidACaliperTakes) {
  const Uptake u{2, 6.79 * in2, 0.006 * inch, 0.020 * inch, 0.03 * in3, 900 * psi};
  EXPECT_NEAR(brake_uptake(u, 900 * psi).value / in3, 2 * 6.79 * 0.026 + 0.03, 1e-9);
  EXPECT_NEAR(brake_uptake(u, 450 * psi).value / in3, 2 * 6.79 * 0.016 + 0.015, 1e-9);
  EXPECT_DOUBLE_EQ(uptake_pressure(u, 2 * 6.79 * 0.005 * in3).value, 0);  // still on its way to the disc
  EXPECT_FALSE(brake_uptake(u, 20e6).valid);
}

// By hand: 7.0 in3 x 7.7e-4 x 40 K = 0.2156 in3; over 4.0e-4 in3/psi 539 psi.
TEST(BrakeTravel, FluidShutInAndWarmed) {
  const Slope p = trapped_pressure(7.0 * in3, 40, 4e-4 * in3 / psi);
  EXPECT_NEAR(p.value / psi, 539, 0.1);
  EXPECT_NEAR(p.slope * 40, p.value, 1e-6);
}

// Brake fluid 0.0379 psi an inch (common practice): 4.5 in are 0.17 psi.
TEST(BrakeTravel, HeadOfFluid) {
  EXPECT_NEAR(fluid_head(4.5 * inch).value / psi, 0.17, 0.001);
  EXPECT_LT(fluid_head(-inch).value, 0);
}

RC_GTEST_PROP(BrakeTravel, PressureAndVolumeGoBackAndForth, ()) {
  const Uptake u{*rc::gen::inRange(2, 5) * 1.0,          *rc::gen::inRange(5, 80) / 10.0 * in2,
                 *rc::gen::inRange(0, 40) * 1e-3 * inch, *rc::gen::inRange(1, 40) * 1e-3 * inch,
                 *rc::gen::inRange(0, 60) * 1e-3 * in3,  900 * psi};
  const double p = (*rc::gen::inRange(1, 1900)) * psi;
  const Slope v = brake_uptake(u, p);
  RC_ASSERT(std::abs(uptake_pressure(u, v.value).value - p) < 1e-6 * p + 1e-3);
  RC_ASSERT(std::abs(uptake_pressure(u, v.value).slope * v.slope - 1) < 1e-9);
}

}  // namespace
