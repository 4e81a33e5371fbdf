#include "systems/judged.hpp"

using namespace sw;
using namespace sw::rig;

namespace {

Judging still(const std::string& change = "") { return Judging(hand_car(change), "hot-idle"); }
double predicted(const Judging& j, std::string_view id, std::string_view place = {}) {
  return j.one(id, {}, place).verdict.predicted.value();
}

TEST(WheelsRequirements, OverTheCaliper) {
  const std::string wheel = "[wheels.front]\ncaliper_radius = \"7.00 in\"\nbarrel_radius = ";
  EXPECT_NEAR(predicted(still(wheel + "\"6.38 in\"\n"), "wheels.over-caliper", "front") / inch, -0.62, 1e-6);
  EXPECT_NEAR(predicted(still(wheel + "\"7.16 in\"\n"), "wheels.over-caliper", "front") / inch, 0.16, 1e-6);
  EXPECT_LT(still(wheel + "\"7.10 in\"\n").one("wheels.over-caliper", {}, "front").margin().value(), 0);
  EXPECT_FALSE(still().judged("wheels.over-caliper", "hot-idle", "rear"));
  EXPECT_LT(still("[wheels.front]\nspoke_gap = \"0.1 in\"\n").one("wheels.spokes").margin().value(), 0);
}

TEST(WheelsRequirements, BodyTakesAllChangesTogether) {  // 1.15 - 0.50 - 0.60 - 0.25
  const std::string all =
      "[wheels.front]\nlip_gap = \"1.15 in\"\nlock_gap = \"2 in\"\nhub_outward = \"0.5 in\"\nlip_inward = \"0.6 in\"\n"
      "wheel_outward = \"0.25 in\"\n";
  const Judging j = still(all);
  EXPECT_NEAR(predicted(j, "wheels.body", "front at bump") / inch, -0.20, 1e-6);
  EXPECT_NEAR(predicted(j, "wheels.body", "front at lock") / inch, 0.65, 1e-6);
}

TEST(WheelsRequirements, LoadByHand) {  // 3700 lb, 54 % in front: 999 lb a front tyre, 851 behind
  const Judging j = still();
  EXPECT_NEAR(predicted(j, "wheels.load", "front") / pound, 999, 0.1);
  EXPECT_NEAR(predicted(j, "wheels.load", "rear") / pound, 851, 0.1);
  EXPECT_LT(still("[wheels.tyre]\nload = \"900 lb\"\n").one("wheels.load", {}, "front").margin().value(), 0);
  const Judging laden = still("[vehicle]\nladen_weight = \"5000 lb\"\nladen_front_share = 0.45\n");
  EXPECT_NEAR(predicted(laden, "wheels.load", "rear") / pound, 1375, 0.1);
}

TEST(WheelsRequirements, SpeedAndAge) {
  const Judging fast(hand_car("[wheels.tyre]\nspeed = \"P\"\n[duty.cruise]\nspeed = \"100 mph\"\n"), "cruise");
  EXPECT_LT(fast.one("wheels.speed", "cruise").margin().value(), 0);  // P: 150 km/h = 93 mph
  EXPECT_LT(still("[wheels.tyre]\nage = \"11 year\"\n").one("wheels.age").margin().value(), 0);
  const Judging seven = still("[wheels.tyre]\nage = \"7 year\"\n");
  EXPECT_GT(seven.one("wheels.age").margin().value(), 0);
  EXPECT_EQ(seven.one("wheels.age").verdict.because.size(), 1u);  // told to have them looked at every year
}

TEST(WheelsRequirements, OverDiscsTheRadiiAreAskedFor) {
  Build build = hand_car();
  std::get<wheels::Input>(build.inputs).front = {};
  const Judging j(build, "hot-idle");
  EXPECT_EQ(j.one("wheels.over-caliper", {}, "front").verdict.missing,
            (std::vector<std::string>{"wheels.front.barrel_radius", "wheels.front.caliper_radius"}));
  EXPECT_FALSE(j.judged("wheels.over-caliper", "hot-idle", "rear"));  // drums
}

// What stands on a tyre is read in a minute and may kill: nobody's figure stands in for it.
TEST(WheelsRequirements, WhatStandsOnTheTyreIsAskedFor) {
  Build build = hand_car();
  std::get<wheels::Input>(build.inputs).tyre = {};
  const Judging j(build, "hot-idle");
  for (auto* what : {"load", "speed", "age"})
    EXPECT_EQ(j.one(std::string("wheels.") + what).verdict.missing,
              std::vector<std::string>{std::string("wheels.tyre.") + what});
}

TEST(WheelsRequirements, DiameterBySize) {  // 215/70R15: 2 x 215 x 0.70 + 381 = 682 mm; x 0.97 = 661.5; the car's 660.4
  EXPECT_NEAR(predicted(still(), "wheels.diameter"), 660.4 / 661.54 - 1, 1e-4);
  EXPECT_LT(still("[wheels.tyre]\nsize = \"205/60R15\"\n").one("wheels.diameter").margin().value(), 0);
}

}  // namespace
