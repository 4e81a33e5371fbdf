#include "systems/brakes/rig.hpp"

using namespace sw;
using namespace sw::rig;

namespace {

double predicted(const Judging& j, std::string_view id, std::string_view place = {}) {
  return j.one(id, "", place).verdict.predicted.value();
}

TEST(BrakesStroke, ShareAndHeightByHand) {
  const Judging j = stopping("");
  EXPECT_NEAR(predicted(j, "brakes.master-stroke"), 0.545 / 1.4, 0.002);  // by hand in travel_test
  EXPECT_NEAR(predicted(j, "brakes.pedal-height") / inch, 5.5 - 4 * 0.545, 0.01);
  EXPECT_NEAR(predicted(j, "brakes.chamber-stroke", "front") / inch, 0.383 / 0.994, 0.002);
}

TEST(BrakesStroke, ASmallMasterRunsOut) {
  const Judging j = stopping("[brakes.master]\nbore = \"0.75 in\"\n[brakes.pedal]\nratio = 6.0\n");
  EXPECT_LT(j.one("brakes.master-stroke").margin().value(), 0);
  EXPECT_LT(j.one("brakes.pedal-height").margin().value(), 0);
  EXPECT_LT(j.one("brakes.chamber-stroke", "", "front").margin().value(), 0);
}

TEST(BrakesStroke, MissingFiguresAreNamed) {
  Build b = hand_car();
  std::get<brakes::Input>(b.inputs).pedal.travel.reset();
  Judging j(b, "panic-stop");
  EXPECT_EQ(j.one("brakes.pedal-height").verdict.missing, std::vector<std::string>{"brakes.pedal.travel"});
  EXPECT_TRUE(j.one("brakes.master-stroke").verdict.predicted);
}

// By hand: 4.5 in of head are 0.17 psi; 2 x 6.789 in2 x 0.020 in over 0.994 in2, by 4: 1.09 in more on the first press.
TEST(BrakesStroke, AReservoirBelowDrainsBackUnlessAValveHolds) {
  const Judging low = stopping("[brakes.front]\nreservoir_above = \"-4.5 in\"\n"),
                held = stopping("[brakes.front]\nreservoir_above = \"-4.5 in\"\nresidual = \"2 psi\"\n");
  EXPECT_NEAR(predicted(low, "brakes.drain-back", "front") / inch, 4 * 2 * 6.789 * 0.02 / 0.994, 0.01);
  EXPECT_LT(low.one("brakes.drain-back", "", "front").margin().value(), 0);
  EXPECT_EQ(predicted(held, "brakes.drain-back", "front"), 0);
  EXPECT_GT(held.one("brakes.residual-disc", "", "front").margin().value(), 0);
}

// By hand: give of the front 2 x 6.789 x 0.020 + 0.03 = 0.3016 in3 at 900 psi: 3.35e-4 in3/psi; 7.0 x 7.7e-4 x 40 =
// 0.2156.
TEST(BrakesStroke, ACoveredPortShutsFluidIn) {
  const char* const pressed = "[brakes.booster]\nrod_gap = \"-0.045 in\"\n[brakes.front]\nfluid = \"7.0 in3\"\n";
  const Judging j = stopping(pressed);
  EXPECT_NEAR(predicted(j, "brakes.trapped-pressure", "front") / psi, 0.2156 / 3.351e-4, 2);
  EXPECT_LT(j.one("brakes.rod-gap").margin().value(), 0);
  EXPECT_EQ(j.one("brakes.trapped-pressure", "", "rear").verdict.missing,
            std::vector<std::string>{"brakes.rear.fluid"});
  EXPECT_EQ(predicted(stopping("[brakes.booster]\nrod_gap = \"-0.030 in\"\n"), "brakes.trapped-pressure", "front"), 0);
}

}  // namespace
