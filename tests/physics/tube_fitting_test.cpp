#include "physics/tube_fitting.hpp"

#include <gtest/gtest.h>

#include <numbers>

namespace sw::physics {
namespace {

constexpr double in = 0.0254, deg = std::numbers::pi / 180;

// TUB-09: -6 is 0.375 in (SAE J514 and AS4395 convention, from memory).
TEST(TubeFitting, TUB_09_DashSizes) {
  EXPECT_NEAR(dash_od_m(6).value / in, 0.375, 1e-15);
  EXPECT_NEAR(dash_of(0.375 * in).value, 6, 1e-12);
  EXPECT_NEAR(dash_of(dash_od_m(10).value).value, 10, 1e-12);
  EXPECT_NEAR(dash_of(0.1).slope * dash_od_m(4).slope, 1, 1e-12);
  EXPECT_TRUE(dash_od_m(6).valid);
  EXPECT_FALSE(dash_od_m(9).valid);
  EXPECT_FALSE(dash_of(8e-3).valid);  // 5.04 sixteenths
  EXPECT_TRUE(dash_of(0.312 * in).valid);
}

// TUB-11: 74 deg included (US Navy text on flaring, stored copy); TUB-12: -6 is 9/16-18 (SAE J514); TUB-13: 3/16 in has
// 3/8-24 (SAE J512), both from memory.
TEST(TubeFitting, TUB_11_TUB_12_TUB_13_Flares) {
  EXPECT_NEAR(flare_angle(FlareStyle::degrees_37) / deg, 74, 1e-12);
  EXPECT_NEAR(flare_angle(FlareStyle::inverted_45) / deg, 90, 1e-12);
  const auto six = flare(FlareStyle::degrees_37, 0.375 * in);
  ASSERT_TRUE(six);
  EXPECT_EQ(six->threads_per_inch, 18);
  EXPECT_NEAR(six->thread_m / in, 9.0 / 16, 1e-12);
  const auto brake = flare(FlareStyle::inverted_45, 0.1875 * in);
  ASSERT_TRUE(brake);
  EXPECT_EQ(brake->threads_per_inch, 24);
  EXPECT_NEAR(brake->thread_m / in, 0.375, 1e-12);
}

// Threads of inverted flare nuts by diameter, as a stored page on fittings prints them.
TEST(TubeFitting, InvertedFlareThreads) {
  const double dash_thread_count[][3] = {{2, 5.0 / 16, 28}, {3, 3.0 / 8, 24},  {4, 7.0 / 16, 24},
                                         {5, 1.0 / 2, 20},  {6, 5.0 / 8, 18},  {7, 11.0 / 16, 18},
                                         {8, 3.0 / 4, 18},  {10, 7.0 / 8, 18}, {12, 17.0 / 16, 16}};
  for (auto& row : dash_thread_count) {
    const auto f = flare(FlareStyle::inverted_45, row[0] / 16 * in);
    ASSERT_TRUE(f) << row[0];
    EXPECT_NEAR(f->thread_m / in, row[1], 1e-12) << row[0];
    EXPECT_EQ(f->threads_per_inch, row[2]) << row[0];
  }
}

TEST(TubeFitting, NoThreadIsMadeUp) {
  EXPECT_FALSE(flare(FlareStyle::degrees_37, 8e-3));
  EXPECT_FALSE(flare(FlareStyle::inverted_45, 1.5 * in));
}

}  // namespace
}  // namespace sw::physics
