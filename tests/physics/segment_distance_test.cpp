#include "physics/segment_distance.hpp"

#include <gtest/gtest.h>
#include <rapidcheck/gtest.h>

#include <algorithm>
#include <cmath>

namespace sw::physics {
namespace {

TEST(SegmentDistance, ByHand) {
  EXPECT_NEAR(segment_distance_m({0, 0, 0}, {2, 0, 0}, {1, -1, 3}, {1, 1, 3}), 3, 1e-12);  // crossing
  EXPECT_NEAR(segment_distance_m({0, 0, 0}, {2, 0, 0}, {3, 0, 0}, {5, 0, 0}), 1, 1e-12);   // in line
  EXPECT_NEAR(segment_distance_m({0, 0, 0}, {2, 0, 0}, {1, 0, 2}, {9, 0, 2}), 2, 1e-12);   // side by side
  EXPECT_NEAR(segment_distance_m({0, 0, 0}, {2, 0, 0}, {3, -1, 0}, {3, 1, 0}), 1, 1e-12);  // past its end
  EXPECT_NEAR(segment_distance_m({0, 0, 0}, {2, 0, 0}, {1, -1, 0}, {1, 1, 0}), 0, 1e-12);  // through it
  EXPECT_NEAR(segment_distance_m({0, 0, 0}, {0, 0, 0}, {3, 4, 0}, {3, 4, 0}), 5, 1e-12);   // two points
}

// Against what trying many places on both finds: never more than any of them, and as near as their spacing allows.
RC_GTEST_PROP(SegmentDistance, NearerThanAnySampleAndReachedByThem, ()) {
  const auto point = [] {
    const auto part = [] { return 0.1 * *rc::gen::inRange(-20, 21); };
    return Vec3{part(), part(), part()};
  };
  const Vec3 a = point(), b = point(), c = point(), d = point();
  const double exact = segment_distance_m(a, b, c, d);
  constexpr int n = 60;
  double sampled = HUGE_VAL;
  for (int i = 0; i <= n; ++i)
    for (int j = 0; j <= n; ++j)
      sampled = std::min(sampled, norm(a + double(i) / n * (b - a) - (c + double(j) / n * (d - c))));
  RC_ASSERT(exact <= sampled + 1e-9);
  RC_ASSERT(exact >= sampled - (norm(b - a) + norm(d - c)) / (2 * n) - 1e-9);
  RC_ASSERT(std::abs(exact - segment_distance_m(d, c, b, a)) < 1e-9);
}

TEST(SegmentDistance, OfChainsTheNearestPair) {
  const Vec3 a[] = {{0, 0, 0}, {1, 0, 0}, {1, 5, 0}}, b[] = {{4, 9, 1}, {4, 3, 1}, {2, 3, 0}};
  EXPECT_NEAR(chain_distance_m(a, b), 1, 1e-12);
}

}  // namespace
}  // namespace sw::physics
