#include "systems/brakes/rig.hpp"

using namespace sw;
using namespace sw::rig;

namespace {

double predicted(const Judging& j, std::string_view id, std::string_view place = {}) {
  return j.one(id, "panic-stop", place).verdict.predicted.value();
}

/// Tyres that let the car reach 0.8 of gravity, so that forces by hand need no lock.
const std::string grip = "[brakes]\ndry_adhesion = 1.0\n";

TEST(BrakesStop, PedalForceByHand) {
  const Judging j = stopping(grip);
  EXPECT_NEAR(predicted(j, "brakes.pedal-force") / lbf, 41.1, 0.1);  // by hand in effort_test
  EXPECT_GT(j.one("brakes.pedal-force", "panic-stop").margin().value(), 0);
}

TEST(BrakesStop, TooLittleVacuumAndTooMuchPedalBothFail) {
  // A store the road's overrun has filled hides a weak idle: it is looked at where the car stands.
  const Judging weak(hand_car(grip + "[vacuum]\nidle = \"9 inHg\"\n"), "hot-idle");
  const Judging light = stopping(grip + "[brakes.pedal]\nratio = 6.0\n");
  EXPECT_NEAR(*weak.one("brakes.pedal-force", "hot-idle").verdict.predicted / lbf, 91.8, 0.3);
  EXPECT_LT(weak.one("brakes.pedal-force", "hot-idle").margin().value(), 0);
  EXPECT_NEAR(predicted(light, "brakes.pedal-force") / lbf, 41.1 * 4 / 6, 0.1);
  EXPECT_LT(light.one("brakes.pedal-force", "panic-stop").margin().value(), 0);
}

// Without a booster the band is up to 100 lbf: 658 lbf / 6 = 109.7 is over, / 8 = 82 is not.
TEST(BrakesStop, UnassistedLimit) {
  const Judging hard = stopping(grip + "[brakes.booster]\nfitted = false\n[brakes.pedal]\nratio = 6.0\n"),
                easy = stopping(grip + "[brakes.booster]\nfitted = false\n[brakes.pedal]\nratio = 8.0\n");
  EXPECT_NEAR(predicted(hard, "brakes.pedal-force") / lbf, 109.7, 0.2);
  EXPECT_LT(hard.one("brakes.pedal-force", "panic-stop").margin().value(), 0);
  EXPECT_GT(easy.one("brakes.pedal-force", "panic-stop").margin().value(), 0);
}

// On tyres that give 0.6 the front locks first; the force there is judged by its share of the limit.
TEST(BrakesStop, JudgedWhereTheFirstAxleLocks) {
  const Judging j = stopping("[brakes]\ndry_adhesion = 0.6\n");
  const auto& v = j.one("brakes.pedal-force", "panic-stop").verdict;
  const double lock = brakes::first_lock(hand_brakes(), 0.6, hand_stop()).rate;
  EXPECT_NEAR(*v.high / lbf, 65 * lock / 0.8, 0.05);
}

TEST(BrakesStop, ACarWithoutItsValveLocksTheRearFirst) {
  const Judging sound = stopping(""), open = stopping("[brakes.valve.rear]\nslope = 1.0\n");
  EXPECT_GT(sound.one("brakes.lock-order", "panic-stop").margin().value(), 0);
  EXPECT_LT(open.one("brakes.lock-order", "panic-stop").margin().value(), 0);
}

TEST(BrakesStop, LadenIsLookedAtWhereItIsKnown) {
  const Judging light = stopping(""),
                both = stopping("[vehicle]\nladen_weight = \"4600 lb\"\nladen_front_share = 0.48\n");
  EXPECT_EQ(light.of("brakes.lock-order", "panic-stop").size(), 1u);
  EXPECT_EQ(both.of("brakes.lock-order", "panic-stop").size(), 2u);
  EXPECT_GT(predicted(both, "brakes.lock-order", "laden"), predicted(both, "brakes.lock-order", "as driven"));
  // A valve that feels the load lets the laden rear do more.
  const Judging felt = stopping(
      "[vehicle]\nladen_weight = \"4600 lb\"\nladen_front_share = 0.48\n[brakes.valve.rear]\nladen_knee = \"500 "
      "psi\"\n");
  EXPECT_LT(predicted(felt, "brakes.lock-order", "laden"), predicted(both, "brakes.lock-order", "laden"));
  EXPECT_LT(predicted(felt, "brakes.stopping-distance", "laden"), predicted(both, "brakes.stopping-distance", "laden"));
}

TEST(BrakesStop, ARearThatDoesNothingFailsTheAdhesionLine) {
  const Judging j = stopping("[brakes.valve.rear]\nknee = \"0 psi\"\nslope = 0.0\n");
  // Front alone by hand, least at k = 0.65: 0.65 x 0.54 / (1 - 0.65 x 0.1909) = 0.4007 against 0.415.
  EXPECT_NEAR(predicted(j, "brakes.adhesion-use"), 0.4007 - 0.415, 0.0005);
  EXPECT_LT(j.one("brakes.adhesion-use", "panic-stop").margin().value(), 0);
}

TEST(BrakesStop, LampsComeOnLateByLoadAndEarlyByTravel) {
  const Judging late = stopping("[brakes.lamp]\nby = \"load in the push rod\"\nforce = \"15 lbf\"\n"),
                early = stopping(""),
                hydraulic = stopping("[brakes.lamp]\nby = \"line pressure\"\npressure = \"60 psi\"\n");
  // By hand: 15 x 4 x 4 / 0.994 = 241 psi; rear 200 + 0.33 x 41 = 214: (3.363 x 241 + 2.081 x 214)/3700 = 0.340.
  EXPECT_NEAR(predicted(late, "brakes.lamp") / gravity, 0.340, 0.002);
  EXPECT_NEAR(predicted(hydraulic, "brakes.lamp") / gravity, 60 * 5.444 / 3700, 0.001);
  EXPECT_EQ(predicted(early, "brakes.lamp"), 0);
  EXPECT_LT(late.one("brakes.lamp", "panic-stop").margin().value(), 0);
}

// By hand: 500 N = 112.4 lbf by 4 and the assist of 24 inHg (0.4912 x 24 x 75 x 0.95 - 25 = 815): 1265 lbf / 0.994 =
// 1272 psi.
TEST(BrakesStop, HosesMustStandAFrightenedFoot) {
  const Judging sound = stopping(""), weak = stopping("[brakes]\nhose_rating = \"1000 psi\"\n");
  EXPECT_NEAR(predicted(sound, "brakes.line-pressure", "hoses") / psi, 1272, 20);
  EXPECT_LT(weak.one("brakes.line-pressure", "panic-stop", "hoses").margin().value(), 0);
  EXPECT_GT(weak.one("brakes.line-pressure", "panic-stop", "tubes").margin().value(), 0);
}

TEST(BrakesStop, DistanceOfALockingFront) {
  const double rate = brakes::first_lock(hand_brakes(), 0.85, hand_stop()).rate;
  EXPECT_NEAR(predicted(stopping(""), "brakes.stopping-distance"), 10 + 100 * 100 / (25.92 * rate * gravity), 0.05);
}

// Without a booster no vacuum is needed; with one its figures are asked for.
TEST(BrakesStop, VacuumIsAskedForOnlyWhereSomethingLivesOnIt) {
  Build assisted = hand_car(), plain = hand_car("[brakes.booster]\nfitted = false\n");
  for (Build* b : {&assisted, &plain}) std::get<vacuum::Input>(b->inputs).store.rear_volume.reset();
  const Judging a(assisted, "panic-stop"), p(plain, "panic-stop");
  for (auto* id : {"brakes.pedal-force", "brakes.stopping-distance"}) {
    EXPECT_EQ(a.one(id, "panic-stop").verdict.missing, std::vector<std::string>{"vacuum.store.rear_volume"}) << id;
    EXPECT_TRUE(p.one(id, "panic-stop").verdict.predicted.has_value()) << id;
  }
}

TEST(BrakesStop, AtItsLockMorePressureDoesNothing) {
  const Judging j = stopping("[brakes.booster]\nfitted = true\n");
  EXPECT_NE(j.one("brakes.stopping-distance", "panic-stop").verdict.fix_hint.find("an axle locks"), std::string::npos);
}

}  // namespace
