#include "physics/brake_valve.hpp"

#include <gtest/gtest.h>
#include <rapidcheck/gtest.h>

#include <cmath>

using namespace sw::physics;

namespace {

// By hand: 280 + 0.33 (634 - 280) = 396.8; the unit does not matter.
TEST(BrakeValve, ReducesAboveItsKnee) {
  const BrakeValve v{.knee_pa = 280, .slope = 0.33};
  EXPECT_DOUBLE_EQ(brake_valve(v, 200).value, 200);
  EXPECT_DOUBLE_EQ(brake_valve(v, 280).value, 280);
  EXPECT_NEAR(brake_valve(v, 634).value, 396.82, 1e-9);
  EXPECT_DOUBLE_EQ(brake_valve(v, 634).slope, 0.33);
}

TEST(BrakeValve, HoldsOffAndThenLetsAllThrough) {
  const BrakeValve v{.kind = BrakeValveKind::holds_off, .knee_pa = 100, .full_pa = 300};
  EXPECT_DOUBLE_EQ(brake_valve(v, 80).value, 0);
  EXPECT_DOUBLE_EQ(brake_valve(v, 200).value, 150);  // half way up a line from (100, 0) to (300, 300)
  EXPECT_DOUBLE_EQ(brake_valve(v, 300).value, 300);
  EXPECT_DOUBLE_EQ(brake_valve(v, 900).value, 900);
  EXPECT_FALSE(brake_valve({.kind = BrakeValveKind::holds_off, .knee_pa = 300, .full_pa = 300}, 10).valid);
}

// Two in a row by hand: 350/0.43 makes 500 of 698.8, then 250/0.33 makes 332.5 of that.
TEST(BrakeValve, TwoInSeriesReduceTwice) {
  const BrakeValve both[] = {{.knee_pa = 350, .slope = 0.43}, {.knee_pa = 250, .slope = 0.33}};
  const Slope out = brake_valves(both, 350 + 150 / 0.43);
  EXPECT_NEAR(out.value, 250 + 0.33 * 250, 1e-9);
  EXPECT_NEAR(out.slope, 0.43 * 0.33, 1e-12);
  EXPECT_DOUBLE_EQ(brake_valves({}, 700).value, 700);
}

RC_GTEST_PROP(BrakeValve, NeverGivesMoreThanItGetsAndItsSlopeIsItsOwn, ()) {
  const bool reduces = *rc::gen::arbitrary<bool>();
  const double knee = *rc::gen::inRange(0, 1000), share = *rc::gen::inRange(0, 101) / 100.0;
  const BrakeValve v{reduces ? BrakeValveKind::reduces : BrakeValveKind::holds_off, knee, share,
                     knee + *rc::gen::inRange(1, 500)};
  const double p = *rc::gen::inRange(0, 3000) + 0.5, h = 1e-4;
  const Slope s = brake_valve(v, p);
  RC_ASSERT(s.valid);
  RC_ASSERT(s.value >= 0 && s.value <= p + 1e-9);
  const double slope = (brake_valve(v, p + h).value - brake_valve(v, p - h).value) / (2 * h);
  RC_ASSERT(std::abs(slope - s.slope) < 1e-6);
}

}  // namespace
