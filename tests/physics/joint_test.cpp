#include "physics/joint.hpp"

#include <gtest/gtest.h>
#include <rapidcheck/gtest.h>

#include <numbers>

#include "near.hpp"

namespace sw::physics {
namespace {

constexpr double pi = std::numbers::pi;
constexpr double deg = pi / 180;

/// Shafts in the plane of x and y, at these angles from x.
JointChain flat(std::vector<double> headings_deg, std::vector<double> phases_deg) {
  JointChain c;
  for (double h : headings_deg) c.shafts.push_back({std::cos(h * deg), std::sin(h * deg), 0});
  for (double f : phases_deg) c.phases_rad.push_back(f * deg);
  return c;
}
double range_of(const JointChain& c) { return swing(c).fastest - swing(c).slowest; }

// The closed form of one joint (any theory of machines, Hooke's joint): tan(out) = cos g tan(in), rate cos g/(1 - sin^2
// g sin^2 in), from where the pin lies square to the plane of both shafts.
TEST(Joint, OneIsTheClosedForm) {
  for (double g : {5.0, 25.0, 45.0, 70.0}) {
    const JointChain c = flat({0, g}, {});
    const double cg = std::cos(g * deg), sg = std::sin(g * deg);
    for (double in = -400; in <= 400; in += 7) {
      const double s = std::sin(in * deg), k = std::cos(in * deg);
      const Slope at = joint_turn(c, in * deg);
      EXPECT_NEAR(std::remainder(at.value - std::atan2(cg * s, k), 2 * pi), 0, 1e-12);
      EXPECT_NEAR(at.value, in * deg, 0.85) << "in whole turns with the input";
      EXPECT_NEAR(at.slope, cg / (1 - sg * sg * s * s), 1e-12);
    }
    EXPECT_NEAR(swing(c).slowest, cg, 1e-12);
    EXPECT_NEAR(swing(c).fastest, 1 / cg, 1e-12);
    EXPECT_NEAR(range_of(c), joint_fluctuation(g * deg).value, 1e-12);
    EXPECT_NEAR(equivalent_angle(c), g * deg, 1e-12);
  }
}

// JNT-07: 25 deg, 45 deg in, 42.19 deg out; own case of the closed form.
TEST(Joint, JNT_07_OutputAngle) { EXPECT_NEAR(joint_turn(flat({0, 25}, {}), 45 * deg).value / deg, 42.19, 0.01); }

TEST(Joint, OneStraightJointTurnsEvenly) {
  const JointChain c = flat({30, 30}, {});
  EXPECT_NEAR(joint_turn(c, 1).value, 1, 1e-12);
  EXPECT_NEAR(range_of(c), 0, 1e-12);
  EXPECT_EQ(joint_angle(c.shafts[0], c.shafts[1]), 0);
}

TEST(Joint, TwoEqualAnglesUndoEachOther) {
  EXPECT_NEAR(range_of(flat({0, 20, 0}, {0})), 0, 1e-12);   // ends parallel
  EXPECT_NEAR(range_of(flat({0, 20, 40}, {0})), 0, 1e-12);  // ends at twice the angle
  // JNT-02: wrongly phased, cos^2 g to 1/cos^2 g (exam question; here exact).
  const Swing bad = swing(flat({0, 20, 0}, {90}));
  EXPECT_NEAR(bad.slowest * 500, 441.5, 0.05);
  EXPECT_NEAR(bad.fastest, 1 / std::pow(std::cos(20 * deg), 2), 1e-12);
}

RC_GTEST_PROP(Joint, EqualPhasesUndoEachOther, ()) {
  const double g = *rc::gen::inRange(1, 60) * deg, phase = *rc::gen::inRange(-180, 181) * deg;
  RC_ASSERT(range_of(joint_pair(g, g, phase, phase)) < 1e-10);
}

Vec3 any_direction() {
  const auto part = [] { return 0.01 * *rc::gen::inRange(-100, 100); };
  return unit({2, part(), part()});
}
/// Up to three joints, each below 60 deg or so.
JointChain any_chain() {
  JointChain c{{any_direction(), any_direction()}, {}};
  for (int more = *rc::gen::inRange(0, 3); more > 0; --more) {
    c.shafts.push_back(any_direction());
    c.phases_rad.push_back(*rc::gen::inRange(-90, 91) * deg);
  }
  return c;
}

RC_GTEST_PROP(Joint, RateIsTheDerivativeAndItsMeanIsOne, ()) {
  const JointChain c = any_chain();
  const double at = *rc::gen::inRange(-360, 361) * deg, h = 1e-6;
  const Slope here = joint_turn(c, at);
  RC_ASSERT(std::abs((joint_turn(c, at + h).value - joint_turn(c, at - h).value) / (2 * h) - here.slope) < 1e-6);
  const Swing s = swing(c);
  RC_ASSERT(here.slope > s.slowest - 1e-9 && here.slope < s.fastest + 1e-9);
  double mean = 0;
  for (int k = 0; k < 720; ++k) mean += joint_turn(c, k * pi / 360).slope / 720;
  RC_ASSERT(std::abs(mean - 1) < 1e-9);  // as many turns out as in
  RC_ASSERT(std::abs(joint_turn(c, 2 * pi).value - 2 * pi) < 1e-9);
}

// A chain driven from its other end turns at the reciprocal rates: the geometry knows no driver.
RC_GTEST_PROP(Joint, BackwardsIsTheReciprocal, ()) {
  const JointChain c = any_chain();
  JointChain back;
  for (auto s = c.shafts.rbegin(); s != c.shafts.rend(); ++s) back.shafts.push_back(-*s);
  // Seen the other way a right-handed turn from the driven to the driving yoke is the same turn from driving to driven.
  for (auto f = c.phases_rad.rbegin(); f != c.phases_rad.rend(); ++f) back.phases_rad.push_back(*f);
  RC_ASSERT(std::abs(swing(back).slowest - 1 / swing(c).fastest) < 1e-9);
  RC_ASSERT(std::abs(swing(back).fastest - 1 / swing(c).slowest) < 1e-9);
}

// JNT-08: 5 and 4 deg in one plane are one of 3 deg (SAE AE-7, from memory).
TEST(Joint, JNT_08_EquivalentAngle) {
  EXPECT_NEAR(equivalent_angle(flat({0, 5, 1}, {0})) / deg, 3, 1e-9);
  EXPECT_NEAR(equivalent_angle(flat({0, 5, 9}, {0})) / deg, 3, 1e-9);
  EXPECT_NEAR(equivalent_angle(flat({0, 5, 9}, {90})) / deg, std::sqrt(41), 1e-9);  // wrongly phased they add up
}

RC_GTEST_PROP(Joint, EquivalentAngleSwingsAsMuchWhereAnglesAreSmall, ()) {
  JointChain c = any_chain();
  for (auto& s : c.shafts) s = unit({10, s.y, s.z});  // 7 deg or so at most between two
  const double g = equivalent_angle(c);
  double square = 0;  // what all together could swing
  for (std::size_t i = 0; i + 1 < c.shafts.size(); ++i)
    square += std::pow(joint_angle(c.shafts[i], c.shafts[i + 1]), 2);
  RC_ASSERT(std::abs(range_of(c) - joint_fluctuation(g).value) < 0.01 * square + 1e-12);
}

TEST(Joint, BestPhaseOfOneShaftIsTheAngleBetweenThePlanes) {
  for (double phase : {-80.0, -35.0, 0.0, 20.0, 90.0}) {
    const auto best = best_phases(joint_pair(30 * deg, 30 * deg, phase * deg, 0));
    ASSERT_EQ(best.size(), 1u);
    EXPECT_NEAR(best[0] / deg, phase, 1e-3);
  }
  // Unequal angles: still between the planes, and what is left is the difference of both.
  const auto best = best_phases(joint_pair(30 * deg, 20 * deg, 50 * deg, 0));
  EXPECT_NEAR(best[0] / deg, 50, 1e-3);
  const Swing s = swing(joint_pair(30 * deg, 20 * deg, 50 * deg, best[0]));
  EXPECT_NEAR(s.fastest, std::cos(20 * deg) / std::cos(30 * deg), 1e-9);
}

TEST(Joint, BestPhasesOfTwoShafts) {
  // Three joints of 20, 28 and 20 deg in a plane close almost to nothing: 2 x 20^2 is 28.3^2.
  const JointChain c = flat({0, 20, 48, 68}, {0, 0});
  const auto best = best_phases(c);
  ASSERT_EQ(best.size(), 2u);
  EXPECT_LT(range_of({c.shafts, best}), 0.01);
  // No phases on a grid of 3 deg are better.
  double grid = INFINITY;
  for (int i = -30; i < 30; ++i)
    for (int k = -30; k < 30; ++k) grid = std::min(grid, range_of({c.shafts, {i * 3 * deg, k * 3 * deg}}));
  EXPECT_LE(range_of({c.shafts, best}), grid + 1e-9);
  EXPECT_TRUE(best_phases(flat({0, 20}, {})).empty());
}

// Whatever the shafts, no grid of phases beats the ones found.
RC_GTEST_PROP(Joint, NoGridBeatsTheBest, ()) {
  const JointChain c{{any_direction(), any_direction(), any_direction(), any_direction()}, {0, 0}};
  const double found = range_of({c.shafts, best_phases(c)});
  for (int i = -6; i < 6; ++i)
    for (int k = -6; k < 6; ++k) RC_ASSERT(found <= range_of({c.shafts, {i * 15 * deg, k * 15 * deg}}) + 1e-9);
}

TEST(Joint, BestPhasesOfThreeShafts) {
  // Two pairs of equal joints, each pair in a plane of its own, undo one another pair by pair.
  const JointChain c{{unit({1, -0.3, 0}), {1, 0, 0}, unit({1, 0.3, 0}), unit({1, 0.3, 0.4}), unit({1, 0.2, 0.9})},
                     {0, 0, 0}};
  const auto best = best_phases(c);
  ASSERT_EQ(best.size(), 3u);
  const double found = range_of({c.shafts, best});
  EXPECT_LT(found, 0.02);
  EXPECT_LT(found, range_of(c) / 5);
}

TEST(Joint, StraightJointsLeaveTheYokesInLine) { EXPECT_EQ(best_phases(flat({0, 0, 0}, {0}))[0], 0); }

// JNT-05: 12.5 % is 20.04 deg (worked problem; 1/cos - cos).
TEST(Joint, JNT_05_AngleForAFluctuation) { EXPECT_NEAR(joint_angle_for(0.125).value / deg, 20.04, 0.05); }

TEST(Joint, ClosedFormsAndTheirSlopes) {
  for (double g : {3 * deg, 20 * deg, 50 * deg}) {
    EXPECT_NEAR(joint_angle_for(joint_fluctuation(g).value).value, g, 1e-12);
    EXPECT_NEAR(joint_output(g, joint_equal_angle(g, PinAt::across).value, PinAt::across).slope, 1, 1e-12);
    EXPECT_NEAR(joint_output(g, joint_equal_angle(g, PinAt::in_plane).value, PinAt::in_plane).slope, 1, 1e-12);
    expect_slope(
        joint_fluctuation(g).slope, [](double x) { return joint_fluctuation(x).value; }, g);
    for (PinAt pin : {PinAt::across, PinAt::in_plane})
      expect_slope(
          joint_equal_angle(g, pin).slope, [&](double x) { return joint_equal_angle(x, pin).value; }, g);
  }
  expect_slope(
      joint_angle_for(0.1).slope, [](double x) { return joint_angle_for(x).value; }, 0.1);
  EXPECT_FALSE(joint_fluctuation(95 * deg).valid);
}

// JNT-07 again: texts that measure from the plane of the shafts have 47.81 deg there.
TEST(Joint, OutputAngleFromEitherStart) {
  EXPECT_NEAR(joint_output(25 * deg, 45 * deg, PinAt::across).value / deg, 42.19, 0.01);
  EXPECT_NEAR(joint_output(25 * deg, 45 * deg, PinAt::in_plane).value / deg, 47.81, 0.01);
  EXPECT_NEAR(joint_output(25 * deg, 180 * deg, PinAt::in_plane).value / deg, 180, 1e-9);  // above -180 up to 180
  EXPECT_NEAR(joint_output(25 * deg, -180 * deg, PinAt::across).value / deg, 180, 1e-9);
  expect_slope(
      joint_output(40 * deg, 1, PinAt::in_plane).slope,
      [](double x) { return joint_output(40 * deg, x, PinAt::in_plane).value; }, 1);
}

TEST(Joint, CompoundAngle) {
  EXPECT_NEAR(compound_angle(10 * deg, 0).angle, 10 * deg, 1e-12);
  // By hand: a shaft along (1, tan 4 deg, tan 3 deg) against x, by its vectors.
  const Vec3 shaft{1, std::tan(4 * deg), std::tan(3 * deg)};
  const auto c = compound_angle(3 * deg, 4 * deg);
  EXPECT_NEAR(c.angle, joint_angle({1, 0, 0}, shaft), 1e-12);
  expect_slope(
      c.slope_side, [](double x) { return compound_angle(x, 4 * deg).angle; }, 3 * deg);
  expect_slope(
      c.slope_plan, [](double x) { return compound_angle(3 * deg, x).angle; }, 4 * deg);
  EXPECT_EQ(compound_angle(0, 0).angle, 0);
}

}  // namespace
}  // namespace sw::physics
