#include "physics/brake_drum.hpp"

#include <numbers>

#include "near.hpp"

namespace sw::physics {
namespace {

constexpr double deg = std::numbers::pi / 180;
constexpr DrumShoe shoe{0.150, 0.032, 0.32, 0, 126 * deg, 90 * deg, 0.1227, 0.212};

TEST(BrakeDrum, ShigleysExample) {  // internal expanding rim brake, 300 mm drum (from memory): 2.28 kN, 366 and 162 N m
  const auto r = drum_shoe(shoe, 1000e3);
  EXPECT_NEAR(r.force_n, 2280, 10);
  EXPECT_NEAR(r.leading_n_m, 366, 1);
  EXPECT_NEAR(r.trailing_n_m, 162, 1);
  EXPECT_TRUE(r.valid);
  EXPECT_NEAR(r.leading_torque_per_n * r.force_n, r.leading_n_m, 1e-9);
  EXPECT_NEAR(r.trailing_torque_per_n * r.force_n, r.trailing_n_m, 1e-9);
}

TEST(BrakeDrum, MomentsAreTheIntegrals) {  // Simpson over the lining against the closed form
  const int n = 400;
  double push = 0, rub = 0, torque = 0;
  for (int i = 0; i <= n; ++i) {
    const double t = shoe.start_rad + (shoe.end_rad - shoe.start_rad) * i / n, weight = i == 0 || i == n ? 1
                                                                                        : i % 2          ? 4
                                                                                                         : 2;
    const double normal = 1e6 * std::sin(t) * shoe.width_m * shoe.radius_m * weight;
    push += normal * shoe.pivot_radius_m * std::sin(t);
    rub += shoe.friction * normal * (shoe.radius_m - shoe.pivot_radius_m * std::cos(t));
    torque += shoe.friction * normal * shoe.radius_m;
  }
  const double step = (shoe.end_rad - shoe.start_rad) / n / 3;
  const auto r = drum_shoe(shoe, 1e6);
  expect_share(r.force_n, (push - rub) * step / shoe.lever_m, 1e-7);
  expect_share(r.leading_n_m, torque * step, 1e-7);
}

TEST(BrakeDrum, FrictionHighEnoughGrabs) {
  DrumShoe grabs = shoe;
  grabs.friction = 1.2;
  EXPECT_FALSE(drum_shoe(grabs, 1e6).valid);
}

}  // namespace
}  // namespace sw::physics
