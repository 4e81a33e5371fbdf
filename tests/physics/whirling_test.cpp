#include "physics/whirling.hpp"

#include <gtest/gtest.h>

#include <cmath>
#include <numbers>

namespace sw::physics {
namespace {

constexpr double inch = 0.0254;
double rpm(double rad_s) { return rad_s * 30 / std::numbers::pi; }

// The trade's rule for steel tubes in inches, 4.705e6 sqrt(Do^2 + Di^2)/L^2 (common practice; E of 29.3e6 psi in it):
// 66 in of 3.0 in x 0.083 in come to 4458 rpm.
TEST(Whirling, AgreesWithTheTradesRule) {
  EXPECT_NEAR(rpm(tube_whirls_rad_s(66 * inch, 3 * inch, (3 - 2 * 0.083) * inch)), 4458, 0.01 * 4458);
}

// A solid bar by the textbook's series for a uniform beam on two pins: f = (pi/2) sqrt(E I/(m' L^4)), I = pi d^4/64.
TEST(Whirling, ASolidBarIsABeamOnTwoPins) {
  const double d = 0.02, l = 1.0, e = 200e9, rho = 7850, area = std::numbers::pi / 4 * d * d,
               second = std::numbers::pi / 64 * std::pow(d, 4);
  const double hertz = std::numbers::pi / 2 * std::sqrt(e * second / (rho * area * std::pow(l, 4)));
  EXPECT_NEAR(tube_whirls_rad_s(l, d, 0), 2 * std::numbers::pi * hertz, 1e-9 * hertz);
}

TEST(Whirling, GoesWithTheSquareOfTheLength) {
  EXPECT_NEAR(tube_whirls_rad_s(2, 0.08, 0.076) * 4, tube_whirls_rad_s(1, 0.08, 0.076), 1e-9);
}

}  // namespace
}  // namespace sw::physics
