#include "physics/brake_fluid.hpp"

#include "near.hpp"

namespace sw::physics {
namespace {

TEST(BrakeFluid, LeastBoilingPoints) {  // 49 CFR 571.116 S5.1.1 and S5.1.2, degC
  EXPECT_NEAR(least_boiling(BrakeFluid::dot_3).dry_k - 273.15, 205, 1e-9);
  EXPECT_NEAR(least_boiling(BrakeFluid::dot_3).wet_k - 273.15, 140, 1e-9);
  EXPECT_NEAR(least_boiling(BrakeFluid::dot_4).dry_k - 273.15, 230, 1e-9);
  EXPECT_NEAR(least_boiling(BrakeFluid::dot_4).wet_k - 273.15, 155, 1e-9);
  EXPECT_NEAR(least_boiling(BrakeFluid::dot_5_1).dry_k - 273.15, 260, 1e-9);
  EXPECT_NEAR(least_boiling(BrakeFluid::dot_5).wet_k - 273.15, 180, 1e-9);
}

TEST(BrakeFluid, FallsThroughBothPointsAndNeverBelowWater) {
  for (auto grade : {BrakeFluid::dot_3, BrakeFluid::dot_4, BrakeFluid::dot_5_1}) {
    const auto points = least_boiling(grade);
    EXPECT_NEAR(boiling_at_water_k(points, 0).value, points.dry_k, 1e-9);
    EXPECT_NEAR(boiling_at_water_k(points, wet_water_share).value, points.wet_k, 1e-9);
    for (double w = 0.005; w <= most_water_share; w += 0.005) {
      EXPECT_LT(boiling_at_water_k(points, w).value, boiling_at_water_k(points, w - 0.005).value);
      EXPECT_GT(boiling_at_water_k(points, w).value, 373.15);
      expect_slope(
          boiling_at_water_k(points, w).slope, [&](double x) { return boiling_at_water_k(points, x).value; }, w);
    }
  }
  EXPECT_FALSE(boiling_at_water_k(least_boiling(BrakeFluid::dot_3), 0.1).valid);
}

TEST(BrakeFluid, OldFluid) {  // DOT 3 with 4.5 % of water boils at about 132 degC (trade figure, common practice)
  EXPECT_NEAR(boiling_at_water_k(least_boiling(BrakeFluid::dot_3), 0.045).value - 273.15, 132, 2);
}

}  // namespace
}  // namespace sw::physics
