#include "systems/ignition/rig.hpp"

using namespace sw;
using namespace sw::rig;

namespace {

const std::string ballast = "ballast = \"1.4 ohm\"\n";

TEST(CoilRequirements, SparkOfTheLeastRow) {
  const Judging j(hand_car(module_ignition()), "hot-idle");
  const auto& f = j.one("ignition.spark", "hot-idle").verdict;
  const auto& t = j.trace("hot-idle");
  const auto slot = static_cast<std::size_t>(j.car().graph().slot("ignition.spark_energy"));
  EXPECT_DOUBLE_EQ(*f.predicted, t.at(t.lowest(slot), slot));
  EXPECT_DOUBLE_EQ(*f.low, 15e-3);
}

// At 5500 rpm eight cylinders leave 2.727 ms from spark to spark, of which 1.927 are left: by hand
// (V - 1)/1 ohm (1 - e^(-1.927/8)).
TEST(CoilRequirements, RedLineByHand) {
  const Judging j(hand_car(module_ignition()), "full-throttle");
  const auto& f = j.one("ignition.red-line-spark", "full-throttle").verdict;
  const auto& t = j.trace("full-throttle");
  const auto slot = static_cast<std::size_t>(j.car().graph().slot("ignition.voltage"));
  const double volts = t.at(t.lowest(slot), slot), closed = 120.0 / 5500 / 8 - 0.8e-3;
  const double a = (volts - 1) * (1 - std::exp(-closed / 8e-3));
  EXPECT_NEAR(*f.predicted, 0.5 * 0.5 * 8e-3 * a * a, 1e-9);
}

// Points on a V8 at 5500 rpm: known to fade there; fewer cylinders have all the time they need.
TEST(CoilRequirements, PointsFadeAtTheRedLineOfAnEight) {
  const Judging eight(hand_car(points_ignition({.coil = ballast})), "full-throttle");
  const auto& f = eight.one("ignition.red-line-spark", "full-throttle");
  EXPECT_LT(f.margin().value(), 0);
  EXPECT_GT(*f.verdict.predicted, 5e-3);
}

// Ballast left before a module: less current than the module was made for, told with what there would be without.
TEST(CoilRequirements, BallastLeftInTellsWhatItCosts) {
  const Judging j(hand_car(module_ignition({.coil = ballast})), "hot-idle"),
      bare(hand_car(module_ignition()), "hot-idle");
  const auto& with = j.one("ignition.spark", "hot-idle").verdict;
  EXPECT_LT(*with.predicted, 0.7 * *bare.one("ignition.spark", "hot-idle").verdict.predicted);
  ASSERT_FALSE(with.because.empty());
  EXPECT_EQ(with.because.front().what, "coil current without the ballast");
  EXPECT_NE(with.fix_hint.find("ballast"), std::string::npos);
}

// 14 V on 1.5 ohm through points: far above what they stand; with the ballast just about it.
TEST(CoilRequirements, PointsBurnWithoutTheirBallast) {
  const Judging bare(hand_car(points_ignition()), "hot-idle"),
      with(hand_car(points_ignition({.coil = "ballast = \"1.5 ohm\"\n"})), "hot-idle");
  EXPECT_DOUBLE_EQ(*bare.one("ignition.switch-current", "hot-idle").verdict.high, 5);
  EXPECT_LT(bare.one("ignition.switch-current", "hot-idle").margin().value(), -2);
  EXPECT_GT(with.one("ignition.switch-current", "hot-idle").margin().value(), 0);
}

// A coil of low resistance fed by angle on a module at idle gets hot; fed by time it does not.
TEST(CoilRequirements, DwellByAngleHeatsACoilMadeForBallast) {
  const std::string low =
      "[ignition]\ncylinders = 8\n[ignition.coil]\ninductance = \"5 mH\"\nresistance = \"0.7 "
      "ohm\"\n[ignition.switching]\nby = \"module\"\nmost_current = \"20 A\"\nleast_voltage = \"6 "
      "V\"\nstanding = \"cuts off\"\n";
  const Judging angle(hand_car(low + "dwell_angle = \"30 deg\"\n"), "hot-idle"),
      time(hand_car(low + "dwell_time = \"3 ms\"\n"), "hot-idle");
  EXPECT_LT(angle.one("ignition.coil-heat", "hot-idle").margin().value(), 0);
  EXPECT_GT(time.one("ignition.coil-heat", "hot-idle").margin().value(), 0);
}

TEST(CoilRequirements, SupplyWhileCranking) {
  const Judging low(hand_car(module_ignition({.switching = "", .rest = ""})), "cold-crank");
  const auto& f = low.one("ignition.supply", "cold-crank").verdict;
  EXPECT_GT(*f.predicted, 6);
  EXPECT_LT(*f.predicted, 12);
  const Judging points(hand_car(points_ignition()), "cold-crank");
  EXPECT_TRUE(points.of("ignition.supply").empty());
}

// A feed that is dead with the key at start gives no spark while the starter turns, and says so.
TEST(CoilRequirements, FeedDeadAtStart) {
  const Judging j(hand_car(module_ignition({.rest = "[wiring.load.ignition]\nwhen = [\"running\"]\n"})), "cold-crank");
  const auto& f = j.one("ignition.crank-spark", "cold-crank");
  EXPECT_EQ(*f.verdict.predicted, 0);
  EXPECT_NE(f.verdict.reason.find("key at start"), std::string::npos);
  const Judging live(hand_car(module_ignition()), "cold-crank");
  EXPECT_GT(live.one("ignition.crank-spark", "cold-crank").margin().value(), 0);
}

// 12.6 V on 3 ohm: 52.9 W in the coil of a car with points left with its key on; with 1.5 + 1.5 ohm half of it.
TEST(CoilRequirements, KeyOnByHand) {
  const std::string full =
      "[ignition]\ncylinders = 8\n[ignition.coil]\ninductance = \"8 mH\"\nresistance = \"3 "
      "ohm\"\n[ignition.switching]\nby = \"points\"\ndwell_angle = \"30 deg\"\ndrop = { value = \"0 "
      "V\", from = \"measured\" }\n";
  const Judging j(hand_car(full), "hot-idle");
  EXPECT_NEAR(*j.one("ignition.key-on").verdict.predicted, 12.6 * 12.6 / 3, 1e-9);
  EXPECT_LT(j.one("ignition.key-on").margin().value(), 0);
  const Judging module(hand_car(module_ignition()), "hot-idle");
  EXPECT_TRUE(module.of("ignition.key-on").empty());  // it cuts off
}

TEST(CoilRequirements, WhatNobodyToldOfASwitchIsMissingAlone) {
  const Judging j(hand_car("[ignition]\ncylinders = 8\n[ignition.coil]\ninductance = \"8 mH\"\nresistance = \"1 "
                           "ohm\"\n[ignition.switching]\nby = \"module\"\ndwell_time = \"4 ms\"\n"),
                  "hot-idle");
  EXPECT_EQ(j.one("ignition.supply", "hot-idle").verdict.missing,
            std::vector<std::string>{"ignition.switching.least_voltage"});
  EXPECT_EQ(j.one("ignition.key-on").verdict.missing, std::vector<std::string>{"ignition.switching.standing"});
  EXPECT_TRUE(j.one("ignition.spark", "hot-idle").verdict.predicted);
}

}  // namespace
