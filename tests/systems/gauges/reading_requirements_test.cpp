#include "systems/fuel/rig.hpp"
#include "systems/judged.hpp"

using namespace sw;
using namespace sw::rig;

namespace {

Judging still(const std::string& change = "") { return Judging(hand_car(change), "hot-idle"); }
double predicted(const Judging& j, std::string_view id, std::string_view place) {
  return j.one(id, {}, place).verdict.predicted.value();
}
bool says(const Verdict& v, std::string_view what) {
  return std::any_of(v.because.begin(), v.because.end(), [&](auto& b) { return b.what == what; });
}
double line(const Verdict& v, std::string_view what) {
  for (auto& b : v.because)
    if (b.what == what) return b.value;
  throw std::out_of_range(std::string(what));
}

const std::string fuel = "[gauges.fuel.tank]\nhow = \"balance\"\nexpects_family = \"73-10\"\n";
// One beta of 4450 K through 64.3 ohm at 200 degF, keyed in every ten degrees about it.
const std::string coolant =
    "[gauges.temperature.coolant]\nhow = \"electronic\"\nusual = \"200 degF\"\nsupply = \"5 V\"\npull_up = \"330 "
    "ohm\"\n"
    "expects = [[\"160 degF\", \"140.8 ohm\"], [\"170 degF\", \"114.7 ohm\"], [\"180 degF\", \"94.0 ohm\"], [\"190 "
    "degF\", "
    "\"77.5 ohm\"], [\"200 degF\", \"64.3 ohm\"], [\"210 degF\", \"53.6 ohm\"], [\"220 degF\", \"45.0 ohm\"]]\n"
    "sender = [[\"160 degF\", \"140.8 ohm\"], [\"200 degF\", \"64.3 ohm\"], [\"220 degF\", \"45.0 ohm\"]]\n";

TEST(GaugesReading, RightPairHoldsOverTheRange) {
  const Judging j = still(fuel + "sender_family = \"73-10\"\n" + coolant);
  EXPECT_NEAR(predicted(j, "gauges.fuel-reading", "tank"), 0, 1e-9);
  EXPECT_GT(j.one("gauges.temperature-reading", {}, "coolant").margin().value(), 0);
  EXPECT_NEAR(predicted(j, "gauges.temperature-reading", "coolant, usual"), 0, 1e-6);
}

// What to order is named: the ohms, and the family they are known by; the bimetal's 70 and 9.7 ohm lie near enough.
TEST(GaugesReading, WrongFamilyIsNamed) {
  const Judging j = still(
      "[gauges.fuel.tank]\nhow = \"bimetal\"\nsupply = \"5 V\"\nheater = \"13 ohm\"\ncurrent_low = \"0.06 A\"\n"
      "current_high = \"0.22 A\"\nsender_family = \"240-33\"\n");
  const Verdict& v = j.one("gauges.fuel-reading", {}, "tank").verdict;
  EXPECT_NE(v.fix_hint.find("70.3 ohm to 9.73 ohm (family 73-10)"), std::string::npos) << v.fix_hint;
  EXPECT_NEAR(line(v, "shown at the high end"), 0.304, 1e-3);
}

TEST(GaugesReading, ReversedIsSaid) {
  const Judging j = still(fuel + "sender_family = \"10-180\"\n");
  const Verdict& v = j.one("gauges.fuel-reading", {}, "tank").verdict;
  EXPECT_LT(j.one("gauges.fuel-reading", {}, "tank").margin().value(), 0);
  EXPECT_NE(v.reason.find("wrong way round"), std::string::npos) << v.reason;
  EXPECT_DOUBLE_EQ(line(v, "shown at the low end"), 1);
  EXPECT_DOUBLE_EQ(line(v, "shown at the high end"), 0);
}

// 9 ohm in the way: 73.3 ohm lie between 190 (77.5) and 200 degF (64.3): 200 - 10 x 9 / 13.2 = 193.2 (by hand).
TEST(GaugesReading, OhmsInTheGroundReadCool) {
  const Judging j = still(coolant + "joint = \"9 ohm\"\napart = \"12 degF\"\n");
  const Verdict& v = j.one("gauges.temperature-reading", {}, "coolant, usual").verdict;
  EXPECT_NEAR(*v.predicted * 1.8, -6.82, 0.02);
  EXPECT_NE(v.fix_hint.find("sealing paste"), std::string::npos) << v.fix_hint;
  EXPECT_TRUE(says(v, "more where this sender sits than where the other measures: no fault"));
  EXPECT_LT(j.one("gauges.sender-ground", {}, "coolant").margin().value(), 0);
  EXPECT_GT(still(coolant + "joint = \"0.3 ohm\"\n").one("gauges.sender-ground", {}, "coolant").margin().value(), 0);
}

// A second reader pulls up too: 330 and 2200 ohm beside each other are 287 ohm; 5 x 64.3 / 351.3 = 0.9152 V, which its
// own 330 ohm alone would make with 73.9 ohm: 192.7 degF (by hand).
TEST(GaugesReading, SharedSenderReadsCool) {
  const Judging j =
      still(coolant + "[gauges.temperature.coolant.other.controller]\npull_up = \"2.2 kohm\"\nsupply = \"5 V\"\n");
  const Verdict& v = j.one("gauges.temperature-reading", {}, "coolant, usual").verdict;
  EXPECT_NEAR(*v.predicted * 1.8, -7.3, 0.1);
  EXPECT_NE(v.fix_hint.find("one reader"), std::string::npos) << v.fix_hint;
}

TEST(GaugesReading, WhatIsMissingIsNamedAndSilencesNothingElse) {
  const Judging j = still(fuel + coolant);
  EXPECT_EQ(j.one("gauges.fuel-reading", {}, "tank").verdict.missing,
            std::vector<std::string>{"gauges.fuel.tank.sender"});
  EXPECT_TRUE(j.one("gauges.temperature-reading", {}, "coolant").verdict.predicted);
  EXPECT_TRUE(j.of("gauges.pressure-reading").empty());
}

// The fuel car's pick-up leaves a little of its tank: where the needle stands then, with a right and a wrong sender.
TEST(GaugesReserve, NeedleAsThePumpDrawsAir) {
  const auto tank = [](const std::string& change) { return Judging(fuel_car(change), "hot-idle"); };
  const Judging right = tank(fuel + "sender_family = \"73-10\"\n");
  const Verdict& v = right.one("gauges.reserve", {}, "tank").verdict;
  EXPECT_GT(line(v, "fuel the pick-up leaves"), 0);
  EXPECT_NEAR(*v.predicted, line(v, "as a share of the tank"), 1e-9);
  const Judging high = tank(fuel + "sender = [[0, \"50 ohm\"], [1, \"10 ohm\"]]\n");
  EXPECT_LT(high.one("gauges.reserve", {}, "tank").margin().value(), 0);
  EXPECT_GT(high.one("gauges.reserve", {}, "tank").verdict.predicted, v.predicted);
  EXPECT_TRUE(still(fuel + "sender_family = \"73-10\"\n").of("gauges.reserve").empty()) << "no tank is described";
}

TEST(GaugesLamp, GoesByWhatIsShown) {
  const std::string lamp = "lamp_meant = \"210 degF\"\nlamp_shown = \"210 degF\"\n";
  EXPECT_NEAR(predicted(still(coolant + lamp), "gauges.temperature-lamp", "coolant"), (210 + 459.67) / 1.8, 0.6);
  // With 9 ohm in the ground it lights when the sender has 53.6 - 9 = 44.6 ohm: past 220 degF, never on this scale.
  const Judging late = still(coolant + lamp + "joint = \"9 ohm\"\n");
  EXPECT_LT(late.one("gauges.temperature-lamp", {}, "coolant").margin().value(), 0);
  EXPECT_FALSE(late.one("gauges.temperature-lamp", {}, "coolant").verdict.reason.empty());
  const Judging apart = still(coolant + "lamp_meant = \"210 degF\"\nlamp_switch = \"230 degF\"\n");
  EXPECT_NEAR(apart.one("gauges.temperature-lamp", {}, "coolant").margin().value() * 1.8, -15, 1e-6);
  EXPECT_EQ(
      still(coolant + "lamp_meant = \"210 degF\"\n").one("gauges.temperature-lamp", {}, "coolant").verdict.missing,
      std::vector<std::string>{"gauges.temperature.coolant.lamp_shown"});
}

}  // namespace
