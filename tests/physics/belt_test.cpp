#include "physics/belt.hpp"

#include <gtest/gtest.h>
#include <rapidcheck/gtest.h>

#include <cmath>
#include <numbers>

using namespace sw::physics;

namespace {

constexpr double pi = std::numbers::pi, deg = pi / 180;

TEST(Belt, WorkedExamples) {
  EXPECT_NEAR(belt_run(1.6, 0.5, 12, false)->length_m, 27.32, 0.01);     // worked problem (stored question page)
  EXPECT_NEAR(belt_run(0.45, 0.2, 1.95, true)->length_m, 4.975, 0.002);  // Khurmi and Gupta, crossed-belt example
  EXPECT_NEAR(belt_run(0.45, 0.2, 1.95, true)->wrap_small / deg, 199.2, 0.1);
  EXPECT_NEAR(belt_run(0.18, 0.06, 0.3, false)->wrap_small / deg, 156.93, 0.02);  // 180 - 2 asin((D-d)/2C)
}

TEST(Belt, EqualPulleysAreARacetrack) {  // closed form: 2C + pi D
  EXPECT_NEAR(belt_run(0.2, 0.2, 0.7, false)->length_m, 1.4 + pi * 0.2, 1e-12);
  EXPECT_FALSE(belt_run(0.4, 0.2, 0.25, false));
}

RC_GTEST_PROP(Belt, CentreAndLengthGoBackAndForth, ()) {
  const double D = *rc::gen::inRange(40, 400) / 1000.0, d = *rc::gen::inRange(40, 400) / 1000.0;
  const double c = (D + d) / 2 + *rc::gen::inRange(10, 2000) / 1000.0;
  const bool crossed = *rc::gen::arbitrary<bool>();
  const double large = std::max(D, d), small = std::min(D, d);
  const auto run = belt_run(large, small, c, crossed);
  RC_ASSERT(run.has_value());
  const auto back = belt_centre(large, small, run->length_m, crossed);
  RC_ASSERT(back.has_value());
  RC_ASSERT(std::abs(*back - c) < 1e-7);
  const double h = 1e-6;
  const double slope =
      (belt_run(large, small, c + h, crossed)->length_m - belt_run(large, small, c - h, crossed)->length_m) / (2 * h);
  RC_ASSERT(std::abs(slope - run->length_slope) < 1e-6);
}

TEST(Belt, TooShortABeltHasNoCentre) { EXPECT_FALSE(belt_centre(0.3, 0.2, 0.5, false)); }

// Both strands at 400 N at rest, k = 3: tight and slack 600 and 200 N (their sum stays 800, their ratio is 3, by hand);
// a slack strand held at 400 N: tight 1200 N.
TEST(Belt, PullBeforeSlip) {
  EXPECT_NEAR(belt_pull(BeltTension::fixed_centres, 400, 3).value, 400, 1e-12);
  EXPECT_NEAR(belt_pull(BeltTension::sprung_slack, 400, 3).value, 800, 1e-12);
  for (auto kind : {BeltTension::fixed_centres, BeltTension::sprung_slack}) {
    EXPECT_EQ(belt_pull(kind, 400, 1).value, 0);
    EXPECT_FALSE(belt_pull(kind, 400, 0.9).valid);
    const double h = 1e-6;
    EXPECT_NEAR(belt_pull(kind, 400, 3).slope,
                (belt_pull(kind, 400, 3 + h).value - belt_pull(kind, 400, 3 - h).value) / (2 * h), 1e-5);
  }
}

TEST(Belt, GripAndSpeed) {
  EXPECT_NEAR(belt_grip_ratio(0.30, 165 * deg, 40 * deg).ratio, 12.5, 12.5e-3);  // Euler with the wedge (recomputed)
  EXPECT_NEAR(belt_grip_wrap(0.30, 12.5, 40 * deg) / deg, 165, 0.1);
  const BeltRatio g = belt_grip_ratio(0.3, 2.5, 40 * deg);
  const double h = 1e-6;
  EXPECT_NEAR(g.slope_per_rad,
              (belt_grip_ratio(0.3, 2.5 + h, 40 * deg).ratio - belt_grip_ratio(0.3, 2.5 - h, 40 * deg).ratio) / (2 * h),
              1e-5);
  EXPECT_NEAR(g.slope_per_friction,
              (belt_grip_ratio(0.3 + h, 2.5, 40 * deg).ratio - belt_grip_ratio(0.3 - h, 2.5, 40 * deg).ratio) / (2 * h),
              1e-4);
  const double in[] = {0.18}, out[] = {0.06};
  EXPECT_NEAR(belt_speed_ratio(in, out, 2e-3, 0), 2.875, 1e-12);  // ISO 9981:2020 5.4, b_e = 2 mm
  const double drivers[] = {0.75, 0.9}, driven[] = {0.45, 0.15};
  EXPECT_NEAR(150 * belt_speed_ratio(drivers, driven, 0, 0.02), 1440, 1);  // Khurmi and Gupta, compound drive
}

TEST(Belt, StringAndLine) {
  EXPECT_NEAR(span_frequency(0.25, 0.120, 400).frequency_hz, 115.5, 0.1155);  // taut string (recomputed)
  EXPECT_NEAR(span_tension(0.25, 0.120, span_frequency(0.25, 0.120, 400).frequency_hz), 400, 1e-9);
  const double h = 1e-3;
  EXPECT_NEAR(
      span_frequency(0.25, 0.12, 400).slope_hz_n,
      (span_frequency(0.25, 0.12, 400 + h).frequency_hz - span_frequency(0.25, 0.12, 400 - h).frequency_hz) / (2 * h),
      1e-8);
  EXPECT_NEAR(belt_line_offset(12, 0.5 * deg), 0.1047, 1e-4);
  EXPECT_NEAR(belt_line_angle(0.3, belt_line_offset(0.3, 0.01)), 0.01, 1e-12);
  EXPECT_NEAR(belt_centrifugal(0.12, 30).tension_n, 108, 1e-9);
  EXPECT_NEAR(belt_centrifugal(0.12, 30).slope_n_s_m, 7.2, 1e-9);
}

TEST(Belt, RibbedProfile) {  // ISO 9981:2020 5.2, 5.3, 5.4; over balls from groove geometry
  const RibbedProfile pk = ribbed_pk();
  EXPECT_NEAR(pk.over_balls_m * 1e3, 0.99, 0.01);
  EXPECT_NEAR(pk.pitch_m * 1e3, 3.56, 0.05);
  EXPECT_DOUBLE_EQ(pk.least_diameter_m, 0.045);
  EXPECT_DOUBLE_EQ(pk.run_out_m, 0.25e-3);
  EXPECT_DOUBLE_EQ(pk.groove_variation_m, 0.15e-3);
}

}  // namespace
