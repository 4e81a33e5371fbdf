#include "physics/coupled.hpp"

#include "near.hpp"

namespace sw::physics {
namespace {

// By hand: 6 pF, 18 kV in 1.2 us, 1 kohm: 6e-12 x 15e9 = 90 mA, 90 V.
TEST(Coupled, VoltsByHand) {
  expect_share(coupled_v(6e-12, 1e3, 18e3, 1.2e-6).value, 90, 1e-6);
  EXPECT_LE(coupled_v(6e-12, 1e9, 18e3, 1.2e-6).value, 18e3);  // an open input sees no more than the edge
  EXPECT_GT(coupled_v(6e-12, 1e9, 18e3, 1.2e-6).value, 0.99 * 18e3);
}

// Far from each other P_12 is small and C = 2 pi e_0 P_12/(P_11 P_22): 2 cm high, 20 cm apart, 1 mm thick, by hand
// 55.63 pF/m x 0.5 ln(1.04) / ln(80)^2... with radius 0.5 mm: 55.63 x 0.01961 / 19.20 = 0.0568 pF/m.
TEST(Coupled, FarApartByHand) {
  const WiresBeside w{
      .length_m = 1, .apart_m = 0.2, .lead_radius_m = 0.5e-3, .wire_radius_m = 0.5e-3, .permittivity = 1};
  expect_share(mutual_capacitance_f(w).value, 0.0568e-12, 2e-3);
}

// Far above the metal the pair is the two-wire line, pi e_0 / acosh(d/2a): at d = 6 mm, a = 0.5 mm 11.2 pF/m. The
// thin-wire law has ln(d/a) in place of acosh(d/2a), within 1 % there, and creeps there as the metal goes away.
TEST(Coupled, FarFromMetalItIsATwoWireLine) {
  const WiresBeside w{.length_m = 1,
                      .apart_m = 6e-3,
                      .height_m = 1e6,
                      .lead_radius_m = 0.5e-3,
                      .wire_radius_m = 0.5e-3,
                      .permittivity = 1};
  expect_share(mutual_capacitance_f(w).value, 3.14159265 * 8.8541878e-12 / std::acosh(6.0), 0.07);
}

TEST(Coupled, FallsWithDistanceAndSlopes) {
  const WiresBeside near{.length_m = 0.25, .apart_m = 3e-3};
  WiresBeside far = near;
  far.apart_m = 0.2;
  EXPECT_LT(mutual_capacitance_f(far).value, 0.02 * mutual_capacitance_f(near).value);
  expect_slope(
      mutual_capacitance_f(near).slope,
      [](double d) { return mutual_capacitance_f({.length_m = 0.25, .apart_m = d}).value; }, 3e-3, 1e-4);
  // In nanofarads, so that the step of the difference is one of the capacitance.
  expect_slope(
      coupled_v(1e-9, 1e3, 18e3, 1.2e-6).slope * 1e-9,
      [](double nf) { return coupled_v(nf * 1e-9, 1e3, 18e3, 1.2e-6).value; }, 1.0);
  EXPECT_FALSE(mutual_capacitance_f({.length_m = 1, .apart_m = 0.5e-3}).valid);
}

}  // namespace
}  // namespace sw::physics
