#include "proof/proof.hpp"
#include "systems/judged.hpp"

using namespace sw;
using namespace sw::rig;

namespace {

Judging still(const std::string& change) { return Judging(hand_car(change), "hot-idle"); }

TEST(ClearanceRequirements, AGapTheEngineClosesWantsTheMountsSpan) {
  const std::string gap =
      "[clearance.gap.a]\nbetween = \"moving parts\"\ngap = \"0.6 in\"\nengine = \"above\"\nahead = \"-10 in\"\n";
  EXPECT_GT(still(gap).one("clearance.gap").margin().value(), 0);
  const Judging sunk = still(gap + "[mounts]\nsag = \"0.5 in\"\n");
  EXPECT_EQ(sunk.one("clearance.gap").verdict.missing, (std::vector<std::string>{"mounts.span"}));
  const Judging known = still(gap + "[mounts]\nsag = \"0.5 in\"\nspan = \"40 in\"\n");
  EXPECT_NEAR(known.one("clearance.gap").verdict.predicted.value() / inch, 0.6 - 0.5 * 0.75, 1e-9);
  EXPECT_LT(known.one("clearance.gap").margin().value(), 0);
}

TEST(ClearanceRequirements, AGapNobodyMeasuredIsAskedFor) {
  const Judging j = still("[clearance.gap.a]\nbetween = \"moving parts\"\nroll = \"0.3 in\"\n");
  EXPECT_EQ(j.one("clearance.gap").verdict.missing, (std::vector<std::string>{"clearance.gap.a.gap"}));
}

TEST(ClearanceRequirements, WhatItKeepsApartAndWhatMovesItAreAskedFor) {
  const auto lacks = [](const std::string& more) {
    return still("[clearance.gap.a]\ngap = \"2 in\"\n" + more).one("clearance.gap").verdict.missing;
  };
  EXPECT_EQ(lacks("roll = \"0.3 in\"\n"), (std::vector<std::string>{"clearance.gap.a.between"}));
  EXPECT_TRUE(lacks("roll = \"0.3 in\"\nwanted = \"0.4 in\"\n").empty());
  const auto still_parts = lacks("between = \"moving parts\"\n");
  ASSERT_EQ(still_parts.size(), 1u);
  EXPECT_TRUE(still_parts[0].starts_with("clearance.gap.a.roll:")) << still_parts[0];
  EXPECT_EQ(lacks("between = \"steering link at ride\"\n").size(), 1u);
  EXPECT_TRUE(lacks("between = \"moving parts\"\nbump = \"0 in\"\n").empty());
  EXPECT_TRUE(lacks("between = \"standing parts\"\n").empty());
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
  EXPECT_EQ(j.one("clearance.stack").requirement->hazard, Hazard::damage);
  EXPECT_EQ(j.one("clearance.stack").requirement->caution, Caution::belts_pulleys);
}

TEST(ClearanceRequirements, AWireBesideWhatIsHotIsAnotherHazard) {
  const Judging j = still(
      "[clearance.gap.lead]\nbetween = \"wire and hot part\"\ngap = \"1 in\"\ncomes_to = \"150 degC\"\nstands = \"125 "
      "degC\"\n");
  EXPECT_TRUE(j.of("clearance.gap").empty());
  EXPECT_TRUE(j.of("clearance.heat").empty());
  for (auto id : {"clearance.wire", "clearance.wire-heat"}) {
    EXPECT_LT(j.one(id).margin().value(), 0) << id;
    EXPECT_EQ(j.one(id).requirement->caution, Caution::electrical_fire) << id;
    EXPECT_EQ(j.one(id).requirement->hazard, Hazard::harm) << id;
  }
}

/// Pieces of 1 in each, each off by 0.01 in, in a space that is off by 0.02 in.
std::string pieces(int count, const std::string& more = "") {
  std::string text =
      "[clearance.stack.s]\nspace = { value = \"8 in\", from = \"measured\", plus_minus = \"0.02 in\" }\n" + more;
  for (int i = 0; i < count; ++i)
    text += "[clearance.stack.s.piece.p" + std::to_string(i) +
            "]\nsize = { value = \"1 in\", from = \"measured\", plus_minus = \"0.01 in\" }\n";
  return text;
}

double told_in(const Judged& j, std::string_view what) {
  for (auto& b : j.verdict.because)
    if (b.what.find(what) != std::string::npos) return b.value / inch;
  ADD_FAILURE() << what << " is not told";
  return 0;
}

// 3 in from a line to the exhaust (common practice), and the caution of what the line carries.
TEST(ClearanceRequirements, ALineBesideWhatIsHotIsAHazardOfItsOwn) {
  const auto car = [](const std::string& between) {
    return Judging(hand_car("[clearance.gap.line]\nbetween = \"" + between + "\"\ngap = \"2 in\"\n"), "hot-idle");
  };
  const Judging brakes = car("brake line and hot part"), fuel = car("fuel line and hot part"),
                parts = car("standing parts");
  EXPECT_NEAR(brakes.one("clearance.brake-line").margin().value() / 0.0254, -1, 1e-9);
  EXPECT_EQ(brakes.one("clearance.brake-line").requirement->caution, Caution::braking_loss);
  EXPECT_EQ(fuel.one("clearance.fuel-line").requirement->caution, Caution::fuel_fire);
  EXPECT_TRUE(brakes.of("clearance.gap").empty());
  EXPECT_GT(parts.one("clearance.gap").margin().value(), 0);
}

TEST(ClearanceRequirements, AStackTellsBothBandsAndWhatToMeasureAgain) {
  const Judging few = still(pieces(3)), many = still(pieces(6));
  const auto &f = few.one("clearance.stack"), &m = many.one("clearance.stack");
  EXPECT_NEAR(told_in(f, "every length off at once"), 5 - 0.05, 1e-9);
  EXPECT_NEAR(told_in(f, "left statistically"), 5 - std::sqrt(4e-4 + 3e-4), 1e-9);
  EXPECT_NEAR(told_in(m, "measured again first: space"), 0.02, 1e-9);
  EXPECT_TRUE(f.verdict.worst_case);  // four lengths
  EXPECT_FALSE(m.verdict.worst_case);
}

// A band that lies within the worst case and without the statistical one.
TEST(ClearanceRequirements, FewLengthsAreJudgedByTheWorstCase) {
  const auto state = [](int count, double wanted) {
    const Build b = hand_car(pieces(count, "wanted = \"" + std::to_string(wanted) + " in\"\n"));
    const auto set = duties_of(b, from_disk());
    for (auto& f : prove(b, *set, {.duty = "hot-idle"}).findings)
      if (f.id.starts_with("clearance.stack[")) return std::pair(f.state, f.half_width / inch);
    return std::pair(State::unproven, 0.0);
  };
  const auto few = state(3, 5 - 0.04), many = state(4, 4 - 0.04);
  EXPECT_NEAR(few.second, 0.05, 1e-6);
  EXPECT_EQ(few.first, State::tight);
  EXPECT_NEAR(many.second, std::sqrt(4e-4 + 4e-4), 1e-6);
  EXPECT_EQ(many.first, State::holds);
}

TEST(ClearanceRequirements, AStackMayBeTooLoose) {
  EXPECT_TRUE(still(pieces(3)).of("clearance.stack-loose").empty());
  const Judging loose = still(pieces(3, "wanted = \"4 in\"\nmost = \"4.5 in\"\n"));
  EXPECT_NEAR(loose.one("clearance.stack-loose").margin().value() / inch, -0.5, 1e-9);
  EXPECT_NEAR(told_in(loose.one("clearance.stack-loose"), "every length off at once"), 5 + 0.05, 1e-9);
  const Judging filled = still(pieces(3, "wanted = \"4 in\"\nmost = \"4.5 in\"\nshims = \"0.75 in\"\n"));
  EXPECT_NEAR(filled.one("clearance.stack-loose").margin().value() / inch, 0.25, 1e-9);
  EXPECT_NEAR(filled.one("clearance.stack").margin().value() / inch, 0.25, 1e-9);
}

TEST(ClearanceRequirements, ACarOfWhichNothingIsSaidIsNotJudged) {
  for (auto id : {"clearance.gap", "clearance.wire", "clearance.stack", "clearance.panel"})
    EXPECT_TRUE(still("").of(id).empty()) << id;
}

}  // namespace
