#include "physics/thermostat.hpp"

#include "near.hpp"

namespace sw::physics {
namespace {

// By its own words: shut where it opens, open where it is fully open, half way half open.
TEST(Thermostat, BeginsAndEndsWhereItsSheetSays) {
  EXPECT_EQ(thermostat_opening(355.0, 355.15, 368.15).value, 0);
  EXPECT_EQ(thermostat_opening(368.2, 355.15, 368.15).value, 1);
  EXPECT_NEAR(thermostat_opening(361.65, 355.15, 368.15).value, 0.5, 1e-12);
}

TEST(Thermostat, SlopeIsTheDerivativeAndNeverNegative) {
  for (double t : {350.0, 355.3, 358.0, 361.65, 366.0, 372.0}) {
    const Slope s = thermostat_opening(t, 355.15, 368.15);
    expect_slope(
        s.slope, [](double x) { return thermostat_opening(x, 355.15, 368.15).value; }, t, 1e-4);
    EXPECT_GE(s.slope, 0);
  }
}

TEST(Thermostat, NoTravelIsOutsideTheLaw) { EXPECT_FALSE(thermostat_opening(360, 355, 355).valid); }

}  // namespace
}  // namespace sw::physics
