#include "quantity/words.hpp"

#include <gtest/gtest.h>

#include "quantity/unit_table.hpp"

namespace sw {
namespace {

TEST(Words, ShownIsSafeToPrint) {
  EXPECT_EQ(shown("17 1/4 in"), "17 1/4 in");
  EXPECT_EQ(shown("a\nb\x01\xff"), "a\\x0Ab\\x01\\xFF");
  EXPECT_EQ(shown("80 °C"), "80 °C");
  EXPECT_EQ(shown(std::string(500, 'x')), std::string(60, 'x') + "...");
}

TEST(Words, Articles) {
  EXPECT_EQ(with_article("length"), "a length");
  EXPECT_EQ(with_article("absolute pressure"), "an absolute pressure");
  EXPECT_EQ(with_article("mass flow"), "a mass flow");
  EXPECT_EQ(with_article("turns per length"), "turns per length");
}

TEST(Words, WhatAUnitMeasures) {
  EXPECT_EQ(measured_by(*find_unit("psi")), "a pressure");
  EXPECT_EQ(measured_by(*find_unit("J")), "a torque or an energy");
  EXPECT_EQ(measured_by(*find_unit("degC")), "a temperature");
  EXPECT_EQ(measured_by(*find_unit("AWG")), "a wire size");
  EXPECT_EQ(measured_by(*find_unit("%")), "a number");
  EXPECT_EQ(measured_by(Unit{.dimension = {.length = 5}}), "");
}

TEST(Words, ForeignCharactersByPlace) {
  EXPECT_FALSE(
      foreign_character("80 °C, 5 kΩ, 3 µm, 4 \xE2\x84\xA6, 2 \xCE\xBC"
                        "m"));
  EXPECT_EQ(foreign_character("°C é")->place, 4u) << "counted in characters, not bytes";
  EXPECT_EQ(foreign_character("\xE2\x88\x92"
                              "5 A")
                ->hint,
            "write the minus sign as -");
  EXPECT_EQ(foreign_character(std::string_view("ab\0c", 4))->place, 3u);
  EXPECT_EQ(foreign_character("\xC2")->place, 1u) << "a sign cut short";
}

TEST(Words, Trimmed) {
  EXPECT_EQ(trimmed(" \t a b \t"), "a b");
  EXPECT_EQ(trimmed("  "), "");
  EXPECT_EQ(trimmed(""), "");
}

}  // namespace
}  // namespace sw
