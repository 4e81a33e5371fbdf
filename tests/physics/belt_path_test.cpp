#include "physics/belt_path.hpp"

#include <gtest/gtest.h>
#include <rapidcheck/gtest.h>

#include <cmath>
#include <numeric>

#include "physics/belt.hpp"

namespace sw::physics {
namespace {

TEST(BeltPath, TwoPulleysAreTheOpenBelt) {
  const BeltPulley two[] = {{0, 0, 0.1}, {0.6, 0.2, 0.04}};
  const auto closed = belt_run(0.2, 0.08, std::hypot(0.6, 0.2), false);
  const BeltPath p = belt_path(two);
  ASSERT_TRUE(p.good());
  EXPECT_NEAR(p.length_m, closed->length_m, 1e-12);
  EXPECT_NEAR(p.wrap[0], closed->wrap_large, 1e-12);
  EXPECT_NEAR(p.wrap[1], closed->wrap_small, 1e-12);
}

TEST(BeltPath, FourEqualPulleysOnASquareWrapAQuarterEach) {
  // Straights of one side each and one whole circle: by hand.
  const BeltPulley square[] = {{0, 0, 0.05}, {0.3, 0, 0.05}, {0.3, 0.3, 0.05}, {0, 0.3, 0.05}};
  const BeltPath p = belt_path(square);
  ASSERT_TRUE(p.good());
  EXPECT_NEAR(p.length_m, 4 * 0.3 + 2 * M_PI * 0.05, 1e-12);
  for (double w : p.wrap) EXPECT_NEAR(w, M_PI / 2, 1e-12);
}

TEST(BeltPath, APulleyOnTheBackPushesTheBeltIn) {
  // Two equal pulleys with their belt pushed in by a third in the middle: symmetric, by hand. Centre of the third at
  // height h between them, radii r and q: the straight to it is crossed, sin b = (r + q) / D with D = hypot(a, h).
  const double a = 0.3, r = 0.06, q = 0.03, h = 0.07, d = std::hypot(a, h);
  const BeltPulley three[] = {{-a, 0, r}, {a, 0, r}, {0, h, q, true}};
  const BeltPath p = belt_path(three);
  ASSERT_TRUE(p.good());
  const double slope = std::asin((r + q) / d) - std::atan2(h, a);  // of the straights down to the third, from level
  EXPECT_NEAR(p.wrap[2], 2 * slope, 1e-12);
  EXPECT_NEAR(p.straight[1].length_m, std::sqrt(d * d - (r + q) * (r + q)), 1e-12);
  EXPECT_NEAR(p.length_m, 2 * a + 2 * p.straight[1].length_m + q * 2 * slope + 2 * r * (M_PI + slope), 1e-12);
}

TEST(BeltPath, TellsWhatTheBeltDoesNotTouch) {
  // The third stands far outside the belt of the other two, and is said to lie on its back.
  const BeltPulley three[] = {{-0.3, 0, 0.06}, {0.3, 0, 0.06}, {0, 0.5, 0.03, true}};
  const BeltPath p = belt_path(three);
  EXPECT_EQ(p.trouble, BeltPath::Trouble::off_pulley);
  const std::string names[] = {"crank", "pump", "idler"};
  EXPECT_NE(belt_trouble(p, names).find("idler"), std::string::npos) << belt_trouble(p, names);
  const BeltPulley near[] = {{0, 0, 0.06}, {0.1, 0, 0.05}};
  EXPECT_EQ(belt_path(near).trouble, BeltPath::Trouble::overlap);
  EXPECT_EQ(belt_path(std::span(near, 1)).trouble, BeltPath::Trouble::too_few);
}

/// Pulleys round a circle, of sizes that leave them apart; every other one may be pushed in from outside by its back.
std::vector<BeltPulley> random_layout() {
  const int n = *rc::gen::inRange(3, 8);
  std::vector<BeltPulley> all;
  for (int i = 0; i < n; ++i) {
    const double angle = 2 * M_PI * (i + 0.2 * *rc::gen::inRange(0, 100) / 100.0) / n;
    all.push_back({0.4 * std::cos(angle), 0.4 * std::sin(angle), 0.02 + 0.0006 * *rc::gen::inRange(0, 100)});
  }
  return all;
}

RC_GTEST_PROP(BeltPath, TurnsOnceRoundAndIsTheSameBackwards, ()) {
  const auto layout = random_layout();
  const BeltPath p = belt_path(layout);
  RC_PRE(p.good());
  double all = 0;
  for (std::size_t i = 0; i < layout.size(); ++i) all += layout[i].back ? -p.wrap[i] : p.wrap[i];
  RC_ASSERT(std::abs(all - 2 * M_PI) < 1e-9);
  const std::vector<BeltPulley> reversed(layout.rbegin(), layout.rend());
  const BeltPath q = belt_path(reversed);
  RC_ASSERT(q.good());
  RC_ASSERT(std::abs(q.length_m - p.length_m) < 1e-12);
  RC_ASSERT(std::abs(q.wrap.front() - p.wrap.back()) < 1e-9);
  RC_ASSERT(std::abs(q.straight.front().length_m - p.straight[layout.size() - 2].length_m) < 1e-12);
}

/// The belt as a closed polygon of many points is shorter than it, and by little.
RC_GTEST_PROP(BeltPath, IsAsLongAsThePolygonOfItsPoints, ()) {
  const auto layout = random_layout();
  const BeltPath p = belt_path(layout);
  RC_PRE(p.good());
  constexpr int pieces = 2000;
  std::vector<std::pair<double, double>> points;
  for (std::size_t i = 0; i < layout.size(); ++i) {
    const auto& in = p.straight[(i + layout.size() - 1) % layout.size()];
    const double start = std::atan2(in.to_y_m - layout[i].y_m, in.to_x_m - layout[i].x_m);
    const double sense = std::sin(p.straight[i].direction - in.direction) < 0 && p.wrap[i] < M_PI ? -1 : 1;
    for (int k = 0; k <= pieces; ++k) {
      const double a = start + sense * p.wrap[i] * k / pieces;
      points.emplace_back(layout[i].x_m + layout[i].radius_m * std::cos(a),
                          layout[i].y_m + layout[i].radius_m * std::sin(a));
    }
  }
  double length = 0;
  for (std::size_t i = 0; i < points.size(); ++i) {
    const auto &a = points[i], &b = points[(i + 1) % points.size()];
    length += std::hypot(b.first - a.first, b.second - a.second);
  }
  RC_ASSERT(length < p.length_m + 1e-9);
  RC_ASSERT(length > p.length_m - 1e-5);
}

RC_GTEST_PROP(BeltPath, SlopesAreThoseOfADifference, ()) {
  auto layout = random_layout();
  const BeltPath p = belt_path(layout);
  RC_PRE(p.good());
  const std::size_t i = static_cast<std::size_t>(*rc::gen::inRange(0, static_cast<int>(layout.size())));
  const double h = 1e-6;
  auto moved = layout;
  moved[i].x_m += h;
  const BeltPath right = belt_path(moved);
  moved[i].x_m -= 2 * h;
  const BeltPath left = belt_path(moved);
  RC_PRE(right.good() && left.good());
  RC_ASSERT(std::abs((right.length_m - left.length_m) / (2 * h) - p.slope_x[i]) < 1e-6);
}

}  // namespace
}  // namespace sw::physics
