#include "physics/rigid_motion.hpp"

#include <gtest/gtest.h>
#include <rapidcheck/gtest.h>

#include <numbers>

namespace sw::physics {
namespace {

constexpr double deg = std::numbers::pi / 180;

void expect_near(const Vec3& got, const Vec3& wanted) { EXPECT_LT(norm(got - wanted), 1e-12); }

// Closed forms: a third of a turn about the space diagonal changes the axes round; half a turn about an upright axis
// mirrors a point in it.
TEST(RigidMotion, TurnsInClosedForm) {
  const RigidMotion third = turned_about({}, unit({1, 1, 1}), 120 * deg);
  expect_near(third.of({1, 0, 0}), {0, 1, 0});
  expect_near(third.of({0, 1, 0}), {0, 0, 1});
  expect_near(turned_about({2, 3, 0}, {0, 0, 1}, 180 * deg).of({5, 4, 7}), {-1, 2, 7});
}

TEST(RigidMotion, FirstOneThenTheOther) {
  const RigidMotion turn = turned_about({1, 0, 0}, {0, 0, 1}, 90 * deg), up = shifted({0, 0, 2});
  expect_near(then(turn, up).of({2, 0, 0}), {1, 1, 2});
  const RigidMotion onto = turned_about({0, 1, 0}, {1, 0, 0}, 90 * deg);
  expect_near(then(turn, onto).of({2, 0, 0}), onto.of(turn.of({2, 0, 0})));
}

// Closed form: a level trailing arm of 0.5 m whose end drops by 0.1 m has turned by asin(0.1/0.5).
TEST(RigidMotion, TurnThatRaisesAPoint) {
  const Vec3 axis{0, 1, 0};
  const auto down = turn_for_rise({0.5, 0.2, 0.3}, {0, 0, 0.3}, axis, -0.1);
  ASSERT_TRUE(down);
  EXPECT_NEAR(*down, std::asin(0.2), 1e-12);
  EXPECT_NEAR(turned_about({0, 0, 0.3}, axis, *down).of({0.5, 0.2, 0.3}).z, 0.2, 1e-12);
  EXPECT_NEAR(*turn_for_rise({0.5, 0.2, 0.3}, {0, 0, 0.3}, axis, 0), 0, 1e-9);
  EXPECT_FALSE(turn_for_rise({0.5, 0, 0}, {}, axis, 0.6));
  EXPECT_FALSE(turn_for_rise({0, 3, 0}, {}, axis, 0.1));
}

RC_GTEST_PROP(RigidMotion, KeepsDistancesAndTheAxis, ()) {
  const auto point = [] {
    const auto part = [] { return 0.1 * *rc::gen::inRange(-20, 21); };
    return Vec3{part(), part(), part()};
  };
  const Vec3 on = point(), way = point(), p = point(), q = point();
  RC_PRE(norm(way) > 0.05);
  const Vec3 axis = unit(way);
  const double angle = 0.01 * *rc::gen::inRange(-400, 401);
  const RigidMotion m = turned_about(on, axis, angle);
  RC_ASSERT(std::abs(norm(m.of(p) - m.of(q)) - norm(p - q)) < 1e-12);
  RC_ASSERT(norm(m.of(on + 3.0 * axis) - (on + 3.0 * axis)) < 1e-11);
  // The chord: 2 r sin(angle/2).
  const double r = distance_from_axis(p, on, axis);
  RC_ASSERT(std::abs(norm(m.of(p) - p) - 2 * r * std::abs(std::sin(angle / 2))) < 1e-11);
}

}  // namespace
}  // namespace sw::physics
