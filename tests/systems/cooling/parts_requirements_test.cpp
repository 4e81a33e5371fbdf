#include "systems/judged.hpp"

using namespace sw;
using namespace sw::rig;

namespace {

TEST(CoolingPartsRequirements, ACapStrongerThanTheWeakestPartFails) {
  Judging sound(hand_car(), "hot-idle"), strong(hand_car("[cooling.cap]\npressure = \"22 psi\"\n"), "hot-idle");
  EXPECT_GT(sound.one("cooling.cap").margin().value(), 0);
  EXPECT_LT(strong.one("cooling.cap").margin().value(), 0);
}

// A pump on the belt's back turns against the crank; one made for the other way fails and gives a quarter of the flow.
TEST(CoolingPartsRequirements, Rotation) {
  Judging right(hand_car(), "hot-idle"), wrong(hand_car("[cooling.pump]\nrotation = \"with crank\"\n"), "hot-idle");
  EXPECT_TRUE(*right.one("cooling.pump-rotation").verdict.rule);
  EXPECT_FALSE(*wrong.one("cooling.pump-rotation").verdict.rule);
  EXPECT_NEAR(wrong.highest("cooling.flow", "hot-idle"), 0.25 * right.highest("cooling.flow", "hot-idle"), 1e-9);
  Build b = hand_car();
  std::get<cooling::Input>(b.inputs).pump.rotation.reset();
  Judging unknown(b, "hot-idle");
  EXPECT_EQ(unknown.one("cooling.pump-rotation").verdict.missing, std::vector<std::string>{"cooling.pump.rotation"});
}

TEST(CoolingPartsRequirements, AFanAgainstTheTravelFailsAndHeatsTheCar) {
  Judging j(hand_car("[cooling.fan.left]\nblows = \"against travel\"\n"), "hot-idle");
  EXPECT_FALSE(*j.one("cooling.fan-direction", "", "left").verdict.rule);
  EXPECT_TRUE(*j.one("cooling.fan-direction", "", "right").verdict.rule);
  EXPECT_GT(j.highest("cooling.engine_temperature", "hot-idle"),
            Judging(hand_car(), "hot-idle").highest("cooling.engine_temperature", "hot-idle"));
}

TEST(CoolingPartsRequirements, SetPointsBelowTheThermostatNeverStop) {
  Judging j(hand_car("[cooling.fan.left]\non = \"86 degC\"\noff = \"82 degC\"\n[cooling.fan.right]\non = \"97 "
                     "degC\"\noff = \"96 degC\"\n"),
            "hot-idle");
  EXPECT_FALSE(*j.one("cooling.fan-set-points", "", "left").verdict.rule);
  EXPECT_FALSE(*j.one("cooling.fan-set-points", "", "right").verdict.rule);
  EXPECT_NE(j.one("cooling.fan-set-points", "", "right").verdict.reason.find("less than 2 K"), std::string::npos);
}

// 14 L from 10 degC (1078 kg/m3) to 105 degC (1017): 14 x 6 % = 0.84 L (densities of half glycol, ASHRAE, from memory).
TEST(CoolingPartsRequirements, SwellingByDensities) {
  Judging j(hand_car(), "hot-idle");
  EXPECT_NEAR(*j.one("cooling.expansion").verdict.predicted * 1e3, 0.84, 0.1);
}

TEST(CoolingPartsRequirements, AFanSwitchedOnAboveTheCoolantsLimitFails) {
  Judging j(hand_car("[cooling.fan.left]\non = \"118 degC\"\noff = \"112 degC\"\n"));
  const auto& v = j.one("cooling.fan-set-points", "", "left").verdict;
  EXPECT_FALSE(*v.rule);
  EXPECT_NE(v.reason.find("on at 118 degC, where the coolant may be no hotter than 105 degC"), std::string::npos)
      << v.reason;
}

}  // namespace
