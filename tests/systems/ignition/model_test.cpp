#include "systems/ignition/rig.hpp"

using namespace sw;
using namespace sw::rig;

namespace {

Car car_of(const std::string& change) { return Car(hand_car(change)); }

TEST(IgnitionModel, DwellOfPointsIsAnAngle) {  // 30 of 45 deg: two thirds of the turn at every speed
  const auto m = ignition_of(points_ignition());
  for (double n : {600.0, 3000.0, 6000.0}) {
    const auto d = ignition::dwell_at(m, n * rpm, 12);
    EXPECT_NEAR(d.period_s, 120 / (n * 8), 1e-12);
    EXPECT_NEAR(d.closed_s, d.period_s * 2 / 3, 1e-12);
  }
}

TEST(IgnitionModel, DwellOfAModuleIsATimeThatLeavesTheSparkItsOwn) {
  const auto m = ignition_of(module_ignition());
  EXPECT_NEAR(ignition::dwell_at(m, 600 * rpm, 12).closed_s, 4e-3, 1e-12);
  EXPECT_NEAR(ignition::dwell_at(m, 6000 * rpm, 12).closed_s, 2.5e-3 - 0.8e-3, 1e-12);
}

TEST(IgnitionModel, CoilsOfTheirOwnHaveMoreTime) {
  const auto pair = ignition_of(module_ignition({.coil = "one_for = \"a pair\"\n"}));
  const auto each = ignition_of(module_ignition({.coil = "one_for = \"one cylinder\"\n"}));
  EXPECT_NEAR(ignition::dwell_at(pair, 6000 * rpm, 12).period_s, 10e-3, 1e-12);
  EXPECT_NEAR(ignition::dwell_at(each, 6000 * rpm, 12).period_s, 20e-3, 1e-12);
  EXPECT_NEAR(ignition::dwell_at(each, 6000 * rpm, 12).closed_s, 4e-3, 1e-12);
}

TEST(IgnitionModel, DwellByVolts) {
  const auto m = ignition_of(module_ignition(
      {.switching = "dwell_curve = [[\"8 V\", \"6 ms\"], [\"12 V\", \"4 ms\"], [\"16 V\", \"2 ms\"]]\n"}));
  EXPECT_NEAR(ignition::dwell_at(m, 600 * rpm, 8).closed_s, 6e-3, 1e-9);
  EXPECT_NEAR(ignition::dwell_at(m, 600 * rpm, 16).closed_s, 2e-3, 1e-9);
}

TEST(IgnitionModel, BallastIsBypassedWhileCrankingOnly) {
  const auto m = ignition_of(points_ignition({.coil = "ballast = \"1.4 ohm\"\nballast_bypassed = true\n"}));
  EXPECT_DOUBLE_EQ(ignition::circuit(m, false).ballast_ohm, 1.4);
  EXPECT_DOUBLE_EQ(ignition::circuit(m, true).ballast_ohm, 0);
}

TEST(IgnitionModel, AMissingFigureSilencesItsOwnBlockAlone) {
  const Car car = car_of("[ignition]\ncylinders = 8\n[ignition.switching]\nby = \"points\"\n");
  const auto& graph = car.graph();
  EXPECT_TRUE(graph.unavailable.contains("ignition.coil_current"));
  EXPECT_TRUE(graph.unavailable.at("ignition.coil_current").contains("ignition.coil.inductance"));
  EXPECT_FALSE(graph.unavailable.contains("ignition.pulses_per_turn"));
}

TEST(IgnitionModel, ACarWithoutItIsNotAsked) {
  const Car car = car_of("");
  for (auto& s : car.systems())
    if (s.key == "ignition") {
      EXPECT_FALSE(s.described);
    }
}

TEST(IgnitionModel, FiguresThatCannotBe) {
  const Car angle(
      faulty_car("[ignition]\ncylinders = 8\n[ignition.switching]\nby = \"points\"\ndwell_angle = \"46 deg\"\n"));
  EXPECT_TRUE(angle.faults().any_fault());
  const Car odd(faulty_car("[ignition]\ncylinders = 5\n[ignition.coil]\none_for = \"a pair\"\n"));
  EXPECT_TRUE(odd.faults().any_fault());
}

}  // namespace
