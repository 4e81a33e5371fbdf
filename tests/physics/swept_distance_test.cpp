#include "physics/swept_distance.hpp"

#include <gtest/gtest.h>
#include <rapidcheck/gtest.h>

#include <cmath>
#include <numbers>

namespace sw::physics {
namespace {

constexpr double deg = std::numbers::pi / 180;
const Solid origin{.line = {{0, 0, 0}}};

// Closed form: a ball at 2 m from an upright axis through x = 3 passes the origin at 1 m where it lies on the line
// between, which its range takes in; where the range ends short of it, the law of cosines.
TEST(SweptDistance, OfABallOnACircle) {
  const Carried ball{.solid = {.line = {{5, 0, 0}}, .radius_m = 0.25}, .settings = {0}}, fixed{.solid = origin};
  const auto within = [&](double low, double high) {
    return swept_distance(ball, fixed, {{{3, 0, 0}, {0, 0, 1}, true, low, high}});
  };
  const SweptDistance all = within(-30 * deg, 200 * deg);
  EXPECT_NEAR(all.least_m, 0.75, 1e-9);
  EXPECT_NEAR(all.pose[0], 180 * deg, 1e-4);
  EXPECT_GE(all.floor_m, all.least_m - 5e-4);
  EXPECT_LE(all.floor_m, all.least_m);
  const SweptDistance some = within(-30 * deg, 120 * deg);
  EXPECT_NEAR(some.least_m, std::sqrt(9 + 4 + 2 * 3 * 2 * std::cos(120 * deg)) - 0.25, 1e-9);
  EXPECT_NEAR(some.pose[0], 120 * deg, 1e-9);
}

// Two straight ways square to each other: nearest where both have come to where the lines cross, 0.3 m over one
// another.
TEST(SweptDistance, OfTwoThatMove) {
  const Carried a{.solid = {.line = {{-1, 0, 0}}}, .settings = {0}},
      b{.solid = {.line = {{0, -1, 0.3}}}, .settings = {1}};
  const std::vector<Setting> both{{{}, {1, 0, 0}, false, 0, 1.7}, {{}, {0, 1, 0}, false, -0.4, 2}};
  const SweptDistance d = swept_distance(a, b, both);
  EXPECT_NEAR(d.least_m, 0.3, 1e-6);
  EXPECT_NEAR(d.pose[0], 1, 1e-3);
  EXPECT_NEAR(d.pose[1], 1, 1e-3);
  EXPECT_LT(d.poses, 20000);
}

// A wheel's corner: turned about an upright axis first, then carried up.
TEST(SweptDistance, OneMotionCarriesTheOther) {
  const Carried corner{.solid = {.line = {{1, 0, 0}}}, .settings = {0, 1}}, above{.solid = {.line = {{0, 1, 1}}}};
  const std::vector<Setting> turn_and_rise{{{}, {0, 0, 1}, true, -10 * deg, 60 * deg},
                                           {{}, {0, 0, 1}, false, -0.5, 0.4}};
  const SweptDistance d = swept_distance(corner, above, turn_and_rise);
  EXPECT_NEAR(d.least_m, std::hypot(2 * std::sin(15 * deg), 0.6), 1e-9);
  EXPECT_NEAR(distance_at(corner, above, turn_and_rise, d.pose), d.least_m, 1e-12);
}

TEST(SweptDistance, WhatBothHaveDoesNotMoveThem) {
  const std::vector<Setting> turn{{{0, 9, 0}, {1, 0, 0}, true, -1, 1}};
  const Carried a{.solid = origin, .settings = {0}}, b{.solid = {.line = {{0, 0, 2}}}, .settings = {0}};
  const SweptDistance d = swept_distance(a, b, turn);
  EXPECT_NEAR(d.least_m, 2, 1e-12);
  EXPECT_LT(d.poses, 10);
}

TEST(SweptDistance, SaysHowFarItCameWhenPosesRunOut) {
  const Carried a{.solid = {.line = {{5, 0, 0}}}, .settings = {0}}, fixed{.solid = origin};
  const SweptDistance d = swept_distance(a, fixed, {{{3, 0, 0}, {0, 0, 1}, true, -30 * deg, 200 * deg}}, {1e-4, 8});
  EXPECT_LT(d.floor_m, 1 - 1e-3);
}

TEST(SweptDistance, EndsWhereTheyTouch) {
  const Carried rod{.solid = {.line = {{0, -1, 0}, {0, 1, 0}}, .radius_m = 0.1}, .settings = {0}},
      ball{.solid = {.line = {{0.05, 0, 0}}, .radius_m = 0.1}};
  const SweptDistance d = swept_distance(rod, ball, {{{}, {1, 0, 0}, false, -0.3, 0.3}});
  EXPECT_LE(d.least_m, -0.15);
  EXPECT_LE(d.floor_m, d.least_m);
  EXPECT_LT(d.poses, 100);
}

Vec3 some_point() {
  const auto part = [] { return 0.1 * *rc::gen::inRange(-10, 11); };
  return {part(), part(), part()};
}

// Against trying out a fine grid of poses: none of them is nearer than the floor, nor nearer than what was found by
// more than the tolerance.
RC_GTEST_PROP(SweptDistance, NoPoseIsNearerThanItsFloor, ()) {
  const auto axis = [] {
    const Vec3 v = some_point();
    return norm(v) > 0.05 ? unit(v) : Vec3{0, 0, 1};
  };
  const std::vector<Setting> settings{{some_point(), axis(), true, -0.3, 0.2},
                                      {some_point(), axis(), true, -0.1, 0.4},
                                      {some_point(), axis(), false, -0.1, 0.1}};
  const Carried a{.solid = {.line = {some_point(), some_point(), some_point()}, .radius_m = 0.05}, .settings = {0}},
      b{.solid = block_between({-0.3, -0.2, -0.4}, {0.2, 0.4, 0.1}),
        .settings = {1, 2},
        .after = shifted(some_point())};
  const SweptDistance d = swept_distance(a, b, settings);
  RC_ASSERT(d.least_m <= 0 || d.floor_m >= d.least_m - 5e-4 - 1e-12);
  RC_ASSERT(std::abs(distance_at(a, b, settings, d.pose) - d.least_m) < 1e-12);
  constexpr int n = 10;
  for (int i = 0; i <= n; ++i)
    for (int j = 0; j <= n; ++j)
      for (int k = 0; k <= n; ++k) {
        std::vector<double> pose;
        for (auto [s, step] : {std::pair(0, i), {1, j}, {2, k}})
          pose.push_back(settings[s].low + step * (settings[s].high - settings[s].low) / n);
        RC_ASSERT(distance_at(a, b, settings, pose) >= d.floor_m - 1e-12);
      }
}

}  // namespace
}  // namespace sw::physics
