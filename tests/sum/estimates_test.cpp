// What the sums of estimates do with contradictory inputs; figures stand in tests/published.
#include "sum/asked.hpp"
#include "sum/asking.hpp"

namespace sw {
namespace {

TEST(EstimateSums, ThreePoints) {
  EXPECT_NEAR(asked("three-point", {"shortest=2 h", "likely=3 h", "longest=10 h"}, "mean", "h"), 4, 1e-12);
  EXPECT_NEAR(asked("three-point", {"shortest=2 h", "likely=3 h", "longest=8 h"}, "variance", "h2"), 1, 1e-12);
  EXPECT_TRUE(has(faults_of(run_sum("three-point", {"shortest=4 h", "likely=3 h", "longest=2 h"})), "is longer"));
  EXPECT_TRUE(has(faults_of(run_sum("three-point", {"shortest=4 h", "likely=3 h", "longest=2 h"})), "is shorter"));
  EXPECT_EQ(code("three-point", {"shortest=4 h", "likely=4 h", "longest=4 h"}), 0);
  EXPECT_EQ(code("three-point", {"shortest=4 h", "likely=5 h"}), 2);
}

TEST(EstimateSums, Chance) {
  const double by_deviation =
      asked("finish-chance", {"mean=44 week", "deviation=3 week", "deadline=47 week"}, "chance");
  EXPECT_NEAR(asked("finish-chance", {"mean=44 week", "variance=9 week2", "deadline=47 week"}, "chance"), by_deviation,
              1e-12);
  EXPECT_EQ(code("finish-chance", {"mean=44 h", "deadline=47 h"}), 2);
  EXPECT_EQ(code("finish-chance", {"mean=44 h", "deadline=47 h", "deviation=3 h", "variance=9 h2"}), 2);
  EXPECT_EQ(code("finish-chance", {"mean=44 h", "deadline=47 h", "deviation=0 h"}), 2);
}

}  // namespace
}  // namespace sw
