#include "field/given.hpp"

#include <gtest/gtest.h>

#include "document/document.hpp"
#include "field/sample_car.hpp"

namespace sw::sample {
namespace {

struct Taken {
  Node root;
  Diagnostics faults;
  std::optional<Given> given;
};

Taken taken(const std::string& value, const FieldInfo& field, Source usual = Source::stated,
            const std::string& part = {}) {
  Taken t;
  t.root = parse_text("x = " + value, 0, false, t.faults);
  t.root.entries.at(0).value.part = part;
  t.given = take_apart(t.root.entries[0].value, {field, "x", t.faults}, usual);
  return t;
}

TEST(TakeApart, BareValue) {
  auto t = taken("\"26 in\"", radiator_fields[0]);
  ASSERT_TRUE(t.given);
  EXPECT_EQ(t.given->value->text, "26 in");
  EXPECT_EQ(t.given->source, Source::stated);
  EXPECT_FALSE(t.given->plus_minus);
}

TEST(TakeApart, WhatIsSaidBeatsThePartsDataSheetBeatsTheUsual) {
  EXPECT_EQ(taken("\"26 in\"", radiator_fields[0], Source::chosen).given->source, Source::chosen);
  EXPECT_EQ(taken("\"26 in\"", radiator_fields[0], Source::chosen, "wide").given->source, Source::data_sheet);
  auto said = taken("{ value = \"26 in\", from = \"measured\" }", radiator_fields[0], Source::chosen, "wide");
  EXPECT_EQ(said.given->source, Source::measured);
  EXPECT_EQ(said.given->part, "wide");
}

TEST(TakeApart, AFaultyTableStillGivesItsValueToLookAt) {
  auto t = taken("{ value = \"26 in\", form = \"measured\" }", radiator_fields[0]);
  ASSERT_TRUE(t.given);
  EXPECT_FALSE(t.given->sound);
  EXPECT_EQ(t.faults.all().at(0).hint, "did you mean \"from\"?");
  EXPECT_FALSE(taken("{ from = \"measured\" }", radiator_fields[0]).given);
}

TEST(TakeApart, HarmHasNoTypicalValueWhoeverSaysSo) {
  auto usual = taken("\"13 psi\"", radiator_fields[3], Source::typical);
  EXPECT_FALSE(usual.given->sound);
  EXPECT_TRUE(taken("\"13 psi\"", radiator_fields[3], Source::chosen).given->sound);
}

TEST(ReadPlusMinus, SharesAndAmounts) {
  auto width = [](const std::string& text, const FieldInfo& field, double si) {
    Diagnostics faults;
    Node root = parse_text("x = " + text, 0, false, faults);
    return read_plus_minus(*root.find("x"), {field, "x", faults}, si);
  };
  EXPECT_DOUBLE_EQ(*width("\"3 %\"", radiator_fields[0], -2.0), 0.06);
  EXPECT_DOUBLE_EQ(*width("\"1/16 in\"", radiator_fields[0], 2.0), 0.0254 / 16);
  EXPECT_NEAR(*width("\"9 degF\"", radiator_fields[2], 350), 5, 1e-12);
  EXPECT_NEAR(*width("\"1 psi\"", radiator_fields[3], 9e4), 6894.757, 1e-3);  // NIST SP 811 (2008) appendix B.8
  EXPECT_DOUBLE_EQ(*width("0.02", radiator_fields[4], 0.5), 0.02);
  EXPECT_DOUBLE_EQ(*width("\"2 %\"", radiator_fields[4], 0.5), 0.01);
  EXPECT_DOUBLE_EQ(*width("\"5 %\"", radiator_fields[10], 0), 0.05);
  EXPECT_FALSE(width("\"5\"", radiator_fields[10], 0));
  EXPECT_FALSE(width("inf", radiator_fields[4], 0.5));
}

}  // namespace
}  // namespace sw::sample
