#include "systems/judged.hpp"

using namespace sw;
using namespace sw::rig;

namespace {

const std::string shaft = "[driveline.shaft]\nlength = \"66 in\"\ndiameter = \"3 in\"\nwall = \"0.083 in\"\n";

TEST(DrivelineRequirements, AShaftTurnsWithTheRoad) {
  const Judging j(hand_car(shaft), "cruise");
  auto& v = j.one("driveline.critical-speed", "cruise").verdict;
  const double metres_a_turn = j.highest("driveline.wheel_radius", "cruise") / j.highest("driveline.axle", "cruise");
  EXPECT_NEAR(v.predicted.value(), j.highest("road.speed", "cruise") / metres_a_turn, 1e-6);
  EXPECT_GT(j.one("driveline.critical-speed", "cruise").margin().value(), 0);
  const Judging fast(hand_car(shaft + "[duty.cruise]\nspeed = \"110 mph\"\n[driveline]\naxle = 4.1\n"), "cruise");
  EXPECT_LT(fast.one("driveline.critical-speed", "cruise").margin().value(), 0);
}

TEST(DrivelineRequirements, HalfAShaftIsAskedFor) {
  const Judging j(hand_car("[driveline.shaft]\nlength = \"66 in\"\n"), "cruise");
  EXPECT_EQ(j.one("driveline.critical-speed", "cruise").verdict.missing,
            (std::vector<std::string>{"driveline.shaft.diameter", "driveline.shaft.wall"}));
  EXPECT_TRUE(Judging(hand_car(), "cruise").of("driveline.critical-speed").empty());
}

TEST(DrivelineRequirements, JointsByHand) {
  const Judging j(hand_car("[driveline.shaft]\nfront_angle = \"3.5 deg\"\nrear_angle = \"1 deg\"\n"), "cruise");
  EXPECT_LT(j.one("driveline.joint-angle", {}, "front").margin().value(), 0);
  EXPECT_GT(j.one("driveline.joint-angle", {}, "rear").margin().value(), 0);
  EXPECT_NEAR(j.one("driveline.joint-difference").verdict.predicted.value() / degree, 2.5, 1e-9);
  // Equivalent angle sqrt(3.5^2 - 1^2) deg, squared, times the square of the shaft's speed.
  const double w = j.highest("road.speed", "cruise") * j.highest("driveline.axle", "cruise") /
                   j.highest("driveline.wheel_radius", "cruise");
  const double left = (3.5 * 3.5 - 1) * degree * degree;
  EXPECT_NEAR(j.one("driveline.residual", "cruise").verdict.predicted.value(), w * w * left, 1e-6 * w * w * left);
}

// A joint that does not bend at all does not turn its needles: the band's lower end.
TEST(DrivelineRequirements, AStraightJointIsNoGoodEither) {
  const Judging j(hand_car("[driveline.shaft]\nfront_angle = \"0.1 deg\"\nrear_angle = \"0.1 deg\"\n"), "cruise");
  EXPECT_LT(j.one("driveline.joint-angle", {}, "front").margin().value(), 0);
}

}  // namespace
