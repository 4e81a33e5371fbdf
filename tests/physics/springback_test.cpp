#include "physics/springback.hpp"

#include <gtest/gtest.h>
#include <rapidcheck/gtest.h>

#include <algorithm>
#include <cmath>
#include <numbers>

namespace sw::physics {
namespace {

constexpr double inch = 0.0254, psi = 6894.757293168361;

// Kalpakjian, Manufacturing Processes for Engineering Materials, example on springback (from memory): steel of 0.0359
// in and 40 000 psi bent to 0.5 in ends at 0.531 in.
TEST(Springback, PlateAsInATextbookExample) {
  const double kept = plate_springback(40e3 * psi, 29e6 * psi, 0.0359 * inch, 0.5 * inch);
  EXPECT_NEAR(0.5 / kept, 0.531, 0.001);
}

/// Moment of the stresses over a section by strips, against which the closed form stands.
double kept_by_strips(double flow, double young, double radius, double half_depth, auto width) {
  double moment = 0, second = 0;
  const int n = 200000;
  for (int i = 0; i < n; ++i) {
    const double y = half_depth * (i + 0.5) / n, area = 2 * width(y) * half_depth / n;
    moment += std::min(flow, young * y / radius) * y * area;
    second += y * y * area;
  }
  return 1 - moment * radius / (young * second);
}
double chord(double a, double y) { return y < a ? 2 * std::sqrt(a * a - y * y) : 0; }

TEST(Springback, PlateAndTubeByStrips) {
  EXPECT_NEAR(plate_springback(300e6, 200e9, 2e-3, 0.3),
              kept_by_strips(300e6, 200e9, 0.3, 1e-3, [](double) { return 1.0; }), 1e-6);
  // Core inside the bore, core in the wall, wholly elastic.
  for (double radius : {0.02, 1.2, 2.2, 5.0}) {
    const auto width = [](double y) { return chord(4.7625e-3, y) - chord(3.8735e-3, y); };
    EXPECT_NEAR(tube_springback(400e6, 200e9, 9.525e-3, 0.889e-3, radius),
                std::max(0.0, kept_by_strips(400e6, 200e9, radius, 4.7625e-3, width)), 2e-5)
        << radius;
  }
}

// A thin ring wholly plastic, by hand: M = 4 Y r^2 t, I = pi r^3 t, so kept = 1 - 4/pi Y R/(E r).
TEST(Springback, ThinRingByHand) {
  EXPECT_NEAR(tube_springback(300e6, 200e9, 10.05e-3, 0.05e-3, 0.03),
              1 - 4 / std::numbers::pi * 300e6 * 0.03 / (200e9 * 5e-3), 1e-4);
}

RC_GTEST_PROP(Springback, MoreByMoreRadiusAndStress, ()) {
  const double radius = 1e-3 * *rc::gen::inRange(10, 3000), flow = 1e6 * *rc::gen::inRange(50, 900);
  const auto kept = [](double y, double r) { return tube_springback(y, 200e9, 8e-3, 0.9e-3, r); };
  RC_ASSERT(kept(flow, radius) <= 1 && kept(flow, radius) >= 0);
  RC_ASSERT(kept(flow, radius * 1.1) <= kept(flow, radius) + 1e-12);
  RC_ASSERT(kept(flow * 1.1, radius) <= kept(flow, radius) + 1e-12);
}

}  // namespace
}  // namespace sw::physics
