// What the sums of belts do with optional, contradictory and far-off inputs; figures stand in tests/published.
#include "sum/asked.hpp"

namespace sw {
namespace {

TEST(BeltSums, LengthAndCentreGoBackAndForth) {
  for (const char* crossed : {"crossed=no", "crossed=yes"}) {
    const double length =
        asked("belt-length", {"large_diameter=180 mm", "small_diameter=60 mm", "centre_distance=300 mm", crossed},
              "length", "mm");
    EXPECT_NEAR(
        asked("belt-centre",
              {"large_diameter=180 mm", "small_diameter=60 mm", "length=" + std::to_string(length) + " mm", crossed},
              "centre_distance", "mm"),
        300, 1e-5);
  }
  EXPECT_EQ(code("belt-length", {"large_diameter=60 mm", "small_diameter=180 mm", "centre_distance=300 mm"}), 2);
  EXPECT_EQ(code("belt-length", {"large_diameter=180 mm", "small_diameter=60 mm", "centre_distance=100 mm"}), 2);
  EXPECT_EQ(code("belt-centre", {"large_diameter=180 mm", "small_diameter=60 mm", "length=400 mm"}), 2);
  EXPECT_EQ(code("belt-centre", {"large_diameter=180 mm", "small_diameter=60 mm", "length=1 m", "crossed=true"}), 2);
}

TEST(BeltSums, Speed) {
  EXPECT_FALSE(gives("belt-speed", {"drivers=7 in", "driven=3.5 in"}, "driven_speed"));
  EXPECT_NEAR(asked("belt-speed", {"drivers=7 in", "driven=3.5 in"}, "ratio"), 2, 1e-12);
  EXPECT_EQ(code("belt-speed", {"drivers=7, 3 in", "driven=3.5 in"}), 2);
  EXPECT_EQ(code("belt-speed", {"drivers=7 in", "driven=0 in"}), 2);
}

TEST(BeltSums, Grip) {
  const Words base = {"friction=0.3", "groove_angle=40 deg"};
  auto with = [&](Words more) {
    more.insert(more.begin(), base.begin(), base.end());
    return more;
  };
  const double ratio = asked("belt-grip", with({"wrap=150 deg"}), "ratio");
  EXPECT_NEAR(asked("belt-grip", with({"ratio=" + std::to_string(ratio)}), "wrap", "deg"), 150, 1e-4);
  EXPECT_NEAR(asked("belt-grip", with({"wrap=150 deg", "slack=100 N"}), "tight", "N"), 100 * ratio, 1e-6);
  EXPECT_FALSE(gives("belt-grip", with({"wrap=150 deg", "slack=100 N"}), "torque"));
  EXPECT_FALSE(gives("belt-grip", with({"wrap=150 deg", "slack=100 N", "diameter=60 mm"}), "power"));
  EXPECT_FALSE(gives("belt-grip", with({"wrap=150 deg", "diameter=60 mm"}), "torque"));
  EXPECT_NEAR(asked("belt-grip", with({"wrap=150 deg", "slack=100 N", "diameter=60 mm"}), "torque", "N m"),
              100 * (ratio - 1) * 0.03, 1e-6);
  EXPECT_EQ(code("belt-grip", with({"wrap=150 deg", "slack=100 N", "tight=500 N"})), 2);
  EXPECT_EQ(code("belt-grip", with({"wrap=150 deg", "ratio=3"})), 2);
  EXPECT_EQ(code("belt-grip", with({"ratio=0.5"})), 2);
}

TEST(BeltSums, SpanAndLine) {
  EXPECT_NEAR(
      asked("span-frequency", {"length=0.25 m", "mass_per_length=0.12 kg/m", "frequency=115.470 Hz"}, "tension", "N"),
      400, 0.01);
  EXPECT_NEAR(asked("belt-line", {"span=12 in", "offset=0.1 in"}, "angle", "deg"), 0.4775, 1e-3);
  EXPECT_EQ(code("belt-line", {"span=12 in", "offset=0.1 in", "angle=1 deg"}), 2);
  EXPECT_NEAR(asked("ribbed-pulley", {"profile=pk"}, "run_out", "mm"), 0.25, 1e-12);           // ISO 9981:2020 5.3.3
  EXPECT_NEAR(asked("ribbed-pulley", {"profile=pk"}, "groove_variation", "mm"), 0.15, 1e-12);  // 5.3.2
  EXPECT_EQ(code("ribbed-pulley", {"profile=pj"}), 2);
}

}  // namespace
}  // namespace sw
