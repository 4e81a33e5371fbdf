#include "physics/tube_strength.hpp"

#include <gtest/gtest.h>
#include <rapidcheck/gtest.h>

#include "near.hpp"

namespace sw::physics {
namespace {

constexpr double in = 0.0254, psi = 6894.757293168361;

// TUB-16, TUB-17: 3/16 in of 0.028 in wall at 1500 psi (own case of Barlow and Lame).
TEST(TubeStrength, TUB_16_TUB_17_HoopStress) {
  const auto s = hoop_stress(0.1875 * in, 0.028 * in, 1500 * psi);
  EXPECT_NEAR(s.outside_pa / psi, 5022, 5022 * 5e-4);
  EXPECT_NEAR(s.bore_pa / psi, 4404, 4404 * 1e-3);
  EXPECT_NEAR(s.mean_pa / psi, 1500 * (0.1875 - 0.028) / 0.056, 1e-6);
}

RC_GTEST_PROP(TubeStrength, MeanIsLeastAndOutsideMost, ()) {
  const double od = 0.001 * *rc::gen::inRange(3, 80), wall = od * 0.001 * *rc::gen::inRange(1, 499);
  const auto s = hoop_stress(od, wall, 1e6);
  RC_ASSERT(s.mean_pa < s.bore_pa && s.bore_pa < s.outside_pa);
  RC_ASSERT(std::abs(s.outside_pa - s.mean_pa - 0.5e6) < 1);  // p t/2t apart, whatever the wall
  const auto back = hoop_pressure_pa(od, wall, s.outside_pa);
  RC_ASSERT(std::abs(back.value - 1e6) < 1e-3);
  RC_ASSERT(std::abs(back.slope * s.outside_pa - 1e6) < 1e-3);
}

// The wall's stress by Lame, averaged over it, must hold p times the bore (half a tube in balance): by quadrature.
TEST(TubeStrength, LameIsInBalance) {
  const double a = 2e-3, b = 5e-3, p = 3e6;
  double held = 0;
  const int n = 20000;
  for (int i = 0; i < n; ++i) {
    const double r = a + (b - a) * (i + 0.5) / n;
    held += p * a * a / (b * b - a * a) * (1 + b * b / (r * r)) * (b - a) / n;
  }
  EXPECT_NEAR(held, p * a, p * a * 1e-6);
  const double at_bore = p * a * a / (b * b - a * a) * (1 + b * b / (a * a));
  EXPECT_NEAR(hoop_stress(2 * b, b - a, p).bore_pa, at_bore, 1);
}

// TUB-23: FAA AC 43.13-1B, chapter 9 (from memory): 15/16 in for 3/8 in of aluminium, 1 5/16 in for steel.
TEST(TubeStrength, TUB_23_LeastBends) {
  EXPECT_NEAR(*least_bend_radius_m(0.375 * in, TubeMetal::aluminium) / in, 0.9375, 1e-12);
  EXPECT_NEAR(*least_bend_radius_m(0.375 * in, TubeMetal::steel) / in, 1.3125, 1e-12);
  EXPECT_FALSE(least_bend_radius_m(0.125 * in, TubeMetal::steel));
  EXPECT_FALSE(least_bend_radius_m(8e-3, TubeMetal::steel));  // no metric tube stands in the table
  double last = 0;
  for (double od : {0.1875, 0.25, 0.3125, 0.375, 0.5, 0.625, 0.75, 1.0, 1.25, 1.5}) {
    const double soft = *least_bend_radius_m(od * in, TubeMetal::aluminium) / in,
                 hard = *least_bend_radius_m(od * in, TubeMetal::steel) / in;
    EXPECT_LT(soft, hard) << od;
    EXPECT_GT(soft, last) << od;
    last = soft;
  }
}

// TUB-20: NAVEDTRA 14018, table 6-6 (stored copy): 0.150 in left of 1/4 in of 0.035 in wall; its nominal bore is 0.180.
TEST(TubeStrength, TUB_20_BoreAfterBending) {
  EXPECT_NEAR(*least_bent_bore_m(0.25 * in, 0.035 * in, BentTube::aluminium_6061) / in, 0.150, 1e-12);
  EXPECT_NEAR(*least_bent_bore_m(0.75 * in, 0.083 * in, BentTube::stainless_annealed) / in, 0.590, 1e-12);
  EXPECT_FALSE(least_bent_bore_m(0.25 * in, 0.028 * in, BentTube::aluminium_6061));
}

// US MIL-H-8891A, table II (stored copy): 16, 18, 20, 23, 25 1/2, 27 1/2 and 30 in of steel from 1/4 to 1 in.
TEST(TubeStrength, SpansBetweenClips) {
  const double published[][2] = {{0.25, 16},    {0.3125, 18}, {0.375, 20}, {0.5, 23},
                                 {0.625, 25.5}, {0.75, 27.5}, {1, 30}};
  for (auto& [od, span] : published) {
    EXPECT_NEAR(*longest_span_m(od * in, TubeMetal::steel) / in, span, 1e-12) << od;
    EXPECT_LT(*longest_span_m(od * in, TubeMetal::aluminium) / in, span) << od;
  }
  EXPECT_NEAR(*longest_span_m(8e-3, TubeMetal::steel) / in, 18, 1e-12);  // 8 mm: by 5/16 in
  EXPECT_NEAR(*longest_span_m(4.75e-3, TubeMetal::steel) / in, 14, 1e-12);
  EXPECT_FALSE(longest_span_m(2e-3, TubeMetal::steel));
}

// TUB-22: the same text, proof pressure testing (stored copy): twice the working pressure above 50 psi.
TEST(TubeStrength, TUB_22_ProofPressure) {
  EXPECT_DOUBLE_EQ(proof_over_working, 2);
  EXPECT_NEAR(low_pressure_pa * proof_over_working, least_proof_pa, 1e-6);
}

}  // namespace
}  // namespace sw::physics
