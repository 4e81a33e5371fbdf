#include "systems/judged.hpp"

using namespace sw;
using namespace sw::rig;

namespace {

// 18 mA over 70 A h take 0.617 % a day; self-discharge 0.2 % x 2^(-0.5) of what is left (mean of 0.8) 0.113 % a day:
// (0.85 - 0.5) / 0.0073 = 47.9 days.
TEST(ChargingStartingRequirements, DaysItMayStandByHand) {
  Judging j(hand_car(), "parked");
  const auto& v = j.one("charging.standing", "parked").verdict;
  EXPECT_NEAR(*v.predicted / day, 47.9, 0.5);
  EXPECT_NEAR(*v.low / day, 14, 1e-9);
}

// 1 A empties 70 A h from 0.85 to 0.5 in 0.35 x 70 h = 24.5 h, however long the duty goes on; from below half it is
// none.
TEST(ChargingStartingRequirements, ADrawThatEmptiesTheBatteryIsToldInItsOwnTime) {
  const std::string draw = "[wiring.load.clock_and_memory]\ncurrent = \"1 A\"\n";
  Judging j(hand_car(draw));
  EXPECT_NEAR(*j.one("charging.standing", "parked").verdict.predicted / hour, 24.5, 0.5);
  EXPECT_NEAR(*j.one("charging.standing", "storage").verdict.predicted / hour, 35, 0.7);  // from full
  Judging low(hand_car(draw + "[duty.parked]\nmethod = \"rest\"\nengine = \"off\"\nduration = \"14 day\"\ncharge = "
                              "0.4\nstart = \"cold\"\n"),
              "parked");
  EXPECT_EQ(*low.one("charging.standing", "parked").verdict.predicted, 0);
}

TEST(ChargingStartingRequirements, CrankLoopIsTheCablesShare) {
  Judging j(hand_car(), "cold-crank");
  const auto& t = j.trace("cold-crank");
  const auto at0 = [&](auto port) { return t.at(0, static_cast<std::size_t>(j.car().graph().slot(port))); };
  // Ohm's law round the loop: 5 ft and 3 ft of 2 AWG (0.1563 ohm/1000 ft at 20 degC: ASTM B258 table) at 60 degC
  // (x 1.157): 8 ft = 1.447 mohm, joints 0.3 and 0.2 mohm.
  const double ohm = 8 * 0.1563e-3 * (1 + 0.00393 * 40) + 0.5e-3;
  EXPECT_NEAR(*j.one("charging.crank-loop", "cold-crank").verdict.predicted, at0("starter.current") * ohm,
              0.02 * at0("starter.current") * ohm);
}

// A worn battery on a cold morning: the volts fall and the finding fails, the speed with them.
TEST(ChargingStartingRequirements, AWeakBatteryFailsBothCrankFindings) {
  Judging sound(hand_car(), "cold-crank"),
      weak(hand_car("[charging.battery]\ncold_crank_current = \"220 A\"\n"), "cold-crank");
  EXPECT_GT(sound.one("charging.crank-voltage", "cold-crank").margin().value(),
            weak.one("charging.crank-voltage", "cold-crank").margin().value());
  EXPECT_LT(weak.one("charging.crank-voltage", "cold-crank").margin().value(), 0);
  EXPECT_LT(*weak.one("charging.crank-speed", "cold-crank").verdict.predicted,
            *sound.one("charging.crank-speed", "cold-crank").verdict.predicted);
}

}  // namespace
