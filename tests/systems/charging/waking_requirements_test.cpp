#include "systems/judged.hpp"

using namespace sw;
using namespace sw::rig;

namespace {

// 2.4 in on 6.5 in: 2.708 turns.
constexpr double ratio = 6.5 / 2.4;
std::string feed(const std::string& amperes) {
  return "[wiring.load.charge_lamp]\ncurrent = \"" + amperes +
         "\"\nwhen = [\"key\"]\nto = \"exciter\"\nbehaviour = \"current\"\ngauge = \"18 AWG\"\nlength = \"4 ft\"\nfuse "
         "= \"5 "
         "A\"\ninsulation = \"105 degC\"\nbundle = 1\n";
}
const std::string terminal =
    "[charging.alternator]\nexcitation = \"exciter terminal\"\nown_wake_speed = \"2900 rpm\"\n";

TEST(WakingRequirements, ByHand) {  // 8 mA of 100: residual magnetism, 2900/2.708 rpm; 150 mA: 1500/2.708
  const Judging faint(hand_car(terminal + feed("8 mA")), "hot-idle"),
      lamp(hand_car(terminal + feed("150 mA")), "hot-idle");
  EXPECT_NEAR(*faint.one("charging.wakes").verdict.predicted / rpm, 2900 / ratio, 1e-6);
  EXPECT_LT(faint.one("charging.wakes").margin().value(), 0);
  EXPECT_NEAR(*lamp.one("charging.wakes").verdict.predicted / rpm, 1500 / ratio, 1e-6);
  EXPECT_GT(lamp.one("charging.wakes").margin().value(), 0);
}

TEST(WakingRequirements, NoFeedAtAllNeverWakesItAtIdle) {
  EXPECT_LT(Judging(hand_car(terminal), "hot-idle").one("charging.wakes").margin().value(), 0);
}

TEST(WakingRequirements, AMachineThatWakesItself) {
  const Judging j(hand_car(), "hot-idle");
  EXPECT_NEAR(*j.one("charging.wakes").verdict.predicted / rpm, 1400 / ratio, 1e-6);
}

TEST(WakingRequirements, WhatNobodyTold) {
  Build b = hand_car();
  std::get<charging::Input>(b.inputs).alternator.excitation.reset();
  EXPECT_EQ(Judging(b, "hot-idle").one("charging.wakes").verdict.missing,
            std::vector<std::string>{"charging.alternator.excitation"});
}

TEST(WakingRequirements, SurgeAgainstWhatTheElectronicsStand) {
  auto surge = [](const char* clamped, const char* stand) {
    return Judging(hand_car(std::string("[charging.alternator]\nclamped = ") + clamped +
                            "\n[charging]\nelectronics_stand = \"" + stand + "\"\n"),
                   "hot-idle");
  };
  EXPECT_LT(surge("false", "40 V").one("charging.surge").margin().value(), 0);
  EXPECT_GT(surge("true", "40 V").one("charging.surge").margin().value(), 0);
  EXPECT_TRUE(Judging(hand_car(), "hot-idle").of("charging.surge").empty());
}

TEST(WakingRequirements, SenseWireOpen) {
  const Judging j(hand_car("[charging.alternator]\nsense_lost = \"full field\"\n"), "hot-idle");
  EXPECT_EQ(j.one("charging.sense-lost").verdict.rule, false);
}

}  // namespace
