#include "physics/fuel_pump.hpp"

#include <gtest/gtest.h>

#include "near.hpp"

namespace sw::physics {
namespace {

constexpr double psi = 6894.757293168361, litre_h = 1e-3 / 3600;

PumpCurve pump() {
  return *PumpCurve::make(Curve{{0, 40 * psi, 80 * psi}, {320 * litre_h, 260 * litre_h, 180 * litre_h}});
}

/// A motor and pump from the machine's equations, solved apart: n = (V - I R)/k, I = I0 + c p, Q = D n - g p.
double machine(double pressure_pa, double volts) {
  constexpr double resistance = 0.5, k = 0.02, idle_a = 1.5, amps_pa = 1.6e-5, litre_rad = 1.7e-7, leak = 4e-11;
  const double speed = (volts - (idle_a + amps_pa * pressure_pa) * resistance) / k;
  return litre_rad * speed - leak * pressure_pa;
}

TEST(FuelPump, GoesThroughItsPoints) {
  expect_share(pump_flow(pump(), 40 * psi, 1).flow_m3_s, 260 * litre_h, 1e-12);
  expect_share(pump().free_m3_s(), 320 * litre_h, 1e-12);
  EXPECT_TRUE(pump_flow(pump(), 40 * psi, 1).valid);
  EXPECT_FALSE(pump_flow(pump(), 100 * psi, 1).valid);
  EXPECT_FALSE(pump_flow(pump(), 40 * psi, 0.4).valid);
}

// Two methods: the shift of the rated curve against the machine's own equations at other volts.
TEST(FuelPump, ShiftsWithTheVoltsAsTheMachineDoes) {
  Curve c;
  for (double p : {0.0, 20.0, 40.0, 60.0, 80.0}) c.x.push_back(p * psi), c.y.push_back(machine(p * psi, 13.5));
  const auto curve = *PumpCurve::make(c);
  for (double volts : {9.0, 11.0, 12.0, 14.4})
    for (double p : {10.0, 40.0, 60.0}) {
      const double exact = machine(p * psi, volts), free = machine(0, 13.5);
      // What is left out, D I0 R / k of the free flow, is some 6 %.
      EXPECT_NEAR(pump_flow(curve, p * psi, volts / 13.5).flow_m3_s, exact, 0.07 * free * std::abs(1 - volts / 13.5));
    }
}

TEST(FuelPump, SlopesAndRelief) {
  for (double p : {20.0, 60.0, 86.0}) {
    const auto f = pump_flow(pump(), p * psi, 0.95, 84 * psi);
    expect_slope(
        f.d_pressure, [](double x) { return pump_flow(pump(), x, 0.95, 84 * psi).flow_m3_s; }, p * psi, 1e-4);
    expect_slope(
        f.d_volts_share, [&](double s) { return pump_flow(pump(), p * psi, s, 84 * psi).flow_m3_s; }, 0.95);
  }
  const auto spilling = pump_flow(pump(), 86 * psi, 1, 84 * psi);
  EXPECT_GT(spilling.spilt_m3_s, 0);
  expect_share(spilling.flow_m3_s + spilling.spilt_m3_s, pump_flow(pump(), 86 * psi, 1).flow_m3_s, 1e-12);
}

// Straight from one point: nothing flows where p = p_r r / (r - 1).
TEST(FuelPump, DeadHead) {
  const auto curve = *PumpCurve::make(200 * litre_h, 43 * psi, 1.3);
  expect_share(dead_head_pa(curve, 1), 43 * psi * 1.3 / 0.3, 1e-9);
  EXPECT_LT(dead_head_pa(curve, 0.9), dead_head_pa(curve, 1));
  EXPECT_LT(dead_head_pa(curve, 1, 85 * psi), 85 * psi * 1.1);
  EXPECT_GT(dead_head_pa(curve, 1, 85 * psi), 85 * psi);
  EXPECT_EQ(pump_flow(curve, 500 * psi, 1).flow_m3_s, 0);
  EXPECT_EQ(pump_flow(curve, 10 * psi, 0).flow_m3_s, 0);
}

TEST(FuelPump, RefusesACurveThatRises) {
  EXPECT_FALSE(PumpCurve::make(Curve{{0, 1e5}, {1e-4, 1.1e-4}}));
  EXPECT_FALSE(PumpCurve::make(1e-4, 3e5, 1.0));
}

}  // namespace
}  // namespace sw::physics
