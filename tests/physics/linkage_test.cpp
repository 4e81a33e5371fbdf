#include "physics/linkage.hpp"

#include <gtest/gtest.h>
#include <rapidcheck/gtest.h>

#include <numbers>

#include "near.hpp"

namespace sw::physics {
namespace {

constexpr double deg = std::numbers::pi / 180;
constexpr FourBar norton{0.040, 0.120, 0.080, 0.100};

// JNT-10 and JNT-11: Norton, Design of Machinery, Example 4-1 (from memory): 57.33 deg open, -98.01 deg crossed.
TEST(Linkage, JNT_10_JNT_11_FourBars) {
  const auto at = four_bar(norton, 40 * deg);
  ASSERT_TRUE(at);
  EXPECT_NEAR(at->open.rocker / deg, 57.33, 0.02);
  EXPECT_NEAR(at->crossed.rocker / deg, -98.01, 0.02);
}

// JNT-13: 40 + 120 - 80 - 100 = -20 mm; Norton, chapter 2.
TEST(Linkage, JNT_13_Grashof) { EXPECT_NEAR(grashof_m(norton), -0.020, 1e-15); }

TEST(Linkage, AParallelogramFollowsItsCrank) {
  const auto at = four_bar({0.05, 0.2, 0.05, 0.2}, 70 * deg);
  ASSERT_TRUE(at);
  EXPECT_NEAR(at->open.rocker, 70 * deg, 1e-12);
  EXPECT_NEAR(at->open.coupler, 0, 1e-12);
  EXPECT_NEAR(at->open.rocker_slope, 1, 1e-12);
  EXPECT_NEAR(at->open.coupler_slope, 0, 1e-12);
}

TEST(Linkage, LinksThatDoNotReachGiveNothing) {
  EXPECT_FALSE(four_bar({0.1, 0.02, 0.02, 0.1}, 90 * deg));
  EXPECT_FALSE(four_bar({0.1, 0.5, 0.02, 0.1}, 90 * deg));
  EXPECT_FALSE(slider_crank({0.1, 0.05}, 90 * deg));
}

RC_GTEST_PROP(Linkage, LoopsCloseAndRatesAreDerivatives, ()) {
  const auto part = [] { return 0.001 * *rc::gen::inRange(20, 300); };
  const FourBar bars{part(), part(), part(), part()};
  const double t = *rc::gen::inRange(-180, 180) * deg, h = 1e-6;
  const auto at = four_bar(bars, t), on = four_bar(bars, t + h), back = four_bar(bars, t - h);
  RC_PRE(at && on && back);
  for (auto way : {&FourBarPosition::open, &FourBarPosition::crossed}) {
    const FourBarAngles a = (*at).*way;
    const double x = bars.crank_m * std::cos(t) + bars.coupler_m * std::cos(a.coupler) -
                     bars.rocker_m * std::cos(a.rocker) - bars.ground_m;
    const double y =
        bars.crank_m * std::sin(t) + bars.coupler_m * std::sin(a.coupler) - bars.rocker_m * std::sin(a.rocker);
    RC_ASSERT(std::hypot(x, y) < 1e-12);
    if (std::abs(std::sin(a.rocker - a.coupler)) < 0.1) continue;  // near in line a difference is too coarse
    const auto rate = [&](auto member) {
      return std::remainder((*on).*way.*member - (*back).*way.*member, 360 * deg) / (2 * h);
    };
    RC_ASSERT(std::abs(rate(&FourBarAngles::rocker) - a.rocker_slope) < 1e-4 * (1 + std::abs(a.rocker_slope)));
    RC_ASSERT(std::abs(rate(&FourBarAngles::coupler) - a.coupler_slope) < 1e-4 * (1 + std::abs(a.coupler_slope)));
  }
  // Open: the far pin lies to the left of the line from A to P.
  const double ax = bars.crank_m * std::cos(t), ay = bars.crank_m * std::sin(t);
  const double bx = bars.coupler_m * std::cos(at->open.coupler), by = bars.coupler_m * std::sin(at->open.coupler);
  RC_ASSERT((bars.ground_m - ax) * by + ay * bx > -1e-12);
}

// By hand: dead centres at rod and crank together and apart; at 90 deg the rod is the hypotenuse.
TEST(Linkage, SliderAndCrank) {
  EXPECT_NEAR(slider_crank({0.04, 0.15}, 0)->value, 0.19, 1e-15);
  EXPECT_NEAR(slider_crank({0.04, 0.15}, 180 * deg)->value, 0.11, 1e-15);
  EXPECT_NEAR(slider_crank({0.04, 0.15}, 90 * deg)->value, std::sqrt(0.15 * 0.15 - 0.04 * 0.04), 1e-15);
  EXPECT_NEAR(slider_crank({0.04, 0.15, 0.04}, 90 * deg)->value, 0.15, 1e-15);  // the slide is level with the pin
  for (double t : {-2.0, 0.3, 1.2})
    expect_slope(
        slider_crank({0.04, 0.15, 0.01}, t)->slope,
        [](double x) {
          return slider_crank({0.04, 0.15, 0.01}, x)->value;
        },
        t);
}

}  // namespace
}  // namespace sw::physics
