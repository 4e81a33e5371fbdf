#include "systems/brakes/heat.hpp"

#include "systems/brakes/rig.hpp"

using namespace sw;
using namespace sw::rig;

namespace {

TEST(BrakesHeatRequirements, OldFluidBoilsOnTheHill) {
  const Judging fresh(hand_car(), "descent"),
      old(hand_car(
              "[brakes.fill]\ngrade = \"DOT 3\"\nbefore = \"DOT 3\"\nwater = 0.06\n[duty.descent]\ngrade = -0.14\n"),
          "descent");
  EXPECT_GT(fresh.one("brakes.fluid-boils", "descent", "front").margin().value(), 0);
  EXPECT_LT(old.one("brakes.fluid-boils", "descent", "front").margin().value(), 0);
}

TEST(BrakesHeatRequirements, WaterNobodyTestedIsNotGuessed) {
  Build build = hand_car();
  std::get<brakes::Input>(build.inputs).fill.water.reset();
  const Judging j(build, "descent");
  const auto& v = j.one("brakes.fluid-boils", "descent", "front").verdict;
  ASSERT_EQ(v.missing.size(), 1u);
  EXPECT_EQ(v.missing[0], "brakes.fill.water");
  EXPECT_TRUE(j.one("brakes.metal-temperature", "descent", "front").verdict.predicted.has_value());
}

TEST(BrakesHeatRequirements, LightRotorsRunHotAndFade) {
  const Judging sound(hand_car(), "repeated-stops"),
      light(hand_car("[brakes.rear.heat]\nfade = [[\"20 degC\", 1.0], [\"100 degC\", 0.6], [\"300 degC\", 0.3], "
                     "[\"1500 degC\", 0.3]]\n"
                     "[brakes.front.heat]\nmass = \"5 lb\"\nstanding = \"2 W/K\"\nmoving = \"4 W/K\"\nsurface = \"0.05 "
                     "m2\"\nfade = [[\"20 degC\", 1.0], [\"200 degC\", "
                     "0.9], [\"400 degC\", 0.2], [\"1500 degC\", 0.2]]\n"),
            "repeated-stops");
  EXPECT_GT(sound.one("brakes.metal-temperature", "repeated-stops", "front").margin().value(), 0);
  EXPECT_GT(sound.one("brakes.hot-stop", "repeated-stops").margin().value(), 0);
  EXPECT_LT(light.one("brakes.metal-temperature", "repeated-stops", "front").margin().value(), 0);
  EXPECT_LT(light.one("brakes.hot-stop", "repeated-stops").margin().value(), 0);
}

// A duo-servo drum loses far more than its friction: half of it leaves about a quarter of the torque (regression: usual
// shoes by the law of drum_factor), and the stop is judged by that.
TEST(BrakesHeatRequirements, AServoDrumFadesFasterThanItsLining) {
  const brakes::Model m = hand_brakes("[brakes.rear.heat]\nfade = [[\"20 degC\", 1.0], [\"200 degC\", 0.5]]\n");
  EXPECT_NEAR(brakes::hot_torque(m.rear, 293.15).share, 1, 1e-9);
  EXPECT_NEAR(brakes::hot_torque(m.rear, 473.15).share, 0.27, 0.04);
  EXPECT_NEAR(brakes::hot_torque(m.front, 293.15).share, 1, 1e-9);
}

TEST(BrakesHeatRequirements, HotBrakesAtTheColdStopsPedal) {  // 49 CFR 571.135 S7.14: 60 %
  const Judging sound(hand_car(), "repeated-stops"),
      fading(hand_car("[brakes.front.heat]\nfade = [[\"20 degC\", 1.0], [\"120 degC\", 0.35], [\"600 degC\", 0.3]]\n"),
             "repeated-stops");
  EXPECT_GT(sound.one("brakes.hot-share", "repeated-stops").margin().value(), 0);
  EXPECT_LE(*sound.one("brakes.hot-share", "repeated-stops").verdict.predicted, 1 + 1e-9);
  EXPECT_LT(fading.one("brakes.hot-share", "repeated-stops").margin().value(), 0);
}

// A lining's curve that ends where the metal goes on tells nothing: no stop is held to be well by its last point.
TEST(BrakesHeatRequirements, BeyondTheLiningsCurveNothingIsKnown) {
  const Judging j(hand_car("[brakes.front.heat]\nfade = [[\"20 degC\", 1.0], [\"80 degC\", 0.98]]\n"),
                  "repeated-stops");
  for (auto* id : {"brakes.hot-stop", "brakes.hot-share"}) {
    EXPECT_FALSE(j.one(id, "repeated-stops").verdict.predicted) << id;
    EXPECT_FALSE(j.one(id, "repeated-stops").verdict.reason.empty()) << id;
  }
}

TEST(BrakesHeatRequirements, TheMountainIsDrivenLaden) {
  const std::string heavy = "[vehicle]\nladen_weight = \"4900 lb\"\nladen_front_share = 0.48\n";
  const Judging light(hand_car(), "descent"), laden(hand_car(heavy), "descent");
  const auto hot = [](const Judging& j) {
    return *j.one("brakes.metal-temperature", "descent", "front").verdict.predicted;
  };
  EXPECT_GT(hot(laden) - hot(light), 15);
}

TEST(BrakesHeatRequirements, AMountainOfOnesOwnIsLookedAt) {
  const Judging j(hand_car("[duty.pass]\nduration = \"10 min\"\nspeed = \"40 mph\"\ngrade = -0.08\n"), "pass");
  EXPECT_TRUE(j.judged("brakes.metal-temperature", "pass", "front"));
  EXPECT_TRUE(j.judged("brakes.fluid-boils", "pass", "front"));
}

TEST(BrakesHeatRequirements, OldFluidHoweverCool) {  // 3 % (common practice)
  const auto margin = [](const char* water) {
    return *Judging(hand_car(std::string("[brakes.fill]\nwater = ") + water + "\n"), "hot-idle")
                .one("brakes.fluid-water")
                .margin();
  };
  EXPECT_LT(margin("0.04"), 0);
  EXPECT_GT(margin("0.01"), 0);
}

}  // namespace
