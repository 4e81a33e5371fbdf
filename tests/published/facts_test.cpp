// Published figures that no sum gives: laws and units of the library, each by its number and source.
#include <gtest/gtest.h>

#include "physics/engine.hpp"
#include "physics/gasoline.hpp"
#include "physics/gauge.hpp"
#include "physics/road_load.hpp"
#include "physics/tube_strength.hpp"
#include "quantity/parse.hpp"
#include "quantity/unit.hpp"
#include "systems/brakes/checks.hpp"

namespace sw {
namespace {

TEST(Facts, ENG_08_ConsumptionInMetric) {  // units: 608.277; 0.50 lb/(hp h) is 304.1 g/(kW h)
  const auto read = parse_quantity("0.50 lb/(hp h)", kind::specific_consumption);
  const auto metric = parse_unit_for("g/(kW h)", kind::specific_consumption);
  ASSERT_TRUE(std::holds_alternative<Parsed>(read));
  ASSERT_TRUE(std::holds_alternative<Unit>(metric));
  EXPECT_NEAR(std::get<Parsed>(read).si / std::get<Unit>(metric).factor, 304.1, 304.1 * 5e-4);
}

TEST(Facts, ENG_15_OttoEfficiency) {  // Cengel and Boles, Otto cycle example (from memory): r = 8, k = 1.4
  EXPECT_NEAR(physics::otto_efficiency(8, 1.4), 0.565, 0.565e-3);
}

TEST(Facts, ENG_11_ShareOfHeatToCoolant) {  // Heywood, Table 12.1 (from memory): 17 to 26 %, upper end to 2 points
  EXPECT_NEAR(physics::greatest_coolant_share, 0.26, 0.02);
  EXPECT_NEAR(physics::least_coolant_share, 0.17, 0.02);
}

TEST(Facts, BRK_14_RatesOfLockOrder) {  // 49 CFR 571.135 S7.2: front first from 0.15 to 0.80
  EXPECT_DOUBLE_EQ(brakes::lowest_rate, 0.15);
  EXPECT_DOUBLE_EQ(brakes::highest_rate, 0.80);
}

TEST(Facts, BRK_08_BRK_09_WhatAFootOrHandMayBeAsked) {  // 49 CFR 571.135 S7.5 and S7.12 (stored copy)
  EXPECT_DOUBLE_EQ(brakes::panic_n, 500);
  EXPECT_DOUBLE_EQ(brakes::parking_grade, 0.20);
  EXPECT_DOUBLE_EQ(brakes::parking_hand_n, 400);
  EXPECT_DOUBLE_EQ(brakes::parking_foot_n, 500);
}

TEST(Facts, FLU_21_DensityOfGasoline) {  // EN 228 (from memory): 720 to 775 kg/m3 at 15 degC
  EXPECT_GE(physics::gasoline(288.15).density_kg_m3, 720);
  EXPECT_LE(physics::gasoline(288.15).density_kg_m3, 775);
}

TEST(Facts, RLD_17_CombinedEconomy) {  // 40 CFR Part 600 (from memory): 15 and 22 mpg are 17.5, to a hundredth
  EXPECT_NEAR(physics::combined_economy(15, 22), 17.5, 0.01);
}

TEST(Facts, SND_06_SND_07_FamiliesOfFuelSenders) {  // common practice: 240 empty to 33 full; 0 to 90
  const auto ends = [](std::string_view name) {
    for (auto& f : physics::end_families)
      if (f.name == name) return std::pair(f.low_ohm, f.high_ohm);
    return std::pair(-1.0, -1.0);
  };
  EXPECT_EQ(ends("240-33").first, 240);
  EXPECT_EQ(ends("0-90").second, 90);
}

TEST(Facts, TYR_06_TurnsOfACableForAMile) {  // common practice: 1000 on most heads
  EXPECT_NEAR(physics::usual_head_turns_m * 1609.344, 1000, 1e-9);
}

TEST(Facts, TYR_13_SpeedometerOfACommercialCar) {  // 49 CFR 393.82: 5 mph at 50 mph
  EXPECT_NEAR(physics::us_speed_error_m_s / 0.44704, 5, 1e-12);
  EXPECT_NEAR(physics::us_speed_at_m_s / 0.44704, 50, 1e-12);
}

TEST(Facts, TUB_20_BoreLeftByABend) {  // US Navy training text on aviation hydraulics, table 6-6 (stored copy), in
  constexpr double in = 0.0254;
  const auto bore = physics::least_bent_bore_m(0.25 * in, 0.035 * in, physics::BentTube::aluminium_6061);
  ASSERT_TRUE(bore);
  EXPECT_NEAR(*bore / in, 0.15, 1e-12);
}

TEST(Facts, TUB_22_ProofPressureOfATube) {  // the same text, proof pressure testing; 100 psi at least below 50 psi
  EXPECT_DOUBLE_EQ(physics::proof_over_working, 2);
  EXPECT_NEAR(physics::least_proof_pa / 6894.757293168361, 100, 1e-9);
}

}  // namespace
}  // namespace sw
