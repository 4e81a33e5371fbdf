#pragma once
// A struct with an argument of every type.
#include <gtest/gtest.h>

#include "sum/slot.hpp"

namespace sw {

enum class Shape { round, square };
inline constexpr std::string_view shapes[] = {"round", "square"};
struct Sample {
  std::vector<double> resistances, points;
  std::optional<Curve> profile;
  std::optional<bool> crossed;
  std::optional<int> teeth;
  std::optional<double> share;
  std::optional<Shape> shape;
  std::string size;
};
inline constexpr Argument arguments[] = {
    values<&Sample::resistances>("resistances", "resistances", kind::resistance),
    values<&Sample::points>("points", "points", kind::length, 3),
    curve<&Sample::profile>("profile", "height and area", kind::length, kind::area),
    yes_no<&Sample::crossed>("crossed", "crossed belt").or_else(0),
    integer<&Sample::teeth>("teeth", "teeth").from(1, 100),
    number<&Sample::share>("share", "share").from(0, 1),
    choice<&Sample::shape>("shape", "shape", shapes).or_else(1),
    text<&Sample::size>("size", "size"),
};

struct SampleTest : testing::Test {
  Sample sample;
  std::vector<Slot> all = slots(arguments, &sample);
  Diagnostics faults;
  std::optional<SumValue> read(std::size_t k, std::string_view text) { return read_slot(all[k], text, faults); }
};

}  // namespace sw
