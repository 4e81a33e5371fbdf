#include "physics/tube_bend.hpp"

#include <gtest/gtest.h>
#include <rapidcheck/gtest.h>

#include <numbers>

#include "near.hpp"

namespace sw::physics {
namespace {

constexpr double deg = std::numbers::pi / 180;
constexpr double in = 0.0254;

// TUB-03 to TUB-06: points posted in a public forum thread on the subject; the figures worked out again with vectors.
TEST(TubeBend, TUB_03_to_06_PublishedPoints) {
  const Vec3 points[] = {{38.5202 * in, -14.0264 * in, 0},
                         {45.3142 * in, -14.0264 * in, 0},
                         {45.3142 * in, -17.5214 * in, 0.9654 * in},
                         {48.6822 * in, -17.5214 * in, 0.9654 * in}};
  const TubeBends tube = tube_bends(points);
  ASSERT_TRUE(tube.good());
  EXPECT_NEAR(tube.legs_m[1] / in, 3.6259, 2e-4);
  EXPECT_NEAR(tube.bends[1] / deg, 90, 0.01);
  EXPECT_NEAR(tube.rotations[0] / deg, 180, 0.01);
  EXPECT_NEAR(tube_cut(tube, 1 * in).cut_m / in, 12.9295, 5e-4);
}

// TUB-01, TUB-02: 38 mm through 75 deg (own case of the formulas).
TEST(TubeBend, TUB_01_TUB_02_OneBend) {
  EXPECT_NEAR(bend_arc_m(0.038, 75 * deg).value, 49.74e-3, 0.01e-3);
  EXPECT_NEAR(bend_setback_m(0.038, 75 * deg).value, 29.16e-3, 0.015e-3);
  expect_slope(
      bend_setback_m(0.038, 75 * deg).slope, [](double t) { return bend_setback_m(0.038, t).value; }, 75 * deg);
  EXPECT_FALSE(bend_setback_m(0.038, 180 * deg).valid);
}

TEST(TubeBend, RotationHasTheSenseOfARightHand) {
  // Along x, then along y, then up: the last bend's normal is turned by a quarter about y.
  const Vec3 up[] = {{0, 0, 0}, {1, 0, 0}, {1, 1, 0}, {1, 1, 1}};
  EXPECT_NEAR(tube_bends(up).rotations[0], 90 * deg, 1e-12);
  const Vec3 down[] = {{0, 0, 0}, {1, 0, 0}, {1, 1, 0}, {1, 1, -1}};
  EXPECT_NEAR(tube_bends(down).rotations[0], -90 * deg, 1e-12);
  const Vec3 same_way[] = {{0, 0, 0}, {1, 0, 0}, {1, 1, 0}, {0, 1, 0}};
  EXPECT_NEAR(tube_bends(same_way).rotations[0], 0, 1e-12);
  const Vec3 opposite[] = {{0, 0, 0}, {1, 0, 0}, {1, 1, 0}, {2, 1, 0}};
  EXPECT_NEAR(tube_bends(opposite).rotations[0], 180 * deg, 1e-12);
}

TEST(TubeBend, TellsWhatCannotBeBent) {
  using enum TubeBends::Trouble;
  const Vec3 one[] = {{0, 0, 0}};
  EXPECT_EQ(tube_bends(one).trouble, too_few);
  const Vec3 twice[] = {{0, 0, 0}, {1, 0, 0}, {1, 0, 0}};
  EXPECT_EQ(tube_bends(twice).trouble, points_meet);
  EXPECT_EQ(tube_bends(twice).where, 2u);
  const Vec3 straight[] = {{0, 0, 0}, {1, 0, 0}, {2, 0, 0}};
  EXPECT_EQ(tube_bends(straight).trouble, no_corner);
  const Vec3 back[] = {{0, 0, 0}, {1, 0, 0}, {0.5, 0, 0}};
  EXPECT_EQ(tube_bends(back).trouble, folded);
  const Vec3 no_bend[] = {{0, 0, 0}, {0, 3, 4}};
  EXPECT_TRUE(tube_bends(no_bend).good());
  EXPECT_NEAR(tube_cut(tube_bends(no_bend), 1).cut_m, 5, 1e-12);
}

// Legs, bends and rotations set on a bender give the points back: the way a bender works, against the way they came.
RC_GTEST_PROP(TubeBend, BentFromItsFiguresItEndsWhereItShould, ()) {
  std::vector<Vec3> points;
  for (int n = *rc::gen::inRange(2, 7); n > 0; --n) {
    const auto part = [] { return 0.01 * *rc::gen::inRange(-50, 50); };
    points.push_back({part(), part(), part()});
  }
  const TubeBends tube = tube_bends(points);
  RC_PRE(tube.good());
  Vec3 along = unit(points[1] - points[0]), at = points[0];
  Vec3 normal = tube.bends.empty() ? any_square_to(along) : unit(cross(along, points[2] - points[1]));
  for (std::size_t i = 0; i < tube.legs_m.size(); ++i) {
    at = at + tube.legs_m[i] * along;
    if (i == tube.bends.size()) break;
    along = turned(along, normal, tube.bends[i]);
    if (i < tube.rotations.size()) normal = turned(normal, along, tube.rotations[i]);
  }
  RC_ASSERT(norm(at - points.back()) < 1e-9);
  RC_ASSERT(tube.legs_m.size() == tube.bends.size() + 1);
  const TubeCut small = tube_cut(tube, 0.01), large = tube_cut(tube, 0.02);
  RC_ASSERT(std::abs((large.cut_m - small.cut_m) / 0.01 - small.cut_slope) < 1e-9);
  double all = 0;
  for (double s : small.straights_m) all += s;
  for (double t : tube.bends) all += bend_arc_m(0.01, t).value;
  RC_ASSERT(std::abs(all - small.cut_m) < 1e-9);
}

}  // namespace
}  // namespace sw::physics
