#include "systems/judged.hpp"

using namespace sw;
using namespace sw::rig;

namespace {

// One strap and a control cable beside it: the strap lost, the cable takes the starter's current. With a second strap
// nothing goes through the cable that it does not carry already.
TEST(WiringFaultRequirements, AControlCableBesideOneStrap) {
  const std::string cable =
      "[wiring.run.shift_cable]\nfrom = \"block\"\nto = \"body\"\nresistance = \"45 mohm\"\nstray = true\n";
  const Judging one(hand_car(cable), "cold-crank");
  const auto& v = one.one("wiring.one-fault", "cold-crank").verdict;
  EXPECT_EQ(v.rule, false);
  EXPECT_NE(v.reason.find("block_ground open"), std::string::npos) << v.reason;
  // Even with the strap the cable takes its share: 45 mohm beside the strap's and the body's.
  EXPECT_GT(*one.one("wiring.stray-current", "cold-crank", "shift_cable").verdict.predicted, 0.5);
}

TEST(WiringFaultRequirements, ACarWithoutStrayPathsIsNotAccused) {
  const Judging j(hand_car(), "cold-crank");
  ASSERT_FALSE(j.of("wiring.one-fault").empty());
  for (auto* f : j.of("wiring.one-fault")) EXPECT_GE(*f->margin(), 0) << f->verdict.reason;
}

}  // namespace
