#include "systems/judged.hpp"

using namespace sw;
using namespace sw::rig;

namespace {

TEST(MountsRequirements, SagIsJudgedByItsAngle) {
  const auto sag = [](const std::string& change) { return Judging(hand_car("[mounts]\n" + change), "hot-idle"); };
  const Judging sunk = sag("span = \"28 in\"\nsag = \"0.55 in\"\n");
  EXPECT_NEAR(sunk.one("mounts.sag").verdict.predicted.value() / degree, 1.125, 1e-3);  // atan(0.55/28)
  EXPECT_LT(sunk.one("mounts.sag").margin().value(), 0);
  EXPECT_GT(sag("span = \"40 in\"\nsag = \"0.2 in\"\n").one("mounts.sag").margin().value(), 0);
  EXPECT_TRUE(sag("").of("mounts.sag").empty());
}

TEST(MountsRequirements, TheSpanIsAskedForOnceSomethingMoved) {
  const Judging j(hand_car("[mounts]\nsag = \"0.3 in\"\n"), "hot-idle");
  EXPECT_EQ(j.one("mounts.sag").verdict.missing, (std::vector<std::string>{"mounts.span"}));
}

}  // namespace
