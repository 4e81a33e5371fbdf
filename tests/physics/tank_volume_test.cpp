#include "physics/tank_volume.hpp"

#include <gtest/gtest.h>
#include <rapidcheck/gtest.h>

#include <array>
#include <numbers>

#include "near.hpp"

namespace sw::physics {
namespace {

constexpr double in = 0.0254, gal = 231 * in * in * in, pi = std::numbers::pi;
const LyingTank jones(TankHeads heads) { return {108 * in, 156 * in, heads, 42 * in}; }

// Jones, Calculating Tank Volume (108 in through, 156 in long, heads 42 in deep, depths 36 and 84 in), gallons, as the
// documentation and tests of the open-source fluids library print them. SND-09, SND-10, SND-11 are among them.
TEST(TankVolume, SND_09_10_11_JonesLyingTanks) {
  EXPECT_NEAR(lying_volume_m3(jones(TankHeads::flat), 36 * in).value / gal, 1805.2, 0.18);
  const struct {
    TankHeads heads;
    double at_36, at_84, full;
  } published[] = {{TankHeads::ellipsoidal, 2380.9565415578145, 7103.445235921378, 8407.391539861392},
                   {TankHeads::spherical, 2303.9615116986183, 6935.163365275476, 8188.051252774394},
                   {TankHeads::conical, 2041.1923581273443, 6180.540773905826, 7296.981336483472}};
  for (auto& p : published) {
    EXPECT_NEAR(lying_volume_m3(jones(p.heads), 36 * in).value / gal, p.at_36, 2e-4);
    EXPECT_NEAR(lying_volume_m3(jones(p.heads), 84 * in).value / gal, p.at_84, 2e-3);
    EXPECT_NEAR(lying_volume_m3(jones(p.heads), 108 * in).value / gal, p.full, 1e-3);
  }
}

// Whole heads in closed form: half an ellipsoid, a cap of a sphere, a cone.
TEST(TankVolume, WholeHeadsByClosedForms) {
  const double r = 0.3, a = 0.12, straight = pi * r * r;
  const auto both = [&](TankHeads heads) { return lying_volume_m3({2 * r, 1, heads, a}, 2 * r).value - straight; };
  EXPECT_NEAR(both(TankHeads::ellipsoidal), 2 * 2.0 / 3 * pi * r * r * a, 1e-9);
  EXPECT_NEAR(both(TankHeads::spherical), 2 * pi * a * (3 * r * r + a * a) / 6, 1e-9);
  EXPECT_NEAR(both(TankHeads::conical), 2 * pi * r * r * a / 3, 1e-8);
  // A spherical head as deep as the radius is half a ball, and an ellipsoidal one too.
  EXPECT_NEAR(lying_volume_m3({2 * r, 1, TankHeads::spherical, r}, 0.2).value,
              lying_volume_m3({2 * r, 1, TankHeads::ellipsoidal, r}, 0.2).value, 1e-9);
}

// SND-13: an ellipse at a quarter of its height holds 0.1955 of the whole, as a circle does (own case).
TEST(TankVolume, SND_13_EllipseIsAStretchedCircle) {
  const double part = ellipse_volume_m3(0.8, 0.4, 1.2, 0.1).value, whole = ellipse_volume_m3(0.8, 0.4, 1.2, 0.4).value;
  EXPECT_NEAR(part / whole, 0.1955, 1e-4);
  EXPECT_NEAR(whole, pi * 0.4 * 0.2 * 1.2, 1e-12);
}

TEST(TankVolume, BoxAndProfile) {
  EXPECT_NEAR(box_volume_m3(0.8, 0.5, 0.3, 0.1).value, 0.04, 1e-15);
  // A wedge and a box upon it, by hand: 0.1 x 0.2/2 + 0.1 x 0.2 + …
  const std::array heights{0.0, 0.2, 0.5}, areas{0.0, 0.1, 0.1};
  EXPECT_NEAR(profile_volume_m3(heights, areas, 0.5).value, 0.01 + 0.03, 1e-15);
  EXPECT_NEAR(profile_volume_m3(heights, areas, 0.1).value, 0.0025, 1e-15);
  EXPECT_NEAR(profile_volume_m3(heights, areas, 0.2).value, 0.01, 1e-15);
  EXPECT_NEAR(profile_volume_m3(heights, areas, 0.1).slope, 0.05, 1e-15);
}

TEST(TankVolume, OutsideItIsEmptyOrFullAndSaysSo) {
  const auto over = lying_volume_m3(jones(TankHeads::conical), 120 * in),
             under = lying_volume_m3(jones(TankHeads::conical), -1);
  EXPECT_FALSE(over.valid);
  EXPECT_FALSE(under.valid);
  EXPECT_EQ(under.value, 0);
  EXPECT_EQ(over.value, lying_volume_m3(jones(TankHeads::conical), 108 * in).value);
  EXPECT_TRUE(box_volume_m3(1, 1, 1, 1).valid);
}

RC_GTEST_PROP(TankVolume, SurfaceIsTheDerivativeAndHalfIsHalf, ()) {
  const auto heads = static_cast<TankHeads>(*rc::gen::inRange(0, 4));
  const double d = 0.01 * *rc::gen::inRange(10, 100), a = d / 2 * 0.01 * *rc::gen::inRange(5, 101);
  const LyingTank tank{d, 0.7, heads, a};
  RC_ASSERT(std::abs(2 * lying_volume_m3(tank, d / 2).value - lying_volume_m3(tank, d).value) <
            1e-7 * lying_volume_m3(tank, d).value);
  const double h = d * 0.01 * *rc::gen::inRange(5, 96), step = 1e-5;
  const double difference =
      (lying_volume_m3(tank, h + step).value - lying_volume_m3(tank, h - step).value) / (2 * step);
  RC_ASSERT(std::abs(difference - lying_volume_m3(tank, h).slope) < 1e-4 * difference);
}

}  // namespace
}  // namespace sw::physics
