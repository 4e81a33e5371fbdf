#include "physics/drum_factor.hpp"

#include <gtest/gtest.h>
#include <rapidcheck/gtest.h>

#include <cmath>
#include <numbers>

using namespace sw::physics;

namespace {

constexpr double deg = std::numbers::pi / 180;
/// Shoes of 150 mm radius, lining 0 to 126 degrees, pivot at 122.7 mm, lever 212 mm.
constexpr Shoe textbook{.pivot = 122.7 / 150, .lever = 212.0 / 150, .start = 0, .end = 126 * deg};

// Shigley, Mechanical Engineering Design, ch. 16, internal expanding rim brake (300 mm drum, friction 0.32): leading
// shoe 366 N m, trailing 162 N m, both by 2.28 kN (from memory; printed digits, so 1 %).
TEST(DrumFactor, ShoesOfATextbookBrake) {
  const double per_force = 0.150 * 2280;
  EXPECT_NEAR(shoe_factor(textbook, 0.32, true).value * per_force, 366, 3.7);
  EXPECT_NEAR(shoe_factor(textbook, 0.32, false).value * per_force, 162, 1.7);
}

TEST(DrumFactor, ArrangementsAreSumsOfShoes) {
  const double lead = shoe_factor(textbook, 0.32, true).value, trail = shoe_factor(textbook, 0.32, false).value;
  EXPECT_DOUBLE_EQ(drum_factor(DrumKind::leading_trailing, textbook, 0.32).value, lead + trail);
  EXPECT_DOUBLE_EQ(drum_factor(DrumKind::two_leading, textbook, 0.32).value, 2 * lead);
  // Equilibrium by hand: the adjuster at b carries (a + drag) / b of the cylinder's force.
  const double b = textbook.pivot, a = textbook.lever - b;
  EXPECT_NEAR(drum_factor(DrumKind::duo_servo, textbook, 0.32).value, lead + lead * (a + lead) / b, 1e-12);
}

// Friction that holds a leading shoe by itself: Mn = f (turn), beyond which there is no figure.
TEST(DrumFactor, AShoeThatLocksByItselfIsNoFigure) {
  EXPECT_FALSE(shoe_factor(textbook, 1.5, true).valid);
  EXPECT_TRUE(shoe_factor(textbook, 1.5, false).valid);
  EXPECT_FALSE(drum_factor(DrumKind::duo_servo, textbook, 1.5).valid);
}

RC_GTEST_PROP(DrumFactor, SlopesAreTheirOwnAndDuoServoIsTheFiercest, ()) {
  const Shoe shoe{.pivot = *rc::gen::inRange(75, 90) / 100.0,
                  .lever = *rc::gen::inRange(150, 175) / 100.0,
                  .start = *rc::gen::inRange(5, 30) * deg,
                  .end = *rc::gen::inRange(110, 145) * deg};
  const double f = *rc::gen::inRange(20, 45) / 100.0, h = 1e-6;
  for (auto kind : {DrumKind::leading_trailing, DrumKind::two_leading, DrumKind::duo_servo}) {
    const Slope c = drum_factor(kind, shoe, f);
    RC_ASSERT(c.valid);
    const double slope = (drum_factor(kind, shoe, f + h).value - drum_factor(kind, shoe, f - h).value) / (2 * h);
    RC_ASSERT(std::abs(slope - c.slope) < 1e-4 * std::abs(c.slope));
  }
  RC_ASSERT(drum_factor(DrumKind::duo_servo, shoe, f).value > drum_factor(DrumKind::two_leading, shoe, f).value);
  RC_ASSERT(drum_factor(DrumKind::two_leading, shoe, f).value > drum_factor(DrumKind::leading_trailing, shoe, f).value);
}

}  // namespace
