// The figures by which docs/validation.md judges, against closed forms.
#include "compare.hpp"

#include <gtest/gtest.h>

#include <cmath>

namespace sw::validation {
namespace {

TEST(Agreement, OfASteadyOffset) {
  const auto a = agreement({1, 2, 3, 4}, {3, 4, 5, 6});
  EXPECT_DOUBLE_EQ(a.bias, 2);
  EXPECT_DOUBLE_EQ(a.rms, 2);
  EXPECT_DOUBLE_EQ(a.worst, 2);
  EXPECT_NEAR(a.correlation, 1, 1e-12);
}

TEST(Agreement, OfOppositesWithAGap) {
  const auto a = agreement({-1, NAN, 1}, {1, 5, -1});
  EXPECT_EQ(a.count, 2u);
  EXPECT_DOUBLE_EQ(a.bias, 0);
  EXPECT_DOUBLE_EQ(a.rms, 2);
  EXPECT_NEAR(a.correlation, -1, 1e-12);
}

TEST(SharePoint, OfASortedRow) {
  EXPECT_DOUBLE_EQ(share_point({5, 1, 3, 2, 4}, 0.5), 3);
  EXPECT_DOUBLE_EQ(share_point({5, 1, 3, 2, 4}, 1), 5);
}

TEST(At, OnStraightLinesAndHeldOutside) {
  EXPECT_DOUBLE_EQ(at({0, 2}, {10, 20}, 0.5), 12.5);
  EXPECT_DOUBLE_EQ(at({0, 2}, {10, 20}, -1), 10);
  EXPECT_DOUBLE_EQ(at({0, 2}, {10, 20}, 3), 20);
}

TEST(FirstAt, UpwardDownwardAndNever) {
  const std::vector<double> x = {0, 10, 20, 30}, y = {0, 100, 0, 100};
  EXPECT_DOUBLE_EQ(first_at(x, y, 40), 4);
  EXPECT_DOUBLE_EQ(first_at(x, y, 40, false, 5), 16);
  EXPECT_TRUE(std::isnan(first_at(x, y, 101)));
}

TEST(LeastSquares, FindsTheTermsItWasMadeOf) {
  const std::vector<double> a = {1, 1, 1, 1}, b = {0, 1, 2, 5};
  std::vector<double> y;
  for (double v : b) y.push_back(3 - 0.5 * v);
  const auto fit = least_squares(a, b, y);
  EXPECT_NEAR(fit.p, 3, 1e-12);
  EXPECT_NEAR(fit.q, -0.5, 1e-12);
}

}  // namespace
}  // namespace sw::validation
