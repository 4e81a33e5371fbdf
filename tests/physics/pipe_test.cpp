#include "physics/pipe.hpp"

#include <gtest/gtest.h>
#include <rapidcheck/gtest.h>

#include "near.hpp"

namespace sw::physics {
namespace {

// Colebrook (1939), Haaland (1983): values printed in the documentation of the open-source fluids library.
TEST(Pipe, FrictionFactors) {
  expect_share(colebrook_factor(1e5, 1e-4).value, 0.018514, 5e-4);
  expect_share(haaland_factor(1e5, 1e-4), 0.018265, 5e-4);
  EXPECT_DOUBLE_EQ(pipe_factor(1000, 0).value, 0.064);
}

TEST(Pipe, ColebrookSatisfiesItsEquation) {
  for (double re : {4e3, 1e5, 1e8})
    for (double e : {0.0, 1e-5, 1e-3, 0.05}) {
      const double f = colebrook_factor(re, e).value, x = 1 / std::sqrt(f);
      EXPECT_NEAR(x, -2 * std::log10(e / 3.7 + 2.51 * x / re), 1e-12 * x);
      expect_slope(
          colebrook_factor(re, e).slope, [e](double r) { return colebrook_factor(r, e).value; }, re, 1e-4);
    }
}

// White, Fluid Mechanics, example 6.7 (from memory): oil, head loss 117 m (book rounds), Re 127 000.
TEST(Pipe, OilInCastIron) {
  const auto s = pipe_drop({0.200, 500, 0.26e-3}, {900, 900 * 1e-5}, 0.2);
  EXPECT_NEAR(s.pressure_drop_pa / (900 * 9.80665), 117, 1.5);
  expect_share(s.reynolds, 127000, 0.005);
}

// Cengel and Cimbala, Fluid Mechanics, oil in a lying pipe (from memory): 0.00311 m3/s at 648 kPa.
TEST(Pipe, LaminarOil) {
  expect_share(laminar_flow_m3_s({0.05, 40}, 0.8, 648e3), 0.00311, 0.005);
  const auto s = pipe_flow({0.05, 40}, {888, 0.8}, 648e3);
  expect_share(s.flow_m3_s, laminar_flow_m3_s({0.05, 40}, 0.8, 648e3), 1e-10);
  EXPECT_TRUE(s.valid);
}

TEST(Pipe, JumpBetweenRegimesIsSaidNotGuessed) {
  const Pipe pipe{0.008, 3, 1.5e-6};
  const PipeFluid fluid{745, 0.5e-3};
  const double q = 2300 * fluid.viscosity_pa_s / fluid.density_kg_m3 * pipe_area_m2(pipe.bore_m) / pipe.bore_m;
  const double below = pipe_drop(pipe, fluid, q * 0.999999).pressure_drop_pa,
               above = pipe_drop(pipe, fluid, q * 1.000001).pressure_drop_pa;
  EXPECT_LT(below, above);
  EXPECT_FALSE(pipe_flow(pipe, fluid, (below + above) / 2).valid);
  EXPECT_FALSE(pipe_factor(3000, 0).valid);
}

RC_GTEST_PROP(Pipe, FlowAndDropAreInverse, ()) {
  const Pipe pipe{*rc::gen::inRange(3, 60) / 1e3, *rc::gen::inRange(1, 500) / 10.0, *rc::gen::inRange(0, 100) * 1e-6,
                  *rc::gen::inRange(0, 20) / 2.0};
  const PipeFluid fluid{*rc::gen::inRange(1, 1200) * 1.0, *rc::gen::inRange(1, 10000) * 1e-5};
  const double q = *rc::gen::inRange(1, 10000) * 1e-6;
  const auto s = pipe_drop(pipe, fluid, q);
  if (s.reynolds > 2200 && s.reynolds < 4000) return;
  RC_ASSERT(std::abs(pipe_flow(pipe, fluid, s.pressure_drop_pa).flow_m3_s / q - 1) < 1e-8);
}

RC_GTEST_PROP(Pipe, SmoothDropRisesWithoutAJumpAndKnowsItsSlope, ()) {
  const Pipe pipe{0.008, 3, 1.5e-6, 2};
  const PipeFluid fluid{745, 0.5e-3};
  const double scale = fluid.viscosity_pa_s / fluid.density_kg_m3 * pipe_area_m2(pipe.bore_m) / pipe.bore_m;
  const double q = *rc::gen::inRange(10, 9000) * scale + 0.5 * scale, h = 1e-5 * q;
  const auto s = pipe_drop_smooth(pipe, fluid, q);
  const double d =
      (pipe_drop_smooth(pipe, fluid, q + h).pressure_drop_pa - pipe_drop_smooth(pipe, fluid, q - h).pressure_drop_pa) /
      (2 * h);
  RC_ASSERT(s.slope_pa_s_m3 > 0);
  RC_ASSERT(std::abs(s.slope_pa_s_m3 / d - 1) < 1e-4);
  RC_ASSERT(pipe_drop_smooth(pipe, fluid, -q).pressure_drop_pa == -s.pressure_drop_pa);
  RC_ASSERT(pipe_drop_smooth(pipe, fluid, -q).slope_pa_s_m3 == s.slope_pa_s_m3);
}

// Borda-Carnot: White, ch. 6; Cengel and Cimbala, table 8-4.
TEST(Pipe, LocalLosses) {
  EXPECT_NEAR(loss_expansion(8e-3, 12e-3), 0.3086, 0.3086 * 1e-3);
  EXPECT_EQ(loss_expansion(1, 1), 0);
  EXPECT_EQ(loss_sharp_entrance, 0.5);
}

TEST(Pipe, RestHasPoiseuillesSlope) {
  const auto s = pipe_drop({0.01, 2}, {1000, 1e-3}, 0);
  EXPECT_EQ(s.pressure_drop_pa, 0);
  EXPECT_NEAR(s.slope_pa_s_m3, pipe_drop({0.01, 2}, {1000, 1e-3}, 1e-9).slope_pa_s_m3, 1e-3 * s.slope_pa_s_m3);
}

}  // namespace
}  // namespace sw::physics
