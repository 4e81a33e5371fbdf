#include "physics/sheet_bend.hpp"

#include <gtest/gtest.h>

#include <numbers>

namespace sw::physics {
namespace {

constexpr double inch = 0.0254, deg = std::numbers::pi / 180;

// FAA-H-8083-31, bending a U-channel (read in stored copies): 0.040 in sheet, inside radius 0.16 in, 1, 2 and 1 in to
// the mould lines, right angles: setback 0.2 in, flats 0.8, 1.6 and 0.8 in.
TEST(SheetBend, ChannelOfTheHandbook) {
  EXPECT_NEAR(bend_setback_of_sheet_m(0.16 * inch, 0.04 * inch, 90 * deg) / inch, 0.2, 1e-9);
  const double flanges[] = {1 * inch, 2 * inch, 1 * inch}, angles[] = {90 * deg, 90 * deg};
  const auto p = flat_pattern(flanges, angles, 0.16 * inch, 0.04 * inch, usual_bend_k);
  EXPECT_NEAR(p.flats_m[0] / inch, 0.8, 1e-9);
  EXPECT_NEAR(p.flats_m[1] / inch, 1.6, 1e-9);
  EXPECT_NEAR(p.flats_m[2] / inch, 0.8, 1e-9);
  // Navy text on aircraft structural work (stored copy): (0.0173 R + 0.0078 t) a degree; its 0.0173 is pi/180 rounded.
  const double published = (0.0173 * 0.16 + 0.0078 * 0.04) * 90;
  EXPECT_NEAR(bend_allowance_m(0.16 * inch, 0.04 * inch, usual_bend_k, 90 * deg) / inch, published, 0.003);
  EXPECT_NEAR(p.length_m / inch, 3.2 + 2 * published, 0.006);
  EXPECT_NEAR(p.bend_lines_m[0] / inch, 0.8 + published / 2, 0.002);
  EXPECT_NEAR(p.starts_m[1] / inch, 0.8 + published, 0.003);
}

// Machinery's Handbook, bending allowance of sheet (from memory): at 90 deg 0.64 t + 1.57 R in soft steel and
// aluminium, 0.71 t + 1.57 R in cold-rolled steel. The usual factor lies between, at any radius and, in proportion, any
// angle.
TEST(SheetBend, UsualFactorLiesBetweenTheHandbooksAllowances) {
  for (const double radius : {0.5e-3, 2e-3, 6e-3})
    for (const double quarters : {1.0 / 3, 1.0, 1.5}) {
      const double t = 1.5e-3, ours = bend_allowance_m(radius, t, usual_bend_k, quarters * 90 * deg);
      EXPECT_GT(ours, quarters * (0.64 * t + 1.57 * radius)) << radius;
      EXPECT_LT(ours, quarters * (0.71 * t + 1.5708 * radius)) << radius;
    }
}

// A trial bend gives its own factor back.
TEST(SheetBend, DeductionTellsTheFactor) {
  for (double angle : {30 * deg, 90 * deg, 135 * deg}) {
    const double deduction = 2 * bend_setback_of_sheet_m(3e-3, 2e-3, angle) - bend_allowance_m(3e-3, 2e-3, 0.38, angle);
    EXPECT_NEAR(k_of_deduction(3e-3, 2e-3, angle, deduction), 0.38, 1e-12);
    const double flanges[] = {0.04, 0.05}, angles[] = {angle};
    EXPECT_NEAR(flat_pattern(flanges, angles, 3e-3, 2e-3, 0.38).length_m, 0.09 - deduction, 1e-15);
  }
}

}  // namespace
}  // namespace sw::physics
