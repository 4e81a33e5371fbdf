#include "systems/judged.hpp"

using namespace sw;
using namespace sw::rig;

namespace {

Judging still(const std::string& change) { return Judging(hand_car(change), "hot-idle"); }

TEST(ClearanceRequirements, AGapTheEngineClosesWantsTheMountsSpan) {
  const std::string gap = "[clearance.gap.a]\ngap = \"0.6 in\"\nengine = \"above\"\nahead = \"-10 in\"\n";
  EXPECT_GT(still(gap).one("clearance.gap").margin().value(), 0);
  const Judging sunk = still(gap + "[mounts]\nsag = \"0.5 in\"\n");
  EXPECT_EQ(sunk.one("clearance.gap").verdict.missing, (std::vector<std::string>{"mounts.span"}));
  const Judging known = still(gap + "[mounts]\nsag = \"0.5 in\"\nspan = \"40 in\"\n");
  EXPECT_NEAR(known.one("clearance.gap").verdict.predicted.value() / inch, 0.6 - 0.5 * 0.75, 1e-9);
  EXPECT_LT(known.one("clearance.gap").margin().value(), 0);
}

TEST(ClearanceRequirements, AGapNobodyMeasuredIsAskedFor) {
  const Judging j = still("[clearance.gap.a]\nroll = \"0.3 in\"\n");
  EXPECT_EQ(j.one("clearance.gap").verdict.missing, (std::vector<std::string>{"clearance.gap.a.gap"}));
}

TEST(ClearanceRequirements, HeatWantsBothFigures) {
  const Judging one = still("[clearance.gap.a]\ngap = \"1 in\"\ncomes_to = \"150 degC\"\n");
  EXPECT_EQ(one.one("clearance.heat").verdict.missing, (std::vector<std::string>{"clearance.gap.a.stands"}));
  const Judging both = still("[clearance.gap.a]\ngap = \"1 in\"\ncomes_to = \"150 degC\"\nstands = \"120 degC\"\n");
  EXPECT_LT(both.one("clearance.heat").margin().value(), 0);
  EXPECT_TRUE(still("[clearance.gap.a]\ngap = \"1 in\"\n").of("clearance.heat").empty());
}

TEST(ClearanceRequirements, AStackOnTheIntakeIsLiftedByASpacer) {
  const std::string stack = "[clearance.stack.s]\nspace = \"8 in\"\n[clearance.stack.s.piece.one]\nsize = \"7.2 in\"\n";
  EXPECT_NEAR(still(stack).one("clearance.stack").verdict.predicted.value() / inch, 0.8, 1e-9);
  const Judging j = still(
      "[clearance.stack.s]\nspace = \"8 in\"\non_intake = true\n[clearance.stack.s.piece.one]\nsize = "
      "\"7.2 in\"\n[mounts]\nintake_raised = \"0.5 in\"\n");
  EXPECT_NEAR(j.one("clearance.stack").verdict.predicted.value() / inch, 0.3, 1e-9);
  EXPECT_LT(j.one("clearance.stack").margin().value(), 0);
}

TEST(ClearanceRequirements, ACarOfWhichNothingIsSaidIsNotJudged) {
  for (auto id : {"clearance.gap", "clearance.stack", "clearance.panel"}) EXPECT_TRUE(still("").of(id).empty()) << id;
}

}  // namespace
