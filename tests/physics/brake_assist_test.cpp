#include "physics/brake_assist.hpp"

#include <gtest/gtest.h>
#include <rapidcheck/gtest.h>

#include <cmath>
#include <numbers>

using namespace sw::physics;

namespace {

constexpr double lbf = 4.4482216152605, inch = 0.0254, in2 = inch * inch, in_hg = 3386.39;

// A 9 in diaphragm at 20 inHg, no losses: 624.9 lbf (force = area x pressure; 0.49115 psi/inHg, NIST SP 811; own case).
TEST(BrakeAssist, AreaTimesVacuum) {
  const BrakeBooster b{.area_m2 = std::numbers::pi / 4 * 81 * in2, .gain = 4};
  EXPECT_NEAR(booster_assist(b, 20 * in_hg).value / lbf, 624.9, 0.7);
}

// By hand: 75 in2, 95 %, spring 25 lbf, 18 inHg of 0.4912 psi: 605 lbf of assist; run-out at a push rod of 605/3 =
// 201.7.
TEST(BrakeAssist, GainUpToRunOutAndTheVacuumBeyond) {
  const BrakeBooster b{.area_m2 = 75 * in2, .gain = 4, .spring_n = 25 * lbf, .efficiency = 0.95};
  const double vacuum = 18 * in_hg;
  EXPECT_NEAR(booster_assist(b, vacuum).value / lbf, 605, 1);
  EXPECT_NEAR(booster_run_out(b, vacuum) / lbf, 201.7, 0.4);
  EXPECT_NEAR(booster_output(b, vacuum, 100 * lbf).value / lbf, 400, 1e-9);
  EXPECT_NEAR(booster_output(b, vacuum, 300 * lbf).value / lbf, 905, 1);
  EXPECT_DOUBLE_EQ(booster_output(b, 0, 10 * lbf).value, 0);  // the spring holds it
  EXPECT_NEAR(booster_output(b, 0, 100 * lbf).value / lbf, 75, 1e-9);
}

RC_GTEST_PROP(BrakeAssist, OutputAndPushRodGoBackAndForth, ()) {
  const BrakeBooster b{.area_m2 = *rc::gen::inRange(10, 120) * in2,
                       .gain = *rc::gen::inRange(10, 80) / 10.0,
                       .spring_n = *rc::gen::inRange(0, 60) * lbf,
                       .efficiency = *rc::gen::inRange(80, 101) / 100.0};
  const double vacuum = *rc::gen::inRange(0, 25) * in_hg, out = (*rc::gen::inRange(1, 1500) + 0.5) * lbf;
  const Slope rod = booster_push_rod(b, vacuum, out);
  RC_ASSERT(rod.valid);
  RC_ASSERT(std::abs(booster_output(b, vacuum, rod.value).value - out) < 1e-6 * out);
  const double h = 1e-3;
  const double slope =
      (booster_push_rod(b, vacuum, out + h).value - booster_push_rod(b, vacuum, out - h).value) / (2 * h);
  // On the kink itself the two sides differ.
  RC_PRE(std::abs(out - b.gain * booster_run_out(b, vacuum)) > 1e-2);
  RC_ASSERT(std::abs(slope - rod.slope) < 1e-5);
}

}  // namespace
