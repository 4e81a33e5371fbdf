#include "systems/judged.hpp"

using namespace sw;
using namespace sw::rig;

namespace {

Judging still(const std::string& change) { return Judging(hand_car("[recommissioning" + change), "hot-idle"); }

// By hand, Poiseuille: pi r^4 dp/(8 mu L) = pi (0.075 mm)^4 82.7 kPa/(8 x 1.2 mPa s x 20 mm) = 43 mm3/s; 0.05 in3 take
// 819/43 = 19 s.
TEST(RecommissioningRequirements, AHoseThatClosedLetsTheBrakeDrag) {
  const Judging j = still(".hose.front]\nage = \"28 year\"\nbore = \"0.15 mm\"\nlength = \"20 mm\"\n");
  EXPECT_NEAR(j.one("recommissioning.hose-release").verdict.predicted.value(), 19, 0.3);
  EXPECT_LT(j.one("recommissioning.hose-age").margin().value(), 0);
  EXPECT_GT(still(".hose.front]\nage = \"1 year\"\nbore = \"3 mm\"\nlength = \"400 mm\"\n")
                .one("recommissioning.hose-release")
                .margin()
                .value(),
            0);
}

TEST(RecommissioningRequirements, AHoseOfUnknownAgeIsAskedFor) {
  EXPECT_EQ(still(".hose.front]\nbore = \"3 mm\"\n").one("recommissioning.hose-age").verdict.missing,
            (std::vector<std::string>{"recommissioning.hose.front.age"}));
}

TEST(RecommissioningRequirements, FeedsAndSplicesOfAnOldLoom) {
  const Judging j = still(
      ".feed.tail]\ninsulation = \"45 ohm\"\n[recommissioning.splice.fan]\nresistance = \"12 mohm\"\ncurrent "
      "= \"30 A\"\n");
  EXPECT_LT(j.one("recommissioning.insulation").margin().value(), 0);
  EXPECT_NEAR(j.one("recommissioning.splice-heat").verdict.predicted.value(), 10.8, 1e-9);
}

TEST(RecommissioningRequirements, WhatIsNotDoneFails) {
  const Judging j = still(".before]\noil_primed = false\n");
  EXPECT_EQ(j.one("recommissioning.before-start", {}, "oil primed").verdict.rule, false);
  EXPECT_FALSE(j.one("recommissioning.before-start", {}, "turned by hand").verdict.rule.has_value());
}

}  // namespace
