// What the sums of circuits do with optional, contradictory and far-off inputs; figures stand in tests/published.
#include "sum/asked.hpp"

namespace sw {
namespace {

TEST(CircuitSums, DividerGoesBothWays) {
  const double v = asked("divider", {"supply=5 V", "pull_up=1000 ohm", "sender=240 ohm"}, "voltage", "V");
  EXPECT_NEAR(v, 5 * 240.0 / 1240, 1e-12);
  EXPECT_NEAR(asked("divider", {"supply=5 V", "pull_up=1000 ohm", "voltage=1 V"}, "sender", "ohm"), 250, 1e-9);
  EXPECT_NEAR(asked("divider", {"supply=5 V", "pull_up=1000 ohm", "voltage=1 V"}, "current", "mA"), 4, 1e-9);
  EXPECT_FALSE(gives("divider", {"supply=5 V", "pull_up=1000 ohm", "voltage=1 V"}, "voltage"));
  EXPECT_EQ(code("divider", {"supply=5 V", "pull_up=1000 ohm", "voltage=5 V"}), 2);
  EXPECT_EQ(code("divider", {"supply=5 V", "pull_up=1000 ohm", "voltage=1 V", "sender=10 ohm"}), 2);
  EXPECT_EQ(code("divider", {"supply=5 V", "pull_up=1000 ohm"}), 2);
}

TEST(CircuitSums, BridgeWithoutDetectorGivesNoMoreThanItKnows) {
  const Words open = {"supply=12 V", "r1=1 kohm", "r2=2 kohm", "r3=1.5 kohm", "r4=2 kohm"};
  EXPECT_TRUE(gives("bridge", open, "open_voltage"));
  EXPECT_FALSE(gives("bridge", open, "detector_current"));
  EXPECT_FALSE(gives("bridge", open, "resistance"));
  auto balanced = Words{"supply=12 V", "r1=100 ohm", "r2=200 ohm", "r3=150 ohm", "r4=300 ohm", "detector=7 ohm"};
  EXPECT_NEAR(asked("bridge", balanced, "detector_current", "A"), 0, 1e-15);
  EXPECT_NEAR(asked("bridge", balanced, "resistance", "ohm"), 300 * 450.0 / 750, 1e-9);
}

TEST(CircuitSums, BusListsOneCurrentASource) {
  const auto r = run_sum("bus", {"voltages=12.6, 14.2 V", "resistances=20, 50 mohm"});
  ASSERT_EQ(r.exit_code(), 0) << r.to_text();
  EXPECT_EQ(r.output("currents")->numbers.size(), 2u);
  EXPECT_NEAR(r.output("currents")->numbers[0] + r.output("currents")->numbers[1], 0,
              1e-9);  // no load: one charges the other
  EXPECT_EQ(code("bus", {"voltages=12.6, 14.2 V", "resistances=0.02 ohm"}), 2);
  EXPECT_EQ(code("bus", {"voltages=12.6 V", "resistances=0 ohm"}), 2);
}

TEST(CircuitSums, AlternatorBatteryFuse) {
  EXPECT_FALSE(gives("alternator-load", {"voltage=14 V", "current=100 A", "efficiency=55 %"}, "torque"));
  EXPECT_NEAR(asked("alternator-load", {"voltage=14 V", "current=100 A", "efficiency=0.55", "shaft_speed=6000 rpm"},
                    "torque", "N m"),
              14 * 100 / 0.55 / 628.3185307, 1e-6);
  EXPECT_EQ(code("battery-time", {"capacity=100 A h", "rated_time=20 h", "exponent=1.2", "current=0.1 A"}), 3);
  EXPECT_NEAR(asked("battery-reserve", {"reserve=2 h"}, "charge", "A h"), 50, 1e-9);
  EXPECT_FALSE(gives("fuse-time", {"load=1.1"}, "longest"));
  EXPECT_EQ(code("fuse-time", {"load=2", "kind=glass"}), 2);
}

}  // namespace
}  // namespace sw
