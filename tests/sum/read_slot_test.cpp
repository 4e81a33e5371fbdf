// Lists, rows, curves, yes and no: arguments that stand in no build file.
#include "sample.hpp"

namespace sw {
namespace {

using ReadSlot = SampleTest;

TEST_F(ReadSlot, AUnitAfterTheLastItemServesEveryItemWithoutOne) {
  const auto v = read(0, "240, 33 ohm");
  ASSERT_TRUE(v);
  EXPECT_EQ(sample.resistances, (std::vector<double>{240, 33}));
  EXPECT_EQ(v->unit, "ohm");
  EXPECT_EQ(v->numbers, (std::vector<double>{240, 33}));
  EXPECT_FALSE(read(0, "1 kohm, 33 ohm, 5"));  // the last has none to lend
}

TEST_F(ReadSlot, AnItemWithItsOwnUnitKeepsIt) {
  ASSERT_TRUE(read(0, "500 mohm, 2 ohm"));
  EXPECT_EQ(sample.resistances, (std::vector<double>{0.5, 2}));
}

TEST_F(ReadSlot, APointIsARowOfThree) {
  ASSERT_TRUE(read(1, "0,0,0; 8,0,0; 8,3 1/2,0; 12,3.5,2 in"));
  ASSERT_EQ(sample.points.size(), 12u);
  EXPECT_NEAR(sample.points[3], 8 * 0.0254, 1e-15);
  EXPECT_NEAR(sample.points[7], 3.5 * 0.0254, 1e-15);
  EXPECT_NEAR(sample.points[11], 2 * 0.0254, 1e-15);
  EXPECT_FALSE(read(1, "0,0; 8,0,0 in"));
  EXPECT_NE(say(faults.all()[0], {}).find("row 1: expected 3 items"), std::string::npos);
}

TEST_F(ReadSlot, AListWithoutUnitIsAFault) {
  EXPECT_FALSE(read(0, "240, 33"));
  EXPECT_FALSE(read(0, "240,, 33 ohm"));
  EXPECT_FALSE(read(0, "240, 33 in"));
  EXPECT_TRUE(sample.resistances.empty());
}

TEST_F(ReadSlot, ACurveTakesAUnitFromEachColumn) {
  ASSERT_TRUE(read(2, "0, 400; 4, 500; 8 in, 520 in2")) << say(faults.all()[0], {});
  EXPECT_NEAR(sample.profile->x[1], 4 * 0.0254, 1e-15);
  EXPECT_NEAR(sample.profile->y[2], 520 * 0.0254 * 0.0254, 1e-15);
  EXPECT_FALSE(read(2, "4, 400; 0, 500; 8 in, 520 in2"));
}

TEST_F(ReadSlot, YesNoNumberChoiceText) {
  EXPECT_EQ(read(3, "yes")->text, "yes");
  EXPECT_EQ(sample.crossed, true);
  EXPECT_FALSE(read(3, "true"));
  EXPECT_TRUE(read(4, "17"));
  EXPECT_EQ(sample.teeth, 17);
  EXPECT_FALSE(read(4, "17.5"));
  EXPECT_FALSE(read(4, "0"));
  EXPECT_EQ(read(5, "25 %")->numbers[0], 0.25);
  EXPECT_EQ(read(5, "25 %")->unit, "-");
  EXPECT_FALSE(read(5, "25"));
  EXPECT_TRUE(read(6, "square"));
  EXPECT_FALSE(read(6, "squre"));
  EXPECT_TRUE(read(7, "205/70R14"));
  EXPECT_EQ(sample.size, "205/70R14");
}

}  // namespace
}  // namespace sw
