#include "systems/judged.hpp"

using namespace sw;
using namespace sw::rig;

namespace {

// 18 mA over 70 A h take 0.617 % a day; self-discharge 0.2 % x 2^(-0.5) of what is left (mean of 0.8) 0.113 % a day:
// (0.85 - 0.5) / 0.0073 = 47.9 days.
TEST(ChargingRequirements, DaysItMayStandByHand) {
  Judging j(hand_car(), "parked");
  const auto& v = j.one("charging.standing", "parked").verdict;
  EXPECT_NEAR(*v.predicted / day, 47.9, 0.5);
  EXPECT_NEAR(*v.low / day, 14, 1e-9);
}

// 1 A empties 70 A h from 0.85 to 0.5 in 0.35 x 70 h = 24.5 h, however long the duty goes on; from below half it is
// none.
TEST(ChargingRequirements, ADrawThatEmptiesTheBatteryIsToldInItsOwnTime) {
  const std::string draw = "[wiring.load.clock_and_memory]\ncurrent = \"1 A\"\n";
  Judging j(hand_car(draw));
  EXPECT_NEAR(*j.one("charging.standing", "parked").verdict.predicted / hour, 24.5, 0.5);
  EXPECT_NEAR(*j.one("charging.standing", "storage").verdict.predicted / hour, 35, 0.7);  // from full
  Judging low(hand_car(draw + "[duty.parked]\nmethod = \"rest\"\nengine = \"off\"\nduration = \"14 day\"\ncharge = "
                              "0.4\nstart = \"cold\"\n"),
              "parked");
  EXPECT_EQ(*low.one("charging.standing", "parked").verdict.predicted, 0);
}

TEST(ChargingRequirements, BalanceIsOutputLessLoads) {
  Judging j(hand_car(), "hot-idle");
  const auto& t = j.trace("hot-idle");
  const auto slot = [&](auto port) { return static_cast<std::size_t>(j.car().graph().slot(port)); };
  EXPECT_NEAR(*j.one("charging.balance", "hot-idle").verdict.predicted,
              t.late_mean(slot("alternator.available"), 0.5) - t.late_mean(slot("load.current"), 0.5), 1e-9);
}

// The speed it breaks even at: there the derated curve gives just the load.
TEST(ChargingRequirements, BreakEvenSpeedIsOnTheCurve) {
  Judging j(hand_car(), "hot-idle");
  const auto& v = j.one("charging.balance", "hot-idle").verdict;
  ASSERT_EQ(v.because.size(), 1u);
  const auto& m = j.car().model<charging::Model>();
  const auto& t = j.trace("hot-idle");
  const auto at_end = [&](auto port) {
    return t.at(t.rows() - 1, static_cast<std::size_t>(j.car().graph().slot(port)));
  };
  const double hot = at_end("alternator.available") / m.output->at(at_end("belts.alternator_speed")).value;
  const double load = t.late_mean(static_cast<std::size_t>(j.car().graph().slot("load.current")), 0.5);
  EXPECT_NEAR(m.output->at(v.because[0].value * 6.5 / 2.4).value * hot, load, 0.01 * load);
}

TEST(ChargingRequirements, ASmallMachineDoesNotCover) {
  Build b = hand_car("[charging.alternator]\nrated_current = \"55 A\"\n");
  std::get<charging::Input>(b.inputs).alternator.output_curve.reset();  // else the curve would speak
  Judging j(b, "hot-idle");
  EXPECT_LT(*j.one("charging.balance", "hot-idle").margin(), 0);
  EXPECT_LT(*j.one("charging.bus-voltage", "hot-idle").margin(), 0);
}

// 5500 rpm x 6.5 / 2.4 = 14 896 rpm.
TEST(ChargingRequirements, RotorSpeedAtTheRedLine) {
  Judging j(hand_car(), "hot-idle");
  EXPECT_NEAR(*j.one("charging.alternator-speed").verdict.predicted / rpm, 14896, 1);
}

TEST(ChargingRequirements, Polarity) {
  const auto verdict = [](const std::string& change) {
    Judging j(hand_car(change), "hot-idle");
    return j.one("charging.polarity").verdict;
  };
  EXPECT_TRUE(*verdict("").rule);
  EXPECT_FALSE(*verdict("[vehicle]\nearth = \"positive\"\n").rule);
  EXPECT_TRUE(*verdict("[vehicle]\nearth = \"positive\"\n[charging.alternator]\nearth = \"isolated\"\n").rule);
  Build b = hand_car();
  std::get<charging::Input>(b.inputs).alternator.earth.reset();
  Judging j(b, "hot-idle");
  const auto& v = j.one("charging.polarity").verdict;
  EXPECT_FALSE(v.rule);
  EXPECT_EQ(v.missing, std::vector<std::string>{"charging.alternator.earth"});
}

TEST(ChargingRequirements, CrankLoopIsTheCablesShare) {
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
TEST(ChargingRequirements, AWeakBatteryFailsBothCrankFindings) {
  Judging sound(hand_car(), "cold-crank"),
      weak(hand_car("[charging.battery]\ncold_crank_current = \"220 A\"\n"), "cold-crank");
  EXPECT_GT(*sound.one("charging.crank-voltage", "cold-crank").margin(),
            *weak.one("charging.crank-voltage", "cold-crank").margin());
  EXPECT_LT(*weak.one("charging.crank-voltage", "cold-crank").margin(), 0);
  EXPECT_LT(*weak.one("charging.crank-speed", "cold-crank").verdict.predicted,
            *sound.one("charging.crank-speed", "cold-crank").verdict.predicted);
}

}  // namespace
