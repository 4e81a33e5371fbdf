#include "physics/estimate.hpp"

#include <gtest/gtest.h>

#include "near.hpp"

namespace sw::physics {
namespace {

// PRJ-11: 1, 2 and 3 weeks make 2 (Hillier and Lieberman, from memory).
TEST(Estimate, PRJ_11_ThreePoints) {
  const auto e = three_point(1, 2, 3);
  EXPECT_NEAR(e.mean_s, 2, 1e-12);
  EXPECT_NEAR(e.deviation_s, 1.0 / 3, 1e-12);
  EXPECT_NEAR(e.variance_s2, 1.0 / 9, 1e-12);
  EXPECT_NEAR(three_point(2, 3, 10).mean_s, 4, 1e-12);  // pulled to the long side
  expect_slope(
      e.slope_likely, [](double m) { return three_point(1, m, 3).mean_s; }, 2);
}

// PRJ-13: mean 44, variance 9, deadline 47 weeks: 0.84 (the same book, from memory). And the table of the normal
// distribution: 0.5, 0.97725 at two deviations.
TEST(Estimate, PRJ_13_Chance) {
  EXPECT_NEAR(finish_chance(44, 3, 47).value, 0.84, 0.003);
  EXPECT_NEAR(finish_chance(44, 3, 44).value, 0.5, 1e-15);
  EXPECT_NEAR(finish_chance(44, 3, 50).value, 0.97725, 5e-6);
  EXPECT_NEAR(finish_chance(44, 3, 38).value, 1 - 0.97725, 5e-6);
  expect_slope(
      finish_chance(44, 3, 47).slope, [](double d) { return finish_chance(44, 3, d).value; }, 47);
}

TEST(Estimate, WhatDoesNotDeviateIsCertain) {
  EXPECT_EQ(finish_chance(44, 0, 44).value, 1);
  EXPECT_EQ(finish_chance(44, 0, 43).value, 0);
}

}  // namespace
}  // namespace sw::physics
