// Lists, rows, curves, yes and no: the arguments that stand in no build file, and outputs of every type.
#include "sum/slot.hpp"

#include <gtest/gtest.h>

namespace sw {
namespace {

enum class Shape { round, square };
constexpr std::string_view shapes[] = {"round", "square"};
struct Sample {
  std::vector<double> resistances, points;
  std::optional<Curve> profile;
  std::optional<bool> crossed;
  std::optional<int> teeth;
  std::optional<double> share;
  std::optional<Shape> shape;
  std::string size;
};
constexpr Argument arguments[] = {
    values<&Sample::resistances>("resistances", "resistances", kind::resistance),
    values<&Sample::points>("points", "points", kind::length, 3),
    curve<&Sample::profile>("profile", "height and area", kind::length, kind::area),
    yes_no<&Sample::crossed>("crossed", "crossed belt").or_else(0),
    integer<&Sample::teeth>("teeth", "teeth").from(1, 100),
    number<&Sample::share>("share", "share").from(0, 1),
    choice<&Sample::shape>("shape", "shape", shapes).or_else(1),
    text<&Sample::size>("size", "size"),
};

struct Fixture : testing::Test {
  Sample sample;
  std::vector<Slot> all = slots(arguments, &sample);
  Diagnostics faults;
  std::optional<SumValue> read(std::size_t k, std::string_view text) { return read_slot(all[k], text, faults); }
};

TEST_F(Fixture, AUnitAfterTheLastItemServesEveryItemWithoutOne) {
  const auto v = read(0, "240, 33 ohm");
  ASSERT_TRUE(v);
  EXPECT_EQ(sample.resistances, (std::vector<double>{240, 33}));
  EXPECT_EQ(v->unit, "ohm");
  EXPECT_EQ(v->numbers, (std::vector<double>{240, 33}));
  EXPECT_FALSE(read(0, "1 kohm, 33 ohm, 5"));  // the last has none to lend
}

TEST_F(Fixture, AnItemWithItsOwnUnitKeepsIt) {
  ASSERT_TRUE(read(0, "500 mohm, 2 ohm"));
  EXPECT_EQ(sample.resistances, (std::vector<double>{0.5, 2}));
}

TEST_F(Fixture, APointIsARowOfThree) {
  ASSERT_TRUE(read(1, "0,0,0; 8,0,0; 8,3 1/2,0; 12,3.5,2 in"));
  ASSERT_EQ(sample.points.size(), 12u);
  EXPECT_NEAR(sample.points[3], 8 * 0.0254, 1e-15);
  EXPECT_NEAR(sample.points[7], 3.5 * 0.0254, 1e-15);
  EXPECT_NEAR(sample.points[11], 2 * 0.0254, 1e-15);
  EXPECT_FALSE(read(1, "0,0; 8,0,0 in"));
  EXPECT_NE(say(faults.all()[0], {}).find("row 1: expected 3 items"), std::string::npos);
}

TEST_F(Fixture, AListWithoutUnitIsAFault) {
  EXPECT_FALSE(read(0, "240, 33"));
  EXPECT_FALSE(read(0, "240,, 33 ohm"));
  EXPECT_FALSE(read(0, "240, 33 in"));
  EXPECT_TRUE(sample.resistances.empty());
}

TEST_F(Fixture, ACurveTakesAUnitFromEachColumn) {
  ASSERT_TRUE(read(2, "0, 400; 4, 500; 8 in, 520 in2")) << say(faults.all()[0], {});
  EXPECT_NEAR(sample.profile->x[1], 4 * 0.0254, 1e-15);
  EXPECT_NEAR(sample.profile->y[2], 520 * 0.0254 * 0.0254, 1e-15);
  EXPECT_FALSE(read(2, "4, 400; 0, 500; 8 in, 520 in2"));
}

TEST_F(Fixture, YesNoNumberChoiceText) {
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

TEST_F(Fixture, DefaultsAreShownAsWritten) {
  EXPECT_EQ(default_slot(all[3])->text, "no");
  EXPECT_EQ(default_slot(all[6])->text, "square");
  EXPECT_EQ(sample.shape, Shape::square);
  EXPECT_FALSE(default_slot(all[4]));
}

TEST_F(Fixture, OutputsOfEveryType) {
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
