// Cranking, charging and batteries as they were measured, against the laws. Figures are transcribed; how far off the
// laws are is told beside each, and the bounds are theirs: a change that makes one worse fails.
#include <gtest/gtest.h>

#include <cmath>

#include "physics/battery.hpp"
#include "systems/charging/charging.hpp"

namespace sw {
namespace {

constexpr double zero_c = 273.15, hour = 3600;

/// A stand-in of the field tables and its half-width as a share or an amount.
struct StandIn {
  double value, half;
};
StandIn stand_in(std::span<const FieldInfo> table, std::string_view key) {
  for (auto& f : table)
    if (f.key == key) {
      const Spread s = f.spreads[static_cast<std::size_t>(Source::typical)];
      return {*f.fallback, s.share * std::abs(*f.fallback) + s.absolute};
    }
  throw std::out_of_range(std::string(key));
}

// One sealed deep-cycle battery of 12 V and 100 A h, 2016 (github vmehra813/lead_acid_battery_data, commit 6e575b32,
// sheet of calibrated data; no licence stated, figures alone kept): terminal volts under 10 A at shares of a discharge
// that gave 92.3 A h.
constexpr double discharged[] = {0.05, 0.10, 0.25, 0.50, 0.75, 0.90, 0.95};
constexpr double volts[] = {12.57, 12.52, 12.33, 12.01, 11.62, 11.25, 11.03};

double ours(double share, bool settled) {
  const double s = 1 - share * 0.923, r = physics::battery_resistance(20e-3, s, 298.15).value;
  const double slow = settled ? physics::battery_polarization({100 * hour, 20e-3, 6}, -10, s, 298.15).value : 0.0;
  return physics::battery_open_volts(s, 298.15).value - 10 * r + slow;
}

// With the slow part the laws lie low over most of it, by 0.32 V at the start; without it 0.4 V high at the end: the
// straight open voltage is a starter battery's, and this one's plates hang on longer and fall off faster.
TEST(ElectricLogs, DischargeOfAMeasuredBattery) {
  double worst = 0, mean = 0;
  for (std::size_t i = 0; i < std::size(volts); ++i) {
    const double off = ours(discharged[i], true) - volts[i];
    worst = std::max(worst, std::abs(off));
    mean += off / std::size(volts);
  }
  EXPECT_LT(worst, 0.35);
  EXPECT_LT(mean, 0);
  EXPECT_GT(mean, -0.25);
  EXPECT_GT(ours(0.95, false), 11.03);
}

// Rested empty 11.55 V after five hours, full 13.23 V after three, surface charge still on it: the trade's ladder of
// the law has 11.8 and 12.7 V, 0.25 V above and 0.53 V below.
TEST(ElectricLogs, RestVoltsOfAMeasuredBattery) {
  EXPECT_NEAR(physics::battery_open_volts(0, 298.15).value, 11.55, 0.26);
  EXPECT_NEAR(physics::battery_open_volts(1, 298.15).value, 13.23, 0.54);
}

// 92.3 of 96.6 A h came back: 0.955 for the whole cycle; the law's share, meant for starter batteries, gives 0.915.
TEST(ElectricLogs, ChargeThatStays) {
  double sum = 0;
  for (int i = 0; i < 1000; ++i) sum += 1e-3 * physics::battery_charge_share((i + 0.5) * 1e-3);
  EXPECT_NEAR(sum, 0.955, 0.045);
}

// 92.3 A h at 10 A, 100 A h rated at 20 h.
TEST(ElectricLogs, TenHourCapacity) {
  EXPECT_NEAR(physics::battery_discharge_time(100 * hour, 20 * hour, 1.12, 10).value / hour, 9.23, 0.05);
}

// Empty, 31.6 A brought it from 11.578 to 12.129 V at once: 17 mohm, where the law, fitted to the discharge's end, has
// about 48: charging an empty battery is easier than drawing from it, and the law does not know that. Known to be off.
TEST(ElectricLogs, EmptyBatteryTakesChargeMoreEasilyThanTheLawSays) {
  const double law = physics::battery_resistance(20e-3, 0.05, 298.15).value, seen = (12.129 - 11.578) / 31.6;
  EXPECT_GT(law, seen);
  EXPECT_LT(law, 3 * seen);
}

// A small saloon of 2014, 1.5 l, started at about 28 degC (github eron93br/carOBD, obdiidata/drive5.csv, commit
// bf09e1c0; open, citation asked: Detecting Anomalies in the Engine Coolant Sensor Using One-Class Classifiers, IEEE
// 2019): 12.29 V at the control module at rest, 9.88 V while cranking. Neither its battery nor its starter is known:
// with the stand-ins of the field tables the laws give about 11 V, and the log lies inside the doubt those carry.
TEST(ElectricLogs, CrankingWithinTheDoubtOfTheStandIns) {
  const double air = 28 + zero_c, charge = physics::battery_charge_from_volts(12.29, air);
  const auto rating = stand_in(charging::Battery::fields(), "cold_crank_current");
  const auto current = stand_in(charging::Starter::fields(), "current");
  auto under = [&](double rated_a, double a) {
    const double full = physics::battery_resistance_from_cranking(rated_a);
    return 12.29 - a * physics::battery_resistance(full, charge, air).value;
  };
  EXPECT_NEAR(charge, 0.54, 0.03);
  EXPECT_NEAR(under(rating.value, current.value), 11.0, 0.1);
  EXPECT_LT(under(rating.value - rating.half, current.value + current.half), 9.88);
  EXPECT_GT(under(rating.value + rating.half, current.value - current.half), 9.88);
}

// The same car and another of its logs (idle27, idle29, idle43): 14.3 V just after a cold start at 28 degC, about 13.8
// V hot. Half a volt between them, air under the bonnet of 75 degC taken: the stand-in slope of -7 mV/K gives 0.33 V,
// with its doubt 0.47 V at most. The log's regulator falls a little more than any the stand-in allows for.
TEST(ElectricLogs, RegulatorFallsAsItWarms) {
  const auto slope = stand_in(charging::Alternator::fields(), "regulator_slope");
  const double step = 75 - 28;
  EXPECT_NEAR(-slope.value * 1e-3 * step, 0.33, 0.01);
  EXPECT_NEAR((-slope.value + slope.half) * 1e-3 * step, 0.5, 0.035);
}

}  // namespace
}  // namespace sw
