#include <gtest/gtest.h>

#include "solve/list.hpp"
#include "solve/settings.hpp"
#include "systems/judged.hpp"

using namespace sw;
using namespace sw::rig;

namespace {

Solution solved(const Build& b) { return sender_match.solve(b, *duties_of(b, from_disk())); }
const std::string gauge =
    "[gauges.fuel.tank]\nhow = \"balance\"\nexpects = [[0, \"73 ohm\"], [0.5, \"42 ohm\"], [1, \"21 ohm\"]]\n";

Build with(Build b, const Solution& s) {
  Diagnostics faults;
  const auto texts = setting_texts(b, s.settings, {}, faults);
  for (auto& d : faults.all()) ADD_FAILURE() << d.problem;
  return with_settings(std::move(b), texts);
}

// SND-04: 240-33 on a gauge of 73-10 cannot be done: 33 ohm beside anything stay far above 10.
TEST(SolveSenderMatch, RefusesWhatNoResistorsDo) {
  const Solution s = solved(
      hand_car("[gauges.fuel.tank]\nhow = \"balance\"\nexpects_family = \"73-10\"\nsender_family = \"240-33\"\n"));
  EXPECT_FALSE(s.solved());
  EXPECT_TRUE(s.settings.empty());
  EXPECT_NE(s.trouble.find("no two resistors do it"), std::string::npos) << s.trouble;
  EXPECT_NE(s.trouble.find("73 ohm at the low end and 10 ohm at the high end (family 73-10)"), std::string::npos)
      << s.trouble;
  EXPECT_NE(s.trouble.find("240 ohm and 33 ohm (family 240-33)"), std::string::npos) << s.trouble;
}

// A sender of 240 to 33 whose gauge wants what 110 ohm beside it make: 75.4, 53.2 (at 103), 25.4 ohm, near its curve
// less a few ohms in the lead; the finding that judges the reading holds with what is found.
TEST(SolveSenderMatch, WhatIsFoundHoldsByTheReading) {
  const Build b = hand_car(
      "[gauges.fuel.tank]\nhow = \"balance\"\nexpects = [[0, \"80 ohm\"], [0.5, \"58 ohm\"], [1, \"30 ohm\"]]\n"
      "sender_family = \"240-33\"\n");
  EXPECT_LT(Judging(b, "hot-idle").one("gauges.fuel-reading").margin().value(), 0);
  const Solution s = solved(b);
  ASSERT_TRUE(s.solved()) << s.trouble;
  ASSERT_EQ(s.settings.size(), 2u);
  EXPECT_EQ(s.settings[0].path, "gauges.fuel.tank.series");
  EXPECT_EQ(s.settings[1].path, "gauges.fuel.tank.parallel");
  EXPECT_GE(Judging(with(b, s), "hot-idle").one("gauges.fuel-reading").margin().value(), 0);
  EXPECT_FALSE(s.because.empty());
}

TEST(SolveSenderMatch, LeavesARightPairAlone) {
  const Solution s = solved(hand_car(gauge + "sender = [[0, \"73 ohm\"], [0.5, \"42 ohm\"], [1, \"21 ohm\"]]\n"));
  EXPECT_TRUE(s.solved());
  EXPECT_TRUE(s.settings.empty());
  EXPECT_NE(s.says.find("as it is"), std::string::npos) << s.says;
}

TEST(SolveSenderMatch, NamesWhatIsMissing) {
  EXPECT_EQ(solved(hand_car(gauge)).missing, std::vector<std::string>{"gauges.fuel.tank.sender"});
}

}  // namespace
