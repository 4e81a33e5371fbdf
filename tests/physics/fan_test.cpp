#include "physics/fan.hpp"

#include <gtest/gtest.h>

#include <cmath>

using namespace sw::physics;

namespace {

// Fan laws (any fan engineering text): flow with speed, pressure with its square, power with its cube. By hand, 1200 to
// 1500 rpm, a ratio of 1.25: 10 000 cfm at 2.0 in w.g. with 5 hp become 12 500 cfm, 2.0 x 1.5625 = 3.13 in w.g., 5 x
// 1.9531 = 9.77 hp. Flow is the balance's where nothing but the fan blows, pressure its square.
TEST(Fan, LawsOfATextbook) {
  const double share = 1500.0 / 1200;
  EXPECT_NEAR(affinity_power(5, share).value, 9.77, 0.005);
  const double one = face_speed({2.0, 0, 0, 1.35}).value_m_s, two = face_speed({2.0 * share, 0, 0, 1.35}).value_m_s;
  EXPECT_NEAR(10000 * two / one, 12500, 1e-6);
  EXPECT_NEAR(2.0 * std::pow(two / one, 2), 3.13, 0.006);
}

// By hand, installed 2 m/s, free ratio 1.35, ram 1.8 m/s, with the core's k = 8.2 Pa/(m/s)2 that must drop out:
// 1/1.35^2 = 0.548697; dp0 = 8.2 x 4 / 0.451303 = 72.68 Pa; fan's slope 8.2 x 0.548697 / 0.451303 = 9.970; ram 8.2 x
// 1.8^2 = 26.57; v = sqrt(99.25 / 18.17) = 2.337.
TEST(Fan, WithTheRoadByHand) {
  const FaceSpeed v = face_speed({2, 0, 1.8, 1.35});
  EXPECT_NEAR(v.value_m_s, 2.337, 0.001);
  EXPECT_NEAR(v.ram_part, 26.57 / 99.25, 0.001);
  EXPECT_FALSE(v.carried);
}

// Fan pressure + ram = core loss at the face speed found, whatever the core.
TEST(Fan, BalancesAnyCore) {
  for (double k : {2.0, 8.2, 30.0})
    for (double share : {0.4, 1.0, 1.2})
      for (double ram : {0.0, 0.5, 1.5}) {
        const FaceSpeed f = face_speed({2 * share, 0, ram, 1.35});
        if (f.carried) continue;
        const double v = f.value_m_s, free = 2 * 1.35, dp0 = k * 4 / (1 - 4 / (free * free));
        EXPECT_NEAR(dp0 * share * share - dp0 / (free * free) * v * v + k * ram * ram, k * v * v, 1e-9) << k << share;
      }
}

TEST(Fan, CarriedAlongAndAgainstTheTravel) {
  const FaceSpeed fast = face_speed({1, 0, 5, 1.35});
  EXPECT_TRUE(fast.carried);
  EXPECT_EQ(fast.value_m_s, 5);
  EXPECT_EQ(face_speed({0, 0, 3, 1.35}).value_m_s, 3);
  EXPECT_FALSE(face_speed({0, 0, 3, 1.35}).carried);
  EXPECT_EQ(face_speed({0, 1.5, 0, 1.35}).value_m_s, -1.5);
  EXPECT_GT(face_speed({0, 1.5, 7, 1.35}).value_m_s, 0);
  EXPECT_FALSE(face_speed({2, 2, 0, 1.35}).valid);  // different ways: outside, the sum is taken
  EXPECT_EQ(face_speed({2, 2, 0, 1.35}).value_m_s, 0);
  EXPECT_FALSE(face_speed({2, 0, 0, 1.0}).valid);
}

TEST(Fan, SlopesAreDerivatives) {
  const double h = 1e-6;
  for (const FanBalance& b : {FanBalance{2, 0, 1, 1.35}, FanBalance{1, 0, 5, 1.35}}) {
    FanBalance f = b, r = b;
    f.forward_m_s += h, r.ram_m_s += h;
    EXPECT_NEAR(face_speed(b).d_forward, (face_speed(f).value_m_s - face_speed(b).value_m_s) / h, 1e-5);
    EXPECT_NEAR(face_speed(b).d_ram, (face_speed(r).value_m_s - face_speed(b).value_m_s) / h, 1e-5);
  }
  EXPECT_NEAR(affinity_power(5, 1.2).slope, (affinity_power(5, 1.2 + h).value - affinity_power(5, 1.2).value) / h,
              1e-4);
  EXPECT_NEAR(fan_speed_share(12, 13.5).value, 12 / 13.5, 1e-12);
  EXPECT_NEAR(fan_speed_share(12, 13.5).slope, 1 / 13.5, 1e-12);
  EXPECT_FALSE(fan_speed_share(-1, 13.5).valid);
  EXPECT_EQ(fan_speed_share(-1, 13.5).value, 0);
}

// By hand: p = 200 - 20 v^2 through (0, 200), (2, 120), (3, 20). On a core of k = 30: v = sqrt(200 / 50) = 2 m/s, where
// the fan gives 120 Pa and the core takes 30 x 4 = 120 Pa; free at sqrt(200 / 20) = 3.1623 m/s, 1.5811 times as much.
TEST(Fan, OnACoreByHand) {
  const double v[] = {0, 2, 3}, p[] = {200, 120, 20};
  const FanCurve fan = fan_curve(v, p);
  EXPECT_TRUE(fan.valid);
  EXPECT_NEAR(fan.shut_off_pa, 200, 1e-9);
  EXPECT_NEAR(fan.slope, 20, 1e-9);
  const Installed on = fan_on_core(fan, 30);
  EXPECT_NEAR(on.face_m_s, 2, 1e-12);
  EXPECT_NEAR(on.free_ratio, std::sqrt(2.5), 1e-12);
  const double h = 1e-5;
  EXPECT_NEAR(on.d_loss, (fan_on_core(fan, 30 + h).face_m_s - fan_on_core(fan, 30 - h).face_m_s) / (2 * h), 1e-8);
  // What fan and core agree on, the balance of fans and road gives back standing.
  EXPECT_NEAR(face_speed({on.face_m_s, 0, 0, on.free_ratio}).value_m_s, 2, 1e-12);
}

// Two alike side by side give twice the flow at each pressure (any fan engineering text), so a quarter of the slope:
// on the same core sqrt(200 / (30 + 5)) = 2.390 m/s, not twice 2.
TEST(Fan, TwoSideBySideGiveLessThanTwice) {
  const FanCurve one{200, 20}, two = side_by_side(one, one);
  EXPECT_NEAR(two.shut_off_pa, 200, 1e-12);
  EXPECT_NEAR(two.slope, 5, 1e-12);
  EXPECT_NEAR(fan_on_core(two, 30).face_m_s, 2.3905, 1e-4);
}

TEST(Fan, ACurveThatRisesIsNone) {
  const double v[] = {0, 2}, p[] = {100, 120};
  EXPECT_FALSE(fan_curve(v, p).valid);
}

}  // namespace
