#include "physics/bay.hpp"

#include "near.hpp"

namespace sw::physics {
namespace {

// ASHRAE Handbook Fundamentals, ch. 18, sol-air temperature (from memory): dark surfaces a/h_o = 0.052 m2 K/W, so 800
// W/m2 on a bonnet at 35 degC make it feel air of 76.6 degC.
TEST(Bay, SolAirOfADarkPanel) { EXPECT_NEAR(sol_air(308.15, dark_panel_m2k_w, 800).value, 308.15 + 41.6, 1e-9); }

// By hand: a panel between films of 17 and 9.26 W/m2 K passes 17 x 9.26 / 26.26 = 5.995 W/m2 K.
TEST(Bay, PanelBetweenTwoFilms) { EXPECT_NEAR(thin_panel_w_m2k, 5.995, 0.001); }

// By hand, standing at 300 K, core air 100 W/K at 350 K (60 % through the bay), 500 W from the engine, no sun, bay at
// 340 K: 25 (300 - 340) + 60 (350 - 340) + 500 = 100 W.
TEST(Bay, BalanceByHand) {
  const BayHeat in{
      .outside_k = 300, .road_m_s = 0, .core_air_w_k = 100, .core_out_k = 350, .engine_w = 500, .sun_w_m2 = 0};
  EXPECT_NEAR(bay_balance(in, 340).heat_w, 100, 1e-9);
  expect_slope(
      bay_balance(in, 340).slope_w_k, [&](double t) { return bay_balance(in, t).heat_w; }, 340);
}

// Second law: with nothing from the engine and no sun the air settles between the outside's and the core's.
TEST(Bay, WithoutSourcesItSettlesBetweenItsStreams) {
  for (double rate : {0.0, 20.0, 400.0})
    for (double v : {0.0, 10.0, 30.0}) {
      const BayHeat in{
          .outside_k = 300, .road_m_s = v, .core_air_w_k = rate, .core_out_k = 350, .engine_w = 0, .sun_w_m2 = 0};
      EXPECT_GE(bay_balance(in, 300).heat_w, 0);
      EXPECT_LE(bay_balance(in, 350).heat_w, 0);
    }
}

// Of the sun on a bonnet less than a third gets inside; dark or not, it is never all of it.
TEST(Bay, MostOfTheSunGoesBack) {
  BayHeat in{.outside_k = 300, .road_m_s = 0, .core_air_w_k = 0, .core_out_k = 300, .engine_w = 0, .sun_w_m2 = 0};
  const double dark = bay_balance(in, 300).heat_w;
  in.sun_w_m2 = 1000;
  const double per_m2 = (bay_balance(in, 300).heat_w - dark) / 1000 / 1.2;
  EXPECT_NEAR(per_m2, 0.9 * 9.26 / 26.26, 0.02);  // absorbed share 0.9 x what the inner film takes of both
}

}  // namespace
}  // namespace sw::physics
