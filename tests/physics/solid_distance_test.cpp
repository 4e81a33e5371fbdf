#include "physics/solid_distance.hpp"

#include <gtest/gtest.h>
#include <rapidcheck/gtest.h>

#include <algorithm>
#include <cmath>
#include <numbers>

namespace sw::physics {
namespace {

// Closed form: axes that cross 5 apart, radii 1 and 0.5; a ball 3 4 12 away is 13 from the origin.
TEST(SolidDistance, OfRodsLessTheirRadii) {
  const Solid a{.line = {{-2, 0, 0}, {2, 0, 0}}, .radius_m = 1}, b{.line = {{0, -2, 5}, {0, 2, 5}}, .radius_m = 0.5};
  EXPECT_NEAR(solid_distance_m(a, b), 3.5, 1e-12);
  const Solid ball{.line = {{3, 4, 12}}, .radius_m = 2}, point{.line = {{0, 0, 0}}};
  EXPECT_NEAR(solid_distance_m(ball, point), 11, 1e-12);
  const Solid through{.line = {{0, -2, 0}, {0, 2, 0}}, .radius_m = 0.5};
  EXPECT_NEAR(solid_distance_m(a, through), -1.5, 1e-12);
}

// By hand: a block from 0 to 2 4 6.
TEST(SolidDistance, OfARodFromABlock) {
  const Solid block = block_between({2, 0, 6}, {0, 4, 0});
  const auto from = [&](Vec3 p, Vec3 q, double r = 0) {
    return solid_distance_m(block, {.line = {p, q}, .radius_m = r});
  };
  EXPECT_NEAR(from({5, 1, 1}, {5, 3, 5}), 3, 1e-12);           // beside a face
  EXPECT_NEAR(from({5, 8, 3}, {9, 8, 3}, 0.25), 4.75, 1e-12);  // beside an edge: 3, 4
  EXPECT_NEAR(from({4, 7, 12}, {4, 7, 20}), 7, 1e-12);         // beside a corner: 2, 3, 6
  EXPECT_NEAR(from({-1, 2, 3}, {9, 2, 3}), 0, 1e-12);          // through it
  EXPECT_NEAR(from({1, 2, 3}, {1.5, 2, 3}), 0, 1e-12);         // inside
  EXPECT_NEAR(from({4, 2, 3}, {2, 6, 3}), std::sqrt(0.8),
              1e-12);                             // past the edge x 2, y 4: from the line through both, 4/sqrt 20
  EXPECT_EQ(from({1, 2, 3}, {1, 2, 3}, 0.5), 0);  // how deep is not told
}

// Two cubes of side 2, one turned by 45 deg about an upright axis: its edge comes sqrt 2 out, where a face stands 1.
TEST(SolidDistance, OfTwoBlocks) {
  const Solid a = block_between({-1, -1, -1}, {1, 1, 1});
  Solid b;
  move_to(a, then(turned_about({}, {0, 0, 1}, std::numbers::pi / 4), shifted({4, 0, 0})), b);
  EXPECT_NEAR(solid_distance_m(a, b), 3 - std::numbers::sqrt2, 1e-12);
  EXPECT_NEAR(solid_distance_m(b, a), 3 - std::numbers::sqrt2, 1e-12);
  const Solid inside = block_between({-0.5, -0.5, -0.5}, {0.5, 0.5, 0.5});
  EXPECT_EQ(solid_distance_m(a, inside), 0);
  EXPECT_EQ(solid_distance_m(inside, a), 0);
}

Vec3 some_point() {
  const auto part = [] { return 0.1 * *rc::gen::inRange(-20, 21); };
  return {part(), part(), part()};
}

// Against what trying many places of the piece finds, each from the block by its three axes.
RC_GTEST_PROP(SolidDistance, NearerToABlockThanAnySample, ()) {
  const Vec3 p = some_point(), q = some_point(), way = some_point();
  RC_PRE(norm(way) > 0.05);
  const Solid rest = block_between({-0.7, -0.4, -0.2}, {0.3, 0.6, 0.9});
  Solid block;
  const RigidMotion m = turned_about(some_point(), unit(way), 0.1 * *rc::gen::inRange(-30, 31));
  move_to(rest, m, block);
  const double exact = segment_block_distance_m(p, q, *block.block);
  constexpr int n = 2000;
  double sampled = HUGE_VAL;
  for (int i = 0; i <= n; ++i) {
    const Vec3 at = p + double(i) / n * (q - p) - block.block->centre;
    double sum = 0;
    for (auto& half : block.block->half) {
      const double out = std::max(0.0, std::abs(dot(at, unit(half))) - norm(half));
      sum += out * out;
    }
    sampled = std::min(sampled, std::sqrt(sum));
  }
  RC_ASSERT(exact <= sampled + 1e-9);
  RC_ASSERT(exact >= sampled - norm(q - p) / (2 * n) - 1e-9);
}

TEST(SolidDistance, ReachOfItsFarthestPoint) {
  EXPECT_NEAR(reach_from_axis_m({.line = {{0, 3, 0}, {0, 1, 4}}}, {}, {1, 0, 0}), std::sqrt(17), 1e-12);
  EXPECT_NEAR(reach_from_axis_m(block_between({-1, -1, -1}, {1, 2, 3}), {}, {0, 0, 1}), std::sqrt(5), 1e-12);
}

}  // namespace
}  // namespace sw::physics
