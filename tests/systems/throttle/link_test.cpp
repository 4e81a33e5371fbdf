#include "systems/throttle/link.hpp"

#include "systems/rig.hpp"

using namespace sw;
using namespace sw::rig;
using namespace sw::throttle;

namespace {

// Equal arms, a rod as long as the pivots are apart: a parallelogram, whose two levers turn alike (any theory of
// machines). 60 deg from the line ahead on one is 120 deg from the line back on the other.
TEST(ThrottleLink, AParallelogramTurnsBothAlike) {
  LinkGeometry l{
      .arm_m = 2, .start_rad = 60 * degree, .driven_arm_m = 2, .driven_start_rad = 120 * degree, .apart_m = 9};
  l.rod_m = rod_between_m(l);
  EXPECT_NEAR(l.rod_m, 9, 1e-12);
  l.crossed = *stands_crossed(l);
  for (double turn = 0; turn < 55 * degree; turn += degree)
    EXPECT_NEAR(link_at(l, turn).value().driven_rad, turn, 1e-9);
  // Square to the arms the rod is as far from standing in line as can be, 60 deg on it has 60 left.
  EXPECT_NEAR(link_at(l, 30 * degree)->from_dead_rad / degree, 90, 1e-6);
  EXPECT_NEAR(link_at(l, 50 * degree)->from_dead_rad / degree, 70, 1e-6);
}

// With the pins on opposite sides and both arms square the same rod crosses the line of pivots: sqrt(apart^2 + (2
// arm)^2) by Pythagoras, and a small turn of one is a small turn of the other the other way round, seen from above.
TEST(ThrottleLink, PinsOnOppositeSides) {
  LinkGeometry l{.pins_opposite = true,
                 .arm_m = 1.5,
                 .start_rad = 90 * degree,
                 .driven_arm_m = 1.5,
                 .driven_start_rad = 90 * degree,
                 .apart_m = 8};
  l.rod_m = rod_between_m(l);
  EXPECT_NEAR(l.rod_m, std::hypot(8, 3), 1e-12);
  l.crossed = *stands_crossed(l);
  EXPECT_NEAR(link_at(l, 0)->driven_rad, 0, 1e-9);
  EXPECT_NEAR(link_at(l, 0.1 * degree)->driven_rad / degree, 0.1, 1e-3);
}

// The pins stay a rod apart, whatever the turn: the link's own definition, tried on an uneven one and pushed as well.
TEST(ThrottleLink, TheRodKeepsItsLength) {
  for (const bool pushes : {false, true}) {
    LinkGeometry l{.pushes = pushes,
                   .arm_m = 3,
                   .start_rad = 100 * degree,
                   .driven_arm_m = 1.2,
                   .driven_start_rad = 80 * degree,
                   .apart_m = 11};
    l.rod_m = rod_between_m(l);
    l.crossed = *stands_crossed(l);
    for (double turn = 0; turn < 15 * degree; turn += degree) {
      const double way = pushes ? -1 : 1, a = l.start_rad + way * turn;
      const double b = l.driven_start_rad - way * link_at(l, turn).value().driven_rad;
      EXPECT_NEAR(std::hypot(11 - 1.2 * std::cos(b) - 3 * std::cos(a), 1.2 * std::sin(b) - 3 * std::sin(a)), l.rod_m,
                  1e-9);
      EXPECT_GE(link_at(l, turn)->driven_rad, -1e-12);
    }
  }
}

// A cable's lever that starts square: pull = arm sin(turn), and the second, square too, opens by asin(pull/arm).
TEST(ThrottleLink, ACableByTheSine) {
  const LinkGeometry l{.cable = true,
                       .arm_m = 2,
                       .start_rad = 90 * degree,
                       .driven_arm_m = 1,
                       .driven_start_rad = 90 * degree,
                       .slack_m = 0.05};
  const double pull = 2 * std::sin(20 * degree) - 0.05;
  EXPECT_NEAR(link_at(l, 20 * degree)->driven_rad, std::asin(pull), 1e-12);
  EXPECT_NEAR(link_at(l, 0)->driven_rad, -std::asin(0.05), 1e-12);
  EXPECT_FALSE(link_at(l, 40 * degree));  // 2 sin 40 - 0.05 = 1.24 is more than the second lever's arm
  EXPECT_NEAR(link_at(l, 0, {.away_m = 0.3})->driven_rad, std::asin(0.25), 1e-12);
}

}  // namespace
