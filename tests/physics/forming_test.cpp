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

}  // namespace
}  // namespace sw::physics
