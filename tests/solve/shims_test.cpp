#include <gtest/gtest.h>

#include "solve/list.hpp"
#include "systems/belts/placed.hpp"
#include "systems/judged.hpp"

using namespace sw;
using namespace sw::rig;

namespace {

Solution solved(const Build& b) { return shims.solve(b, *duties_of(b, from_disk())); }
const char* const behind = "depth = \"-0.11 in\"\nshim_room = \"0.25 in\"\n";
std::string with(const std::string& more) {
  std::string text = two_pulleys();
  text.resize(text.find("depth"));
  return text + more + "[belts.shim.thin]\nthickness = \"0.030 in\"\n[belts.shim.thick]\nthickness = \"0.060 in\"\n";
}

// 0.11 in behind over 10 in, where 0.0576 in are allowed: 0.0524 to 0.1676 in of shims; one of 0.060 does it.
TEST(SolveShims, OneShimByHandAndTheRequirementAgrees) {
  Build b = hand_car(with(behind));
  const Solution s = solved(b);
  ASSERT_TRUE(s.solved()) << s.trouble;
  ASSERT_EQ(s.settings.size(), 1u);
  EXPECT_EQ(s.settings[0].path, "belts.belt.side.pulley.steering.shim");
  EXPECT_NEAR(s.settings[0].value / inch, 0.060, 1e-9);
  auto& p = std::get<belts::Input>(b.inputs).belt.entries.back().second.pulley.entries[0].second;
  EXPECT_LT(Judging(b, "hot-idle").one("belts.line").margin().value(), 0);
  p.shim = Length{s.settings[0].value};
  EXPECT_GE(Judging(b, "hot-idle").one("belts.line").margin().value(), 0);
}

// With shims already there the answer is the whole stack, not what to add.
TEST(SolveShims, StartsFromTheBareBracket) {
  EXPECT_NEAR(solved(hand_car(with(std::string(behind) + "shim = \"0.1 in\"\n"))).settings.at(0).value / inch, 0.060,
              1e-9);
}

// A 3/8 in bolt with 0.4 in of thread in iron may lose 0.025 in: no shim on hand is that thin.
TEST(SolveShims, KeepsTheBoltsThread) {
  const Solution s = solved(hand_car(with(std::string(behind) + "bolt = \"0.375 in\"\nengagement = \"0.4 in\"\n")));
  EXPECT_FALSE(s.solved());
  EXPECT_NE(s.trouble.find("thread"), std::string::npos);
}

TEST(SolveShims, AsksForWhatItNeeds) { EXPECT_EQ(solved(hand_car()).missing.size(), 3u); }

}  // namespace
