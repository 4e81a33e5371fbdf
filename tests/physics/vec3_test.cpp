#include "physics/vec3.hpp"

#include <gtest/gtest.h>
#include <rapidcheck/gtest.h>

#include <numbers>

namespace sw::physics {
namespace {

constexpr double quarter = std::numbers::pi / 2;

void expect_near(const Vec3& got, const Vec3& expected) { EXPECT_NEAR(norm(got - expected), 0, 1e-12); }

TEST(Vec3, AxesMakeARightHand) {
  constexpr Vec3 x{1, 0, 0}, y{0, 1, 0}, z{0, 0, 1};
  static_assert(cross(x, y) == z && cross(y, z) == x && cross(z, x) == y);
  expect_near(turned(x, z, quarter), y);
  expect_near(turned(z, z, 1), z);
  EXPECT_NEAR(angle_about(z, x, y), quarter, 1e-15);
  EXPECT_NEAR(angle_about(-z, x, y), -quarter, 1e-15);
  EXPECT_NEAR(angle_about(z, x, Vec3{0, 2, 7}), quarter, 1e-15);  // what lies along the axis is left out
  EXPECT_DOUBLE_EQ(angle_about(z, x, -x), 2 * quarter);
  EXPECT_DOUBLE_EQ(angle_about(-z, x, -x), 2 * quarter);
}

TEST(Vec3, AnglesAreSharpAtTheirEnds) {  // an arc cosine has lost a part in 1e8 here
  EXPECT_NEAR(angle_between({1, 0, 0}, {1, 1e-10, 0}), 1e-10, 1e-20);
  EXPECT_DOUBLE_EQ(angle_between({1, 0, 0}, {-3, 0, 0}), 2 * quarter);
}

Vec3 any() {
  const auto part = [] { return 0.01 * *rc::gen::inRange(-500, 500); };
  return {part(), part(), part()};
}

RC_GTEST_PROP(Vec3, TurningKeepsLengthsAndAddsUp, ()) {
  const Vec3 v = any(), a = any();
  RC_PRE(norm(a) > 0.1);
  const double t = 0.01 * *rc::gen::inRange(-300, 300), u = 0.01 * *rc::gen::inRange(-300, 300);
  const Vec3 axis = unit(a), once = turned(v, axis, t);
  RC_ASSERT(std::abs(norm(once) - norm(v)) < 1e-12);
  RC_ASSERT(std::abs(dot(once, axis) - dot(v, axis)) < 1e-12);
  RC_ASSERT(norm(turned(once, axis, u) - turned(v, axis, t + u)) < 1e-12);
  if (norm(cross(axis, v)) > 1e-3)
    RC_ASSERT(std::abs(std::remainder(angle_about(axis, v, once) - t, 4 * quarter)) < 1e-9);
}

RC_GTEST_PROP(Vec3, SquareToIsSquare, ()) {
  const Vec3 a = any();
  RC_PRE(norm(a) > 0.1);
  RC_ASSERT(std::abs(dot(any_square_to(a), a)) < 1e-12);
  RC_ASSERT(std::abs(norm(any_square_to(a)) - 1) < 1e-12);
}

}  // namespace
}  // namespace sw::physics
