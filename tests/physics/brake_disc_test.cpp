#include "physics/brake_disc.hpp"

#include "near.hpp"

namespace sw::physics {
namespace {

TEST(BrakeDisc, Torque) {  // Limpert, Shigley (from memory), recomputed: 0.38, 6.0 MPa, 2290 mm2, 0.112 m: 1169.5 N m
  const Slope t = disc_torque_n_m(0.38, 6e6, 2290e-6, 0.112);
  expect_share(t.value, 1169.5, 1e-3);
  expect_slope(
      t.slope, [](double p) { return disc_torque_n_m(0.38, p, 2290e-6, 0.112).value; }, 6e6);
  EXPECT_FALSE(disc_torque_n_m(0.38, -1, 2290e-6, 0.112).valid);
}

TEST(BrakeDisc, PadRadius) {  // closed form: 2/3 (R^3 - r^3)/(R^2 - r^2); the mean radius is within 2 %
  const double r = 0.080, R = 0.130;
  EXPECT_NEAR(pad_radius_m(r, R), 2.0 / 3 * (R * R * R - r * r * r) / (R * R - r * r), 1e-12);
  EXPECT_NEAR(pad_radius_m(r, R) / ((r + R) / 2), 1, 0.02);
}

}  // namespace
}  // namespace sw::physics
