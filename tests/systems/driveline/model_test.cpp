#include "systems/rig.hpp"

using namespace sw;
using namespace sw::rig;

namespace {

const std::string slopes =
    "[driveline.shaft]\nlength = \"50 in\"\nengine_slope = \"5.5 deg\"\nshaft_slope = \"1 deg\"\npinion_slope = \"4 "
    "deg\"\n";

// By hand: an inch under the gearbox on mounts 40 in apart takes atan(1/40) = 1.432 deg off the engine's slope and puts
// atan(1/50) = 1.146 deg on the shaft's.
TEST(DrivelineModel, AShimAtTheTailTurnsEngineAndShaft) {
  const auto s = resolved<driveline::System>(hand_car(slopes)).model.shaft;
  EXPECT_NEAR(s.front(0, 0).value() / degree, 4.5, 1e-9);
  EXPECT_NEAR(s.rear(0).value() / degree, 3.0, 1e-9);
  const double pitch = std::atan(1.0 / 40), lift = 1 * inch;
  EXPECT_NEAR(s.front(pitch, lift).value() / degree, 4.5 - 1.4321 - 1.1458, 1e-3);
  EXPECT_NEAR(s.rear(lift).value() / degree, 3.0 - 1.1458, 1e-3);
}

TEST(DrivelineModel, WhatWasMeasuredAtTheJointStands) {
  const auto s = resolved<driveline::System>(hand_car("[driveline.shaft]\nfront_angle = \"3.5 deg\"\n")).model.shaft;
  EXPECT_NEAR(s.front(0.1, 0.1).value() / degree, 3.5, 1e-9);
  EXPECT_FALSE(s.rear(0).has_value());
}

TEST(DrivelineModel, FiguresThatCannotBe) {
  EXPECT_TRUE(Car(faulty_car(slopes + "front_angle = \"2 deg\"\n")).faults().any_fault());
}

}  // namespace
