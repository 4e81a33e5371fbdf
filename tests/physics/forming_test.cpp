#include "physics/forming.hpp"

#include <gtest/gtest.h>

namespace sw::physics {
namespace {

constexpr double inch = 0.0254, lb_ft = 1.3558179483314, ksi = 6.894757293168e6;

// By hand: ln(0.295/0.1875) = 0.453; a tube of 3/8 in on 3/4 in 0.375/1.5 = 0.25; 15 lb-ft on a thread of 3/8 in pull
// 15 x 12/(0.2 x 0.375) = 2400 lbf, over 2 pi 0.18 x 0.028 in2 = 0.0317 in2 76 ksi.
TEST(Forming, ByHand) {
  EXPECT_NEAR(flare_strain(0.1875 * inch, 0.295 * inch), 0.453, 0.001);
  EXPECT_NEAR(bend_strain(0.375 * inch, 0.75 * inch), 0.25, 1e-12);
  EXPECT_NEAR(ring_shear_pa(15 * lb_ft, 0.375 * inch, 0.18 * inch, 0.028 * inch) / ksi, 75.8, 0.2);
}

// Walls to order before bending, over those wanted after it: ASME B31.1, table 102.4.5 (read as table 5-4 of a stored
// US guide specification, UFGS 4.159): 1.25 at 3 diameters, 1.14 at 4, 1.08 at 5, 1.06 at 6.
TEST(Forming, OuterWallBesidePublishedAllowances) {
  const double published[][2] = {{3, 1.25}, {4, 1.14}, {5, 1.08}, {6, 1.06}};
  for (auto& [diameters, allowance] : published)
    EXPECT_NEAR(1 / bent_wall_m(0.01, 1, diameters * 0.01), allowance, 0.085) << diameters;
  // Twice the strain at half the radius, and the same metal: length times wall stays.
  EXPECT_NEAR(bent_wall_m(0.01, 1e-3, 0.02) * (1 + bend_strain(0.01, 0.02)), 1e-3, 1e-15);
}

}  // namespace
}  // namespace sw::physics
