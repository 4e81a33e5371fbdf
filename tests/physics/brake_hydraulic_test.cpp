#include "physics/brake_hydraulic.hpp"

#include <gtest/gtest.h>
#include <rapidcheck/gtest.h>

#include <array>

#include "near.hpp"

namespace sw::physics {
namespace {

constexpr double psi = 6894.757293168, lbf = 4.4482216152605, in = 0.0254;

TEST(BrakeHydraulic, LinePressure) {  // Pascal with lever, recomputed: 70 lbf, 6:1, 1.000 in: 534.8 psi
  expect_share(line_pressure_pa(70 * lbf, 6, 1.000 * in).value, 534.8 * psi, 1e-3);
  const Slope with = line_pressure_pa(70 * lbf, 6, 1.000 * in, 100 * lbf);
  expect_share(with.value, 520 * lbf / (3.14159265 / 4 * in * in), 1e-8);
  expect_slope(
      with.slope, [](double f) { return line_pressure_pa(f, 6, in, 100 * lbf).value; }, 300);
}

TEST(BrakeHydraulic, RunOut) {  // 9.0 in effective, 20 inHg of 0.49115 psi: 624.9 lbf (NIST SP 811 for inHg)
  const double area = booster_area_m2(std::array{9.0 * in});
  expect_share(booster_assist_n(20 * 3386.389, area).value, 624.9 * lbf, 1e-3);
  EXPECT_NEAR(booster_area_m2(std::array{9.0 * in, 9.0 * in}), 2 * area, 1e-12);
  const Slope held = booster_assist_n(50e3, area, 0.95, 100);
  expect_slope(
      held.slope, [&](double p) { return booster_assist_n(p, area, 0.95, 100).value; }, 50e3);
  EXPECT_EQ(booster_assist_n(1e3, area, 0.95, 1000).value, 0);  // the spring holds it back
}

TEST(BrakeHydraulic, KneeIsWhereBothBranchesMeet) {
  const double knee = booster_knee_n(2000, 4).value;
  EXPECT_NEAR(knee * 4, knee + 2000, 1e-9);
  EXPECT_NEAR(booster_output(knee, 4, 2000).force_n, booster_output(knee * (1 - 1e-12), 4, 2000).force_n, 1e-6);
  EXPECT_TRUE(booster_output(knee * 1.01, 4, 2000).run_out);
  EXPECT_FALSE(booster_output(knee * 0.99, 4, 2000).run_out);
  EXPECT_EQ(booster_output(300, 4, 0).force_n, 300);  // no vacuum: the foot alone
}

RC_GTEST_PROP(BrakeHydraulic, InputUndoesOutput, ()) {
  const double in = *rc::gen::inRange(10, 3000), gain = *rc::gen::inRange(15, 80) / 10.0;
  const double assist = *rc::gen::inRange(0, 6000);
  const auto out = booster_output(in, gain, assist);
  const auto back = booster_input(out.force_n, gain, assist);
  RC_ASSERT(std::abs(back.force_n - in) < 1e-9 * in);
  RC_ASSERT(out.force_n >= in && out.force_n <= in * gain * (1 + 1e-12));
  // Less vacuum never helps.
  RC_ASSERT(booster_output(in, gain, assist * 0.9).force_n <= out.force_n);
}

}  // namespace
}  // namespace sw::physics
