#include "duty/small_lu.hpp"

#include <gtest/gtest.h>
#include <rapidcheck/gtest.h>

#include <vector>

namespace sw {
namespace {

double element() { return *rc::gen::inRange(-1000, 1001) / 100.0; }

RC_GTEST_PROP(SmallLu, SolvesWhatItFactored, ()) {
  const auto n = *rc::gen::inRange<std::size_t>(1, 9);
  SmallLu<8> lu;
  std::vector<double> a(n * n), x(n), b(n, 0.0);
  for (auto& e : a) e = element();
  // A row that weighs more than all others together keeps the condition in bounds; rows are then shuffled, so that
  // pivoting has work to do.
  for (std::size_t i = 0; i < n; ++i) a[i * n + (i + 3) % n] += 200;
  for (auto& e : x) e = element();
  for (std::size_t i = 0; i < n; ++i)
    for (std::size_t j = 0; j < n; ++j) lu.at(i, j) = a[i * n + j], b[i] += a[i * n + j] * x[j];
  RC_ASSERT(lu.factor(n));
  lu.solve(b.data());
  for (std::size_t i = 0; i < n; ++i) RC_ASSERT(std::abs(b[i] - x[i]) < 1e-10);
}

TEST(SmallLu, NeedsItsPivots) {
  SmallLu<4> lu;
  // Zero, or next to it, on the diagonal: without rows changed it has no answer, or a ruined one.
  const double a[2][2] = {{1e-18, 1}, {1, 1}};
  for (std::size_t i = 0; i < 2; ++i)
    for (std::size_t j = 0; j < 2; ++j) lu.at(i, j) = a[i][j];
  ASSERT_TRUE(lu.factor(2));
  double b[2] = {1, 2};
  lu.solve(b);
  EXPECT_NEAR(b[0], 1, 1e-12);
  EXPECT_NEAR(b[1], 1, 1e-12);
}

TEST(SmallLu, SaysWhatIsSingular) {
  SmallLu<4> lu;
  const double a[2][2] = {{1, 2}, {2, 4}};
  for (std::size_t i = 0; i < 2; ++i)
    for (std::size_t j = 0; j < 2; ++j) lu.at(i, j) = a[i][j];
  EXPECT_FALSE(lu.factor(2));
}

}  // namespace
}  // namespace sw
