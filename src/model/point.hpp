#pragma once
// A point of the car by tape, as every system that needs one asks for it.
#include <optional>

#include "field/field.hpp"

namespace sw {

/// From any origin that all points of its system share, right-handed axes: x to the rear, y to the driver's right, z
/// up.
struct Point {
  std::optional<Length> x, y, z;
  static std::span<const FieldInfo> fields();
};

namespace point_detail {
template <auto Member>
consteval FieldInfo coordinate(std::string_view key, std::string_view label, std::string_view sentence) {
  return quantity<Member>(key, label, kind::length)
      .decides_harm()
      .in("in")
      .from(-300, 300)
      .spread(Source::measured, {.absolute = 0.1})
      .spread(Source::stated, {.absolute = 0.25})
      .spread(Source::data_sheet, {.absolute = 0.1})
      .says(sentence);
}
}  // namespace point_detail

/// The three of a struct that has more to say of its point.
template <auto X>
consteval FieldInfo point_x() {
  return point_detail::coordinate<X>("x", "to the rear", "To the rear, by tape from the origin all points share.");
}
template <auto Y>
consteval FieldInfo point_y() {
  return point_detail::coordinate<Y>("y", "to the right", "To the driver's right.");
}
template <auto Z>
consteval FieldInfo point_z() {
  return point_detail::coordinate<Z>("z", "up", "Up.");
}

}  // namespace sw
