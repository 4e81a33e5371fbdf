#include "physics/manifold.hpp"

#include <numbers>

#include "near.hpp"

namespace sw::physics {
namespace {

constexpr double sea = 101325, in_hg = 3386.389;

TEST(Manifold, IdleLoadAndOverrun) {
  const double idle = sea - 18 * in_hg;
  EXPECT_NEAR(manifold_pressure(idle, 75, 75, 0, sea).pressure_pa, idle, 1e-9);
  EXPECT_NEAR(manifold_pressure(idle, 75, 75, 1, sea).pressure_pa, sea, 1e-9);
  EXPECT_NEAR(manifold_pressure(idle, 75, 75, 0.5, sea).pressure_pa, (idle + sea) / 2, 1e-6);
  EXPECT_NEAR(manifold_pressure(idle, 75, 100, 0, sea).pressure_pa, idle * 0.75, 1e-9);
  EXPECT_EQ(manifold_pressure(idle, 75, 400, 0, sea).pressure_pa, closed_least_pa);
  EXPECT_EQ(manifold_pressure(95e3, 75, 60, 0, sea).pressure_pa, sea);  // labouring below idle: no vacuum left
}

TEST(Manifold, AnInchIsLostForAThousandFeet) {  // common practice; standard air at 1000 ft: 97.7 kPa
  const double idle = sea - 18 * in_hg, up = 97.7e3;
  EXPECT_NEAR((up - manifold_pressure(idle, 75, 75, 0, up).pressure_pa) / in_hg, 17, 0.2);
}

TEST(Manifold, SlopesAreTheDerivatives) {
  const auto at = manifold_pressure(60e3, 75, 90, 0.3, sea);
  expect_slope(
      at.slope_share, [](double s) { return manifold_pressure(60e3, 75, 90, s, sea).pressure_pa; }, 0.3);
  expect_slope(
      at.slope_speed, [](double n) { return manifold_pressure(60e3, 75, n, 0.3, sea).pressure_pa; }, 90);
}

TEST(Manifold, LongCamshaft) {  // the trade's figure (common practice): 236/242 deg takes 18 inHg to about 9
  const double deg = std::numbers::pi / 180;
  EXPECT_NEAR(18 - cam_vacuum_lost_pa(239 * deg) / in_hg, 9.5, 1.5);
  EXPECT_EQ(cam_vacuum_lost_pa(190 * deg), 0);
}

}  // namespace
}  // namespace sw::physics
