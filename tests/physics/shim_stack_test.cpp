#include "physics/shim_stack.hpp"

#include <gtest/gtest.h>
#include <rapidcheck/gtest.h>

#include <cmath>

namespace sw::physics {
namespace {

constexpr double in = 0.0254;

TEST(ShimStack, OnePumpBehindThePlaneByHand) {
  // The pump's pulley 0.110 in behind, 0.036 in allowed on its span: 0.074 to 0.146 in of shims; one of 0.090 does it.
  const ShimPlace places[] = {{0, 0}, {-0.110 * in, 0.25 * in}};
  const ShimPair pairs[] = {{0, 1, 0.036 * in}};
  const ShimKind kinds[] = {{0.030 * in, 4}, {0.060 * in, 4}, {0.090 * in, 2}};
  const auto c = choose_shims(places, pairs, kinds);
  ASSERT_TRUE(c);
  EXPECT_EQ(c->shims, 1);
  EXPECT_NEAR(c->total_m[1], 0.090 * in, 1e-12);
  EXPECT_NEAR(c->worst_share, 0.020 / 0.036, 1e-9);
}

TEST(ShimStack, NothingWhereAllRunsInLine) {
  const ShimPlace places[] = {{0, 0}, {0.01 * in, 0.25 * in}};
  const ShimPair pairs[] = {{0, 1, 0.036 * in}};
  const ShimKind kinds[] = {{0.030 * in, 4}};
  const auto c = choose_shims(places, pairs, kinds);
  ASSERT_TRUE(c);
  EXPECT_EQ(c->shims, 0);
}

TEST(ShimStack, NoChoiceWhereBoltsOrShelfDoNotReach) {
  const ShimPlace places[] = {{0, 0}, {-0.110 * in, 0.05 * in}};
  const ShimPair pairs[] = {{0, 1, 0.036 * in}};
  const ShimKind kinds[] = {{0.090 * in, 4}, {0.030 * in, 4}};
  EXPECT_FALSE(choose_shims(places, pairs, kinds));  // the bolts allow 0.050 in
  const ShimPlace free[] = {{0, 0}, {-0.110 * in, 1 * in}};
  const ShimKind one[] = {{0.030 * in, 2}};
  EXPECT_FALSE(choose_shims(free, pairs, one));  // two of 0.030 in are all there are
}

TEST(ShimStack, WhatIsOnHandServesAllBracketsTogether) {
  // Two brackets want the one thick shim; one of them gets it, the other two thin ones.
  const ShimPlace places[] = {{0, 0}, {-0.09 * in, 0.25 * in}, {-0.09 * in, 0.25 * in}};
  const ShimPair pairs[] = {{0, 1, 0.02 * in}, {0, 2, 0.02 * in}};
  const ShimKind kinds[] = {{0.090 * in, 1}, {0.045 * in, 2}};
  const auto c = choose_shims(places, pairs, kinds);
  ASSERT_TRUE(c);
  EXPECT_EQ(c->shims, 3);
}

/// Everything tried out: two kinds, two brackets, all counts up to what there is.
RC_GTEST_PROP(ShimStack, IsNoWorseThanTryingOutEverything, ()) {
  auto number = [](int low, int high) { return *rc::gen::inRange(low, high) * 1e-4; };
  const ShimPlace places[] = {{0, 0}, {number(-40, 20), number(0, 60)}, {number(-40, 20), number(0, 60)}};
  const ShimPair pairs[] = {{0, 1, number(1, 12)}, {1, 2, number(1, 12)}, {0, 2, number(1, 12)}};
  const ShimKind kinds[] = {{number(8, 20), *rc::gen::inRange(0, 4)}, {number(3, 8), *rc::gen::inRange(0, 4)}};
  constexpr int per = 3;
  int fewest = -1;
  for (int a = 0; a <= kinds[0].count; ++a)
    for (int b = 0; b <= kinds[1].count && a + b <= per; ++b)
      for (int c = 0; a + c <= kinds[0].count; ++c)
        for (int d = 0; b + d <= kinds[1].count && c + d <= per; ++d) {
          const double one = a * kinds[0].thickness_m + b * kinds[1].thickness_m;
          const double two = c * kinds[0].thickness_m + d * kinds[1].thickness_m;
          const double at[] = {0, places[1].depth_m + one, places[2].depth_m + two};
          bool good = one <= places[1].room_m + 1e-9 && two <= places[2].room_m + 1e-9;
          for (auto& p : pairs) good &= std::abs(at[p.a] - at[p.b]) <= p.allowance_m * (1 + 1e-9);
          if (good && (fewest < 0 || a + b + c + d < fewest)) fewest = a + b + c + d;
        }
  const auto chosen = choose_shims(places, pairs, kinds, per);
  RC_ASSERT(chosen.has_value() == (fewest >= 0));
  if (chosen) RC_ASSERT(chosen->shims == fewest);
}

TEST(ShimStack, FillsAGapToItsMiddleByHand) {
  const ShimKind kinds[] = {{0.012 * in, 4}, {0.050 * in, 1}};
  const auto f = fill_with_shims(0.060 * in, 0.040 * in, 0.080 * in, kinds);
  ASSERT_TRUE(f);
  EXPECT_NEAR(f->total_m / in, 0.062, 1e-9);
  EXPECT_EQ(f->stack.size(), 2u);
  EXPECT_EQ(fill_with_shims(0, -0.01 * in, 0.005 * in, kinds)->total_m, 0);  // none is a stack
  EXPECT_FALSE(fill_with_shims(-0.02 * in, -0.03 * in, -0.01 * in, kinds));  // no shim is below nothing
  EXPECT_FALSE(fill_with_shims(0.2 * in, 0.19 * in, 0.21 * in, kinds));
}

// Against trying every count of each kind.
RC_GTEST_PROP(ShimStack, NoStackComesNearerThanTheFill, ()) {
  const auto some = [](int low, int high) { return *rc::gen::inRange(low, high); };
  const ShimKind kinds[] = {{0.001 * some(1, 60), some(1, 4)}, {0.001 * some(1, 60), some(1, 4)}};
  const double wanted = 0.001 * some(0, 120), least = wanted - 0.001 * some(0, 20), most = wanted + 0.001 * some(0, 20);
  const auto f = fill_with_shims(wanted, least, most, kinds);
  double nearest = HUGE_VAL;
  for (int a = 0; a <= std::min(3, kinds[0].count); ++a)
    for (int b = 0; b <= std::min(3 - a, kinds[1].count); ++b) {
      const double total = a * kinds[0].thickness_m + b * kinds[1].thickness_m;
      if (total >= least - 1e-9 && total <= most + 1e-9) nearest = std::min(nearest, std::abs(total - wanted));
    }
  RC_ASSERT(f.has_value() == std::isfinite(nearest));
  if (f) RC_ASSERT(std::abs(std::abs(f->total_m - wanted) - nearest) < 1e-9);
}

}  // namespace
}  // namespace sw::physics
