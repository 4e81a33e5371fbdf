// What the sums of tyre and gearing do with optional and contradictory inputs; figures stand in tests/published.
#include "sum/asked.hpp"

namespace sw {
namespace {

TEST(GearSums, TyreFromSizeOrDiameter) {
  EXPECT_NEAR(asked("tyre", {"diameter=642.6 mm"}, "turns", "rev/mile"),
              asked("tyre", {"size=205/70R14"}, "turns", "rev/mile"), 1e-9);
  EXPECT_NEAR(asked("tyre", {"size=205/70R14", "rolling_factor=0.965"}, "circumference", "mm"),
              0.965 * 3.14159265 * 642.6, 1e-3);
  EXPECT_EQ(code("tyre", {"size=205/70"}), 2);
  EXPECT_EQ(code("tyre", {"size=205/70R14", "diameter=26 in"}), 2);
  EXPECT_EQ(code("tyre", {}), 2);
}

TEST(GearSums, GearingGoesBothWays) {
  const Words car = {"axle=3.55", "gear=0.7", "diameter=26 in", "slip=3 %"};
  auto with = [&](Words more) {
    more.insert(more.begin(), car.begin(), car.end());
    return more;
  };
  const double rpm = asked("gearing", with({"speed=65 mph"}), "engine_speed", "rpm");
  EXPECT_NEAR(rpm, 65 * 1609.344 / 60 / (3.14159265358979 * 0.6604) * 3.55 * 0.7 / 0.97, 1e-6);
  EXPECT_NEAR(asked("gearing", with({"engine_speed=" + std::to_string(rpm) + " rpm"}), "speed", "mph"), 65, 1e-6);
  EXPECT_EQ(code("gearing", car), 2);
}

TEST(GearSums, SpeedometerDrive) {
  // 776 turns a mile x 3.55 = 2754.8; 8 over 22 teeth: 1001.7 turns of the cable; 8 pulses a turn: 22038
  const Words base = {"axle=3.55", "turns=776 rev/mile"};
  EXPECT_FALSE(gives("speed-drive", base, "cable_turns"));
  EXPECT_NEAR(asked("speed-drive", base, "shaft_turns", "rev/mile"), 2754.8, 1e-6);
  EXPECT_NEAR(asked("speed-drive", {"axle=3.55", "turns=776 rev/mile", "drive_teeth=8", "driven_teeth=22"},
                    "cable_turns", "rev/mile"),
              1001.745, 1e-3);
  EXPECT_NEAR(asked("speed-drive", {"axle=3.55", "turns=776 rev/mile", "sensor_teeth=8"}, "pulses", "pulse/mile"),
              22038.4, 1e-6);
  EXPECT_EQ(code("speed-drive", {"axle=3.55", "turns=776 rev/mile", "drive_teeth=8"}), 2);
  EXPECT_EQ(code("speed-drive", {"axle=3.55", "turns=776 rev/mile", "diameter=26 in"}), 2);
}

TEST(GearSums, SignalAndBand) {
  EXPECT_EQ(code("speed-signal", {"speed=60 mph"}), 2);
  EXPECT_EQ(code("speed-signal", {"speed=60 mph", "pulses=8000 pulse/mile", "turns=1000 rev/mile"}), 2);
  EXPECT_NEAR(asked("speedometer-band", {"speed=100 km/h"}, "lowest", "km/h"), 100, 1e-9);  // UN R39: never below
  EXPECT_NEAR(asked("speedometer-band", {"speed=0 km/h"}, "highest", "km/h"), 4, 1e-9);
}

}  // namespace
}  // namespace sw
