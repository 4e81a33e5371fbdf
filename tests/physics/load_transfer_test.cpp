#include "physics/load_transfer.hpp"

#include <gtest/gtest.h>
#include <rapidcheck/gtest.h>

#include <cmath>

using namespace sw::physics;

namespace {

// Limpert, Brake Design and Safety, straight-line braking: rear static share 0.49, rear's brake share 0.40, h/L 0.21,
// adhesion 0.8: the rear alone of both would lock at 0.69, the front at 0.944 of gravity (case recomputed, from
// memory).
TEST(LoadTransfer, LimpertsCarLocksItsRearAtSixtyNine) {
  const CarOnAxles car{1000, 0.51, 0.21, 1};
  auto at = [&](double z) { return adhesion_use(car, 0.60 * z * 1000, 0.40 * z * 1000); };
  EXPECT_NEAR(at(0.690).rear, 0.8, 0.002);
  EXPECT_NEAR(at(0.944).front, 0.8, 0.002);
  EXPECT_LT(at(0.690).front, 0.8);
}

// Mannering and Washburn, ch. 2, without rolling: wheelbase 100 in, centre 40 in behind the front axle and 24 in high,
// at 0.618 of gravity (adhesion 0.6 and rolling 0.018): front 74.8 % of the force (from memory).
TEST(LoadTransfer, IdealShareOfATextbookCar) {
  const CarOnAxles car{1, 0.60, 24, 100};
  EXPECT_NEAR(1 - ideal_rear_share(car, 0.618).value, 0.748, 0.001);
}

TEST(LoadTransfer, OneAxleAlone) {
  // By hand: 0.85 x 0.46 / (1 + 0.85 x 21/110) = 0.336; front 0.85 x 0.54 / (1 - 0.162) = 0.548.
  const CarOnAxles car{1, 0.54, 21, 110};
  EXPECT_NEAR(rear_alone_rate(car, 0.85).value, 0.336, 0.001);
  EXPECT_NEAR(front_alone_rate(car, 0.85).value, 0.548, 0.001);
}

RC_GTEST_PROP(LoadTransfer, UseOfBothAxlesAddsToTheForceAndAgreesAtTheIdealShare, ()) {
  const CarOnAxles car{*rc::gen::inRange(5000, 30000) * 1.0, *rc::gen::inRange(40, 65) / 100.0,
                       *rc::gen::inRange(35, 80) / 100.0, *rc::gen::inRange(220, 350) / 100.0};
  const double z = *rc::gen::inRange(1, 100) / 100.0;
  const AxleLoads n = axle_loads(car, z);
  RC_PRE(n.valid);
  RC_ASSERT(std::abs(n.front_n + n.rear_n - car.weight_n) < 1e-9 * car.weight_n);
  const double share = *rc::gen::inRange(0, 100) / 100.0, force = z * car.weight_n;
  const AdhesionUse use = adhesion_use(car, (1 - share) * force, share * force);
  RC_ASSERT(std::abs(use.front * n.front_n + use.rear * n.rear_n - force) < 1e-9 * force);
  const double ideal = ideal_rear_share(car, z).value;
  const AdhesionUse both = adhesion_use(car, (1 - ideal) * force, ideal * force);
  RC_ASSERT(std::abs(both.front - both.rear) < 1e-9);
  RC_ASSERT(std::abs(both.front - z) < 1e-9);  // at the ideal point both use exactly the rate
}

}  // namespace
