#include "solve/list.hpp"
#include "systems/tubes/lines.hpp"

using namespace sw;
using namespace sw::rig;

namespace {

Solution solved(const std::string& change) {
  const Build b = hand_car(change);
  return flat_pattern.solve(b, *duties_of(b, from_disk()));
}
std::string bracket(const char* web = "2 in") {
  return std::string(
             "[tubes.bracket.b]\nthickness = \"0.04 in\"\nradius = \"0.16 in\"\n[tubes.bracket.b.flange.foot]\n"
             "length = \"1 in\"\n[tubes.bracket.b.flange.web]\nlength = \"") +
         web + "\"\n[tubes.bracket.b.flange.lip]\nlength = \"1 in\"\n";
}

// The channel of FAA-H-8083-31 (flats of 0.8, 1.6 and 0.8 in) with the Navy text's allowance, 0.277 in a bend.
TEST(SolveFlatPattern, ChannelOfTheHandbook) {
  const Solution s =
      solved(bracket() + "[tubes.bracket.b.hole.h]\nflange = \"web\"\nalong = \"1 in\"\ndiameter = \"0.2 in\"\n");
  ASSERT_TRUE(s.solved()) << s.trouble;
  ASSERT_EQ(s.settings.size(), 1u);
  EXPECT_EQ(s.settings[0].path, "tubes.bracket.b.flat_length");
  EXPECT_NEAR(s.settings[0].value / inch, 3.2 + 2 * (0.0173 * 0.16 + 0.0078 * 0.04) * 90, 0.006);
  bool hole = false;
  for (auto& line : s.because)
    if (line.what.starts_with("b h")) {
      hole = true;
      EXPECT_NEAR(line.value / inch, 0.8 + 0.279 + 0.8, 0.002);
    }
  EXPECT_TRUE(hole);
}

TEST(SolveFlatPattern, RefusesAFlangeItsBendsTakeWhole) {
  EXPECT_NE(solved(bracket("0.3 in")).trouble.find("flange web"), std::string::npos);
  EXPECT_EQ(solved("").missing.size(), 1u);
}

}  // namespace
