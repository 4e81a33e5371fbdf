#include "physics/brake_stop.hpp"

#include "near.hpp"

namespace sw::physics {
namespace {

constexpr double km_h = 1 / 3.6;

TEST(BrakeStop, DistanceAndDecelerationGoBackAndForth) {
  const Slope d = stop_distance_m(30, 7, 0.4);
  EXPECT_NEAR(d.value, 30 * 0.4 + 900 / 14.0, 1e-12);
  EXPECT_NEAR(stop_deceleration_m_s2(30, d.value, 0.4)->value, 7, 1e-12);
  EXPECT_NEAR(stop_time_s(30, 7, 0.4), 0.4 + 30 / 7.0, 1e-12);
  expect_slope(
      d.slope, [](double v) { return stop_distance_m(v, 7, 0.4).value; }, 30);
  expect_slope(
      stop_deceleration_m_s2(30, 80)->slope, [](double s) { return stop_deceleration_m_s2(30, s)->value; }, 80);
  EXPECT_FALSE(stop_deceleration_m_s2(30, 12, 0.4));  // the delay alone takes 12 m
}

TEST(BrakeStop, LimitsOf571_135) {  // 49 CFR 571.135 as stored: limits it prints for 100 km/h, m
  EXPECT_NEAR(stop_limit(StopTest::cold, 100 * km_h).distance_m, 70, 1e-9);
  EXPECT_NEAR(stop_limit(StopTest::hot, 100 * km_h).distance_m, 89, 1e-9);
  EXPECT_NEAR(stop_limit(StopTest::failed_circuit, 100 * km_h).distance_m, 168, 1e-9);
  EXPECT_NEAR(stop_limit(StopTest::high_speed, 160 * km_h).distance_m, 0.10 * 160 + 0.0067 * 160 * 160, 1e-9);
  expect_slope(
      stop_limit(StopTest::hot, 20).slope_s, [](double v) { return stop_limit(StopTest::hot, v).distance_m; }, 20);
}

TEST(BrakeStop, SquaredTermIsAStopWithoutDelay) {  // S = V^2 / 2a with the deceleration given back
  for (auto test : {StopTest::cold, StopTest::high_speed, StopTest::hot, StopTest::failed_circuit}) {
    const StopLimit l = stop_limit(test, 25);
    EXPECT_NEAR(stop_distance_m(25, l.deceleration_m_s2, 0.36).value, l.distance_m, 1e-9);
  }
}

// 49 CFR 571.105 Table III, read in a stored copy of the Code: what each stop in a row is asked, ft/s2, and the
// distance that deceleration takes from 60 mph, rounded up there to the foot (388 stands for 387.2).
TEST(BrakeStop, StopsInARowAndTheirDistances) {
  constexpr double foot = 0.3048;
  const double asked_ft[] = {16, 12, 10, 9, 8, 7.5, 7}, distance_ft[] = {242, 323, 388, 431, 484, 517, 554};
  const auto rates = depletion_m_s2();
  ASSERT_EQ(rates.size(), std::size(asked_ft));
  for (std::size_t i = 0; i < rates.size(); ++i) {
    EXPECT_DOUBLE_EQ(rates[i], asked_ft[i] * foot);
    const double stop_ft = stop_distance_m(60 * 0.44704, rates[i]).value / foot;
    EXPECT_LE(stop_ft, distance_ft[i]) << i;
    EXPECT_GT(stop_ft, distance_ft[i] - 1.2) << i;
  }
  EXPECT_NEAR(depletion_pedal_n, 667.2, 0.05);  // 150 lbf
}

}  // namespace
}  // namespace sw::physics
