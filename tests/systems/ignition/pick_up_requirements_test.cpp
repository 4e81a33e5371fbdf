#include "systems/ignition/rig.hpp"

using namespace sw;
using namespace sw::rig;

namespace {

Judging judged(const std::string& pick_up) {
  return Judging(hand_car(module_ignition({.rest = "[ignition.pick_up]\n" + pick_up})), "hot-idle");
}
const std::string input = "threshold = \"2.5 V\"\ninput_resistance = \"1 kohm\"\nbeside = \"10 in\"\n";

// The whole chain by hand from the capacitance told: C x 18 kV / 1.2 us x 1 kohm.
TEST(PickUpRequirements, NoiseByHand) {
  const Judging j = judged(input + "apart = \"0.12 in\"\nleads = \"solid core\"\n");
  const auto& v = j.one("ignition.noise").verdict;
  double picofarad = 0;
  for (auto& b : v.because)
    if (b.what.starts_with("coupling")) picofarad = b.value;
  EXPECT_GT(picofarad, 3);
  EXPECT_LT(picofarad, 12);
  EXPECT_NEAR(*v.predicted, picofarad * 1e-12 * 18e3 / 1.2e-6 * 1e3, 0.02 * *v.predicted);
  EXPECT_LT(j.one("ignition.noise").margin().value(), -10);
}

TEST(PickUpRequirements, EachCureHelps) {
  auto volts = [](const std::string& cure) { return *judged(input + cure).one("ignition.noise").verdict.predicted; };
  const double bare = volts("apart = \"0.12 in\"\nleads = \"solid core\"\n");
  EXPECT_NEAR(volts("apart = \"0.12 in\"\nleads = \"suppression\"\n"), 0.2 * bare, 1e-9 * bare);
  EXPECT_NEAR(volts("apart = \"0.12 in\"\nleads = \"solid core\"\nscreened = true\n"), 0.05 * bare, 0.01 * bare);
  EXPECT_LT(volts("apart = \"8 in\"\nleads = \"solid core\"\n"), 0.02 * bare);
  EXPECT_GT(judged(input + "apart = \"8 in\"\nleads = \"suppression\"\n").one("ignition.noise").margin().value(), 0);
}

TEST(PickUpRequirements, WhatIsMissingIsNamed) {
  EXPECT_EQ(judged("threshold = \"2.5 V\"\n").one("ignition.noise").verdict.missing.size(), 4u);
  EXPECT_TRUE(Judging(hand_car(module_ignition()), "hot-idle").of("ignition.noise").empty());
  const Judging close = judged(input + "apart = \"0.041 in\"\nleads = \"solid core\"\nheight = \"0.11 in\"\n");
  EXPECT_FALSE(close.one("ignition.noise").verdict.predicted);  // nearer than the conductors are thick
  EXPECT_FALSE(close.one("ignition.noise").verdict.reason.empty());
}

TEST(PickUpRequirements, KickOfTheCoil) {
  const Judging j = judged("from = \"coil negative\"\nstands = \"60 V\"\n");
  EXPECT_NEAR(*j.one("ignition.kick").verdict.predicted, 350, 1e-9);
  EXPECT_LT(j.one("ignition.kick").margin().value(), 0);
  EXPECT_TRUE(judged("from = \"magnetic pick-up\"\n").of("ignition.kick").empty());
}

TEST(PickUpRequirements, GroundOfTheController) {
  EXPECT_EQ(judged("ground = \"body\"\n").one("ignition.ground").verdict.rule, false);
  EXPECT_EQ(judged("ground = \"block\"\n").one("ignition.ground").verdict.rule, true);
}

}  // namespace
