#include "proof/levers.hpp"

#include "systems/judged.hpp"

using namespace sw;
using namespace sw::rig;

namespace {

/// Every lever of every failing finding of one duty, applied by itself, must make that finding hold.
std::size_t check_levers(const std::string& change, const std::string& duty) {
  const Build b = hand_car(change);
  Judging j(b, duty);
  std::vector<bool> wanted;
  for (auto& c : j.set().courses) wanted.push_back(c.key == duty);
  const Study s = study(b, j.set(), j.all(), {wanted, 2, {}});
  std::size_t offered = 0;
  for (std::size_t i = 0; i < j.all().size(); ++i) {
    for (auto& l : levers(b, j.set(), j.all(), i, 0.0, s)) {
      ++offered;
      EXPECT_LT(*j.all()[i].margin(), 0) << "a lever for what holds";
      EXPECT_FALSE(words(l).empty());
      EXPECT_LE(l.effort, 0.6);
      auto* f = find_field(build_fields(), l.path);
      EXPECT_TRUE(f && f->lever) << l.path << " is nothing the shop can choose";
      Build changed = b;
      EXPECT_TRUE(shift(changed, l.path, l.needed - l.now));
      const Car car(changed);
      bool found = false;
      for (auto& other : judge(car, j.set(), run_duties(car, j.set(), wanted), wanted)) {
        if (!other.same_as(j.all()[i])) continue;
        found = true;
        EXPECT_GE(other.margin().value_or(-1), 0) << other.requirement->id << " with " << words(l);
      }
      EXPECT_TRUE(found);
    }
  }
  return offered;
}

TEST(Levers, AppliedTheyMakeTheFindingHold) {
  EXPECT_GT(check_levers(
                "[charging.battery]\ncold_crank_current = \"330 A\"\n[wiring.run.starter_cable]\ngauge = \"6 AWG\"\n",
                "cold-crank"),
            0u);
}

TEST(Levers, NoneForWhatHolds) {
  const Build b = roomy_car();
  Judging j(b, "cold-crank");
  std::vector<bool> wanted;
  for (auto& c : j.set().courses) wanted.push_back(c.key == "cold-crank");
  const Study s = study(b, j.set(), j.all(), {wanted, 1, {}});
  for (std::size_t i = 0; i < j.all().size(); ++i) EXPECT_TRUE(levers(b, j.set(), j.all(), i, 0.0, s).empty());
}

TEST(Levers, Words) {
  EXPECT_EQ(words({.path = "cooling.fan.left.flow", .now = 800 * 4.719474432e-4, .needed = 960 * 4.719474432e-4}),
            "cooling.fan.left.flow from 800 cfm to 960 cfm");
  EXPECT_EQ(words({.path = "charging.alternator.output_curve", .now = 1, .needed = 1.25, .curve = true}),
            "charging.alternator.output_curve by 25 % throughout");
}

}  // namespace
