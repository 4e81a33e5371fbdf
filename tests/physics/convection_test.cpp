#include "physics/convection.hpp"

#include "near.hpp"

namespace sw::physics {
namespace {

// Printed in the documentation of the open-source ht library.
TEST(Convection, PublishedValues) {
  expect_share(nusselt_gnielinski(1e5, 1.2, 0.0185).value, 254.63, 5e-4);
  expect_share(nusselt_dittus_boelter(1e5, 1.2, false).value, 242.93, 5e-4);
  expect_share(nusselt_vertical_plate(2.63e9 * 0.69, 0.69).value, 147, 0.005);  // Incropera, example 9.2
}

// Holman, Heat Transfer, example 6-1 (from memory): air heated in a tube, h = 64.85 W/(m2 K).
TEST(Convection, HolmanTube) {
  const double re = 1.493 * 10 * 0.0254 / 2.57e-5;
  expect_share(nusselt_dittus_boelter(re, 0.681, true).value * 0.0386 / 0.0254, 64.85, 0.003);
}

// Churchill and Chu (1975): at vanishing Rayleigh number the constants squared remain.
TEST(Convection, StillAir) {
  EXPECT_NEAR(nusselt_lying_cylinder(0, 0.7).value, 0.36, 1e-12);
  EXPECT_NEAR(nusselt_vertical_plate(0, 0.7).value, 0.680625, 1e-12);
}

// Printed in the documentation of the open-source ht library for its lying cylinder (from memory).
TEST(Convection, LyingCylinder) { expect_share(nusselt_lying_cylinder(2.63e9 * 0.69, 0.69).value, 139.135, 1e-5); }

TEST(Convection, Slopes) {
  for (double re : {12e3, 1e5, 1e6}) {
    expect_slope(
        nusselt_dittus_boelter(re, 5, true).slope, [](double x) { return nusselt_dittus_boelter(x, 5, true).value; },
        re);
    expect_slope(
        nusselt_gnielinski(re, 5, 0.02).slope, [](double x) { return nusselt_gnielinski(x, 5, 0.02).value; }, re);
    expect_slope(
        nusselt_vertical_plate(re, 0.7).slope, [](double x) { return nusselt_vertical_plate(x, 0.7).value; }, re);
  }
}

TEST(Convection, Ranges) {
  EXPECT_FALSE(nusselt_dittus_boelter(5000, 5, true).valid);
  EXPECT_FALSE(nusselt_gnielinski(2000, 5, 0.03).valid);
  EXPECT_FALSE(nusselt_vertical_plate(1e13, 0.7).valid);
  expect_share(smooth_tube_factor(1e5), 0.0180, 0.01);  // Moody diagram, smooth pipe at Re 100 000
}

}  // namespace
}  // namespace sw::physics
