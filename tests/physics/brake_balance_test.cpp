#include "physics/brake_balance.hpp"

#include <gtest/gtest.h>
#include <rapidcheck/gtest.h>

#include "near.hpp"

namespace sw::physics {
namespace {

TEST(BrakeBalance, IdealShare) {  // Mannering and Washburn ch. 2 (from memory), recomputed: 74.8 %
  EXPECT_NEAR(ideal_front_share({100, 40, 24}, 0.6, 0.018).value, 0.748, 0.001);
}

TEST(BrakeBalance, LockRates) {  // Limpert (from memory), recomputed: rear share at rest 0.49, of braking 0.40
  const Balance car{1, 0.49, 0.21};
  EXPECT_NEAR(rear_lock_rate(car, 0.60, 0.8)->value, 0.69, 0.001);
  EXPECT_NEAR(front_lock_rate(car, 0.60, 0.8)->value, 0.944, 0.001);
}

TEST(BrakeBalance, AnAxleThatDoesNothingNeverLocks) {
  const Balance car{2.8, 1.3, 0.55};
  EXPECT_FALSE(front_lock_rate(car, 0, 0.8));
  EXPECT_FALSE(rear_lock_rate(car, 1, 0.8));
  EXPECT_FALSE(front_lock_rate(car, 0.1, 0.8));  // weight comes faster than braking
  EXPECT_FALSE(both_lock_rate(car, 0.3));
}

Balance some_car() {
  const double wheelbase = *rc::gen::inRange(220, 330) / 100.0;
  return {wheelbase, wheelbase * *rc::gen::inRange(35, 60) / 100.0, *rc::gen::inRange(45, 75) / 100.0};
}

RC_GTEST_PROP(BrakeBalance, AxlesTogetherGiveTheWholeForce, ()) {
  const Balance car = some_car();
  const double p = *rc::gen::inRange(40, 90) / 100.0, z = *rc::gen::inRange(5, 60) / 100.0, f = 0.015;
  const AdhesionUse use = adhesion_use(car, p, z, f);
  const double w = front_weight_share(car, z).value;
  RC_ASSERT(std::abs(use.front * w + use.rear * (1 - w) - (z - f)) < 1e-12);
}

RC_GTEST_PROP(BrakeBalance, AtTheIdealShareBothLockTogether, ()) {
  const Balance car = some_car();
  const double k = *rc::gen::inRange(20, 90) / 100.0, f = *rc::gen::inRange(0, 2) / 100.0;
  const double p = ideal_front_share(car, k, f).value;
  RC_PRE(p < 1);
  RC_ASSERT(std::abs(front_lock_rate(car, p, k, f)->value - (k + f)) < 1e-9);
  RC_ASSERT(std::abs(rear_lock_rate(car, p, k, f)->value - (k + f)) < 1e-9);
  RC_ASSERT(std::abs(*both_lock_rate(car, p) - (k + f)) < 1e-9);
}

TEST(BrakeBalance, SlopesAreTheDerivatives) {
  const Balance car{2.8, 1.3, 0.55};
  const AdhesionUse use = adhesion_use(car, 0.7, 0.5, 0.01);
  expect_slope(
      use.front_slope, [&](double z) { return adhesion_use(car, 0.7, z, 0.01).front; }, 0.5);
  expect_slope(
      use.rear_slope, [&](double z) { return adhesion_use(car, 0.7, z, 0.01).rear; }, 0.5);
  expect_slope(
      front_lock_rate(car, 0.7, 0.6, 0.01)->slope, [&](double k) { return front_lock_rate(car, 0.7, k, 0.01)->value; },
      0.6);
  expect_slope(
      rear_lock_rate(car, 0.7, 0.6, 0.01)->slope, [&](double k) { return rear_lock_rate(car, 0.7, k, 0.01)->value; },
      0.6);
  EXPECT_FALSE(adhesion_use({2.0, 0.8, 0.8}, 0.7, 1.1).valid);  // the rear wheels are off the road
}

TEST(BrakeBalance, AdhesionLine) {  // UN R13-H Annex 5: k 0.5 asks 0.31; 71/320/EEC: k 0.8 asks 0.61 (from memory)
  EXPECT_NEAR(adhesion_line_rate(AdhesionLine::un_r13h, 0.5).value, 0.31, 1e-12);
  EXPECT_NEAR(adhesion_line_rate(AdhesionLine::eec_71_320, 0.8).value, 0.61, 1e-12);
  for (auto line : {AdhesionLine::un_r13h, AdhesionLine::eec_71_320}) {
    EXPECT_TRUE(adhesion_line_adhesion(line, 0.1).valid);
    EXPECT_TRUE(adhesion_line_adhesion(line, adhesion_line_rate(line, 0.8).value).valid);
    EXPECT_FALSE(adhesion_line_rate(line, 0.81).valid);
    EXPECT_FALSE(adhesion_line_adhesion(line, 0.09).valid);
    EXPECT_NEAR(adhesion_line_adhesion(line, adhesion_line_rate(line, 0.43).value).value, 0.43, 1e-12);
  }
}

}  // namespace
}  // namespace sw::physics
