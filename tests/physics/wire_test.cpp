#include "physics/wire.hpp"

#include <gtest/gtest.h>

#include <cmath>

using namespace sw::physics;

namespace {

constexpr double c20 = 293.15, c50 = 323.15, c100 = 373.15, ft = 0.3048;

TEST(Wire, GaugeTable) {  // NBS Handbook 100 wire table (from memory): diameter in mils, ohm per 1000 ft at 20 degC
  struct {
    int gauge;
    double mils, ohm;
  } rows[] = {{-3, 460.0, 0.04901}, {0, 324.9, 0.09827}, {4, 204.3, 0.2485},
              {10, 101.9, 0.9989},  {18, 40.3, 6.385},   {30, 10.0, 103.2}};
  for (auto& r : rows) {
    EXPECT_NEAR(gauge_diameter_m(r.gauge) / 25.4e-6, r.mils, 0.05);
    EXPECT_NEAR(wire_resistance(gauge_area_m2(r.gauge), Cable::copper, c20).per_length_ohm_m * 1000 * ft, r.ohm,
                1e-3 * r.ohm);
    EXPECT_NEAR(area_gauge(gauge_area_m2(r.gauge)), r.gauge, 1e-9);
  }
}

TEST(Wire, SmallestGaugeForAnArea) {
  EXPECT_EQ(gauge_for_area(5.26e-6), 10);
  EXPECT_EQ(gauge_for_area(5.27e-6), 8);
  EXPECT_EQ(gauge_for_area(gauge_area_m2(-1)), -1);
  EXPECT_FALSE(gauge_for_area(110e-6));
  EXPECT_EQ(next_thicker_gauge(10), 8);
  EXPECT_EQ(next_thicker_gauge(1), 0);
  EXPECT_FALSE(next_thicker_gauge(-3));
  EXPECT_EQ(gauge_text(10), "10 AWG");
  EXPECT_EQ(gauge_text(-1), "2/0 AWG");
  EXPECT_EQ(gauge_text(0), "1/0 AWG");
}

TEST(Wire, CablesHaveTheirStandardsResistance) {
  EXPECT_DOUBLE_EQ(wire_resistance(2.5e-6, Cable::flexible, c20).per_length_ohm_m, 7.98e-3);  // IEC 60228 class 5
  EXPECT_DOUBLE_EQ(wire_resistance(2.5e-6, Cable::road_vehicle, c20).per_length_ohm_m,
                   7.60e-3);  // ISO 6722-1, from memory
  EXPECT_NEAR(wire_resistance(2.5e-6, Cable::flexible, c50).temperature_factor, 0.893, 5e-4);  // IEC 60228 at 50 degC
  EXPECT_NEAR(wire_resistance(2.5e-6, Cable::flexible, c50).per_length_ohm_m, 7.98e-3 * 1.12, 1e-9);
  EXPECT_NEAR(wire_resistance(1e-6, Cable::copper, c100).temperature_factor, 1.3144, 3e-4);  // NBS, 0.00393 x 80 K
  EXPECT_FALSE(wire_resistance(500e-6, Cable::flexible, c20).tabled);
  EXPECT_TRUE(wire_resistance(gauge_area_m2(14), Cable::road_vehicle, c20).tabled);
}

TEST(Wire, TablesFallWithAreaAndStandAboveBareCopper) {
  for (Cable cable : {Cable::road_vehicle, Cable::flexible})
    for (double mm2 = 0.5; mm2 < 115; mm2 *= 1.07) {
      const double r = wire_resistance(mm2 * 1e-6, cable, c20).per_length_ohm_m;
      EXPECT_LT(wire_resistance(1.07 * mm2 * 1e-6, cable, c20).per_length_ohm_m, r);
      EXPECT_GT(r, wire_resistance(mm2 * 1e-6, Cable::copper, c20).per_length_ohm_m);
      EXPECT_LT(r, 1.2 * wire_resistance(mm2 * 1e-6, Cable::copper, c20).per_length_ohm_m);
    }
}

TEST(Wire, ResistanceSlope) {
  for (Cable cable : {Cable::copper, Cable::road_vehicle, Cable::flexible}) {
    const auto r = [&](double t) { return wire_resistance(4e-6, cable, t).per_length_ohm_m; };
    EXPECT_NEAR(wire_resistance(4e-6, cable, 350).slope_ohm_m_k, (r(350.5) - r(349.5)), 1e-12);
  }
}

TEST(Wire, Ampacity) {  // 33 CFR 183.425 Table 5 and its notes
  constexpr double c105 = 378.15, c60 = 333.15;
  EXPECT_DOUBLE_EQ(wire_ampacity(gauge_area_m2(10), c105, Zone::cabin, 1).current_a, 60);
  EXPECT_NEAR(wire_ampacity(gauge_area_m2(10), c105, Zone::engine_bay, 1).current_a, 51, 1e-9);
  EXPECT_DOUBLE_EQ(wire_ampacity(gauge_area_m2(-3), c60, Zone::cabin, 1).current_a, 300);
  EXPECT_DOUBLE_EQ(wire_ampacity(gauge_area_m2(18), 473.15, Zone::engine_bay, 1).current_a, 25);
  EXPECT_NEAR(wire_ampacity(gauge_area_m2(10), c105, Zone::cabin, 3).current_a, 42, 1e-9);
  EXPECT_NEAR(wire_ampacity(gauge_area_m2(10), c105, Zone::cabin, 6).current_a, 36, 1e-9);
  EXPECT_NEAR(wire_ampacity(gauge_area_m2(10), c105, Zone::cabin, 25).current_a, 24, 1e-9);
  EXPECT_DOUBLE_EQ(wire_ampacity(6e-6, c105, Zone::cabin, 1).current_a, 60);  // between 10 and 8: the thinner
  EXPECT_DOUBLE_EQ(wire_ampacity(gauge_area_m2(10), 370, Zone::cabin, 1).current_a, 55);  // 97 degC counts as 90
  EXPECT_FALSE(wire_ampacity(gauge_area_m2(20), c105, Zone::cabin, 1).tabled);
  EXPECT_FALSE(wire_ampacity(gauge_area_m2(10), 320, Zone::cabin, 1).tabled);
  EXPECT_FALSE(wire_ampacity(150e-6, c105, Zone::cabin, 1).tabled);
}

// NFPA 70 (NEC) table 310.15(B)(1), base 30 degC (from memory): correction factors to two places, each for the upper
// end of its span of air temperatures.
TEST(Wire, AmpacityInHotterAirHasTheCodesFactor) {
  struct {
    double insulation_c, air_c, factor;
  } rows[] = {{60, 40, 0.82}, {60, 45, 0.71}, {60, 55, 0.41}, {75, 45, 0.82},
              {75, 55, 0.67}, {75, 70, 0.33}, {90, 45, 0.87}, {90, 55, 0.76}};
  for (auto& r : rows) {
    const auto at = [&](std::optional<double> air_k) {
      return wire_ampacity(gauge_area_m2(10), r.insulation_c + 273.15, Zone::cabin, 1, air_k).current_a;
    };
    EXPECT_NEAR(at(r.air_c + 273.15) / at({}), r.factor, 0.0051) << r.insulation_c << " at " << r.air_c;
  }
}

// 33 CFR 183.425 Table 5 note 1 takes a wire from 30 to 50 degC: the same formula, to its two places.
TEST(Wire, TheEngineSpaceIsTheSameFormula) {
  for (double c : {60.0, 75.0, 80.0, 90.0, 105.0, 125.0}) {
    const double k = c + 273.15, area = gauge_area_m2(10);
    const double table = wire_ampacity(area, k, Zone::engine_bay, 1).current_a;
    EXPECT_NEAR(wire_ampacity(area, k, Zone::cabin, 1, 323.15).current_a / table, 1, 0.01) << c;
  }
}

TEST(Wire, AmpacityFallsWithTheBaysAir) {
  const auto at = [](double air_c) {
    return wire_ampacity(gauge_area_m2(10), 378.15, Zone::engine_bay, 1, air_c + 273.15);
  };
  EXPECT_NEAR(at(80).current_a, 51 * 0.67420, 1e-3);  // by hand: sqrt((105 - 80) / (105 - 50)) = 0.67420
  EXPECT_NEAR(at(80).slope_a_k, 0.5 * (at(81).current_a - at(79).current_a), 1e-3);
  EXPECT_NEAR(at(20).current_a, 51, 1e-9);  // cooler than the table's is taken as the table's
  EXPECT_EQ(at(20).slope_a_k, 0);
  EXPECT_EQ(at(105).current_a, 0);
  EXPECT_EQ(at(130).current_a, 0);
  EXPECT_TRUE(at(130).tabled);
  EXPECT_EQ(table_air_k(Zone::cabin), 303.15);
  EXPECT_EQ(table_air_k(Zone::engine_bay), 323.15);
}

TEST(Wire, RiseGoesWithTheSquare) {
  EXPECT_DOUBLE_EQ(wire_rise(30, 60, 75).rise_k, 75.0 / 4);
  EXPECT_NEAR(wire_rise(30, 60, 75).slope_k_a, wire_rise(30.5, 60, 75).rise_k - wire_rise(29.5, 60, 75).rise_k, 1e-9);
}

}  // namespace
