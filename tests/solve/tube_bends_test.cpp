#include <cmath>

#include "solve/list.hpp"
#include "systems/tubes/lines.hpp"

using namespace sw;
using namespace sw::rig;

namespace {

Solution solved(const std::string& change) {
  const Build b = hand_car(change);
  return tube_bends.solve(b, *duties_of(b, from_disk()));
}
double set_to(const Solution& s, const std::string& path) {
  for (auto& one : s.settings)
    if (one.path == path) return one.value;
  ADD_FAILURE() << path << " is not set";
  return NAN;
}

// By hand: 10 - 1.111 in to the first bend, drawn to 100 deg for 90; the second, turned by a quarter, a straight of
// 3.778 in after the end of that arc of 1.745 in.
TEST(SolveTubeBends, CardByHand) {
  const Solution s = solved(bent_line());
  ASSERT_TRUE(s.solved()) << s.trouble;
  EXPECT_NEAR(set_to(s, "tubes.tube.a.point.q.mark") / inch, 8.889, 0.001);
  EXPECT_NEAR(set_to(s, "tubes.tube.a.point.q.setting") * 57.29578, 100, 1e-5);
  EXPECT_NEAR(set_to(s, "tubes.tube.a.point.r.mark") / inch, 14.412, 0.001);
  EXPECT_NEAR(set_to(s, "tubes.tube.a.point.r.turn") * 57.29578, 90, 1e-5);
  EXPECT_NEAR(set_to(s, "tubes.tube.a.cut_length") / inch, 23.046, 0.001);
  EXPECT_EQ(s.settings.size(), 7u);
}

// 3 - 2.222 = 0.778 in where the die grips 1: 0.222 farther apart, or R with 3 - 2 R/0.9 = 1, which is 0.9 in.
TEST(SolveTubeBends, SaysWhatTheDieCannotDoAndWhatWould) {
  const Solution s = solved(bent_line("material = \"aluminium\"\n", 3));
  EXPECT_FALSE(s.solved());
  EXPECT_NE(s.trouble.find("q and r"), std::string::npos) << s.trouble;
  EXPECT_NE(s.trouble.find("0.2222 in farther apart"), std::string::npos) << s.trouble;
  EXPECT_NE(s.trouble.find("a die of 0.9 in or less"), std::string::npos) << s.trouble;
}

TEST(SolveTubeBends, OneThatCannotBeBentKeepsNoOtherBack) {
  const Solution s = solved(bent_line("", 3) +
                            "[tubes.tube.b]\nmaterial = \"steel\"\noutside = \"0.25 in\"\nwall = \"0.035 in\"\nbend_radius = \"1 in\"\n"
                            "carries = \"brake fluid\"\n" +
                            point("b", "p", 0, 0, 20) + point("b", "q", 8, 0, 20) + point("b", "r", 8, 9, 20));
  EXPECT_TRUE(s.solved());
  EXPECT_EQ(s.settings.size(), 4u);
  EXPECT_NE(s.says.find("Not done: a:"), std::string::npos) << s.says;
  EXPECT_EQ(s.caution, Caution::braking_loss);
}

TEST(SolveTubeBends, AsksForWhatItNeeds) {
  EXPECT_EQ(solved("").missing.size(), 1u);
  EXPECT_EQ(solved("[tubes.tube.a]\nmaterial = \"steel\"\noutside = \"0.25 in\"\nbend_radius = \"1 in\"\n" + point("a", "p", 0, 0, 0) +
                   point("a", "q", 5, 0, 0) + point("a", "r", 5, 5, 0))
                .missing,
            (std::vector<std::string>{"tubes.tube.a.wall"}));
}

}  // namespace
