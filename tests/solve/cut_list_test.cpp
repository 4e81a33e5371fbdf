#include "solve/list.hpp"
#include "systems/tubes/lines.hpp"

using namespace sw;
using namespace sw::rig;

namespace {

Solution solved(const std::string& change) {
  const Build b = hand_car(change);
  return cut_list.solve(b, *duties_of(b, from_disk()));
}
std::string tube(const std::string& name, const std::string& length, const std::string& material = "steel") {
  return "[tubes.tube." + name + "]\nmaterial = \"" + material +
         "\"\noutside = \"0.25 in\"\nwall = \"0.035 in\"\ncut_length = \"" + length + "\"\n";
}
std::string stock(const std::string& name, const std::string& length, int count) {
  return "[tubes.stock." + name + "]\noutside = \"0.25 in\"\nwall = \"0.035 in\"\nlength = \"" + length +
         "\"\ncount = " + std::to_string(count) + "\n";
}
std::string stick_of(const Solution& s, const std::string& name) {
  for (auto& one : s.settings)
    if (one.path == "tubes.tube." + name + ".stick") return one.words.value_or("");
  return {};
}

// 50, 40, 30 and 20 in: the two pairs that make 70 in go into two sticks of 6 ft; the longest first into the first that
// fits, 50 + 20 and 40 + 30, does as well. A stick of 10 ft alone would hold but 120 of the 140 in.
TEST(SolveCutList, LeastOfTheSticksByHand) {
  const Solution s = solved("[tubes]\nkerf = \"0.1 in\"\n" + stock("short", "6 ft", 3) + stock("long", "10 ft", 2) +
                            tube("a", "50 in") + tube("b", "40 in") + tube("c", "30 in") + tube("d", "20 in"));
  ASSERT_TRUE(s.solved()) << s.trouble;
  EXPECT_EQ(stick_of(s, "a"), stick_of(s, "d"));
  EXPECT_EQ(stick_of(s, "b"), stick_of(s, "c"));
  EXPECT_NE(stick_of(s, "a"), stick_of(s, "b"));
  EXPECT_EQ(stick_of(s, "a").substr(0, 5), "short");
  EXPECT_NE(s.says.find("4 tubes from 2 sticks, 4 in left"), std::string::npos) << s.says;
  EXPECT_NE(s.says.find("no other way opens less"), std::string::npos) << s.says;
}

TEST(SolveCutList, EveryKindFromItsOwnSticks) {
  const Solution s = solved(stock("short", "6 ft", 1) + tube("a", "50 in") + tube("b", "20 in", "aluminium"));
  EXPECT_EQ(stick_of(s, "a"), "short 1");
  EXPECT_EQ(stick_of(s, "b"), "");
  EXPECT_NE(s.says.find("no stick of 0.25 in x 0.035 in aluminium"), std::string::npos) << s.says;
}

TEST(SolveCutList, SaysWhyThereIsTooLittle) {
  EXPECT_NE(solved(stock("short", "6 ft", 1) + tube("a", "80 in")).trouble.find("longer than any stick"),
            std::string::npos);
  EXPECT_NE(solved(stock("short", "6 ft", 1) + tube("a", "40 in") + tube("b", "40 in")).trouble.find("another stick"),
            std::string::npos);
  EXPECT_EQ(solved("").missing.size(), 2u);
}

// The settings read back by the rule that judges them.
TEST(SolveCutList, TheRuleAgrees) {
  Build b = hand_car(stock("short", "6 ft", 2) + tube("a", "50 in") + tube("b", "30 in"));
  for (auto& one : cut_list.solve(b, *duties_of(b, from_disk())).settings)
    for (auto& [name, t] : std::get<tubes::Input>(b.inputs).tube.entries)
      if (one.path == "tubes.tube." + name + ".stick") t.stick = *one.words;
  const Judging j(b, "hot-idle");
  EXPECT_EQ(j.of("tubes.sticks").size(), 2u);
  for (auto* judged : j.of("tubes.sticks")) EXPECT_GE(judged->margin().value(), 0);
}

}  // namespace
