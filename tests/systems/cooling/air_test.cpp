#include <gtest/gtest.h>
#include <rapidcheck/gtest.h>

#include "systems/rig.hpp"

using namespace sw;
using namespace sw::rig;

namespace {

cooling::FanModel electric(double face_m_s, bool reversed = false) {
  cooling::FanModel f;
  f.face_m_s = face_m_s;
  f.rated_v = 13.5;
  f.reversed = reversed;
  return f;
}
cooling::Model core_with(std::initializer_list<cooling::FanModel> fans) {
  cooling::Model m;
  m.face_m2 = 0.3;
  m.loss = 8.2;
  m.ram_share = 0.18;
  for (auto& f : fans) m.fan[m.fans++] = f;
  m.electric = m.fans;
  return m;
}
double face(const cooling::Model& m, double road, double volts, std::size_t level) {
  return cooling::air_through_core(m, {road, volts, 0, level}).face_m_s;
}

TEST(CoolingAir, StandingAtRatedVoltsGivesTheInstalledFlow) {
  const auto m = core_with({electric(2), electric(1.5)});
  EXPECT_NEAR(face(m, 0, 13.5, 1), 2.0, 1e-12);
  EXPECT_NEAR(face(m, 0, 13.5, 2), 3.5, 1e-12);  // side by side they add
  EXPECT_EQ(face(m, 0, 13.5, 0), 0);
}

// Fan laws (any fan engineering text): against a loss that goes with the square, flow goes with speed, here with volts.
TEST(CoolingAir, AffinityWithVolts) {
  const auto m = core_with({electric(2)});
  EXPECT_NEAR(face(m, 0, 12.0, 1), 2 * 12.0 / 13.5, 1e-12);
  EXPECT_EQ(face(m, 0, -1.0, 1), 0);  // wrong polarity is no flow of this law
}

TEST(CoolingAir, FreeTurningFansLeaveTheStatedShareOfRoadSpeed) {
  EXPECT_NEAR(face(core_with({electric(2)}), 20, 0, 0), 0.18 * 20, 1e-12);
}

// By hand, installed 2 m/s, free ratio 1.35, k = 8.2, ram 0.18 x 10 m/s: 1/1.35^2 = 0.548697; dp0 = 8.2 x 4 / 0.451303
// = 72.68 Pa; fan slope 8.2 x 0.548697 / 0.451303 = 9.970; ram 8.2 x 1.8^2 = 26.57; v = sqrt(99.25 / 18.17) = 2.337.
TEST(CoolingAir, FanAndRamTogetherByHand) { EXPECT_NEAR(face(core_with({electric(2)}), 10, 13.5, 1), 2.337, 0.001); }

// The closed form is the root of the balance it comes from: fan pressure + ram = core loss, at the face speed found;
// where that would be less than the ram air alone the blades are carried along.
TEST(CoolingAir, ClosedFormIsTheBalancesRoot) {
  const auto m = core_with({electric(2)});
  for (double road : {0.0, 5.0, 15.0, 30.0})
    for (double volts : {6.0, 10.0, 13.5}) {
      const double v = face(m, road, volts, 1), s = volts / 13.5, free = 2 * 1.35;
      const double dp0 = m.loss * 4 / (1 - 4 / (free * free));
      EXPECT_GE(v, m.ram_share * road);
      if (v == m.ram_share * road) continue;
      const double gives = dp0 * s * s - dp0 / (free * free) * v * v + m.loss * std::pow(m.ram_share * road, 2);
      EXPECT_NEAR(gives, m.loss * v * v, 1e-9) << road << " " << volts;
    }
}

TEST(CoolingAir, AReversedFanBlowsAgainstAndTheRoadTurnsItRound) {
  const auto m = core_with({electric(1.5, true)});
  EXPECT_LT(face(m, 0, 13.5, 1), 0);
  EXPECT_NEAR(face(m, 0, 13.5, 1), -1.5, 1e-12);
  EXPECT_GT(face(m, 40, 13.5, 1), 0);
  // One each way, alike: they undo each other.
  EXPECT_NEAR(face(core_with({electric(2), electric(2, true)}), 0, 13.5, 2), 0, 1e-9);
}

TEST(CoolingAir, AnEngineFanFollowsTheEngine) {
  auto f = electric(3);
  f.electric = false;
  f.rated_rad_s = 200;
  auto m = core_with({f});
  m.electric = 0;
  EXPECT_NEAR(cooling::air_through_core(m, {0, 0, 100, 0}).face_m_s, 1.5, 1e-12);
}

// More road speed, more volts, more stages: never less air.
RC_GTEST_PROP(CoolingAir, NeverLessForMore, ()) {
  const auto tenth = [](int low, int high) { return *rc::gen::inRange(low, high) / 10.0; };
  const auto m = core_with({electric(tenth(5, 50)), electric(tenth(5, 50))});
  const double road = tenth(0, 400), volts = tenth(0, 160);
  RC_ASSERT(face(m, road + 1, volts, 1) >= face(m, road, volts, 1));
  RC_ASSERT(face(m, road, volts + 0.5, 1) >= face(m, road, volts, 1) - 1e-12);
  RC_ASSERT(face(m, road, volts, 2) >= face(m, road, volts, 1) - 1e-12);
  const auto swept = cooling::air_through_core(m, {road, volts, 0, 2}).swept;
  RC_ASSERT(swept >= m.cover - 1e-12 && swept <= 1 + 1e-12);
}

}  // namespace
