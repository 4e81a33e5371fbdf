// The sums between foot and wheel: what they refuse and how they hang together; published figures in tests/published.
#include "sum/asked.hpp"

namespace sw {
namespace {

TEST(BrakePartSums, BoosterAddsItsDiaphragms) {
  const double one = asked("booster", {"diameter=8 in", "vacuum=18 inHg"}, "force", "lbf");
  EXPECT_NEAR(asked("booster", {"diameter=8 in", "vacuum=18 inHg", "diaphragms=2"}, "force", "lbf"), 2 * one, 1e-9);
  EXPECT_NEAR(asked("booster", {"diameter=8 in", "vacuum=18 inHg", "ratio=4"}, "knee", "lbf"), one / 3, 1e-9);
  EXPECT_FALSE(gives("booster", {"diameter=8 in", "vacuum=18 inHg"}, "knee"));
  EXPECT_EQ(code("booster", {"diameter=8 in", "vacuum=18 inHg", "second_diameter=7 in"}), 2);
  EXPECT_EQ(code("booster", {"diameter=8 in", "vacuum=18 inHg", "ratio=1"}), 2);
}

TEST(BrakePartSums, BoostForceActsOnTheMaster) {
  const double foot = asked("line-pressure", {"pedal_force=50 lbf", "pedal_ratio=4", "bore=1 in"}, "pressure", "psi");
  EXPECT_NEAR(asked("line-pressure", {"pedal_force=50 lbf", "pedal_ratio=4", "bore=1 in", "boost_force=200 lbf"},
                    "pressure", "psi"),
              2 * foot, 1e-9);
}

TEST(BrakePartSums, ShoesThatCannotBeAreRefused) {
  const Words shoe = {"radius=150 mm",          "width=32 mm",           "friction=0.32",
                      "peak_pressure=1000 kPa", "start_angle=0 deg",     "end_angle=126 deg",
                      "peak_angle=90 deg",      "pivot_radius=122.7 mm", "lever=212 mm"};
  EXPECT_NEAR(asked("drum-shoe", shoe, "ratio"),
              asked("drum-shoe", shoe, "torque_leading", "N m") / asked("drum-shoe", shoe, "torque_trailing", "N m"),
              1e-9);
  auto grabs = shoe, turned = shoe;
  grabs[2] = "friction=1.2";
  turned[4] = "start_angle=130 deg";
  EXPECT_EQ(code("drum-shoe", grabs), 3);
  EXPECT_EQ(code("drum-shoe", turned), 2);
}

TEST(BrakePartSums, GradeByName) {
  EXPECT_NEAR(asked("brake-fluid", {"grade=dot-5.1"}, "boiling_dry", "degC"), 260, 1e-9);
  EXPECT_EQ(code("brake-fluid", {"grade=dot-6"}), 2);
}

}  // namespace
}  // namespace sw
