#include <gtest/gtest.h>

#include "solve/list.hpp"
#include "systems/judged.hpp"

using namespace sw;
using namespace sw::rig;

namespace {

Solution solved(const Build& b) { return sw::stack.solve(b, *duties_of(b, from_disk())); }

// 1.000 in of space less a piece of 0.900: 0.100 left, where 0.020 to 0.060 are wanted; the middle asks for 0.060.
std::string play(const std::string& more = "") {
  return "[clearance.stack.play]\nspace = { value = \"1.000 in\", from = \"measured\", plus_minus = \"0.002 in\" }\n"
         "wanted = \"0.020 in\"\nmost = \"0.060 in\"\n" +
         more +
         "[clearance.stack.play.piece.hub]\nsize = { value = \"0.900 in\", from = \"measured\", plus_minus = \"0.005 "
         "in\" }\n";
}
const char* const on_hand =
    "[clearance.shim.thin]\nthickness = \"0.014 in\"\n[clearance.shim.thick]\nthickness = \"0.050 in\"\ncount = 1\n";

TEST(SolveStack, ComesNearestToTheMiddleAndTheRequirementsAgree) {
  Build b = hand_car(play() + on_hand);
  EXPECT_LT(Judging(b, "hot-idle").one("clearance.stack-loose").margin().value(), 0);
  const Solution s = solved(b);
  ASSERT_TRUE(s.solved()) << s.trouble;
  ASSERT_EQ(s.settings.size(), 1u);
  EXPECT_EQ(s.settings[0].path, "clearance.stack.play.shims");
  EXPECT_NEAR(s.settings[0].value / inch, 0.064, 1e-9);  // 0.050 + 0.014 is 0.004 off; 0.050 alone 0.010
  EXPECT_NE(s.says.find("0.05 in + 0.014 in"), std::string::npos) << s.says;
  std::get<clearance::Input>(b.inputs).stack.entries[0].second.shims = Length{s.settings[0].value};
  const Judging j(b, "hot-idle");
  EXPECT_NEAR(j.one("clearance.stack").verdict.predicted.value() / inch, 0.036, 1e-9);
  EXPECT_GT(j.one("clearance.stack").margin().value(), 0);
  EXPECT_GT(j.one("clearance.stack-loose").margin().value(), 0);
}

TEST(SolveStack, SaysWhatToMeasureAgain) {
  const Solution s = solved(hand_car(play() + on_hand));
  const auto told = [&](std::string_view what) {
    for (auto& b : s.because)
      if (b.what.find(what) != std::string::npos) return b.value / inch;
    ADD_FAILURE() << what;
    return 0.0;
  };
  EXPECT_NEAR(told("measured again first: hub"), 0.005, 1e-9);
  EXPECT_NEAR(told("every length at once"), 0.007, 1e-9);
  EXPECT_NEAR(told("statistically"), std::hypot(0.002, 0.005), 1e-9);
}

// What lies in it already is taken out first.
TEST(SolveStack, StartsFromTheBareStackAndTradeThicknesses) {
  const Solution s = solved(hand_car(play("shims = \"0.010 in\"\n")));
  EXPECT_NEAR(s.settings.at(0).value / inch, 0.060, 1e-9);  // 0.020 three times, or 0.025 + 0.025 + 0.010
}

TEST(SolveStack, WhatIsOnHandIsUsedOnce) {
  std::string two = play() + on_hand, other = play();
  for (std::size_t at = 0; (at = other.find("stack.play", at)) != std::string::npos; ++at)
    other.replace(at, 10, "stack.over");
  const Solution s = solved(hand_car(two + other));
  ASSERT_TRUE(s.solved()) << s.trouble;
  ASSERT_EQ(s.settings.size(), 2u);
  EXPECT_NEAR(s.settings[1].value / inch, 0.042, 1e-9);  // three thin ones: the thick one is in the other
}

TEST(SolveStack, SaysWhereNoShimHelps) {
  const Solution none = solved(hand_car(play() + "[clearance.shim.only]\nthickness = \"0.200 in\"\n"));
  EXPECT_FALSE(none.solved());
  EXPECT_NE(none.trouble.find("a spacer made to 0.06 in"), std::string::npos) << none.trouble;
  const Solution full = solved(hand_car(play() + "[clearance.stack.play.piece.more]\nsize = \"0.090 in\"\n"));
  EXPECT_NE(full.trouble.find("flatter piece"), std::string::npos) << full.trouble;
}

TEST(SolveStack, AsksForTheBand) {
  EXPECT_EQ(solved(hand_car()).missing, (std::vector<std::string>{"clearance.stack.NAME.most"}));
  const Solution s =
      solved(hand_car("[clearance.stack.a]\nspace = \"1 in\"\n[clearance.stack.a.piece.b]\nsize = \"0.2 in\"\n"));
  EXPECT_EQ(s.missing, (std::vector<std::string>{"clearance.stack.a.most"}));
}

}  // namespace
