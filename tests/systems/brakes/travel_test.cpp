#include "systems/brakes/travel.hpp"

#include <gtest/gtest.h>
#include <rapidcheck/gtest.h>

#include "systems/brakes/rig.hpp"

using namespace sw;
using namespace sw::rig;
using namespace sw::brakes;

namespace {

// By hand at 900 psi: front 2 x 6.789 x 0.026 + 0.03 = 0.383 in3. Rear behind the valve 200 + 0.33 x 700 = 431 psi:
// four pistons of 0.6013 in2 by 0.030 + 0.015 x 431/900, and 0.02 x 431/900: 0.099 in3. Over 0.994 in2, with 0.06 in:
// 0.545 in.
TEST(BrakesTravel, StrokeAt900Psi) {
  const Model m = hand_brakes();
  EXPECT_NEAR(taken_m3(m.front, judged_pa, false) / in3, 0.383, 0.001);
  EXPECT_NEAR(taken_m3(m.rear, judged_pa, false) / in3, 0.099, 0.001);
  EXPECT_NEAR(stroke_at(m, judged_pa) / inch, 0.545, 0.002);
}

RC_GTEST_PROP(BrakesTravel, StrokeAndPressureGoBackAndForth, ()) {
  static const Model m = hand_brakes();
  const double p = *rc::gen::inRange(1, 1800) * psi;
  RC_ASSERT(std::abs(pressure_at_stroke(m, stroke_at(m, p)) - p) < 1e-3 * p);
  RC_ASSERT(pressure_at_stroke(m, 0.5 * stroke_at(m, 0)) == 0);
}

TEST(BrakesTravel, ALostChamberRunsThrough) {
  const Model m = hand_brakes();
  EXPECT_NEAR(chambers(m).first_m / inch, 0.8, 1e-9);
  EXPECT_NEAR(chambers(m).second_m / inch, 0.6, 1e-9);
  const double p = 400 * psi;
  EXPECT_NEAR(stroke_left_at(m, Lost::first, p), 0.06 * inch + 0.8 * inch + chambers_at(m, p).second_m, 1e-12);
  EXPECT_NEAR(stroke_left_at(m, Lost::second, p), 0.06 * inch + 0.6 * inch + chambers_at(m, p).first_m, 1e-12);
}

TEST(BrakesTravel, WhatIsLeftBrakesByItsOwnAxle) {
  const Model m = hand_brakes();
  const Stopped s = hand_stop();
  EXPECT_DOUBLE_EQ(force_left(m, Lost::first, 500 * psi, s), axle_force(m.rear, 500 * psi, s));
  EXPECT_DOUBLE_EQ(force_left(m, Lost::second, 500 * psi, s), axle_force(m.front, 500 * psi, s));
  // By hand: 0.85 x 0.46 / (1 + 0.85 x 21/110) = 0.336; front 0.85 x 0.54 / (1 - 0.162) = 0.548.
  EXPECT_NEAR(lock_left(m, Lost::first, s), 0.336, 0.001);
  EXPECT_NEAR(lock_left(m, Lost::second, s), 0.548, 0.001);
  EXPECT_FALSE(pressure_left_for(m, Lost::first, 1e9, s));
}

TEST(BrakesTravel, ADiagonalHasHalfOfEverything) {
  const Model m = hand_brakes("[brakes]\nsplit = \"diagonal\"\n");
  const Stopped s = hand_stop();
  EXPECT_DOUBLE_EQ(force_left(m, Lost::first, 500 * psi, s), 0.5 * braking_force(m, 500 * psi, s));
  EXPECT_DOUBLE_EQ(chambers_at(m, judged_pa).first_m, chambers_at(m, judged_pa).second_m);
}

}  // namespace
