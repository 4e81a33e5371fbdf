#include "systems/judged.hpp"

using namespace sw;
using namespace sw::rig;

namespace {

TEST(ChargingSupplyRequirements, BalanceIsOutputLessLoads) {
  Judging j(hand_car(), "hot-idle");
  const auto& t = j.trace("hot-idle");
  const auto slot = [&](auto port) { return static_cast<std::size_t>(j.car().graph().slot(port)); };
  EXPECT_NEAR(*j.one("charging.balance", "hot-idle").verdict.predicted,
              t.late_mean(slot("alternator.available"), 0.5) - t.late_mean(slot("load.current"), 0.5), 1e-9);
}

// The speed it breaks even at: there the derated curve gives just the load.
TEST(ChargingSupplyRequirements, BreakEvenSpeedIsOnTheCurve) {
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

TEST(ChargingSupplyRequirements, ASmallMachineDoesNotCover) {
  Build b = hand_car("[charging.alternator]\nrated_current = \"55 A\"\n");
  std::get<charging::Input>(b.inputs).alternator.output_curve.reset();  // else the curve would speak
  Judging j(b, "hot-idle");
  EXPECT_LT(j.one("charging.balance", "hot-idle").margin().value(), 0);
  EXPECT_LT(j.one("charging.bus-voltage", "hot-idle").margin().value(), 0);
}

// 5500 rpm x 6.5 / 2.4 = 14 896 rpm.
TEST(ChargingSupplyRequirements, RotorSpeedAtTheRedLine) {
  Judging j(hand_car(), "hot-idle");
  EXPECT_NEAR(*j.one("charging.alternator-speed").verdict.predicted / rpm, 14896, 1);
}

TEST(ChargingSupplyRequirements, Polarity) {
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

}  // namespace
