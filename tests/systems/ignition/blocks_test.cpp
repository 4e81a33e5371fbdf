#include "systems/ignition/rig.hpp"

using namespace sw;
using namespace sw::rig;

namespace {

// By hand: 13 V less 1 V on 1 ohm, 8 mH, 4 ms: 12 x (1 - e^-0.5) = 4.722 A, 8 mH x 4.722^2/2 = 89.2 mJ, half of it in
// the spark.
TEST(IgnitionBlocks, CoilByHand) {
  const auto m = ignition_of(module_ignition());
  auto b = bench<ignition::System>(m, "ignition.coil");
  b.give("duty.running", 1).give("engine.speed", 750 * rpm).give("ignition.voltage", 13).run();
  const double a = 12 * (1 - std::exp(-0.5));
  EXPECT_NEAR(b.get("ignition.coil_current"), a, 1e-9);
  EXPECT_NEAR(b.get("ignition.spark_energy"), 0.5 * 0.5 * 8e-3 * a * a, 1e-12);
  EXPECT_NEAR(b.get("ignition.dwell"), 4e-3, 1e-12);
  EXPECT_GT(b.get("ignition.coil_heat"), 0);
}

TEST(IgnitionBlocks, NothingWhileItStands) {
  const auto m = ignition_of(module_ignition());
  auto b = bench<ignition::System>(m, "ignition.coil");
  b.give("ignition.voltage", 12.6).run();
  EXPECT_EQ(b.get("ignition.coil_current"), 0);
  EXPECT_EQ(b.get("ignition.spark_energy"), 0);
}

TEST(IgnitionBlocks, CrankedAtTheStartersSpeedAndVolts) {
  const auto m = ignition_of(module_ignition());
  auto b = bench<ignition::System>(m, "ignition.coil");
  b.give("duty.cranking", 1).give("starter.engine_speed", 150 * rpm).give("ignition.voltage", 8).run();
  EXPECT_NEAR(b.get("ignition.coil_current"), 7 * (1 - std::exp(-0.5)), 1e-9);
}

TEST(IgnitionBlocks, PulsesForATachometer) {
  auto pulses = [](const std::string& coil) {
    const auto m = ignition_of(module_ignition({.coil = coil}));
    return bench<ignition::System>(m, "ignition.signal").run().get("ignition.pulses_per_turn");
  };
  EXPECT_EQ(pulses(""), 4);
  EXPECT_EQ(pulses("one_for = \"a pair\"\n"), 1);
  EXPECT_EQ(pulses("one_for = \"one cylinder\"\n"), 0.5);
  const auto m = ignition_of(module_ignition({.top = "tachometer = \"controller's output\"\n"}));
  EXPECT_EQ(bench<ignition::System>(m, "ignition.signal").run().get("ignition.signal_voltage"), 12);
}

TEST(IgnitionBlocks, InACar) {
  Drive d(hand_car(module_ignition()), "hot-idle");
  EXPECT_NEAR(d.last("ignition.coil_current"), (d.last("ignition.voltage") - 1) * (1 - std::exp(-0.5)), 1e-9);
  Drive c(hand_car(module_ignition()), "cold-crank");
  EXPECT_GT(c.first("starter.engine_speed") / rpm, 60);
  EXPECT_GT(c.first("ignition.coil_current"), 1);
}

}  // namespace
