#include "systems/brakes/rig.hpp"

using namespace sw;
using namespace sw::rig;
using namespace sw::brakes;

namespace {

TEST(BrakesBlocks, SharesTheForceTheRoadAsks) {
  const Model m = hand_brakes();
  auto b = bench<brakes::System>(m, "brakes.effort");
  b.give("road.force", -8000).give("driveline.wheel_radius", 13 * inch).run();
  EXPECT_DOUBLE_EQ(b.get("brakes.force"), 8000);
  EXPECT_NEAR(b.get("brakes.front_force") + b.get("brakes.rear_force"), 8000, 1e-3);
  EXPECT_NEAR(b.get("brakes.front_torque"), b.get("brakes.front_force") * 13 * inch, 1e-9);
  EXPECT_LT(b.get("brakes.rear_pressure"), b.get("brakes.line_pressure"));
}

TEST(BrakesBlocks, RestsWhereTheEnginePulls) {
  const Model m = hand_brakes();
  auto b = bench<brakes::System>(m, "brakes.effort");
  b.give("road.force", 500).give("driveline.wheel_radius", 13 * inch).run();
  EXPECT_EQ(b.get("brakes.line_pressure"), 0);
  EXPECT_EQ(b.get("brakes.front_force"), 0);
  auto p = bench<brakes::System>(m, "brakes.pedal");
  p.give("brakes.line_pressure", 0).give("vacuum.booster", 0).run();
  EXPECT_EQ(p.get("brakes.pedal"), 0);  // the spring of a booster without vacuum asks nothing of a foot that rests
  p.give("brakes.line_pressure", 500 * psi).give("vacuum.booster", 18 * in_hg).run();
  EXPECT_NEAR(p.get("brakes.pedal") / lbf, 500 * 0.99402 / 16, 0.01);
}

// Brakes and road load together slow the car as the duty says: 0.8 g over 3.42 s.
TEST(BrakesBlocks, APanicStopAsksForWhatTheRoadDoesNotTake) {
  const Drive d(hand_car(), "panic-stop");
  const double highest = d.highest("brakes.force");
  EXPECT_GT(highest, 0.95 * 3700 * pound * 7.84);
  EXPECT_LT(highest, 3700 * pound * 7.85);
  EXPECT_EQ(d.first("brakes.force"), 0);
}

}  // namespace
