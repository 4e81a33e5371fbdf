#include "physics/coil.hpp"

#include <gtest/gtest.h>
#include <rapidcheck/gtest.h>

#include <numbers>

#include "near.hpp"
#include "physics/engine.hpp"

namespace sw::physics {
namespace {

constexpr double rpm = std::numbers::pi / 30;

// By hand: 12 V on 3 ohm and 6 mH for 2 ms: 4 A x (1 - e^-1) = 2.528 A.
TEST(Coil, RiseByHand) {
  const auto at = coil_rise({6e-3, 3}, 12, 2e-3);
  EXPECT_NEAR(at.current_a, 4 * (1 - std::exp(-1.0)), 1e-12);
  EXPECT_NEAR(at.energy_j, 0.5 * 6e-3 * at.current_a * at.current_a, 1e-15);
  EXPECT_FALSE(at.held);
}

// ENG-20: 8 mH at 4 A store 64 mJ (electromagnetism, own case).
TEST(Coil, ENG_20_Energy) { EXPECT_NEAR(coil_rise({8e-3, 3}, 12 + 1e-9, 1).energy_j, 64e-3, 64e-3 * 1e-4); }

TEST(Coil, AgreesWithTheLawOfOneCoilAlone) {
  EXPECT_NEAR(coil_rise({8e-3, 1.5}, 12, 3e-3).current_a, coil_current_a(8e-3, 1.5, 12, 3e-3), 1e-12);
}

TEST(Coil, HeldAtTheLimit) {
  const CoilCircuit c{.inductance_h = 6e-3, .coil_ohm = 0.6, .drop_v = 1, .limit_a = 6};
  const auto at = coil_rise(c, 14, 10e-3);
  EXPECT_TRUE(at.held);
  EXPECT_DOUBLE_EQ(at.current_a, 6);
  EXPECT_NEAR(coil_rise({6e-3, 0.6, 0, 1}, 14, at.held_from_s).current_a, 6, 1e-9);
  EXPECT_EQ(coil_rise(c, 0.9, 1).current_a, 0);  // less than the switch's own drop
}

TEST(Coil, SlopesAreTheDerivatives) {
  const CoilCircuit c{.inductance_h = 8e-3, .coil_ohm = 1.5, .ballast_ohm = 1.4, .drop_v = 0.8};
  const auto at = coil_rise(c, 13, 2.5e-3);
  expect_slope(
      at.slope_time, [&](double t) { return coil_rise(c, 13, t).current_a; }, 2.5e-3);
  expect_slope(
      at.slope_volts, [&](double v) { return coil_rise(c, v, 2.5e-3).current_a; }, 13);
  expect_slope(
      spark_period_s(300, 8).slope, [](double w) { return spark_period_s(w, 8).value; }, 300);
}

// What the supply gives is what heats and what is stored: V Q = heat + L i^2 / 2, whatever the figures.
RC_GTEST_PROP(Coil, EnergyIsKept, ()) {
  const double mh = *rc::gen::inRange(1, 15), ohm = 0.3 + 0.1 * *rc::gen::inRange(0, 40);
  const double ballast = 0.1 * *rc::gen::inRange(0, 20), volts = 5 + *rc::gen::inRange(0, 12);
  const double closed = 1e-3 * *rc::gen::inRange(1, 40), limit = 2 + *rc::gen::inRange(0, 12);
  const CoilCircuit c{mh * 1e-3, ohm, ballast, 0.7, limit};
  const double period = closed + 1e-3;
  const auto h = coil_heat(c, volts, closed, period);
  const double in = volts * h.mean_a * period,
               out = (h.coil_w + h.ballast_w + h.switch_w) * period + coil_rise(c, volts, closed).energy_j;
  RC_ASSERT(std::abs(in - out) < 1e-9 * std::max(1e-3, in));
}

TEST(Coil, HeatAgainstAnIntegral) {
  const CoilCircuit c{.inductance_h = 6e-3, .coil_ohm = 0.7, .drop_v = 1, .limit_a = 5};
  double square = 0;
  const int n = 20000;
  for (int i = 0; i < n; ++i) {
    const double a = coil_rise(c, 13.5, (i + 0.5) * 4e-3 / n).current_a;
    square += a * a * 4e-3 / n;
  }
  expect_share(coil_heat(c, 13.5, 4e-3, 10e-3).coil_w, 0.7 * square / 10e-3, 1e-6);
}

TEST(Coil, ClosedForGood) {  // 12 V on 1.5 + 1.5 ohm: 4 A, 24 W in each
  const auto h = coil_standing({8e-3, 1.5, 1.5}, 12);
  EXPECT_NEAR(h.mean_a, 4, 1e-12);
  EXPECT_NEAR(h.coil_w, 24, 1e-12);
  EXPECT_NEAR(h.ballast_w, 24, 1e-12);
  const auto held = coil_standing({8e-3, 0.5, 0, 1, 6}, 12);  // the switch takes what the limit leaves
  EXPECT_NEAR(held.coil_w + held.switch_w, 12 * 6, 1e-12);
}

// ENG-22: 30 deg of dwell, eight cylinders, 600 rpm: 16.67 ms; the time between sparks is 45/30 of it.
TEST(Coil, ENG_22_PeriodBesideDwell) {
  const double period = spark_period_s(600 * rpm, 8).value;
  expect_share(period, 25e-3, 1e-9);
  expect_share(dwell_time_s(30 * std::numbers::pi / 180, 600 * rpm), 16.67e-3, 1e-3);
  expect_share(dwell_time_s(30 * std::numbers::pi / 180, 600 * rpm) / period,
               dwell_share(30 * std::numbers::pi / 180, 8), 1e-9);
}

}  // namespace
}  // namespace sw::physics
