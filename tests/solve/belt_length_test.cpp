#include <gtest/gtest.h>

#include "solve/list.hpp"
#include "systems/belts/placed.hpp"
#include "systems/judged.hpp"

using namespace sw;
using namespace sw::rig;

namespace {

Solution solved(const Build& b) { return belt_length.solve(b, *duties_of(b, from_disk())); }
std::string slide(const std::string& travel) {
  return two_pulleys() +
         "[belts.belt.side.adjuster]\npulley = \"steering\"\nkind = \"slide\"\ndirection = \"36.8699 deg\"\nloosen = "
         "\"" +
         travel + "\"\ntighten = \"" + travel + "\"\n";
}

// Path 38.355 in (drive_test); allowed from 1 % less one inch to one inch less 0.4 %: middle 38.47, by halves 38.5.
TEST(SolveBeltLength, TakesTheLengthNearestTheMiddleAndItHolds) {
  Build b = hand_car(slide("0.5 in"));
  const Solution s = solved(b);
  ASSERT_TRUE(s.solved()) << s.trouble;
  ASSERT_EQ(s.settings.size(), 1u);
  EXPECT_EQ(s.settings[0].path, "belts.belt.side.length");
  EXPECT_NEAR(s.settings[0].value / inch, 38.5, 1e-9);
  std::get<belts::Input>(b.inputs).belt.entries.back().second.length = Length{s.settings[0].value};
  const Judging j(b, "hot-idle");
  for (auto* one : j.of("belts.length")) EXPECT_GE(*one->margin(), 0) << one->verdict.place;
}

TEST(SolveBeltLength, SaysWhereNoLengthWillDo) {
  const Solution s = solved(hand_car(slide("0.05 in")));
  EXPECT_FALSE(s.solved());
  EXPECT_NE(s.trouble.find("too little travel"), std::string::npos) << s.trouble;
}

TEST(SolveBeltLength, AsksForAnAdjuster) {
  EXPECT_EQ(solved(hand_car()).missing, std::vector<std::string>{"belts.belt.front.adjuster"});
}

}  // namespace
