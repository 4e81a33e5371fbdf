#pragma once
// The usual fields of sums: a figure above nothing, in a unit.
#include "sum/argument.hpp"

namespace sw {

/// Above zero, in `unit`, with a bound that only catches slips of the unit.
template <auto M>
consteval FieldInfo positive(std::string_view key, std::string_view label, const Kind& k, std::string_view unit,
                             double most = 1e9) {
  return quantity<M>(key, label, k).in(unit).above(0, most);
}
/// A pure number above zero.
template <auto M>
consteval FieldInfo ratio(std::string_view key, std::string_view label, double most = 1e6) {
  return number<M>(key, label).above(0, most);
}
/// An output in `unit`.
template <auto M>
consteval FieldInfo result(std::string_view key, std::string_view label, const Kind& k, std::string_view unit) {
  return quantity<M>(key, label, k).in(unit);
}

}  // namespace sw
