#include "physics/tyre.hpp"

#include <gtest/gtest.h>

#include <cmath>
#include <numbers>

using namespace sw::physics;

namespace {

TEST(Tyre, SizeText) {  // ETRTO and T&RA: rim + 2 width x aspect
  EXPECT_NEAR(tyre_size("205/70R14")->diameter_m * 1e3, 642.6, 0.05);
  for (const char* same : {"P205/70R14", "205/70 R14", "205/70R14 95H", "205/70ZR14", "205/70-14", "205/70HR14"})
    EXPECT_NEAR(tyre_size(same)->diameter_m, tyre_size("205/70R14")->diameter_m, 1e-12) << same;
  EXPECT_NEAR(tyre_size("31x10.5R15")->diameter_m, 31 * 0.0254, 1e-12);
  EXPECT_FALSE(tyre_size("31x10.5R15")->aspect);
  for (const char* wrong : {"", "205", "205/70", "205/70R", "205-70R14", "R14", "205/0R14", "a205/70R14", "205/70R14;"})
    EXPECT_FALSE(tyre_size(wrong)) << wrong;
}

TEST(Tyre, Gearing) {  // 336.135 V axle / D in mph, inch: 60 mph, 3.55, 26.0 in: 2754 rpm
  const double rad_s = 60 * 0.44704 * gearing_rad_m(3.55, 1, 26 * 0.0254, 0);
  EXPECT_NEAR(rad_s * 30 / std::numbers::pi, 2754, 1.4);
  EXPECT_NEAR(gearing_rad_m(3.55, 1, 0.66, 0.05) / gearing_rad_m(3.55, 1, 0.66, 0), 1 / 0.95, 1e-12);
}

TEST(Tyre, SpeedometerBand) {  // UN Regulation No. 39, 5.3
  EXPECT_NEAR(speedometer_band(100 / 3.6).highest_m_s * 3.6, 114, 1e-9);
  EXPECT_NEAR(speedometer_band(100 / 3.6).lowest_m_s * 3.6, 100, 1e-9);
}

}  // namespace
