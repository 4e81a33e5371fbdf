// What the sums of linkages do with optional, contradictory and far-off inputs; figures stand in tests/published.
#include "sum/asked.hpp"

namespace sw {
namespace {

TEST(LinkageSums, FourBars) {
  const Words bars = {"crank=40 mm", "coupler=120 mm", "rocker=80 mm", "ground=100 mm"};
  EXPECT_FALSE(gives("four-bar", bars, "rocker_open"));
  EXPECT_TRUE(gives("four-bar", bars, "grashof"));
  auto at = bars;
  at.push_back("crank_angle=40 deg");
  // The loop closes along x: crank + coupler = ground + rocker.
  const double deg = M_PI / 180, open = asked("four-bar", at, "coupler_open", "deg") * deg,
               rocker = asked("four-bar", at, "rocker_open", "deg") * deg;
  EXPECT_NEAR(40 * std::cos(40 * deg) + 120 * std::cos(open), 100 + 80 * std::cos(rocker), 1e-9);
  EXPECT_TRUE(gives("four-bar", at, "coupler_crossed"));
  EXPECT_EQ(code("four-bar", {"crank=40 mm", "coupler=20 mm", "rocker=10 mm", "ground=100 mm", "crank_angle=180 deg"}),
            2);
  EXPECT_EQ(code("four-bar", {"crank=40 mm", "coupler=20 mm", "rocker=10 mm", "ground=100 mm"}), 0);
  EXPECT_EQ(code("four-bar", {"crank=0 mm", "coupler=20 mm", "rocker=10 mm", "ground=100 mm"}), 2);
}

// By hand: at 90 deg rod and crank are the sides of a right-angled triangle; an offset of the crank's length levels it.
TEST(LinkageSums, SliderAndCrank) {
  const Words parts = {"crank=30 mm", "rod=50 mm", "crank_angle=90 deg"};
  EXPECT_NEAR(asked("slider-crank", parts, "position", "mm"), 40, 1e-9);
  auto level = parts;
  level.push_back("offset=30 mm");
  EXPECT_NEAR(asked("slider-crank", level, "position", "mm"), 50, 1e-9);
  EXPECT_EQ(code("slider-crank", {"crank=60 mm", "rod=50 mm", "crank_angle=90 deg"}), 2);
  EXPECT_EQ(code("slider-crank", {"crank=60 mm", "rod=50 mm"}), 2);
}

}  // namespace
}  // namespace sw
