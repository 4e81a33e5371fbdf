#include "systems/rig.hpp"

using namespace sw;
using namespace sw::rig;

namespace {

/// Column, two joints and box of a shaft that bends by 30 deg in the side view and by 20 deg in the plan, in points.
const std::string by_points =
    "[steering.column]\nx = \"20 in\"\ny = \"0 in\"\nz = \"0 in\"\n"
    "[steering.joint.upper]\nx = \"0 in\"\ny = \"0 in\"\nz = \"0 in\"\n"
    "[steering.joint.lower]\nx = \"-10 in\"\ny = \"0 in\"\nz = \"-5.7735 in\"\n"
    "[steering.box]\nx = \"-20 in\"\ny = \"0 in\"\nz = \"-5.7735 in\"\n";

steering::Model of(const std::string& change) { return resolved<steering::System>(hand_car(change)).model; }

TEST(SteeringModel, AnglesComeFromPointsInSpace) {
  const auto m = of(by_points);
  ASSERT_TRUE(m.told());
  ASSERT_EQ(m.chain.shafts.size(), 3u);
  EXPECT_NEAR(physics::joint_angle(m.chain.shafts[0], m.chain.shafts[1]) / degree, 30, 1e-3);  // atan(5.7735/10)
  EXPECT_NEAR(physics::joint_angle(m.chain.shafts[1], m.chain.shafts[2]) / degree, 30, 1e-3);
}

// The same two joints told by their angles: a shaft's way in space is its joints' angles and planes and nothing else.
TEST(SteeringModel, AnglesAloneSayTheSame) {
  const auto points = of(by_points);
  const auto angles =
      of("[steering.joint.upper]\nangle = \"30 deg\"\n[steering.joint.lower]\nangle = \"30 deg\"\nplane = "
         "\"180 deg\"\n");
  const auto a = physics::swing(points.chain), b = physics::swing(angles.chain);
  EXPECT_NEAR(a.slowest, b.slowest, 1e-4);
  EXPECT_NEAR(a.fastest, b.fastest, 1e-4);
}

TEST(SteeringModel, WhatIsMissingIsNamed) {
  const auto m =
      of("[steering.column]\nx = \"20 in\"\ny = \"0 in\"\nz = \"0 in\"\n[steering.joint.upper]\nx = \"0 "
         "in\"\ny = \"0 in\"\n[steering.box]\nx = \"-9 in\"\ny = \"0 in\"\nz = \"0 in\"\n");
  EXPECT_FALSE(m.told());
  EXPECT_EQ(m.missing, (std::vector<std::string>{"steering.joint.upper.z"}));
}

TEST(SteeringModel, TwoWaysToSayOneAngleAreAFault) {
  const Car car(faulty_car("[steering.joint.upper]\nx = \"0 in\"\ny = \"0 in\"\nz = \"0 in\"\nangle = \"20 deg\"\n"));
  EXPECT_TRUE(car.faults().any_fault());
}

}  // namespace
