#include <gtest/gtest.h>

#include "solve/list.hpp"
#include "solve/settings.hpp"
#include "systems/judged.hpp"

using namespace sw;
using namespace sw::rig;

namespace {

Solution solved(const Build& b) { return kick_down.solve(b, *duties_of(b, from_disk())); }

/// What a lever of this radius and start would travel, as rows of the curve wanted.
std::string rows(double radius_in, double start_deg) {
  std::string text;
  for (int deg = 0; deg <= 78; deg += 6) {
    const double travel = radius_in * (std::sin((start_deg + deg) * degree) - std::sin(start_deg * degree));
    text += (text.empty() ? "[\"" : ", [\"") + std::to_string(deg) + " deg\", \"" + std::to_string(travel) + " in\"]";
  }
  return text;
}
std::string wanting(const std::string& rows, const std::string& more) {
  return "[transmission.throttle_cable]\nthrottle = \"78 deg\"\ntravel_wanted = [" + rows + "]\n" + more;
}

// A lever is found again from its own travel.
TEST(SolveKickDown, FindsTheLeverACurveWasDrawnBy) {
  for (const auto& [radius, start] : {std::pair(1.10, -20.0), std::pair(0.92, -51.0), std::pair(1.6, 5.0)}) {
    const Build b = hand_car(wanting(rows(radius, start), "radius = \"0.80 in\"\n"));
    EXPECT_LT(Judging(b, "hot-idle").one("transmission.cable-travel", {}, "on the way").margin().value(), 0);
    const Solution s = solved(b);
    ASSERT_TRUE(s.solved()) << s.trouble;
    ASSERT_EQ(s.settings.size(), 2u);
    EXPECT_EQ(s.settings[0].path, "transmission.throttle_cable.radius");
    EXPECT_NEAR(s.settings[0].value / inch, radius, 0.011);
    EXPECT_NEAR(s.settings[1].value / degree, start, 1.01);
    Diagnostics faults;
    const Build with = with_settings(b, setting_texts(b, s.settings, {}, faults));
    EXPECT_FALSE(faults.any_fault());
    const Judging after(with, "hot-idle");
    for (auto* j : after.of("transmission.cable-travel")) EXPECT_GT(j->margin().value(), 0) << j->verdict.place;
  }
}

// Travel that all comes in the first third: no plain lever does that.
TEST(SolveKickDown, SaysWhereNoLeverDoesIt) {
  const Solution s = solved(hand_car(
      wanting("[\"0 deg\", \"0 in\"], [\"26 deg\", \"1.3 in\"], [\"78 deg\", \"1.38 in\"]", "radius = \"1.1 in\"\n")));
  EXPECT_FALSE(s.solved());
  EXPECT_NE(s.trouble.find("no hole in a plain lever"), std::string::npos) << s.trouble;
}

TEST(SolveKickDown, AsksForTheCurve) {
  EXPECT_EQ(
      solved(hand_car("[transmission.throttle_cable]\nradius = \"0.8 in\"\nradius_wanted = \"1.1 in\"\nthrottle = "
                      "\"78 deg\"\n"))
          .missing,
      (std::vector<std::string>{"transmission.throttle_cable.travel_wanted"}));
  // The hole need not be drilled yet.
  EXPECT_TRUE(solved(hand_car(wanting(rows(1.1, -30), ""))).solved());
}

}  // namespace
