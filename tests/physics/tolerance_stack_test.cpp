#include "physics/tolerance_stack.hpp"

#include <gtest/gtest.h>

#include <cmath>
#include <random>
#include <vector>

namespace sw::physics {
namespace {

// A screw of 1.750 +- 0.003 in through sleeves of 0.750 +- 0.001, 0.120 +- 0.005 and 0.875 +- 0.001: a gap of 0.005 in,
// +- 0.010 by the worst case and +- 0.006 statistically. Shigley's Mechanical Engineering Design, worked example on
// tolerance stacks (from memory).
TEST(ToleranceStack, ScrewThroughThreeSleeves) {
  const double t[] = {0.003, 0.001, 0.005, 0.001};
  const ToleranceStack s = tolerance_stack(t);
  EXPECT_NEAR(s.worst_case, 0.010, 1e-12);
  EXPECT_NEAR(s.statistical, 0.006, 1e-12);
  EXPECT_EQ(s.greatest, 2u);
}

// By trying it out: 95 % of sums of normal lengths lie within the band whose parts each hold 95 %, and none of bounded
// ones beyond the worst case.
TEST(ToleranceStack, HoldsAsManyAsItsParts) {
  const std::vector<double> t{0.3, 0.4, 1.2, 0.5};
  const ToleranceStack s = tolerance_stack(t);
  std::mt19937 random(7);
  std::normal_distribution<double> normal;
  std::uniform_real_distribution<double> even(-1, 1);
  constexpr int n = 200000;
  constexpr double two_sided_95 = 1.959964;
  int inside = 0;
  double farthest = 0;
  for (int i = 0; i < n; ++i) {
    double sum = 0, bounded = 0;
    for (double half : t) sum += half / two_sided_95 * normal(random), bounded += half * even(random);
    inside += std::abs(sum) <= s.statistical;
    farthest = std::max(farthest, std::abs(bounded));
  }
  EXPECT_NEAR(inside / double(n), 0.95, 0.003);  // three standard errors are 0.0015
  EXPECT_LE(farthest, s.worst_case);
  EXPECT_GT(farthest, 0.8 * s.worst_case);
}

TEST(ToleranceStack, OfNothingIsNothing) { EXPECT_EQ(tolerance_stack({}).worst_case, 0); }

}  // namespace
}  // namespace sw::physics
