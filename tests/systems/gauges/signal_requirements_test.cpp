#include "systems/judged.hpp"

using namespace sw;
using namespace sw::rig;

namespace {

Judging still(const std::string& change = "") { return Judging(hand_car(change), "hot-idle"); }
double predicted(const Judging& j, std::string_view id, std::string_view place) {
  return j.one(id, {}, place).verdict.predicted.value();
}
double line(const Verdict& v, std::string_view what) {
  for (auto& b : v.because)
    if (b.what == what) return b.value;
  throw std::out_of_range(std::string(what));
}

// Casebook IN-05: 775.7 rev/mile x 3.73 x 8/21 = 1102 turns, 8818 pulses a mile against 16000: 33.1 at 60 mph.
TEST(GaugesSpeedometer, ByHand) {
  const std::string set =
      "[driveline]\naxle = 3.73\n[gauges.speedometer.dash]\npulses = 8\ndrive_teeth = 8\ndriven_teeth = 21\nset = ";
  const Judging j = still(set + "\"16000 pulse/mile\"\n");
  const Verdict& v = j.one("gauges.speedometer", {}, "dash").verdict;
  EXPECT_NEAR(*v.predicted, 8818.0 / 16000 - 1, 1e-4);
  EXPECT_NEAR(line(v, "shown at 60 mph") / mph, 33.07, 0.01);
  EXPECT_NEAR(line(v, "teeth of the driven gear for exactly 1000 turns a mile"), 23.1, 0.05);
  EXPECT_NE(v.fix_hint.find("8818"), std::string::npos) << v.fix_hint;
  EXPECT_GT(still(set + "\"8818 pulse/mile\"\n").one("gauges.speedometer").margin().value(), 0.039);
}

TEST(GaugesSpeedometer, CableShaftAndWheel) {
  // 3.25 axle: 775.7 x 3.25 x 8/20 = 1008.4 turns of the cable on a head of 1000
  EXPECT_NEAR(predicted(still("[gauges.speedometer.dash]\nreads = \"cable\"\ndrive_teeth = 8\ndriven_teeth = 20\n"),
                        "gauges.speedometer", "dash"),
              0.0084, 1e-4);
  // ring of 40 on the output shaft: 775.7 x 3.25 x 40 = 100840; of 48 on a wheel: 37233
  EXPECT_NEAR(predicted(still("[gauges.speedometer.dash]\nsits_on = \"output shaft\"\npulses = 40\nset = \"100840 "
                              "pulse/mile\"\n"),
                        "gauges.speedometer", "dash"),
              0, 2e-4);
  EXPECT_NEAR(
      predicted(still("[gauges.speedometer.dash]\nsits_on = \"wheel\"\npulses = 48\nset = \"37233 pulse/mile\"\n"),
                "gauges.speedometer", "dash"),
      0, 2e-4);
  EXPECT_EQ(still("[gauges.speedometer.dash]\npulses = 8\n").one("gauges.speedometer").verdict.missing,
            (std::vector<std::string>{"gauges.speedometer.dash.set", "gauges.speedometer.dash.drive_teeth",
                                      "gauges.speedometer.dash.driven_teeth"}));
}

TEST(GaugesTachometer, FactorAndLevel) {
  const Judging j = still("[gauges.tachometer.dash]\nset = 2\nsource = 4\nlevel = \"5 V\"\nthreshold = \"8 V\"\n");
  EXPECT_DOUBLE_EQ(predicted(j, "gauges.tachometer", "dash"), 1.0);
  EXPECT_DOUBLE_EQ(j.one("gauges.tachometer-level").margin().value(), -3);
  const Judging bare = still("[gauges.tachometer.dash]\nset = 4\n");
  EXPECT_EQ(bare.one("gauges.tachometer").verdict.missing, std::vector<std::string>{"gauges.tachometer.dash.source"});
  EXPECT_TRUE(bare.of("gauges.tachometer-level").empty());
}

TEST(GaugesSpeedSensor, ListenersShareIt) {
  const std::string sensor =
      "[gauges.speed_sensor.box]\nresistance = \"1.5 kohm\"\nopen_voltage = \"0.9 V\"\nat_speed = \"10 mph\"\n"
      "[gauges.speed_sensor.box.listener.cluster]\ninput = \"10 kohm\"\nthreshold = \"0.5 V\"\n";
  EXPECT_NEAR(predicted(still(sensor), "gauges.speed-sensor", "box to cluster") / mph, 6.39, 0.01);
  const Judging both =
      still(sensor + "[gauges.speed_sensor.box.listener.controller]\ninput = \"1 kohm\"\nthreshold = \"0.5 V\"\n");
  // 10 and 1 kohm: 909 ohm; 909 / 2409 = 0.3774; 0.5 / (0.09 x 0.3774) = 14.7 mph
  EXPECT_NEAR(predicted(both, "gauges.speed-sensor", "box to cluster") / mph, 14.72, 0.01);
  EXPECT_LT(both.one("gauges.speed-sensor").margin().value(), 0);
}

TEST(GaugesVolts, ShowsTheClustersVolts) {
  const Judging j = still("[gauges.volts.dash]\nerror = \"1 V\"\n");
  const Judged& found = j.one("gauges.volts", "hot-idle", "dash");
  EXPECT_NEAR(*found.verdict.predicted,
              line(found.verdict, "at the gauges") + 1 - line(found.verdict, "at the battery's posts"), 1e-12);
  EXPECT_LT(found.margin().value(), 0);
}

}  // namespace
