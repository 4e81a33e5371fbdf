#include "systems/judged.hpp"

using namespace sw;
using namespace sw::rig;

namespace {

belts::Model hand_belts(const std::string& change = "") { return resolved<belts::System>(hand_car(change)).model; }

// 6.5 in over 2.4 in: 2.70833; over 5.5 in: 1.18182. The pump runs on the belt's back: the other way round.
TEST(BeltsBlocks, RatiosAndDirections) {
  const auto m = hand_belts();
  auto b = bench<belts::System>(m, "belts.speeds");
  b.give("engine.speed", 750 * rpm).run();
  EXPECT_NEAR(b.get("belts.alternator_speed") / rpm, 2031.25, 1e-6);
  EXPECT_NEAR(b.get("belts.pump_speed") / rpm, 886.36, 0.01);
  EXPECT_EQ(b.get("belts.fan_speed"), 0);  // no engine-driven fan in it
  b.give("belts.slip", 0.2).run();
  EXPECT_NEAR(b.get("belts.alternator_speed") / rpm, 0.8 * 2031.25, 1e-6);
}

// Known of the routing alone: 6.5 / 2.4 in; the pump on the belt's back turns against the crank.
TEST(BeltsBlocks, RoutingWaitsForNoOtherFigure) {
  const auto m = hand_belts();
  auto b = bench<belts::System>(m, "belts.routing");
  b.run();
  EXPECT_NEAR(b.get("belts.alternator_ratio"), 6.5 / 2.4, 1e-12);
  EXPECT_EQ(b.get("belts.pump_direction"), -1);
}

// Euler with the groove's wedge (any theory of machines): k = exp(0.25 x 150 deg / sin 20 deg) = exp(0.25 x 2.61799 /
// 0.342020) = 6.778. A sprung arm holds the slack strand: 75 lbf = 333.6 N, tight 333.6 k, at 1.2 in radius:
// 333.6 x 5.778 x 0.03048 = 58.75 N m. Fixed centres hold the sum: 2 x 333.6 x 5.778 / 7.778 x 0.03048 = 15.11 N m.
TEST(BeltsBlocks, GripByEuler) {
  EXPECT_NEAR(hand_belts().of(belts::Drives::alternator).grip_n_m, 58.75, 0.05);
  EXPECT_NEAR(hand_belts("[belts.belt.front]\ntensioner = \"fixed\"\n").of(belts::Drives::alternator).grip_n_m, 15.11,
              0.02);
  EXPECT_NEAR(
      hand_belts("[belts.belt.front]\ntensioner = \"fixed\"\ncount = 2\n").of(belts::Drives::alternator).grip_n_m,
      30.22, 0.04);
  // On its back a belt is flat: k = exp(0.25 x 2.61799) = 1.9242; 333.6 x 0.9242 x 0.03048 = 9.398 N m.
  EXPECT_NEAR(
      hand_belts("[belts.belt.front.pulley.alternator]\nside = \"back\"\n").of(belts::Drives::alternator).grip_n_m,
      9.398, 0.01);
}

TEST(BeltsBlocks, AFirmBeltDoesNotSlip) {
  for (auto duty : {"hot-idle", "grade", "commute"}) {
    Drive d(hand_car(), duty);
    EXPECT_EQ(d.highest("belts.slip"), 0) << duty;
    EXPECT_LE(d.highest("alternator.torque"), d.first("belts.alternator_grip"));
  }
}

// Where it slips the torque stands at the grip: the alternator slows until it asks no more than the belt can pull.
TEST(BeltsBlocks, InTheSlipRegionTorqueEqualsGrip) {
  Drive d(hand_car("[belts.belt.front]\ntension = \"12 lbf\"\ntensioner = \"fixed\"\n"), "hot-idle");
  const double grip = d.first("belts.alternator_grip");
  int slipping = 0;
  for (std::size_t r = 0; r < d.trace().rows(); ++r) {
    const double slip = d.at(r, "belts.slip");
    ASSERT_GE(slip, 0);
    ASSERT_LT(slip, 0.95);
    if (slip <= 1e-6) continue;
    ++slipping;
    EXPECT_NEAR(d.at(r, "alternator.torque"), grip, 0.002 * grip);
    EXPECT_NEAR(d.at(r, "belts.alternator_speed"), d.at(r, "engine.speed") * 6.5 / 2.4 * (1 - slip), 1e-6);
  }
  EXPECT_GT(slipping, 10);
  Judging j(hand_car("[belts.belt.front]\ntension = \"12 lbf\"\ntensioner = \"fixed\"\n"), "hot-idle");
  EXPECT_LT(j.one("belts.grip", "hot-idle").margin().value(), 0);
}

// The crank gives what the shaft takes and what turns to heat at the slipping pulley: torque times unslipped speed.
TEST(BeltsBlocks, AccessoryPowerCountsSlipHeat) {
  const auto m = hand_belts();
  auto b = bench<belts::System>(m, "belts.grip");
  b.give("alternator.torque", 10)
      .give("belts.alternator_speed", 160)
      .give("belts.slip", 0.2)
      .give("cooling.pump_power", 300);
  b.give("cooling.fan_power", 200).give("air_conditioning.compressor_power", 2000).run();
  EXPECT_NEAR(b.get("accessories.power"), 10 * 200 + 2500, 1e-9);
}

TEST(BeltsBlocks, SaysWhatIsNotDriven) {
  auto r = resolved<belts::System>(hand_car("[belts.belt.front.pulley]\npump = false\nalternator = false\n"));
  ASSERT_EQ(r.missing.size(), 2u);
  EXPECT_NE(r.missing[0].find("alternator"), std::string::npos);
  EXPECT_NE(r.missing[1].find("coolant pump"), std::string::npos);
}

// Two pulleys said to drive the same thing: a contradiction, not a choice of the last one read.
TEST(BeltsBlocks, TwoPulleysForOneAccessoryAreSaid) {
  auto r = resolved<belts::System>(faulty_car(
      "[belts.belt.front.pulley.spare]\ndrives = \"alternator\"\ndiameter = \"3 in\"\nwrap = \"120 deg\"\n"));
  ASSERT_EQ(r.missing.size(), 1u);
  EXPECT_NE(r.missing[0].find("spare"), std::string::npos) << r.missing[0];
}

}  // namespace
