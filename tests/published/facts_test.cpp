// Published figures that no sum gives: limits and laws of the library, each by its number and source.
#include <gtest/gtest.h>

#include "physics/alternator.hpp"
#include "physics/engine.hpp"
#include "physics/fuse.hpp"
#include "physics/road_load.hpp"
#include "physics/tyre.hpp"
#include "physics/wire.hpp"
#include "quantity/parse.hpp"
#include "quantity/unit.hpp"

namespace sw {
namespace {

constexpr double rpm = 0.10471975511965977, mile = 1609.344, mph = 0.44704;

TEST(Facts, ELE_18_DropOnA14VoltBus) {  // FAA AC 43.13-1B ch. 11 (from memory): 0.5 V continuous, 1 V intermittent
  EXPECT_EQ(physics::continuous_drop_14v_v, 0.5);
  EXPECT_EQ(physics::intermittent_drop_14v_v, 1.0);
}

TEST(Facts, ELE_32_LastingLoadOfABladeFuse) {  // common practice: 70 to 80 % at room temperature
  EXPECT_NEAR(physics::fuse_continuous_share * 100, 75, 5);
}

TEST(Facts, ELE_33_RatedSpeedOfAnAlternator) {  // ISO 8854; SAE J56 (from memory)
  EXPECT_NEAR(physics::rated_rotor_speed_rad_s / rpm, 6000, 1e-9);
}

TEST(Facts, TYR_06_HeadTurnsAMile) {  // common practice, SAE J678 family
  EXPECT_NEAR(physics::usual_head_turns_per_m * mile, 1000, 1e-9);
}

TEST(Facts, TYR_13_SpeedometerToleranceOfTheUnitedStates) {  // 49 CFR 393.82: 5 mph at 50 mph
  EXPECT_NEAR(physics::us_speedometer_tolerance_m_s / mph, 5, 1e-12);
}

TEST(Facts, ENG_08_ConsumptionInMetric) {  // units: 608.277; 0.50 lb/(hp h) is 304.1 g/(kW h)
  const auto read = parse_quantity("0.50 lb/(hp h)", kind::specific_consumption);
  const auto metric = parse_unit_for("g/(kW h)", kind::specific_consumption);
  ASSERT_TRUE(std::holds_alternative<Parsed>(read));
  ASSERT_TRUE(std::holds_alternative<Unit>(metric));
  EXPECT_NEAR(std::get<Parsed>(read).si / std::get<Unit>(metric).factor, 304.1, 304.1 * 5e-4);
}

TEST(Facts, ENG_11_CoolantShareAtFullPower) {  // Heywood table 12.1 (from memory): upper end 26 %, within 2
  EXPECT_NEAR(physics::greatest_coolant_share * 100, 26, 2);
}

TEST(Facts, ENG_15_OttoEfficiency) {  // Cengel and Boles, Otto cycle example (from memory): r = 8, k = 1.4
  EXPECT_NEAR(physics::otto_efficiency(8, 1.4), 0.565, 0.565e-3);
}

TEST(Facts, RLD_17_CombinedEconomy) {  // 40 CFR Part 600 (from memory): 15 and 22 mpg are 17.5, to a hundredth
  EXPECT_NEAR(physics::combined_economy(15, 22), 17.5, 0.01);
}

}  // namespace
}  // namespace sw
