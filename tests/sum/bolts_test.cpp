// What the sum of bolts does with optional, contradictory and far-off inputs; figures stand in tests/published.
#include "sum/asked.hpp"
#include "sum/asking.hpp"

namespace sw {
namespace {

TEST(BoltSum, GivesWhatItCan) {
  for (auto* key : {"proof_load", "breaking_load", "preload", "torque"})
    EXPECT_FALSE(gives("bolt", {"thread=1/4-20"}, key)) << key;
  EXPECT_TRUE(gives("bolt", {"thread=1/4-20", "grade=5"}, "breaking_load"));
  EXPECT_FALSE(gives("bolt", {"thread=1/4-20", "grade=5"}, "torque"));
  EXPECT_TRUE(gives("bolt", {"thread=1/4-20", "preload=1000 lbf"}, "torque"));
  EXPECT_NEAR(asked("bolt", {"thread=1/4-20", "grade=5", "share=75 %"}, "preload", "lbf"),
              0.75 * asked("bolt", {"thread=1/4-20", "grade=5"}, "proof_load", "lbf"), 1e-6);
}

TEST(BoltSum, TorqueByEitherWay) {
  const Words base = {"thread=M10x1.5", "preload=20 kN"};
  EXPECT_NEAR(asked("bolt", with(base, {"nut_factor=0.15"}), "torque", "N m"), 30, 1e-9);
  EXPECT_TRUE(has(run_sum("bolt", base).to_text(), "nut factor 0.2"));
  EXPECT_FALSE(has(run_sum("bolt", with(base, {"nut_factor=0.15"})).to_text(), "nut factor 0.2"));
  EXPECT_LT(asked("bolt", with(base, {"thread_friction=0.1", "head_friction=0.1"}), "torque", "N m"),
            asked("bolt", base, "torque", "N m"));
  EXPECT_EQ(code("bolt", with(base, {"thread_friction=0.1"})), 2);
  EXPECT_EQ(code("bolt", with(base, {"thread_friction=0.1", "head_friction=0.1", "nut_factor=0.2"})), 2);
}

TEST(BoltSum, TellsWhatDoesNotFit) {
  EXPECT_TRUE(has(faults_of(run_sum("bolt", {"thread=M6"})), "expected a thread such as 1/4-20 or M6x1, got \"M6\""));
  EXPECT_TRUE(has(faults_of(run_sum("bolt", {"thread=M6x1", "grade=5"})), "grade of inch bolts"));
  EXPECT_TRUE(has(faults_of(run_sum("bolt", {"thread=1/4-20", "grade=8.8"})), "class of metric bolts"));
  EXPECT_TRUE(has(faults_of(run_sum("bolt", {"thread=1/4-20", "share=0.5"})), "grade: missing"));
  EXPECT_EQ(code("bolt", {"thread=1/4-20", "grade=5", "share=0.5", "preload=1 lbf"}), 2);
  EXPECT_EQ(code("bolt", {"grade=5"}), 2);
  EXPECT_EQ(code("bolt", {"thread=#10-32", "grade=5"}), 3);
  EXPECT_EQ(code("bolt", {"thread=1/4-20", "grade=5", "share=1.1"}), 3);
  EXPECT_TRUE(has(run_sum("bolt", {"thread=1/4-20", "grade=5", "share=1.1"}).to_text(), "above the proof load"));
}

}  // namespace
}  // namespace sw
