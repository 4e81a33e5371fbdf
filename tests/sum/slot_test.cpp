// Defaults, and outputs of every type.
#include "sample.hpp"

namespace sw {
namespace {

using SlotTest = SampleTest;

TEST_F(SlotTest, DefaultsAreShownAsWritten) {
  EXPECT_EQ(default_slot(all[3])->text, "no");
  EXPECT_EQ(default_slot(all[6])->text, "square");
  EXPECT_EQ(sample.shape, Shape::square);
  EXPECT_FALSE(default_slot(all[4]));
}

TEST_F(SlotTest, OutputsOfEveryType) {
  EXPECT_FALSE(show_slot(all[0], ""));
  sample.resistances = {100, 2000};
  sample.size = "10 AWG";
  sample.shape = Shape::round;
  sample.points = {0.0254, 0, 0};
  EXPECT_EQ(show_slot(all[0], "mohm")->numbers[1], 2e6);
  EXPECT_EQ(show_slot(all[7], "")->text, "10 AWG");
  EXPECT_EQ(show_slot(all[6], "")->text, "round");
  EXPECT_NEAR(show_slot(all[1], "")->numbers[0], 1, 1e-12);
  check_unit(all[0].argument, "psi", faults);
  check_unit(all[7].argument, "in", faults);
  EXPECT_EQ(faults.all().size(), 2u);
}

}  // namespace
}  // namespace sw
