#include "physics/belt_tension.hpp"

#include <gtest/gtest.h>
#include <rapidcheck/gtest.h>

#include <cmath>
#include <vector>

#include "physics/belt.hpp"

namespace sw::physics {
namespace {

std::vector<double> tensions(std::vector<double> pull, std::vector<double> length, BeltLoad load) {
  std::vector<double> out(pull.size());
  contact_tensions(pull, length, load, out);
  return out;
}

// Two pulleys, equal spans, fixed centres: T +- half the pull, and where the strands stand at Euler's ratio the pull is
// belt_pull's 2 T (k - 1)/(k + 1).
TEST(BeltTension, FixedCentresAgreeWithTheClosedForm) {
  const double k = belt_grip_ratio(0.25, 2.5, 0.7).ratio, most = belt_pull(BeltTension::fixed_centres, 300, k).value;
  const auto t = tensions({0, most}, {0.2, 0.2}, {.rest_n = 300});
  EXPECT_NEAR(t[0], 300 - most / 2, 1e-9);
  EXPECT_NEAR(t[1], 300 + most / 2, 1e-9);
  EXPECT_NEAR(*grip_share(t[1], t[0], k), 1.0, 1e-12);
}

// A sprung arm on the slack side holds it: pull T (k - 1) at slip, whatever the speed.
TEST(BeltTension, ASprungArmHoldsTheSlackStrand) {
  const double k = belt_grip_ratio(0.3, 2.2, {}).ratio, most = belt_pull(BeltTension::sprung_slack, 200, k).value;
  const auto t = tensions({0, most}, {0.2, 0.3}, {.rest_n = 200, .sprung = true, .centrifugal_n = 80});
  EXPECT_NEAR(t[0], 200, 1e-9);
  EXPECT_NEAR(*grip_share(t[1], t[0], k), 1.0, 1e-12);
}

// By hand: pulls 100 and 60 N, arm on the idler between them (pulley 2): both its spans 150, so 50 before the first.
TEST(BeltTension, AnArmBetweenTwoPulls) {
  const auto t = tensions({0, 100, 0, 60}, {0.2, 0.2, 0.2, 0.2}, {.rest_n = 150, .arm = 2, .sprung = true});
  EXPECT_NEAR(t[0], 50, 1e-12);
  EXPECT_NEAR(t[1], 150, 1e-12);
  EXPECT_NEAR(t[2], 150, 1e-12);
  EXPECT_NEAR(t[3], 210, 1e-12);
}

// Mass 0.12 kg/m at 30 m/s: 108 N off every strand between fixed centres.
TEST(BeltTension, SpeedTakesItsPartBetweenFixedCentres) {
  const auto still = tensions({0, 90}, {0.3, 0.1}, {.rest_n = 400});
  const auto fast =
      tensions({0, 90}, {0.3, 0.1}, {.rest_n = 400, .centrifugal_n = belt_centrifugal(0.12, 30).tension_n});
  for (int i : {0, 1}) EXPECT_NEAR(still[static_cast<std::size_t>(i)] - fast[static_cast<std::size_t>(i)], 108, 1e-9);
}

TEST(BeltTension, ALooseBeltGivesNoShare) { EXPECT_FALSE(grip_share(-1, -30, 4.0)); }

// Half round with equal strands: twice the tension. A quarter: root two.
TEST(BeltTension, HubLoadIsTheVectorSum) {
  EXPECT_NEAR(hub_load(300, 300, M_PI), 600, 1e-9);
  EXPECT_NEAR(hub_load(300, 300, M_PI / 2), 300 * std::sqrt(2), 1e-9);
  EXPECT_NEAR(hub_load(300, 100, M_PI), 400, 1e-9);
}

// Whatever is pulled where: what the driver gives is what all others take, and the length-weighted mean is kept.
RC_GTEST_PROP(BeltTension, StretchAndPullsAreKept, ()) {
  const int n = *rc::gen::inRange(2, 8);
  std::vector<double> pull, length;
  for (int i = 0; i < n; ++i) pull.push_back(*rc::gen::inRange(0, 300)), length.push_back(*rc::gen::inRange(1, 50));
  const auto t = tensions(pull, length, {.rest_n = 350, .centrifugal_n = 40});
  double mean = 0, whole = 0, all = 0;
  for (std::size_t i = 0; i < t.size(); ++i) {
    mean += t[i] * length[i];
    whole += length[i];
    if (i > 0) all += pull[i];
  }
  RC_ASSERT(std::abs(mean / whole - 310) < 1e-9);
  RC_ASSERT(std::abs(t.back() - t.front() - all) < 1e-9);
}

}  // namespace
}  // namespace sw::physics
