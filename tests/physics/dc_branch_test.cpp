#include "physics/dc_branch.hpp"

#include <gtest/gtest.h>
#include <rapidcheck/gtest.h>

#include <cmath>

using namespace sw::physics::dc;

namespace {

Flow at(const Law& law, double v, double series = 0, double sense = 0, double start = 0) {
  return evaluate({.from = 1, .to = 0, .series_ohm = series, .law = law}, v, sense, start);
}

/// Whole numbers over the full range whatever rapidcheck's size.
rc::Gen<int> whole(int low, int high) { return rc::gen::resize(rc::kNominalSize, rc::gen::inRange(low, high)); }

const Law every_law[] = {Open{},
                         Resistor{0.5},
                         Battery{12.6, 0.02},
                         ConstantCurrent{8, 6},
                         ConstantPower{120, 9},
                         PowerLaw{10, 13.5, 0.55},
                         PowerLaw{20, 13.5, 1.5},
                         PowerLaw{20, 13.5, 2.9},
                         RegulatedSource{14.2, 90}};

// The slope is the derivative of the current, behind leads too: central difference, step 1e-6 V. A tolerance of 1e-4
// of the slope covers the difference's own error where a corner's parabola ends.
RC_GTEST_PROP(DcBranch, SlopeIsTheDerivative, ()) {
  const Law& law = every_law[*whole(0, std::size(every_law))];
  const double v = *whole(-20000, 20000) / 1000.0 + 0.0001234;
  const double series = *rc::gen::element(0.0, 0.02, 0.3);
  const double sense = *whole(13000, 15000) / 1000.0 + 0.00002;
  const double h = 1e-6;
  const Flow f = at(law, v, series, sense);
  const double slope = (at(law, v + h, series, sense).current_a - at(law, v - h, series, sense).current_a) / (2 * h);
  const double sensed = (at(law, v, series, sense + h).current_a - at(law, v, series, sense - h).current_a) / (2 * h);
  RC_ASSERT(std::abs(slope - f.slope_s) <= 1e-4 * std::abs(f.slope_s) + 2e-4 * (1 + std::abs(f.current_a)));
  RC_ASSERT(std::abs(sensed - f.sense_slope_s) <=
            1e-3 * std::abs(f.sense_slope_s) + 2e-4 * (1 + std::abs(f.current_a)));
}

// Behind its leads the load's own voltage and the drop in the leads make up the whole.
RC_GTEST_PROP(DcBranch, LeadsAndLoadShareTheVoltage, ()) {
  const Law& law = every_law[*whole(1, std::size(every_law) - 1)];
  const double v = *whole(-20000, 20000) / 1000.0;
  const double series = *whole(1, 500) / 1000.0;
  const double start = *whole(-30, 30);
  const Flow f = at(law, v, series, 0, start);
  RC_ASSERT(std::abs(f.load_v + series * f.current_a - v) < 1e-8 * (1 + std::abs(v) + std::abs(f.current_a)));
  const Flow other = at(law, v, series, 0, -start);
  RC_ASSERT(std::abs(f.current_a - other.current_a) < 1e-8 * (1 + std::abs(f.current_a)));
}

TEST(DcBranch, ConstantPowerBehindLeadsIsTheUpperRootOfItsQuadratic) {
  // V^2 - U V + P R = 0: U = 13 V, P = 120 W, R = 0.05 ohm (closed form)
  const double expected = (13 + std::sqrt(13.0 * 13 - 4 * 120 * 0.05)) / 2;
  const Flow f = at(ConstantPower{120, 9}, 13, 0.05);
  EXPECT_NEAR(f.load_v, expected, 1e-11);
  EXPECT_NEAR(f.current_a, 120 / expected, 1e-10);
  EXPECT_NEAR(at(ConstantPower{120, 9}, 4).current_a, 4 * 120 / 81.0, 1e-12);  // a resistance below its least voltage
}

TEST(DcBranch, MotorGivesItsRatedPoint) {
  EXPECT_DOUBLE_EQ(at(PowerLaw{20, 13.5, 1.5}, 13.5).current_a, 20);
  EXPECT_NEAR(at(PowerLaw{20, 13.5, 1.5}, 12).current_a, 20 * std::pow(12 / 13.5, 1.5), 1e-12);
  EXPECT_NEAR(at(PowerLaw{20, 13.5, 1.5}, -12).current_a, -20 * std::pow(12 / 13.5, 1.5), 1e-12);
}

TEST(DcBranch, RegulatedSourceHoldsItsLimits) {
  RegulatedSource s{14.2, 90, 0.01, 35, 0};
  EXPECT_DOUBLE_EQ(at(s, -13, 0, 13).current_a, 90);   // asked for 120 A: gives what it has
  EXPECT_NEAR(at(s, -14, 0, 14).current_a, 20, 1e-9);  // (14.2 - 14)/0.01
  EXPECT_DOUBLE_EQ(at(s, -15, 0, 15).current_a, 0);    // over its set point: nothing, and nothing back
  EXPECT_DOUBLE_EQ(at(s, -40, 0, 12).current_a, 0);    // load dump: bounded by the ceiling
  s.greatest_a = 0;
  EXPECT_DOUBLE_EQ(at(s, -12, 0, 12).current_a, 0);
  s.leakage_s = 1e-5;
  EXPECT_NEAR(at(s, -12, 0, 12).current_a, -0.12e-3, 1e-12);
}

TEST(DcBranch, AnOpenRelayCarriesNothing) {
  Branch b{.from = 1, .to = 0, .closed = false, .law = Resistor{1}};
  EXPECT_EQ(evaluate(b, 12, 0, 0).current_a, 0);
  EXPECT_EQ(evaluate(b, 12, 0, 0).slope_s, 0);
}

TEST(DcBranch, FaultsAreNamed) {
  EXPECT_EQ(fault({.law = Resistor{1}}), nullptr);
  EXPECT_STREQ(fault({.law = Resistor{0}}), "resistance below 1e-6 ohm");
  EXPECT_NE(fault({.law = PowerLaw{10, 0, 1}}), nullptr);
  EXPECT_NE(fault({.law = PowerLaw{10, 12, 3.5}}), nullptr);
  EXPECT_NE(fault({.law = Battery{std::nan(""), 0.01}}), nullptr);
  EXPECT_NE(fault({.law = ConstantPower{-1, 9}}), nullptr);
  EXPECT_NE(fault({.law = ConstantCurrent{1, 0}}), nullptr);
  EXPECT_NE(fault({.law = RegulatedSource{14, 90, 0}}), nullptr);
  EXPECT_NE(fault({.series_ohm = -1, .law = Resistor{1}}), nullptr);
}

}  // namespace
