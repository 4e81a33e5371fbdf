// What the sums of tubes do with optional, contradictory and far-off inputs; figures stand in tests/published.
#include "sum/asked.hpp"
#include "sum/asking.hpp"

namespace sw {
namespace {

const Words path = {"points=0,0,0; 8,0,0; 8,3.5,0; 12,3.5,2 in", "radius=1 in"};

TEST(TubeSums, PathGivesWhatABenderIsSetTo) {
  const auto r = run_sum("tube-bend", path);
  ASSERT_EQ(r.exit_code(), 0) << r.to_text();
  EXPECT_EQ(r.output("legs")->numbers.size(), 3u);
  EXPECT_EQ(r.output("bends")->numbers.size(), 2u);
  EXPECT_EQ(r.output("rotations")->numbers.size(), 1u);
  EXPECT_EQ(r.output("straights")->numbers.size(), 3u);
  EXPECT_NEAR(r.output("bends")->numbers[0], 90, 1e-9);
  EXPECT_NEAR(r.output("straights")->numbers[0], 7, 1e-9);  // 8 in less a tangent of one radius
  EXPECT_FALSE(gives("tube-bend", {path[0]}, "cut_length"));
  EXPECT_FALSE(gives("tube-bend", {path[0]}, "straights"));
  EXPECT_TRUE(gives("tube-bend", {path[0]}, "bends"));
}

TEST(TubeSums, PathThatCannotBeBent) {
  EXPECT_TRUE(has(faults_of(run_sum("tube-bend", {"points=0,0,0; 1,0,0; 2,0,0 in"})), "point 2 is no corner"));
  EXPECT_TRUE(has(faults_of(run_sum("tube-bend", {"points=0,0,0; 1,0,0; 1,0,0 in"})), "point 3 lies where"));
  EXPECT_TRUE(has(faults_of(run_sum("tube-bend", {"points=0,0,0; 1,0,0; 0.5,0,0 in"})), "straight back"));
  EXPECT_TRUE(has(faults_of(run_sum("tube-bend", {"points=0,0,0 in"})), "one point"));
  EXPECT_EQ(code("tube-bend", {"points=0,0; 1,0 in"}), 2);
  const auto tight = run_sum("tube-bend", {"points=0,0,0; 8,0,0; 8,1,0; 12,1,2 in", "radius=1 in"});
  EXPECT_EQ(tight.exit_code(), 3);
  EXPECT_TRUE(has(tight.to_text(), "leg 2 is shorter"));
  EXPECT_EQ(code("tube-bend", {"points=0,0,0; 8,0,0 in", "radius=1 in"}), 0);  // a straight tube is one
}

TEST(TubeSums, OneBend) {
  EXPECT_NEAR(asked("bend", {"radius=2 in", "angle=90 deg"}, "setback", "in"), 2, 1e-9);
  EXPECT_FALSE(gives("bend", {"radius=2 in", "angle=180 deg"}, "setback"));
  EXPECT_NEAR(asked("bend", {"radius=2 in", "angle=180 deg"}, "arc", "in"), 2 * M_PI, 1e-9);
  EXPECT_EQ(code("bend", {"radius=2 in", "angle=0 deg"}), 2);
}

TEST(TubeSums, LeastBendIsNotMadeUp) {
  EXPECT_NEAR(asked("least-bend", {"od=3/8 in", "material=steel"}, "radius", "in"), 1.3125, 1e-12);  // AC 43.13-1B
  EXPECT_EQ(code("least-bend", {"od=8 mm", "material=steel"}), 3);
  EXPECT_FALSE(gives("least-bend", {"od=8 mm", "material=steel"}, "radius"));
  EXPECT_EQ(code("least-bend", {"od=3/8 in", "material=copper"}), 2);
}

TEST(TubeSums, StressAndPressureGoBackAndForth) {
  const Words tube = {"od=0.25 in", "wall=0.035 in"};
  const double stress = asked("tube-stress", with(tube, {"pressure=1000 psi"}), "hoop_outside", "psi");
  EXPECT_NEAR(asked("tube-stress", with(tube, {"stress=" + std::to_string(stress) + " psi"}), "pressure", "psi"), 1000,
              1e-3);
  EXPECT_FALSE(gives("tube-stress", with(tube, {"stress=10 ksi"}), "hoop_bore"));
  EXPECT_EQ(code("tube-stress", with(tube, {"stress=10 ksi", "pressure=1 psi"})), 2);
  EXPECT_EQ(code("tube-stress", {"od=0.25 in", "wall=0.125 in", "pressure=1 psi"}), 2);
}

TEST(TubeSums, DashSizes) {
  EXPECT_NEAR(asked("dash-size", {"dash=6"}, "od", "in"), 0.375, 1e-12);
  EXPECT_NEAR(asked("dash-size", {"od=3/8 in"}, "dash"), 6, 0);
  EXPECT_EQ(code("dash-size", {"od=8 mm"}), 3);
  EXPECT_EQ(code("dash-size", {"dash=9"}), 3);
  EXPECT_EQ(code("dash-size", {"dash=0"}), 2);
  EXPECT_EQ(code("dash-size", {"dash=6", "od=3/8 in"}), 2);
}

TEST(TubeSums, Flares) {
  EXPECT_NEAR(asked("flare", {"style=45-inverted", "dash=3"}, "thread_diameter", "in"), 0.375, 1e-12);
  EXPECT_FALSE(gives("flare", {"style=45-inverted"}, "thread_diameter"));
  EXPECT_TRUE(gives("flare", {"style=45-inverted"}, "included_angle"));
  EXPECT_EQ(code("flare", {"style=37-degree", "od=8 mm"}), 3);
  EXPECT_EQ(code("flare", {"style=37-degree", "od=3/8 in", "dash=6"}), 2);
  EXPECT_EQ(code("flare", {"style=iso"}), 2);
}

}  // namespace
}  // namespace sw
