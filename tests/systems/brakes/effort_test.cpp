#include "systems/brakes/effort.hpp"

#include <gtest/gtest.h>
#include <rapidcheck/gtest.h>

#include "systems/brakes/rig.hpp"

using namespace sw;
using namespace sw::rig;
using namespace sw::brakes;

namespace {

// By hand. Front: two wheels x 2 x 0.35 x 6.789 in2 x 4.6 in / 13 in = 3.363 lbf a psi. Rear: two wheels x 0.6013 in2
// x 4.5 x 5 in / 13 in = 2.081; full to 200 psi, a third of what is over it.
TEST(BrakesEffort, ForceOfEachAxleForAPsi) {
  const Model m = hand_brakes();
  const Stopped s = hand_stop();
  EXPECT_NEAR(axle_force(m.front, 100 * psi, s) / lbf, 336.3, 0.1);
  EXPECT_NEAR(axle_force(m.rear, 100 * psi, s) / lbf, 208.1, 0.1);
  EXPECT_NEAR(axle_force(m.rear, 600 * psi, s) / lbf, 2.081 * (200 + 0.33 * 400), 0.2);
}

// By hand: 0.8 x 3700 = 2960 lbf = 3.363 p + 2.081 (134 + 0.33 p): 662.0 psi. Master 0.994 in2: 658 lbf; a fourth of it
// by the gain of 4, a fourth by the pedal: 41.1 lbf. At 9 inHg the assist is 290 lbf: (658 - 290)/4 = 91.8 lbf.
TEST(BrakesEffort, PedalForAStop) {
  const Model m = hand_brakes();
  const Stopped s = hand_stop();
  const double p = line_pressure_for(m, 0.8 * s.weight_n, s);
  EXPECT_NEAR(p / psi, 662.0, 0.5);
  EXPECT_NEAR(pedal_at_pressure(m, p, 18 * in_hg) / lbf, 41.1, 0.1);
  EXPECT_NEAR(pedal_at_pressure(m, p, 9 * in_hg) / lbf, 91.8, 0.3);
}

RC_GTEST_PROP(BrakesEffort, PressureAndForcePedalAndPressureGoBackAndForth, ()) {
  static const Model m = hand_brakes();
  const Stopped s = hand_stop();
  const double force = *rc::gen::inRange(1, 20000) * 1.0, vacuum = *rc::gen::inRange(0, 25) * in_hg;
  const double p = line_pressure_for(m, force, s);
  RC_ASSERT(std::abs(braking_force(m, p, s) - force) < 1e-6 * force);
  RC_ASSERT(std::abs(pressure_at_pedal(m, pedal_at_pressure(m, p, vacuum), vacuum) - p) < 1e-6 * p);
}

// The first lock is where the greater of both uses is the road's, and no pressure below it locks.
RC_GTEST_PROP(BrakesEffort, NothingLocksBelowTheFirstLock, ()) {
  static const Model m = hand_brakes();
  const Stopped s = hand_stop();
  const double adhesion = *rc::gen::inRange(20, 91) / 100.0, share = *rc::gen::inRange(1, 100) / 100.0;
  const Lock lock = first_lock(m, adhesion, s);
  const auto at = use_at(m, lock.line_pa, s), below = use_at(m, share * lock.line_pa, s);
  RC_ASSERT(std::abs(std::max(at.front, at.rear) - adhesion) < 1e-6);
  RC_ASSERT(std::max(below.front, below.rear) < adhesion);
  RC_ASSERT(lock.rear == (at.rear > at.front));
}

// Without its valve the car is Limpert's kind: fixed shares, so lock rates in closed form, rear's z = mu (1 - f) /
// (share + mu h / L).
TEST(BrakesEffort, FixedSharesLockWhereTheClosedFormSays) {
  const Model m = hand_brakes("[brakes.valve.rear]\nslope = 1.0\n");
  const Stopped s = hand_stop();
  const double front = 3.3628, rear = 2.0813, share = rear / (front + rear), lift = 21.0 / 110;
  const Lock lock = first_lock(m, 0.8, s);
  EXPECT_TRUE(lock.rear);
  EXPECT_NEAR(lock.rate, 0.8 * 0.46 / (share + 0.8 * lift), 1e-3);
}

// The knee is where front and rear come nearest, between steps of the search too: by hand at 200 psi the rate is 0.294,
// front uses 0.6177 x 0.294/(0.54 + 0.0562) = 0.305, rear 0.3823 x 0.294/(0.46 - 0.0562) = 0.279.
TEST(BrakesEffort, OrderIsLeastAtTheKnee) {
  const Order order = lock_order(hand_brakes(), hand_stop());
  EXPECT_NEAR(order.line_pa / psi, 200, 1e-6);
  EXPECT_NEAR(order.rate, 0.294, 0.001);
  EXPECT_NEAR(order.least, 0.0263, 0.001);
}

// 0.10 V + 0.0060 V2 at 100 km/h is 70 m (49 CFR 571.135 S7.5, stored copy); its squared term is 6.43 m/s2.
TEST(BrakesEffort, StopOfTheStandard) {
  EXPECT_NEAR(stop_m(100 / 3.6, 6.43 / standard_gravity_m_s2), 70, 0.02);
  EXPECT_NEAR(stop_m(100 / 3.6, 2.44 / standard_gravity_m_s2), 168, 0.2);  // 0.10 V + 0.0158 V2
}

}  // namespace
