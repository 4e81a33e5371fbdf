#include <gtest/gtest.h>

#include "solve/list.hpp"
#include "systems/judged.hpp"

using namespace sw;
using namespace sw::rig;

namespace {

constexpr double psi = 6894.757293168;

Solution solved(const Build& b) { return proportioning.solve(b, *duties_of(b, from_disk())); }

/// The build with what was solved written in, as a shop would.
Build with(Build b, const Solution& s) {
  for (auto& one : s.settings) {
    auto leaf = find_leaf(build_fields(), &b, one.path);
    leaf.field->access.set(leaf.owner, one.value);
  }
  return b;
}

double worst(const Build& b) {
  Judging j(b, "panic-stop");
  double least = 1;
  for (auto* one : j.of("brakes.lock-order", "panic-stop")) least = std::min(least, *one->margin());
  return least;
}

const char* const laden = "[vehicle]\nladen_weight = \"4600 lb\"\nladen_front_share = 0.48\n";

// The requirement itself agrees that the setting holds, and that ten psi more would not keep what is to spare.
TEST(SolveProportioning, IsWhatTheRequirementHolds) {
  const Build b = hand_car("[brakes.valve.rear]\nknee = \"700 psi\"\n");
  EXPECT_LT(worst(b), 0);
  Solution s = solved(b);
  ASSERT_TRUE(s.solved()) << s.trouble;
  ASSERT_EQ(s.settings.size(), 1u);
  EXPECT_EQ(s.settings[0].path, "brakes.valve.rear.knee");
  EXPECT_GE(worst(with(b, s)), 0.02);
  s.settings[0].value += 10.5 * psi;
  EXPECT_LT(worst(with(b, s)), 0.02);
}

// By hand for this car: the uses at the knee are 0.6177 z / (0.54 + 0.1909 z) and 0.3823 z / (0.46 - 0.1909 z); their
// difference is 0.02 at z = 0.330, and 0.330 x 3700 lb / 5.444 lbf a psi is 224 psi, by tens 220.
TEST(SolveProportioning, AgreesWithTheClosedForm) {
  const Solution s = solved(hand_car());
  ASSERT_TRUE(s.solved());
  EXPECT_NEAR(s.settings[0].value / psi, 220, 0.01);
  EXPECT_NE(s.says.find("220 psi"), std::string::npos) << s.says;
}

TEST(SolveProportioning, FindsAKneeNobodyGave) {
  Build b = hand_car();
  std::get<brakes::Input>(b.inputs).valve.entries[0].second.knee.reset();
  EXPECT_TRUE(solved(b).solved());
  std::get<brakes::Input>(b.inputs).valve.entries[0].second.slope.reset();
  EXPECT_EQ(solved(b).missing, std::vector<std::string>{"brakes.valve.rear.slope"});
}

TEST(SolveProportioning, AValveThatFeelsTheLoadGetsTwoKnees) {
  const Build b = hand_car(std::string(laden) + "[brakes.valve.rear]\nladen_knee = \"300 psi\"\n");
  const Solution s = solved(b);
  ASSERT_TRUE(s.solved()) << s.trouble;
  ASSERT_EQ(s.settings.size(), 2u);
  EXPECT_GT(s.settings[1].value, s.settings[0].value);
  EXPECT_GE(worst(with(b, s)), 0.02);
}

// A slope so steep that the rear passes the front above any knee: a lower one is found with it.
TEST(SolveProportioning, FindsTheSlopeTooWhereTheKneeAloneCannot) {
  const Build b = hand_car("[brakes.valve.rear]\nslope = 0.95\n[brakes.rear]\npiston = \"0.9375 in\"\n");
  const Solution s = solved(b);
  ASSERT_TRUE(s.solved()) << s.trouble;
  ASSERT_EQ(s.settings.size(), 2u);
  EXPECT_EQ(s.settings[1].path, "brakes.valve.rear.slope");
  EXPECT_LT(s.settings[1].value, 0.95);
  EXPECT_GE(worst(with(b, s)), 0);
}

TEST(SolveProportioning, SaysWhyThereIsNone) {
  Build none = hand_car();
  std::get<brakes::Input>(none.inputs).valve.entries.clear();
  EXPECT_NE(solved(none).trouble.find("no valve"), std::string::npos);
  const Build two = hand_car("[brakes.valve.more]\nknee = \"250 psi\"\nslope = 0.4\n");
  EXPECT_NE(solved(two).trouble.find("more than one"), std::string::npos);
  const Build hopeless = hand_car("[brakes.rear]\npiston = \"3.0 in\"\n");
  EXPECT_NE(solved(hopeless).trouble.find("smaller rear cylinders"), std::string::npos);
}

}  // namespace
