#include "systems/judged.hpp"

using namespace sw;
using namespace sw::rig;

namespace {

Judging still(const std::string& change) { return Judging(hand_car(change), "hot-idle"); }
std::string joint(const std::string& name, int angle, int phase = 0) {
  return "[steering.joint." + name + "]\nangle = \"" + std::to_string(angle) + " deg\"\nplane = \"0 deg\"\nphase = \"" +
         std::to_string(phase) + " deg\"\n";
}
double unevenness(const Judging& j) { return j.one("steering.evenness").verdict.predicted.value(); }

// One joint turns between cos b and 1/cos b: fastest over slowest is 1/cos^2 b (any theory of machines, Hooke's joint).
TEST(SteeringRequirements, OneJointByTheClosedForm) {
  EXPECT_NEAR(unevenness(still(joint("only", 38))), 1 / std::pow(std::cos(38 * degree), 2) - 1, 1e-6);
  EXPECT_LT(still(joint("only", 38)).one("steering.joint-angle").margin().value(), 0);
  EXPECT_LT(still(joint("only", 38)).one("steering.evenness").margin().value(), 0);
  EXPECT_GT(still(joint("only", 25)).one("steering.evenness").margin().value(), 0);
}

// Two equal joints in one plane, yokes in line, undo each other; a quarter turn out they multiply: 1/cos^4 b.
TEST(SteeringRequirements, TwoJointsByTheClosedForm) {
  EXPECT_NEAR(unevenness(still(joint("a", 22) + joint("b", 22))), 0, 1e-9);
  EXPECT_NEAR(unevenness(still(joint("a", 22) + joint("b", 22, 90))), 1 / std::pow(std::cos(22 * degree), 4) - 1, 1e-6);
}

TEST(SteeringRequirements, TheBestPhaseIsTold) {
  const Judging j = still(joint("a", 22) + joint("b", 22, 90));
  auto& because = j.one("steering.evenness").verdict.because;
  const auto best = std::find_if(because.begin(), because.end(), [](auto& b) { return b.what == "best phase of b"; });
  ASSERT_NE(best, because.end());
  EXPECT_NEAR(best->value, 0, 1e-3);
}

TEST(SteeringRequirements, ThreeJointsWantABearing) {
  const std::string three = joint("a", 15) + joint("b", 15) + joint("c", 15);
  EXPECT_EQ(still(three).one("steering.bearings").verdict.missing, (std::vector<std::string>{"steering.bearings"}));
  EXPECT_EQ(still("[steering]\nbearings = 0\n" + three).one("steering.bearings").verdict.rule, false);
  EXPECT_EQ(still("[steering]\nbearings = 1\n" + three).one("steering.bearings").verdict.rule, true);
  EXPECT_EQ(still(joint("a", 15) + joint("b", 15)).one("steering.bearings").verdict.rule, true);
}

TEST(SteeringRequirements, EngagementAndCollapse) {
  const Judging j =
      still("[steering]\ncollapse = \"1.5 in\"\n[steering.slide]\nengaged = \"1.05 in\"\nlost = \"0.4 in\"\n");
  EXPECT_NEAR(j.one("steering.engagement").verdict.predicted.value() / inch, 0.65, 1e-9);
  EXPECT_LT(j.one("steering.engagement").margin().value(), 0);
  EXPECT_LT(j.one("steering.collapse").margin().value(), 0);
}

}  // namespace
