#include <gtest/gtest.h>

#include <cstdio>

#include "solve/list.hpp"
#include "systems/judged.hpp"

using namespace sw;
using namespace sw::rig;

namespace {

Solution solved(const Build& b) { return pedal_ratio.solve(b, *duties_of(b, from_disk())); }

Build with_ratio(Build b, double ratio) {
  std::get<brakes::Input>(b.inputs).pedal.ratio = ratio;
  return b;
}

bool holds(const Build& b) {
  Judging j(b, "panic-stop");
  for (std::string_view id : {"brakes.pedal-force", "brakes.pedal-height", "brakes.travel-lost",
                              "brakes.booster-failed", "brakes.circuit-lost"})
    for (auto* one : j.of(id))
      if (!one->margin() || *one->margin() < 0) return false;
  return true;
}

// A pedal in the hole for unassisted brakes is too light; what is found holds by the requirements themselves, as do
// both ends of the span it names, and beyond them one does not.
TEST(SolvePedalRatio, IsWhatTheRequirementsHold) {
  const Build b = hand_car("[brakes.pedal]\nratio = 7.0\n");
  EXPECT_FALSE(holds(b));
  const Solution s = solved(b);
  ASSERT_TRUE(s.solved()) << s.trouble;
  ASSERT_EQ(s.settings.size(), 1u);
  EXPECT_EQ(s.settings[0].path, "brakes.pedal.ratio");
  EXPECT_TRUE(holds(with_ratio(b, s.settings[0].value)));
  double least = 0, most = 0;
  ASSERT_EQ(std::sscanf(s.says.c_str() + s.says.find("from "), "from %lf to %lf", &least, &most), 2) << s.says;
  EXPECT_TRUE(holds(with_ratio(b, least)));
  EXPECT_TRUE(holds(with_ratio(b, most)));
  constexpr double least_made = 3.0;  // the search ends where pedals do
  if (least > least_made) {
    EXPECT_FALSE(holds(with_ratio(b, least - 0.1)));
  }
  EXPECT_FALSE(holds(with_ratio(b, most + 0.1)));
}

TEST(SolvePedalRatio, NeedsNoRatioToStartFrom) {
  Build b = hand_car();
  std::get<brakes::Input>(b.inputs).pedal.ratio.reset();
  EXPECT_TRUE(solved(b).solved());
  std::get<brakes::Input>(b.inputs).pedal.travel.reset();
  EXPECT_EQ(solved(b).missing, std::vector<std::string>{"brakes.pedal.travel"});
}

// Without a booster and with little room no ratio gives both a leg's force and a pad off the floor.
TEST(SolvePedalRatio, SaysWhatEachSideAsksWhereTheyDoNotMeet) {
  const Solution s =
      solved(hand_car("[brakes.booster]\nfitted = false\n[brakes.master]\nbore = \"1.0 in\"\n[brakes.pedal]\n"
                      "travel = \"4.5 in\"\n"));
  EXPECT_FALSE(s.solved());
  EXPECT_NE(s.trouble.find("the force asks for at least"), std::string::npos) << s.trouble;
  EXPECT_NE(s.trouble.find("the travel for at most"), std::string::npos) << s.trouble;
  const Solution never = solved(hand_car("[brakes]\nsplit = \"single\"\n"));
  EXPECT_NE(never.trouble.find("brakes.circuit-lost holds at no ratio"), std::string::npos) << never.trouble;
}

}  // namespace
