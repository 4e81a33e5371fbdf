#include "physics/road_load.hpp"

#include <gtest/gtest.h>
#include <rapidcheck/gtest.h>

#include <cmath>

#include "quantity/customary.hpp"

using namespace sw::physics;

namespace {

TEST(RoadLoad, LevelPower) {  // Gillespie ch. 4, Wong ch. 3 (recomputed): 100 km/h, 1500 kg, 0.012, 0.80 m2, 1.20 kg/m3
  const RoadLoad r = road_load({1500, 0.012, 0.80, 0, 1.20}, 100 / 3.6);
  EXPECT_NEAR(r.power_w, 15190, 15.19);
}

TEST(RoadLoad, GradeIsTheSineOfItsAngle) {  // 1800 kg on 6 %: 1057.2 N, not 1059.1
  EXPECT_NEAR(road_load({1800, 0, 0, 0.06, 1.2}, 10).grade_n, 1057.2, 0.5286);
}

RC_GTEST_PROP(RoadLoad, SpeedAndPowerGoBackAndForth, ()) {
  const RoadLoadIn in{*rc::gen::inRange(700, 3000) * 1.0, *rc::gen::inRange(5, 25) / 1000.0,
                      *rc::gen::inRange(3, 15) / 10.0, *rc::gen::inRange(-1, 12) / 100.0, 1.2};
  const double v = *rc::gen::inRange(1, 70);
  const RoadLoad r = road_load(in, v);
  RC_PRE(r.force_n > 0);
  const auto back = road_load_speed(in, r.power_w);
  RC_ASSERT(back.has_value());
  RC_ASSERT(std::abs(*back - v) < 1e-8 * v);
  const double h = 1e-5;
  RC_ASSERT(std::abs((road_load(in, v + h).power_w - road_load(in, v - h).power_w) / (2 * h) - r.power_slope_w_s_m) <
            1e-3);
  RC_ASSERT(std::abs((road_load(in, v + h).force_n - road_load(in, v - h).force_n) / (2 * h) - r.force_slope_n_s_m) <
            1e-4);
}

TEST(RoadLoad, CoastingSpeedDownhill) {  // m g (sin - Crr cos) = rho CdA V^2 / 2, closed form
  const RoadLoadIn in{1500, 0.012, 0.8, -0.05, 1.2};
  const double push =
      1500 * sw::standard_gravity_m_s2 * (std::sin(std::atan(0.05)) - 0.012 * std::cos(std::atan(0.05)));
  EXPECT_NEAR(*road_load_speed(in, 0), std::sqrt(push / (0.5 * 1.2 * 0.8)), 1e-9);
  EXPECT_FALSE(road_load_speed({1500, 0.012, 0, -0.05, 1.2}, 10));  // no drag: nothing holds it
}

TEST(RoadLoad, CombinedEconomyIsHarmonic) {  // 40 CFR Part 600: 15 and 22 mpg give 17.5
  EXPECT_NEAR(combined_economy(15, 22), 17.5, 0.05);
  EXPECT_NEAR(combined_economy(20, 20), 20, 1e-12);
}

}  // namespace
