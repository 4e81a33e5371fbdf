#include "systems/fuel/rig.hpp"

using namespace sw;
using namespace sw::rig;

namespace {

TEST(FuelPressureRequirements, TheSoundCarHoldsAtIdle) {
  Judging j(fuel_car(), "hot-idle");
  EXPECT_GT(j.one("fuel.rail-pressure", "hot-idle").margin().value(), 0);
  EXPECT_GT(j.one("fuel.lowest-pressure", "hot-idle").margin().value(), 0);
  EXPECT_GT(j.one("fuel.feed-drop", "hot-idle").margin().value(), 0);
  EXPECT_GT(j.one("fuel.controller-pressure", "hot-idle").margin().value(), 0);
}

TEST(FuelPressureRequirements, ANarrowReturnLiftsTheRail) {
  Judging j(fuel_car("[fuel.return.floor_back]\nbore = \"0.12 in\"\n"), "hot-idle");
  EXPECT_LT(j.one("fuel.lowest-pressure", "hot-idle").margin().value(), 0);
  EXPECT_LT(j.one("fuel.rail-pressure", "hot-idle").margin().value(), 0);
  EXPECT_GT(*j.one("fuel.rail-pressure", "hot-idle").verdict.predicted, 45 * psi);
  EXPECT_LT(j.one("fuel.velocity", "hot-idle", "floor_back").margin().value(), 0);
}

TEST(FuelPressureRequirements, ASmallPumpAndSmallInjectorsAtFullThrottle) {
  Judging j(fuel_car("[fuel.pump]\ncurve = [[\"0 psi\", \"90 L/h\"], [\"80 psi\", \"40 L/h\"]]\n[fuel.injectors]\nflow "
                     "= \"12 lb/h\"\n"),
            "full-throttle");
  EXPECT_LT(j.one("fuel.flow", "full-throttle").margin().value(), 0);
  EXPECT_LT(j.one("fuel.injector-open", "full-throttle").margin().value(), 0);
  Judging sound(fuel_car(), "full-throttle");
  EXPECT_GT(sound.one("fuel.flow", "full-throttle").margin().value(), 0);
  EXPECT_GT(sound.one("fuel.injector-open", "full-throttle").margin().value(), 0);
}

// Flow goes with the root of the pressure: sqrt(58 / 43.5) = 1.155.
TEST(FuelPressureRequirements, TheControllerToldAnotherPressure) {
  Judging j(fuel_car("[fuel.regulator]\npressure = \"58 psi\"\n[fuel.calibration]\npressure = \"43.5 psi\"\n"),
            "hot-idle");
  EXPECT_NEAR(*j.one("fuel.controller-pressure", "hot-idle").verdict.predicted, 0.155, 0.006);
}

// 18 inHg are 8.84 psi: a regulator with a hose to the manifold holds that much less over the air, and a return that
// loses more than it then holds lifts the rail. Without the hose the injectors get that much more across them:
// sqrt((43 + 8.84) / 43) = 1.098 for a controller that reckons with 43.
TEST(FuelPressureRequirements, ARegulatorThatFollowsTheVacuum) {
  const Judging follows(fuel_car(), "hot-idle"),
      plugged(fuel_car("[fuel.regulator]\nvacuum_referenced = false\n"), "hot-idle");
  EXPECT_NEAR((*plugged.one("fuel.rail-pressure", "hot-idle").verdict.predicted -
               *follows.one("fuel.rail-pressure", "hot-idle").verdict.predicted) /
                  psi,
              8.84, 0.1);
  EXPECT_NEAR(*follows.one("fuel.lowest-pressure", "hot-idle").verdict.high / psi, 43 - 8.84, 0.1);
  EXPECT_NEAR(*plugged.one("fuel.lowest-pressure", "hot-idle").verdict.high / psi, 43, 1e-6);
  EXPECT_NEAR(*plugged.one("fuel.controller-pressure", "hot-idle").verdict.predicted -
                  *follows.one("fuel.controller-pressure", "hot-idle").verdict.predicted,
              0.098, 0.004);
  // A controller that adds the vacuum it reads is right with the plugged one.
  const Judging adds(
      fuel_car("[fuel.regulator]\nvacuum_referenced = false\n[fuel.calibration]\nvacuum_referenced = false\n"),
      "hot-idle");
  EXPECT_NEAR(*adds.one("fuel.controller-pressure", "hot-idle").verdict.predicted,
              *follows.one("fuel.controller-pressure", "hot-idle").verdict.predicted, 0.01);
}

TEST(FuelPressureRequirements, ACarburettorHasItsOwnBand) {
  const std::string engine_pump =
      "[fuel]\ndelivery = \"carburettor\"\n[fuel.pump]\ndrive = \"engine\"\nplace = \"outside\"\nheight = \"10 in\"\n"
      "curve = [[\"0 psi\", \"120 L/h\"], [\"6 psi\", \"2 L/h\"]]\nrelief = \"6 psi\"\n[fuel.regulator]\nplace = "
      "\"none\"\n";
  Judging j(fuel_car(engine_pump), "hot-idle");
  EXPECT_GT(j.one("fuel.rail-pressure", "hot-idle").margin().value(), 0);
  EXPECT_LT(*j.one("fuel.rail-pressure", "hot-idle").verdict.predicted, 6.2 * psi);
  EXPECT_FALSE(j.judged("fuel.lowest-pressure", "hot-idle", ""));
  EXPECT_FALSE(j.judged("fuel.cut-off", "", "impact"));
  // An electric injection pump without a regulator floods it, one in line tames that.
  const std::string flooding = "[fuel]\ndelivery = \"carburettor\"\n[fuel.regulator]\nplace = \"none\"\n";
  EXPECT_LT(Judging(fuel_car(flooding), "hot-idle").one("fuel.rail-pressure", "hot-idle").margin().value(), 0);
  const std::string tamed =
      "[fuel]\ndelivery = \"carburettor\"\n[fuel.regulator]\nplace = \"in line\"\npressure = \"5.5 psi\"\n";
  EXPECT_GT(Judging(fuel_car(tamed), "hot-idle").one("fuel.rail-pressure", "hot-idle").margin().value(), 0);
}

}  // namespace
