#include "physics/radiation.hpp"

#include <gtest/gtest.h>

#include <numbers>

#include "near.hpp"

namespace sw::physics {
namespace {

// Equal cylinders have a formula of their own: F = (1/pi) (sqrt(X^2 - 1) + asin(1/X) - X), X = 1 + s / 2r (Incropera,
// table 13.1; Siegel and Howell, Thermal Radiation Heat Transfer, appendix C; from memory).
TEST(Radiation, EqualCylinders) {
  for (double gap : {0.001, 0.01, 0.1, 1.0}) {
    const double x = 1 + gap / 0.02;
    expect_share(parallel_cylinders_view(0.01, 0.01, gap),
                 (std::sqrt(x * x - 1) + std::asin(1 / x) - x) / std::numbers::pi, 1e-9);
  }
}

// From far off a cylinder is seen under the angle 2 R / d of the full circle: F -> R / (pi d).
TEST(Radiation, FarOff) {
  expect_share(parallel_cylinders_view(0.005, 0.02, 10), 0.02 / (std::numbers::pi * 10.025), 1e-3);
}

TEST(Radiation, Reciprocity) {
  expect_share(0.005 * parallel_cylinders_view(0.005, 0.02, 0.03), 0.02 * parallel_cylinders_view(0.02, 0.005, 0.03),
               1e-9);
}

// Worked by hand: 0.3 x 0.8 x 5.670e-8 (723^4 - 330^4) = 3557 W/m2, 53 W on half a metre of 9.5 mm line.
TEST(Radiation, LineBesideAPrimary) {
  const auto q = radiant_heat_w_m2(0.3, 0.8, 723, 330);
  expect_share(q.value * std::numbers::pi * 0.0095 * 0.5, 53, 0.01);
  expect_slope(
      q.slope, [](double t) { return radiant_heat_w_m2(0.3, 0.8, 723, t).value; }, 330);
}

}  // namespace
}  // namespace sw::physics
