#include "field/leaf.hpp"

#include <gtest/gtest.h>

#include "document/document.hpp"
#include "field/sample_car.hpp"

namespace sw::sample {
namespace {

/// The node and the faults live on in the caller's hands.
struct Value {
  Node root;
  Diagnostics faults;
  explicit Value(const std::string& text) { root = parse_text("x = " + text, 0, false, faults); }
  const Node& node() { return *root.find("x"); }
  Site site(const FieldInfo& field) { return {field, "x", faults}; }
};

std::optional<double> figure(const std::string& text, const FieldInfo& field) {
  Value v(text);
  auto read = read_figure(v.node(), v.site(field));
  EXPECT_EQ(read.has_value(), !v.faults.any_fault()) << "a fault for each empty figure and none for another";
  return read;
}

TEST(ReadFigure, NumbersStandBareOrAsText) {
  EXPECT_EQ(figure("0.35", radiator_fields[4]), 0.35);
  EXPECT_EQ(figure("1", radiator_fields[4]), 1.0);
  EXPECT_DOUBLE_EQ(figure("\"35 %\"", radiator_fields[4]).value_or(0), 0.35);
  EXPECT_EQ(figure("\"0.35\"", radiator_fields[4]), 0.35);
  EXPECT_EQ(figure("3", radiator_fields[5]), 3.0);
  EXPECT_EQ(figure("3.0", radiator_fields[5]), 3.0);
  EXPECT_EQ(figure("\"3\"", radiator_fields[5]), 3.0);
}

struct Turning {
  std::optional<ShaftSpeed> speed;
  std::optional<Area> size;
};

TEST(ReadFigure, NoUnitIsProposedThatNobodyMeant) {
  constexpr FieldInfo f = quantity<&Turning::speed>("x", "x", kind::shaft_speed).in("rpm").from(300, 3000);
  Value v("\"75 rpm\"");
  EXPECT_FALSE(read_figure(v.node(), v.site(f)));
  EXPECT_EQ(v.faults.all().at(0).hint, "") << "nobody writes radians a second";
}

TEST(ReadFigure, AGaugeMayStandAlone) {
  constexpr FieldInfo f = quantity<&Turning::size>("x", "x", kind::wire_size).in("AWG").from(0, 24);
  EXPECT_TRUE(figure("\"1/0\"", f));
  Value v("\"4/0\"");
  EXPECT_FALSE(read_figure(v.node(), v.site(f)));
  EXPECT_EQ(v.faults.all().at(0).problem, "4/0 is outside 1/0 AWG to 24 AWG");
}

TEST(ReadFigure, WhatIsNone) {
  EXPECT_FALSE(figure("\"3 rows\"", radiator_fields[5]));
  EXPECT_FALSE(figure("99999999999", radiator_fields[5]));
  EXPECT_FALSE(figure("nan", radiator_fields[5]));
  EXPECT_FALSE(figure("nan", radiator_fields[4]));
  EXPECT_FALSE(figure("1", radiator_fields[6]));
  EXPECT_FALSE(figure("0", radiator_fields[7]));
  EXPECT_FALSE(figure("\"" + std::string(100'000, '1') + " in\"", radiator_fields[0]));
}

TEST(ReadCurve, PureNumbersStandBare) {
  struct Plain {
    std::optional<Curve> curve;
  };
  constexpr FieldInfo f = curve<&Plain::curve>("x", "x", kind::number, kind::number);
  Value v("[[0, 1], [\"50 %\", 0.5], [1, 0]]");
  auto read = read_curve(v.node(), v.site(f));
  ASSERT_TRUE(read);
  EXPECT_EQ(*read, (Curve{{0, 0.5, 1}, {1, 0.5, 0}}));
}

TEST(ReadCurve, OneFaultyRowEmptiesIt) {
  Value v("[[\"1 m/s\", \"1 Pa\"], [\"1 m/s\", \"2 Pa\"], [\"2 m/s\", \"3 Pa\"]]");
  EXPECT_FALSE(read_curve(v.node(), v.site(radiator_fields[10])));
  EXPECT_EQ(v.faults.all().size(), 1u);
}

}  // namespace
}  // namespace sw::sample
