#include "systems/brakes/rig.hpp"

using namespace sw;
using namespace sw::rig;

namespace {

double predicted(const Judging& j, std::string_view id, std::string_view place = {}) {
  return j.one(id, "panic-stop", place).verdict.predicted.value();
}

// By hand: 112.4 lbf x 4 less the spring's 25 lbf over 0.994 in2: 427 psi; rear 200 + 0.33 x 227 = 275: 2008 lbf of
// 3700.
TEST(BrakesFailed, BoosterFailed) {
  EXPECT_NEAR(predicted(stopping(""), "brakes.booster-failed") / gravity, (3.363 * 427.2 + 2.081 * 275) / 3700, 0.002);
  const Judging heavy = stopping("[brakes.pedal]\nratio = 2.0\n[brakes.master]\nbore = \"1.25 in\"\n");
  EXPECT_LT(heavy.one("brakes.booster-failed", "panic-stop").margin().value(), 0);
  EXPECT_TRUE(stopping("[brakes.booster]\nfitted = false\n").of("brakes.booster-failed").empty());
}

// By hand: 500 N with 18 inHg: 112.4 x 4 + 605 = 1055 lbf, 1061 psi; rear 200 + 0.33 x 861 = 484 psi: 1008 lbf of 3700.
// The foot itself takes some of the vacuum: 35 lbf for each inHg, 11.6 psi behind the valve, 24 lbf at the road.
// The front alone locks first: 0.548 of gravity.
TEST(BrakesFailed, EachCircuitLostInTurn) {
  const Judging j = stopping("");
  const auto& lost = j.one("brakes.circuit-lost", "panic-stop", "front lost");
  const auto& run = j.trace("panic-stop");
  const auto slot = static_cast<std::size_t>(j.car().graph().slot("vacuum.booster"));
  const double missing_hg = 18 - run.at(lost.verdict.row, slot) / in_hg;
  EXPECT_GT(missing_hg, 0);
  EXPECT_LT(missing_hg, 2);
  EXPECT_NEAR(*lost.verdict.predicted / gravity, (1008.0 - 24 * missing_hg) / 3700, 0.003);
  EXPECT_NEAR(predicted(j, "brakes.circuit-lost", "rear lost") / gravity, 0.548, 0.001);
}

TEST(BrakesFailed, OneCircuitLeavesNothing) {
  const Judging j = stopping("[brakes]\nsplit = \"single\"\n");
  EXPECT_EQ(predicted(j, "brakes.circuit-lost"), 0);
  EXPECT_LT(j.one("brakes.circuit-lost", "panic-stop").margin().value(), 0);
  EXPECT_TRUE(j.of("brakes.travel-lost", "panic-stop").empty());
  EXPECT_FALSE(*j.one("brakes.circuits").verdict.rule);
}

TEST(BrakesFailed, APedalThatMeetsTheFloor) {
  const Judging j = stopping("[brakes.pedal]\nratio = 6.5\n");
  EXPECT_LT(j.one("brakes.travel-lost", "panic-stop", "front lost").margin().value(), 0);
  // By hand: 0.06 + 0.8 + rear's uptake at the pressure for 0.249 of 3700 lb; see travel_test for the parts.
  const Judging sound = stopping("");
  const double left = predicted(sound, "brakes.travel-lost", "front lost") / inch;
  EXPECT_NEAR(left, 5.5 - 4 * (0.06 + 0.8 + 0.1), 0.03);
}

// The same with a block that opens once the front is lost: all 1061 psi, 2.081 x 1061 = 2208 lbf, more than its tyres
// hold: the rear alone locks at 0.85 x 0.46 / (1 + 0.85 x 21/110) = 0.336.
TEST(BrakesFailed, AValveThatOpensWhenTheFrontIsLost) {
  const Judging j = stopping("[brakes.valve.rear]\nopens_alone = true\n");
  EXPECT_NEAR(predicted(j, "brakes.circuit-lost", "front lost") / gravity, 0.336, 0.001);
  EXPECT_NEAR(predicted(j, "brakes.circuit-lost", "rear lost") / gravity, 0.548, 0.001);
}

// The lost circuit is looked at laden too: more pressure, more stroke.
TEST(BrakesFailed, LadenTheLostCircuitTakesMoreTravel) {
  const Judging light = stopping(""),
                laden = stopping("[vehicle]\nladen_weight = \"4700 lb\"\nladen_front_share = 0.48\n");
  EXPECT_LT(predicted(laden, "brakes.travel-lost", "front lost, laden"),
            predicted(light, "brakes.travel-lost", "front lost"));
  EXPECT_EQ(predicted(laden, "brakes.travel-lost", "front lost"), predicted(light, "brakes.travel-lost", "front lost"));
  EXPECT_TRUE(laden.judged("brakes.circuit-lost", "panic-stop", "rear lost, laden"));
  EXPECT_LT(*laden.one("brakes.parking", {}, "laden").verdict.predicted,
            *laden.one("brakes.parking").verdict.predicted);
}

// Rear cylinders that never stop the car by themselves: nothing is held to be well.
TEST(BrakesFailed, WhatNeverBrakesAsHardIsNotLeftOut) {
  const Judging j = stopping("[brakes.rear]\npiston = \"0.55 in\"\nfactor = 0.6\n");
  EXPECT_FALSE(j.one("brakes.travel-lost", "panic-stop", "front lost").verdict.predicted);
  EXPECT_FALSE(j.one("brakes.travel-lost", "panic-stop", "front lost").verdict.reason.empty());
}

// By hand: 400 N = 89.9 lbf x 12 x 2.5 x 5/13 = 1037 lbf at the road; of 3700 lb that is a sine of 0.280: 29.2 %.
TEST(BrakesFailed, ParkingBrakeOnAHill) {
  const Judging j = stopping("");
  EXPECT_NEAR(*j.one("brakes.parking").verdict.predicted, 0.292, 0.001);
  const Judging foot = stopping("[brakes.parking]\nby = \"foot\"\n"),
                weak = stopping("[brakes.parking]\nleverage = 7\n");
  EXPECT_GT(*foot.one("brakes.parking").verdict.predicted, *j.one("brakes.parking").verdict.predicted);
  EXPECT_LT(weak.one("brakes.parking").margin().value(), 0);
}

}  // namespace
