// What the sums of universal joints do with optional, contradictory and far-off inputs; figures stand in
// tests/published.
#include "sum/asked.hpp"

namespace sw {
namespace {

TEST(JointSums, AngleAndFluctuationGoBackAndForth) {
  const double f = asked("joint", {"angle=20 deg"}, "fluctuation");
  EXPECT_NEAR(asked("joint", {"fluctuation=" + std::to_string(f)}, "angle", "deg"), 20, 1e-4);
  EXPECT_FALSE(gives("joint", {"angle=20 deg"}, "angle"));
  EXPECT_EQ(code("joint", {"angle=20 deg", "fluctuation=0.1"}), 2);
  EXPECT_EQ(code("joint", {}), 2);
  EXPECT_EQ(code("joint", {"angle=90 deg"}), 2);
  EXPECT_EQ(code("joint", {"fluctuation=-0.1"}), 2);
}

TEST(JointSums, WhatIsNotAskedForIsLeftOut) {
  for (auto* key : {"slowest", "fastest", "output_angle"}) EXPECT_FALSE(gives("joint", {"angle=20 deg"}, key)) << key;
  EXPECT_TRUE(gives("joint", {"angle=20 deg", "shaft_speed=500 rpm"}, "fastest"));
  EXPECT_FALSE(gives("joint", {"angle=0 deg"}, "equal_angle"));  // they turn equally fast all the time
}

// In the plane of both shafts the pin's start gives the other form, tan(out) = tan(in)/cos(angle).
TEST(JointSums, StartOfThePin) {
  const Words base = {"angle=25 deg", "input_angle=45 deg"};
  auto in_plane = base;
  in_plane.push_back("start=in-plane");
  EXPECT_NEAR(asked("joint", in_plane, "output_angle", "deg"), 47.81, 0.01);
  EXPECT_NEAR(asked("joint", base, "equal_angle", "deg") + asked("joint", in_plane, "equal_angle", "deg"), 90, 1e-9);
  EXPECT_NEAR(asked("joint", {"angle=25 deg", "input_angle=540 deg"}, "output_angle", "deg"), 180, 1e-9);
  EXPECT_EQ(code("joint", {"angle=25 deg", "start=up"}), 2);
}

TEST(JointSums, SteepJointsAreTold) {
  EXPECT_NE(run_sum("joint", {"angle=50 deg"}).to_text().find("joint maker"), std::string::npos);
  EXPECT_EQ(run_sum("joint", {"angle=40 deg"}).to_text().find("joint maker"), std::string::npos);
}

TEST(JointSums, PairInPhaseAndOut) {
  const auto fluctuation = [](Words more) {
    more.insert(more.begin(), {"angle1=20 deg", "angle2=20 deg"});
    return asked("joint-pair", more, "fluctuation");
  };
  EXPECT_NEAR(fluctuation({}), 0, 1e-12);
  EXPECT_NEAR(fluctuation({"plane_phase=35 deg", "yoke_phase=35 deg"}), 0, 1e-12);
  EXPECT_NEAR(fluctuation({"plane_phase=35 deg", "yoke_phase=-145 deg"}), 0, 1e-12);  // half a turn changes nothing
  EXPECT_GT(fluctuation({"plane_phase=35 deg"}), 0.05);
  EXPECT_FALSE(gives("joint-pair", {"angle1=20 deg", "angle2=20 deg"}, "slowest"));
  EXPECT_EQ(code("joint-pair", {"angle1=20 deg"}), 2);
}

TEST(JointSums, CompoundAngle) {
  EXPECT_NEAR(asked("compound-angle", {"side=-5 deg", "plan=0 deg"}, "angle", "deg"), 5, 1e-9);
  EXPECT_NEAR(asked("compound-angle", {"side=3 deg", "plan=4 deg"}, "angle", "deg"), 4.995, 1e-3);
  EXPECT_EQ(code("compound-angle", {"side=3 deg"}), 2);
  EXPECT_EQ(code("compound-angle", {"side=3", "plan=4 deg"}), 2);
}

}  // namespace
}  // namespace sw
