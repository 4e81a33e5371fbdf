#include "physics/slosh.hpp"

#include <gtest/gtest.h>
#include <rapidcheck/gtest.h>

#include <algorithm>
#include <cmath>

namespace sw::physics {
namespace {

// Closed form: a bare floor leaves a wedge of base sqrt(2 V / (W t)). 693 in3 in a tank 36 by 24 in at 0.7 g: 9.1 in.
TEST(Slosh, WedgeAgainstTheWall) {
  constexpr double inch = 0.0254;
  const double mean = 693.0 / (36 * 24) * inch, base = std::sqrt(2 * 693 / (24 * 0.7)) * inch;
  EXPECT_NEAR(base / inch, 9.1, 0.05);
  const TiltedTank t{36 * inch, 10 * inch, mean};
  EXPECT_NEAR(tilted_depth_m(t, 36 * inch, 0.7), 0.7 * base, 1e-9);
  EXPECT_EQ(tilted_depth_m(t, 36 * inch - 1.001 * base, 0.7), 0);
  EXPECT_GT(tilted_depth_m(t, 36 * inch - 0.99 * base, 0.7), 0);
}

// Where neither floor nor roof is reached the middle keeps its depth and the ends differ by t L.
TEST(Slosh, TheMiddleKeepsItsDepth) {
  const TiltedTank t{0.9, 0.3, 0.15};
  EXPECT_NEAR(tilted_depth_m(t, 0.45, 0.3), 0.15, 1e-12);
  EXPECT_NEAR(tilted_depth_m(t, 0.9, 0.3) - tilted_depth_m(t, 0, 0.3), 0.27, 1e-12);
  EXPECT_NEAR(tilted_depth_m(t, 0.2, 0), 0.15, 1e-9);
}

TEST(Slosh, FullAndEmpty) {
  EXPECT_EQ(tilted_depth_m({1, 0.3, 0.3}, 0, 2), 0.3);
  EXPECT_EQ(tilted_depth_m({1, 0.3, 0}, 1, 2), 0);
}

RC_GTEST_PROP(Slosh, VolumeIsKept, ()) {
  const double length = *rc::gen::inRange(20, 150) / 100.0, height = *rc::gen::inRange(10, 60) / 100.0;
  const double mean = height * *rc::gen::inRange(1, 99) / 100.0, pull = *rc::gen::inRange(0, 120) / 100.0;
  const TiltedTank t{length, height, mean};
  double sum = 0;
  constexpr int pieces = 4000;
  for (int i = 0; i < pieces; ++i) sum += tilted_depth_m(t, length * (i + 0.5) / pieces, pull) / pieces;
  RC_ASSERT(std::abs(sum - mean) < 1e-5 * height);
}

RC_GTEST_PROP(Slosh, TheLeastFillingCovers, ()) {
  const TiltedTank t{*rc::gen::inRange(20, 150) / 100.0, 0.3, 0};
  const double x = t.length_m * *rc::gen::inRange(0, 100) / 100.0, pull = *rc::gen::inRange(0, 100) / 100.0;
  const double least = mean_depth_for_m(t, x, pull, 0.02);
  RC_ASSERT(tilted_depth_m({t.length_m, t.height_m, std::min(0.3, least + 1e-6)}, x, pull) >= 0.02 - 1e-6 ||
            least > 0.3 - 1e-6);
  if (least > 1e-3) RC_ASSERT(tilted_depth_m({t.length_m, t.height_m, least - 1e-4}, x, pull) < 0.02);
}

}  // namespace
}  // namespace sw::physics
