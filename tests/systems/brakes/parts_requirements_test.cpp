#include "systems/brakes/rig.hpp"

using namespace sw;
using namespace sw::rig;

namespace {

double margin(const std::string& change, std::string_view id, std::string_view place = {}) {
  return stopping(change).one(id, "", place).margin().value();
}

TEST(BrakesParts, AllHoldOnTheHandCar) {
  const Judging j = stopping("");
  for (auto& one : j.all())
    if (one.requirement->id.starts_with("brakes.")) {
      ASSERT_TRUE(one.margin()) << one.requirement->id << " " << one.verdict.place << " " << one.verdict.reason;
      EXPECT_GE(one.margin().value(), 0) << one.requirement->id << " " << one.verdict.place;
    }
}

TEST(BrakesParts, RodGapIsABand) {
  EXPECT_LT(margin("[brakes.booster]\nrod_gap = \"0.005 in\"\n", "brakes.rod-gap"), 0);
  EXPECT_LT(margin("[brakes.booster]\nrod_gap = \"0.045 in\"\n", "brakes.rod-gap"), 0);
}

TEST(BrakesParts, RodAngleIsTheSineOfItsOffset) {
  const Judging j = stopping("[brakes.pedal]\nrod_offset = \"1.9 in\"\n");  // asin(1.9/6.5) = 17.0 deg by hand
  EXPECT_NEAR(*j.one("brakes.rod-angle").verdict.predicted / degree, 17.0, 0.05);
  EXPECT_LT(j.one("brakes.rod-angle").margin().value(), 0);
}

// By hand: 2 x 2.074 in2 (13.38 cm2) x 1.8 cm = 48 cm3 against four fifths of 38.
TEST(BrakesParts, WornPadsEmptyASmallReservoir) {
  const char* const disc =
      "[brakes.rear]\nmake = \"disc\"\npiston = \"1.625 in\"\nradius = \"4.8 in\"\nfriction = 0.35\nwear = \"18 "
      "mm\"\nreservoir = \"38 cm3\"\n";
  const Judging j = stopping(disc);
  EXPECT_NEAR(*j.one("brakes.reservoir", "", "rear").verdict.predicted * 1e6, 48.2, 0.2);
  EXPECT_LT(j.one("brakes.reservoir", "", "rear").margin().value(), 0);
  EXPECT_LT(j.one("brakes.residual-disc", "", "rear").margin().value(), 0);  // the drum's 10 psi valve is still in
  EXPECT_FALSE(j.judged("brakes.residual-drum", "", "rear"));
}

TEST(BrakesParts, PlainCupsWantTheirResidualValve) {
  EXPECT_LT(margin("[brakes.rear]\nresidual = \"0 psi\"\n", "brakes.residual-drum", "rear"), 0);
  EXPECT_GT(
      margin("[brakes.rear]\nresidual = \"0 psi\"\ncups = \"held by expanders\"\n", "brakes.residual-drum", "rear"), 0);
}

// By hand: 12 in of head are 0.455 psi; a 0.3 psi valve does not hold them.
TEST(BrakesParts, HeldCupsWantTheFluidKeptUp) {
  const std::string low = "[brakes.rear]\ncups = \"held by expanders\"\nreservoir_above = \"-12 in\"\nresidual = ";
  EXPECT_LT(margin(low + "\"0.3 psi\"\n", "brakes.residual-drum", "rear"), 0);
  EXPECT_GT(margin(low + "\"2 psi\"\n", "brakes.residual-drum", "rear"), 0);
}

TEST(BrakesParts, TwoReducingValvesInALineFail) {
  const std::string added = "[brakes.valve.added]\nknee = \"250 psi\"\nslope = 0.33\n";
  const Judging j = stopping(added);
  EXPECT_FALSE(*j.one("brakes.reducing-valves").verdict.rule);
  EXPECT_TRUE(*stopping("").one("brakes.reducing-valves").verdict.rule);
  const auto& because = j.one("brakes.reducing-valves").verdict.because;
  ASSERT_EQ(because.size(), 3u);
  EXPECT_LT(because[0].value, because[2].value);  // the one alone brakes harder before an axle locks
  // One that does not reduce is no second one, nor is one in the other line.
  EXPECT_TRUE(
      *stopping("[brakes.valve.block]\nknee = \"250 psi\"\nslope = 1.0\n").one("brakes.reducing-valves").verdict.rule);
}

TEST(BrakesParts, RulesOfKind) {
  EXPECT_LT(margin("[brakes]\ndifference_warning = false\n", "brakes.difference-warning"), 0);
  EXPECT_LT(margin("[brakes.fill]\ngrade = \"DOT 5\"\n", "brakes.fluid-mix"), 0);
  EXPECT_GT(margin("[brakes.fill]\ngrade = \"DOT 5\"\ncleaned = true\n", "brakes.fluid-mix"), 0);
  EXPECT_GT(margin("[brakes.fill]\ngrade = \"DOT 5.1\"\n", "brakes.fluid-mix"), 0);  // glycol, whatever its number
  EXPECT_LT(margin("[brakes.front]\nhose_slack = \"0.2 in\"\n", "brakes.hose-slack", "front"), 0);
}

}  // namespace
