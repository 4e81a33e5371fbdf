#include "systems/rig.hpp"

using namespace sw;
using namespace sw::rig;

namespace {

driveline::Model hand_driveline(const std::string& change = "") {
  return resolved<driveline::System>(hand_car(change)).model;
}

// Rule of the trade: rpm = mph x axle x gear x 336 / tyre diameter in inches (336.13 = 63360 / (60 pi)).
TEST(DrivelineBlocks, EngineSpeedByTheTradesRule) {
  const auto m = hand_driveline();
  auto b = bench<driveline::System>(m, "driveline.gearing");
  const double ratios[] = {2.46, 1.46, 1.0, 0.70};
  for (int gear = 0; gear < 4; ++gear) {
    b.give("road.speed", 65 * mph).give("driveline.gear", gear).run();
    const double slip = gear == 3 ? 1.0 : 1.06;  // the converter locks in top only
    EXPECT_NEAR(b.get("driveline.input_speed") / rpm, 65 * 3.25 * ratios[gear] * 336.13 / 26.0 * slip, 0.5) << gear;
  }
}

TEST(DrivelineBlocks, GearsAreSortedWhateverTheirNamesAndOrder) {
  const auto m = hand_driveline("[driveline.gear.first]\nratio = 0.7\n[driveline.gear.overdrive]\nratio = 2.46\n");
  ASSERT_EQ(m.gears, 4u);
  EXPECT_EQ(m.ratio[0], 2.46);
  EXPECT_EQ(m.ratio[3], 0.70);
}

// Torque passes an unlocked converter unchanged at light slip, so power in over power out is the speed ratio 1.06; the
// gears lose a tenth before that. 10 kW at the wheels: 10 / 0.9 x 1.06 = 11.778 kW in; 0.6667 kW slips away.
TEST(DrivelineBlocks, PowerAndItsLossesByHand) {
  const auto m = hand_driveline();
  auto b = bench<driveline::System>(m, "driveline.gearing");
  b.give("road.speed", 20).give("road.power", 10e3).give("driveline.gear", 2).run();
  EXPECT_NEAR(b.get("driveline.power"), 11777.8, 0.1);
  EXPECT_NEAR(b.get("driveline.cooler_heat"), 666.7 + 0.5 * 0.1 * 11777.8, 0.1);
  EXPECT_LT(b.get("driveline.cooler_heat"), b.get("driveline.power") - 10e3);  // no more heat than was lost
  b.give("road.power", -10e3).run();
  EXPECT_EQ(b.get("driveline.power"), 0);  // the overrun asks for no fuel
  const auto own_cooler = hand_driveline("[driveline]\ncooler_in_radiator = false\n");
  auto c = bench<driveline::System>(own_cooler, "driveline.gearing");
  EXPECT_EQ(c.give("road.speed", 20).give("road.power", 10e3).run().get("driveline.cooler_heat"), 0);
}

// In a manual nothing slips and the box keeps its heat.
TEST(DrivelineBlocks, ManualNeitherSlipsNorHeatsTheCoolant) {
  const auto m = hand_driveline("[driveline]\ngearbox = \"manual\"\n");
  auto b = bench<driveline::System>(m, "driveline.gearing");
  b.give("road.speed", 50 * mph).give("road.power", 9e3).give("driveline.gear", 2).run();
  EXPECT_NEAR(b.get("driveline.input_speed") / rpm, 50 * 3.25 * 336.13 / 26, 0.5);
  EXPECT_NEAR(b.get("driveline.power"), 10e3, 1e-6);
  EXPECT_EQ(b.get("driveline.cooler_heat"), 0);
}

// At 65 mph top turns 1912 rpm, above 1400: held. At 50 mph on 6 % the band is 1400 + 600 rpm: third turns 2101 rpm,
// top would turn 1471.
TEST(DrivelineBlocks, GearOfTheDuties) {
  Drive d(hand_car(), "cruise");
  EXPECT_EQ(d.last("driveline.gear"), 3);
  d.run("grade");
  EXPECT_EQ(d.last("driveline.gear"), 2);
  d.run("hot-idle");
  EXPECT_EQ(d.last("driveline.gear"), 0);
}

// The guard says exactly when `next` would move, at every speed and gear; and no gear is both too low and too high.
TEST(DrivelineBlocks, GuardAndNextAgreeAndSettle) {
  const auto m = hand_driveline();
  auto b = bench<driveline::System>(m, "driveline.shift");
  b.give("engine.red_line", 5500 * rpm);
  for (double speed = 0; speed < 60; speed += 0.25)
    for (double grade : {-0.05, 0.0, 0.08}) {
      b.give("road.speed", speed).give("duty.grade", grade);
      for (int gear = 0; gear < 4; ++gear) EXPECT_EQ(b.guard(gear) > 0, b.next(gear) != gear) << speed << " " << gear;
      double gear = 0;
      for (int i = 0; i < 6; ++i) gear = b.next(gear);
      EXPECT_EQ(b.next(gear), gear) << "hunts at " << speed << " m/s";
    }
}

TEST(DrivelineBlocks, PullShiftsAtTheRedLine) {
  const auto m = hand_driveline();
  auto b = bench<driveline::System>(m, "driveline.shift");
  b.give("engine.red_line", 5500 * rpm).give("duty.pull", 1);
  const double at =
      0.97 * 5500 * 26.0 / (3.25 * 2.46 * 336.13 * 1.06) * mph;  // first, slipping, at 97 % of the red line
  EXPECT_EQ(b.give("road.speed", 0.999 * at).next(0), 0);
  EXPECT_EQ(b.give("road.speed", 1.001 * at).next(0), 1);
  EXPECT_EQ(b.give("road.speed", 1.0).next(2), 2) << "a pull never shifts down";
  Drive d(hand_car(), "full-throttle");
  EXPECT_LT(d.highest("engine.speed"), 5500 * rpm * 1.01);
}

// Force at the wheels = torque x ratio x axle x efficiency / radius: 300 N m in first, 300 x 7.995 x 0.9 / 0.3302.
TEST(DrivelineBlocks, ThrustByHand) {
  const auto m = hand_driveline();
  auto b = bench<driveline::System>(m, "driveline.thrust");
  EXPECT_NEAR(b.give("engine.full_torque", 300).run().get("driveline.pull_force"), 300 * 2.46 * 3.25 * 0.9 / 0.3302,
              0.5);
}

TEST(DrivelineBlocks, NoGearsIsSaid) {
  auto r = resolved<driveline::System>(
      hand_car("[driveline.gear]\nfirst = false\nsecond = false\nthird = false\noverdrive = false\n"));
  ASSERT_EQ(r.missing.size(), 1u);
  EXPECT_EQ(r.missing[0], "driveline.gear: at least one gear");
}

TEST(DrivelineBlocks, TellsTheRollingRadius) {
  const auto m = hand_driveline();
  EXPECT_NEAR(bench<driveline::System>(m, "driveline.wheel").run().get("driveline.wheel_radius"), 13 * inch, 1e-12);
}

}  // namespace
