#include "physics/brake_heat.hpp"

#include "near.hpp"

namespace sw::physics {
namespace {

TEST(BrakeHeat, OneStop) {  // Limpert, thermal chapter (from memory), recomputed: 73.4 K
  const double e = stop_energy_j(1500, 100 / 3.6);
  expect_share(stop_rise_k(e, 0.70, 2, 6.0, 460).value, 73.4, 2e-3);
  expect_slope(
      stop_rise_k(e, 0.70, 2, 6.0, 460).slope, [](double j) { return stop_rise_k(j, 0.70, 2, 6.0, 460).value; }, e);
}

TEST(BrakeHeat, SnubOf571_135) {  // 120 to 60 km/h: 416.7 J a kg, 500 kJ for 1200 kg, 11.1 kW over 45 s (stored copy)
  expect_share(stop_energy_j(1, 120 / 3.6, 60 / 3.6), 416.7, 1e-4);
  expect_share(stop_energy_j(1200, 120 / 3.6, 60 / 3.6) / 45, 11.1e3, 2e-3);
}

TEST(BrakeHeat, HeldPowerMatchesTheStepByStepSum) {
  const double p = 9.2e3, g = 30, c = 6.8 * 460;
  double rise = 0;
  for (int i = 0; i < 480000; ++i) rise += 1e-3 * (p - g * rise) / c;
  expect_share(held_rise_k(p, g, c, 480).value, rise, 1e-4);
  EXPECT_NEAR(held_rise_k(p, g, c, 480).value, 303, 3);  // worked by hand: 307 (1 - exp(-4.6))
  expect_slope(
      held_rise_k(p, g, c, 60, 20).slope, [&](double t) { return held_rise_k(p, g, c, t, 20).value; }, 60);
  EXPECT_NEAR(held_rise_k(0, g, c, 0, 100).value, 100, 1e-12);
}

TEST(BrakeHeat, Cooling) {
  const RotorCooling cooling{5, 25, 80 / 3.6, 0.2};
  EXPECT_NEAR(rotor_conductance_w_k(cooling, 0).value, 5, 1e-12);
  EXPECT_NEAR(rotor_conductance_w_k(cooling, 80 / 3.6).value, 30, 1e-12);
  expect_slope(
      rotor_conductance_w_k(cooling, 15).slope, [&](double v) { return rotor_conductance_w_k(cooling, v).value; }, 15);
  expect_slope(
      rotor_shed_w(cooling, 15, 500, 300).slope, [&](double t) { return rotor_shed_w(cooling, 15, t, 300).value; },
      500);
  EXPECT_NEAR(rotor_shed_w(cooling, 15, 300, 300).value, 0, 1e-9);
  // Radiation alone, Stefan-Boltzmann: 0.2 m2 at 800 K over 300 K with 0.55 is 2505 W (worked by hand).
  EXPECT_NEAR(rotor_shed_w({0, 0, 22, 0.2}, 0, 800, 300).value, 0.55 * 5.670374e-8 * 0.2 * (4.096e11 - 8.1e9), 1);
}

}  // namespace
}  // namespace sw::physics
