#include "systems/clearance/envelopes.hpp"

using namespace sw;
using namespace sw::rig;

namespace {

Judging still(const std::string& change) { return Judging(hand_car(change), "hot-idle"); }
/// What the search may leave open is taken off what it found.
constexpr double open_in = 0.5 / 25.4;
const Ball tube{"tube", "the chassis", 0, 0, 0}, axle{"axle", "the axle", 0, 0, -6, "wheel"};

double told_in(const Judged& j, std::string_view what) {
  for (auto& b : j.verdict.because)
    if (b.what.find(what) != std::string::npos) return b.value / inch;
  ADD_FAILURE() << what << " is not told";
  return 0;
}

TEST(ClearanceEnvelopeRequirements, TellsThePoseAtWhichItIsLeast) {
  const Judging all = still(pair_text(tube, axle) + wheel);
  const auto& j = all.one("clearance.envelope");
  EXPECT_NEAR(j.verdict.predicted.value() / inch, 1 - open_in, 1e-6);
  EXPECT_NEAR(told_in(j, "between them there"), 1, 1e-6);
  EXPECT_NEAR(j.verdict.low.value() / inch, 0.5, 1e-9);
  EXPECT_NEAR(told_in(j, "wheel up there"), 4, 1e-6);
  EXPECT_NEAR(told_in(j, "at rest"), 5, 1e-9);
  EXPECT_NEAR(told_in(j, "no pose brings them nearer"), 1, 0.02);
  EXPECT_EQ(j.requirement->hazard, Hazard::harm);
  EXPECT_EQ(j.requirement->caution, Caution::steering_loss);
}

// Of an arc the hub's height is told, not its angle.
TEST(ClearanceEnvelopeRequirements, TellsTheHeightOnAnArc) {
  const Judging all =
      still(pair_text({"tube", "the chassis", 20, 0, 10}, {"axle", "the axle", 20, 0, 0, "wheel"}) + swings);
  EXPECT_NEAR(told_in(all.one("clearance.envelope"), "wheel up there"), 4, 1e-6);
}

TEST(ClearanceEnvelopeRequirements, AWireIsAnotherHazardAndWantsMore) {
  const Judging all = still(pair_text(tube, axle, "between = \"wire and hot part\"\n") + wheel);
  EXPECT_TRUE(all.of("clearance.envelope").empty());
  const auto& j = all.one("clearance.wire-envelope");
  EXPECT_EQ(j.requirement->caution, Caution::electrical_fire);
  EXPECT_NEAR(j.margin().value() / inch, 1 - 2 - open_in, 1e-6);
}

TEST(ClearanceEnvelopeRequirements, WhatGoesWithTheEngineAsksHowItStands) {
  const std::string over = pair_text({"member", "the chassis", 0, 0, -3}, {"pan", "the engine", 0, 0, 0}) + rolls;
  EXPECT_NEAR(still(over).one("clearance.envelope").verdict.predicted.value() / inch, 2 - open_in, 1e-6);
  const Judging sunk = still(over + "[mounts]\nsag = \"0.5 in\"\n");
  EXPECT_EQ(sunk.one("clearance.envelope").verdict.missing, (std::vector<std::string>{"mounts.span"}));
  const Judging known = still(over + "[mounts]\nsag = \"0.5 in\"\nspan = \"40 in\"\n");
  EXPECT_NEAR(known.one("clearance.envelope").verdict.predicted.value() / inch, 1.5 - open_in, 1e-5);
}

TEST(ClearanceEnvelopeRequirements, NotJudgedWhereNoneIsTold) {
  EXPECT_TRUE(still("").of("clearance.envelope").empty());
  EXPECT_TRUE(still(ball_text(tube)).of("clearance.envelope").empty());
}

}  // namespace
