#include "systems/fasteners/rig.hpp"
#include "systems/judged.hpp"

using namespace sw;
using namespace sw::rig;

namespace {

Judging still(const std::string& change) { return Judging(hand_car(change), "hot-idle"); }

// By hand: 100 lb-ft / (0.20 x 0.5 in) = 12,000 lbf of 85 ksi x 0.1599 in2 = 13,592 lbf; 130 lb-ft make 15,600.
TEST(FastenersRequirements, WheelNutsByTheirTorque) {
  const Judging j = still(wheel("100 lb-ft"));
  auto& tight = j.one("fasteners.preload");
  EXPECT_NEAR(tight.verdict.predicted.value() / lbf, 12000, 1);
  EXPECT_NEAR(tight.verdict.high.value() / lbf, 13592, 20);
  EXPECT_GT(tight.margin().value(), 0);
  EXPECT_LT(still(wheel("130 lb-ft")).one("fasteners.preload").margin().value(), 0);
  EXPECT_LT(still(wheel("50 lb-ft")).one("fasteners.preload").margin().value(), 0);
  // The same torque on paste stretches them: 100/(0.12 x 0.5 in) = 20,000 lbf.
  EXPECT_LT(still(wheel("100 lb-ft", "anti-seize")).one("fasteners.preload").margin().value(), 0);
}

// 3/8-16 of grade 5 in cast aluminium: by the shear areas 2 x 0.0775 x 120/(27 x 0.875 pi 0.375) = 0.668 in, by the
// trade two diameters, 0.75 in, which is more; a spacer takes thread.
TEST(FastenersRequirements, ASpacerTakesThread) {
  const auto bracket_in = [](const std::string& into) {
    return bolted("bracket",
                  "thread = \"3/8-16\"\ngrade = \"5\"\nthreads = \"as they come\"\ntorque = \"25 lb-ft\"\nengaged = "
                  "\"0.80 in\"\ninto = \"" +
                      into + "\"\n");
  };
  const std::string bracket = bracket_in("aluminium");
  const Judging j = still(bracket);
  EXPECT_NEAR(j.one("fasteners.engagement").verdict.low.value() / inch, 0.75, 1e-9);
  // A bolt of grade 8 wants more than the round rule: 150/120 of 0.668 in.
  EXPECT_NEAR(still(bolted("b", "thread = \"3/8-16\"\ngrade = \"8\"\nengaged = \"1 in\"\ninto = \"aluminium\"\n"))
                      .one("fasteners.engagement")
                      .verdict.low.value() /
                  inch,
              0.835, 2e-3);
  EXPECT_GT(j.one("fasteners.engagement").margin().value(), 0);
  const Judging spaced = still(bracket + "shims = \"0.25 in\"\n");
  EXPECT_NEAR(spaced.one("fasteners.engagement").verdict.predicted.value() / inch, 0.55, 1e-9);
  EXPECT_LT(spaced.one("fasteners.engagement").margin().value(), 0);
  EXPECT_GT(still(bracket_in("steel") + "shims = \"0.25 in\"\n").one("fasteners.engagement").margin().value(), 0);
  // With a quarter inch left the thread goes before the bolt: 0.25/0.668 of its 9,300 lbf.
  const Judging short_one = still(bracket + "shims = \"0.55 in\"\n");
  EXPECT_NEAR(short_one.one("fasteners.preload").verdict.high.value() / lbf, 9300 * 0.25 / 0.668, 30);
}

// What it is screwed into, how far, and in what state decide harm: none of them has a stand-in.
TEST(FastenersRequirements, WithoutThreadOrStateNothingIsSaid) {
  const std::string known = "thread = \"3/8-16\"\ngrade = \"5\"\ntorque = \"25 lb-ft\"\n";
  const Judging untold = still(bolted("a", known + "threads = \"oiled\"\n"));
  const std::vector<std::string> thread{"fasteners.joint.a.into", "fasteners.joint.a.engaged"};
  EXPECT_EQ(untold.one("fasteners.engagement").verdict.missing, thread);
  EXPECT_EQ(untold.one("fasteners.preload").verdict.missing, thread);
  const Judging dry = still(bolted("a", known + "into = \"nut\"\n"));
  EXPECT_EQ(dry.one("fasteners.preload").verdict.missing, (std::vector<std::string>{"fasteners.joint.a.threads"}));
  EXPECT_TRUE(dry.of("fasteners.engagement").empty());  // a whole nut of its grade
}

TEST(FastenersRequirements, GradeAndThreadsAlike) {
  EXPECT_EQ(still(bolted("a", "thread = \"5/16-18\"\n")).one("fasteners.grade").verdict.missing,
            (std::vector<std::string>{"fasteners.joint.a.grade"}));
  const std::string known = "thread = \"5/16-18\"\ngrade = \"5\"\n";
  EXPECT_EQ(still(bolted("a", known)).one("fasteners.grade").verdict.rule, true);
  EXPECT_EQ(still(bolted("a", known + "hole = \"M8x1.25\"\n")).one("fasteners.grade").verdict.rule, false);
  EXPECT_EQ(still(bolted("a", known + "hole = \"0.3125-18\"\n")).one("fasteners.grade").verdict.rule, true);
}

// Four bolts of 5,000 lbf against 18,000 and 22,000 lbf.
TEST(FastenersRequirements, AJointOpensUnderMoreThanItsClamp) {
  const auto seat = [](const std::string& load) {
    return still(
        bolted("seat", in_nut + "thread = \"7/16-20\"\ngrade = \"5\"\ncount = 4\ntorque = \"36.458 lb-ft\"\nload = \"" +
                           load + "\"\n"));
  };
  EXPECT_NEAR(seat("18000 lbf").one("fasteners.clamp").verdict.predicted.value() / lbf, 2000, 5);
  EXPECT_LT(seat("22000 lbf").one("fasteners.clamp").margin().value(), 0);
  EXPECT_TRUE(still(wheel("100 lb-ft")).of("fasteners.clamp").empty());
}

TEST(FastenersRequirements, StretchedBoltsAreNotUsedAgain) {
  const std::string head = bolted("head", "thread = \"M10x1.5\"\ngrade = \"10.9\"\nto_yield = true\n");
  EXPECT_EQ(still(head).one("fasteners.reuse").verdict.missing,
            (std::vector<std::string>{"fasteners.joint.head.used_before"}));
  EXPECT_EQ(still(head + "used_before = true\n").one("fasteners.reuse").verdict.rule, false);
  EXPECT_EQ(still(head + "used_before = false\n").one("fasteners.reuse").verdict.rule, true);
  EXPECT_TRUE(still(head).of("fasteners.preload").empty());
  // Used before, and nobody said whether its kind is stretched; a new one need not be asked.
  const std::string plain = bolted("plain", in_nut + "thread = \"M10x1.5\"\ngrade = \"10.9\"\n");
  EXPECT_EQ(still(plain + "used_before = true\n").one("fasteners.reuse").verdict.missing,
            (std::vector<std::string>{"fasteners.joint.plain.to_yield"}));
  EXPECT_EQ(still(plain + "used_before = false\n").one("fasteners.reuse").verdict.rule, true);
  EXPECT_TRUE(still(plain + "used_before = true\nto_yield = false\n").of("fasteners.reuse").empty());
}

}  // namespace
