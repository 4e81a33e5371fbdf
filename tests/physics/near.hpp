#pragma once
// Comparisons shared by the tests of the laws.
#include <gtest/gtest.h>

#include <cmath>

namespace sw::physics {

/// Within a share of the expected value.
inline void expect_share(double got, double expected, double share, const char* what = "") {
  EXPECT_NEAR(got, expected, std::abs(expected) * share) << what;
}

/// A derivative against the central difference of `f` about `x`.
template <class F>
void expect_slope(double slope, const F& f, double x, double share = 1e-5) {
  const double h = 1e-5 * std::max(std::abs(x), 1e-3);
  const double difference = (f(x + h) - f(x - h)) / (2 * h);
  EXPECT_NEAR(slope, difference, share * std::max(std::abs(difference), 1e-9)) << "at " << x;
}

}  // namespace sw::physics
