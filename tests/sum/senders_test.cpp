// What the sums of senders do with optional, contradictory and far-off inputs; figures stand in tests/published.
#include "sum/asked.hpp"

namespace sw {
namespace {

TEST(SenderSums, NetworkGoesBothWays) {
  EXPECT_NEAR(asked("sender-network", {"sender=240 ohm", "parallel=60 ohm", "series=5 ohm"}, "seen", "ohm"), 53, 1e-9);
  EXPECT_NEAR(asked("sender-network", {"sender=240 ohm", "seen=53 ohm", "series=5 ohm"}, "parallel", "ohm"), 60, 1e-9);
  EXPECT_FALSE(gives("sender-network", {"sender=240 ohm", "parallel=60 ohm"}, "parallel"));
  EXPECT_EQ(code("sender-network", {"sender=33 ohm", "seen=73 ohm"}), 2);
  EXPECT_EQ(code("sender-network", {"sender=33 ohm", "seen=3 ohm", "series=5 ohm"}), 2);
  EXPECT_EQ(code("sender-network", {"sender=33 ohm"}), 2);
}

TEST(SenderSums, MatchTakesWhatIsOnSale) {
  const Words exact = {"from=240, 100, 33 ohm", "to=104.3076923, 72, 39.0491803 ohm"};  // 150 across, 12 after
  EXPECT_NEAR(asked("sender-match", exact, "series", "ohm"), 12, 1e-3);
  EXPECT_NEAR(asked("sender-match", exact, "parallel", "ohm"), 150, 0.01);
  const Words sold = {"from=240, 100, 33 ohm", "to=104.3076923, 72, 39.0491803 ohm", "values=e12"};
  EXPECT_NEAR(asked("sender-match", sold, "series", "ohm"), 12, 1e-9);
  EXPECT_NEAR(asked("sender-match", sold, "parallel", "ohm"), 150, 1e-9);
  EXPECT_FALSE(gives("sender-match", {"from=10, 20 ohm", "to=15, 25 ohm"}, "parallel"));
  EXPECT_EQ(code("sender-match", {"from=10, 20 ohm", "to=15 ohm"}), 2);
}

TEST(SenderSums, ThermistorBothWaysAndFit) {
  const double r = asked("thermistor", {"temperature=80 degC", "r25=10 kohm", "beta=3950 K"}, "resistance", "ohm");
  EXPECT_NEAR(asked("thermistor", {"resistance=" + std::to_string(r) + " ohm", "r25=10 kohm", "beta=3950 K"},
                    "temperature", "degC"),
              80, 1e-5);
  EXPECT_NEAR(asked("thermistor-fit", {"resistances=10000, " + std::to_string(r) + " ohm", "temperatures=25, 80 degC"},
                    "beta", "K"),
              3950, 1e-2);
  EXPECT_TRUE(gives("thermistor-fit", {"resistances=5600, 560, 60 ohm", "temperatures=0, 60, 130 degC"}, "c"));
  EXPECT_EQ(code("thermistor-fit", {"resistances=5600 ohm", "temperatures=0 degC"}), 2);
  EXPECT_EQ(code("thermistor", {"resistance=5600 ohm"}), 2);
  EXPECT_EQ(code("thermistor", {"resistance=5600 ohm", "r25=10 kohm", "beta=3950 K", "a=1e-3", "b=2e-4", "c=1e-7"}), 2);
}

TEST(SenderSums, ThermocoupleBothWays) {
  const double mv = asked("thermocouple", {"type=k", "temperature=650 degC", "reference=30 degC"}, "voltage", "mV");
  EXPECT_NEAR(asked("thermocouple", {"type=k", "voltage=" + std::to_string(mv) + " mV", "reference=30 degC"},
                    "temperature", "degC"),
              650, 1e-3);
  EXPECT_LT(mv, asked("thermocouple", {"type=k", "temperature=650 degC"}, "voltage", "mV"));  // a warm end takes some
  EXPECT_EQ(code("thermocouple", {"type=t", "temperature=500 degC"}), 3);
  EXPECT_EQ(code("thermocouple", {"type=k", "voltage=80 mV"}), 3);
  EXPECT_EQ(code("thermocouple", {"type=s", "temperature=500 degC"}), 2);
  EXPECT_EQ(code("thermocouple", {"type=k", "temperature=500 degC", "voltage=1 mV"}), 2);
}

}  // namespace
}  // namespace sw
