#include "systems/judged.hpp"

using namespace sw;
using namespace sw::rig;

namespace {

const std::string valve =
    "[vacuum.breathing]\nvalve_flow = [[\"0 inHg\", \"5.5 cfm\"], [\"11 inHg\", \"5.5 cfm\"], [\"18 inHg\", \"1.6 "
    "cfm\"], "
    "[\"24 inHg\", \"1.6 cfm\"]]\nidle_air = \"15 cfm\"\nthrottle_leak = \"6 cfm\"\n";

TEST(VacuumRequirements, IdleAirByHand) {  // 1 - (1.6 + 6) / 15 at 18 inHg, 1 - (5.5 + 6) / 15 at 9
  const Judging sound(hand_car(valve), "hot-idle"), cam(hand_car(valve + "[vacuum]\nidle = \"9 inHg\"\n"), "hot-idle");
  EXPECT_NEAR(*sound.one("vacuum.idle-air", "hot-idle").verdict.predicted, 1 - 7.6 / 15, 0.01);
  EXPECT_NEAR(*cam.one("vacuum.idle-air", "hot-idle").verdict.predicted, 1 - 11.5 / 15, 1e-6);
  EXPECT_LT(cam.one("vacuum.idle-air", "hot-idle").margin().value(), 0);
}

TEST(VacuumRequirements, BlowByAgainstTheValve) {
  const Judging little(hand_car(valve + "blow_by = \"1 cfm\"\n"), "hot-idle"),
      much(hand_car(valve + "blow_by = \"3 cfm\"\n"), "hot-idle");
  EXPECT_GT(little.one("vacuum.crankcase", "hot-idle").margin().value(), 0);
  EXPECT_LT(much.one("vacuum.crankcase", "hot-idle").margin().value(), 0);
}

TEST(VacuumRequirements, SilentOnWhatIsNotDescribed) {
  const Judging j(hand_car(), "hot-idle");
  EXPECT_TRUE(j.of("vacuum.idle-air").empty());
  EXPECT_TRUE(j.of("vacuum.crankcase").empty());
  const Judging half(hand_car("[vacuum.breathing]\nidle_air = \"15 cfm\"\n"), "hot-idle");
  EXPECT_EQ(half.one("vacuum.idle-air", "hot-idle").verdict.missing.size(), 1u);
}

// 1.6 cfm at 18 inHg through half an inch: 7.551e-4 / 1.2668e-4 = 5.96 m/s; through 4 in2 a twentieth of it.
TEST(VacuumRequirements, OilCarriedByHand) {
  const Judging bare(hand_car(valve + "hole = \"0.5 in\"\n"), "hot-idle"),
      baffled(hand_car(valve + "hole = \"0.5 in\"\nbaffle_inlet = \"4 in2\"\n"), "hot-idle");
  EXPECT_LT(bare.one("vacuum.oil-carried", "hot-idle").margin().value(), 0);
  EXPECT_NEAR(*baffled.one("vacuum.oil-carried", "hot-idle").verdict.predicted,
              *bare.one("vacuum.oil-carried", "hot-idle").verdict.predicted * 0.19635 / 4, 1e-4);
  EXPECT_GT(baffled.one("vacuum.oil-carried", "hot-idle").margin().value(), 0);
  EXPECT_TRUE(Judging(hand_car(valve), "hot-idle").of("vacuum.oil-carried").empty());
  const Judging untold(hand_car("[vacuum.breathing]\nhole = \"0.5 in\"\n"), "hot-idle");
  EXPECT_EQ(untold.one("vacuum.oil-carried", "hot-idle").verdict.missing,
            std::vector<std::string>{"vacuum.breathing.valve_flow"});
}

}  // namespace
