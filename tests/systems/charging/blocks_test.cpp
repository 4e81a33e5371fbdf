#include "systems/rig.hpp"

using namespace sw;
using namespace sw::rig;

namespace {

charging::Model hand_charging(const std::string& change = "") {
  return resolved<charging::System>(hand_car(change)).model;
}

// Data sheet's two points: cold output at 23 degC air, hot output (0.8) at 95 degC air, both with the full winding rise
// above that air (75 K): 98 and 170 degC of the winding.
TEST(ChargingBlocks, HotDeratePassesThroughBothPoints) {
  const auto m = hand_charging();
  auto b = bench<charging::System>(m, "charging.sources");
  b.give("belts.alternator_speed", 2000 * rpm).give("bay.temperature", 330).give("duty.ambient", 298.15);
  EXPECT_NEAR(b.give("alternator.temperature", 98 + zero_c).run().get("alternator.available"), 100, 0.01);
  EXPECT_NEAR(b.give("alternator.temperature", 170 + zero_c).run().get("alternator.available"), 80, 0.01);
  EXPECT_NEAR(b.give("alternator.temperature", 134 + zero_c).run().get("alternator.available"), 90, 0.01);
  EXPECT_EQ(b.get("alternator.greatest"), 150);
}

// -7 mV/K from 25 degC: at 75 degC under the bonnet 14.4 - 0.35 V.
TEST(ChargingBlocks, RegulatorFollowsItsTemperature) {
  const auto m = hand_charging();
  auto b = bench<charging::System>(m, "charging.sources");
  EXPECT_NEAR(b.give("bay.temperature", 75 + zero_c).run().get("regulator.voltage"), 14.05, 1e-9);
}

// Shaft torque = V I / (efficiency w): 14 V, 80 A, 0.55 at 2500 rpm: 2036 W over 261.8 rad/s = 7.778 N m.
TEST(ChargingBlocks, TorqueByHand) {
  const auto m = hand_charging();
  auto b = bench<charging::System>(m, "charging.after");
  b.give("belts.alternator_speed", 2500 * rpm)
      .give("alternator.voltage", 14)
      .give("alternator.current", 80)
      .give("alternator.available", 100);
  EXPECT_NEAR(b.run().get("alternator.torque"), 7.778, 0.001);
  b.give("belts.alternator_speed", 0).run();
  EXPECT_EQ(b.get("alternator.torque"), 0);
}

// The winding goes to its air plus the rise at its share of what it can give.
TEST(ChargingBlocks, WindingRestsWhereItShould) {
  const auto m = hand_charging();
  auto b = bench<charging::System>(m, "charging.after");
  b.give("bay.temperature", 340)
      .give("alternator.current", 60)
      .give("alternator.available", 120)
      .give("alternator.temperature", 340 + 37.5);
  EXPECT_NEAR(b.run().rate("alternator.temperature"), 0, 1e-12);
}

// Charge kept is 0.95 of the ampere-hours up to 80 % and all of them going out: 7 A into 70 A h at half charge is
// 0.95 x 0.1 / h; out of it 0.1 / h; self-discharge of 0.2 %/day at 20 degC beside it.
TEST(ChargingBlocks, ChargeIsBookedWithItsEfficiency) {
  const auto m = hand_charging();
  auto b = bench<charging::System>(m, "charging.after");
  b.give("duty.ambient", 293.15).give("battery.charge", 0.5);
  const double self = 0.002 / day * 0.5;
  EXPECT_NEAR(b.give("battery.current", 7).run().rate("battery.charge") * hour, 0.095 - self * hour, 1e-9);
  EXPECT_NEAR(b.give("battery.current", -7).run().rate("battery.charge") * hour, -0.1 - self * hour, 1e-9);
}

// Ah in = Ah out x efficiency over whole runs, from the trace's own current.
TEST(ChargingBlocks, ChargeAtTheEndIsTheCurrentSummedUp) {
  for (auto duty : {"hot-idle", "cruise", "cold-crank", "parked"}) {
    Drive d(hand_car(), duty);
    double sum = d.first("battery.charge");
    for (std::size_t r = 1; r < d.trace().rows(); ++r) {
      const double dt = d.trace().time[r] - d.trace().time[r - 1];
      const double i = 0.5 * (d.at(r, "battery.current") + d.at(r - 1, "battery.current"));
      const double s = 0.5 * (d.at(r, "battery.charge") + d.at(r - 1, "battery.charge"));
      const double share = i <= 0 ? 1 : 0.95 - 0.35 * std::clamp((s - 0.8) / 0.2, 0.0, 1.0);
      sum += dt * (i * share / (70 * hour) - 0.002 / day * std::exp2((d.first("duty.ambient") - 293.15) / 10) * s);
    }
    EXPECT_NEAR(d.last("battery.charge"), sum,
                0.01 * std::abs(d.last("battery.charge") - d.first("battery.charge")) + 1e-6)
        << duty;
  }
}

TEST(ChargingBlocks, ChargeStaysBetweenEmptyAndFull) {
  // 1 A of draw empties 70 A h in under three days; the garage winter has 120.
  Drive d(hand_car("[wiring.load.clock_and_memory]\ncurrent = \"1 A\"\n"), "storage");
  EXPECT_GE(d.lowest("battery.charge"), -0.02);
  d.run("cruise");
  EXPECT_LE(d.highest("battery.charge"), 1.0);
}

// The starter asks for its warm current at 20 degC and more in the cold; cold cranking of the trade: 2 to 3 times the
// warm torque at -18 degC on 15W-40 (common practice).
TEST(ChargingBlocks, ColdOilAsksForMore) {
  const auto m = hand_charging();
  auto b = bench<charging::System>(m, "charging.sources");
  b.give("duty.cranking", 1).give("engine.oil_temperature", 293.15);
  EXPECT_NEAR(b.run().get("starter.asked"), 170, 1e-9);
  const double cold = b.give("engine.oil_temperature", 255.15).run().get("starter.asked");
  EXPECT_GT(cold, 2 * 170);
  EXPECT_LT(cold, 3 * 170);
  EXPECT_EQ(b.give("duty.cranking", 0).run().get("starter.asked"), 0);
}

// Ohm at the posts while cranking: volts = own voltage less current times resistance.
TEST(ChargingBlocks, CrankingByOhm) {
  Drive d(hand_car(), "cold-crank");
  for (std::size_t r = 0; r < d.trace().rows(); ++r)
    EXPECT_NEAR(d.at(r, "battery.voltage"),
                d.at(r, "battery.emf") + d.at(r, "battery.current") * d.at(r, "battery.resistance"), 1e-6);
  EXPECT_GT(d.first("starter.current"), 300);
  EXPECT_EQ(d.highest("alternator.current"), 0);
}

}  // namespace
