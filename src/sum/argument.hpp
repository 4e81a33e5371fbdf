#pragma once
// One input or output of a quick sum: a field, or a list of numbers, which field tables do not know. Declared once;
// reading, faults, text, JSON and web form all walk it.
#include <span>
#include <vector>

#include "field/field.hpp"

namespace sw {

struct Argument {
  FieldInfo field;     ///< key, label, kind, unit, range, default, choices, sentence
  bool needed = true;  ///< inputs: must be given unless a rule of the sum says otherwise or it has a default
  int columns = 0;     ///< 0: one value; 1: a list; n: rows of n (a point is a row of 3)
  std::vector<double>* (*list)(void* owner) = nullptr;  ///< SI; row r, column c stands at [r * columns + c]

  constexpr Argument(const FieldInfo& f) : field(f), needed(!f.fallback) {}  // NOLINT: a field is an argument
  /// May be left out; the law sees an empty member.
  constexpr Argument may() const {
    auto a = *this;
    a.needed = false;
    return a;
  }
};

/// May be left out: `may(number<&In::factor>("factor", "friction factor"))`.
constexpr Argument may(const Argument& a) { return a.may(); }

/// A list `"240, 33 ohm"` into a std::vector<double>; with `columns`, rows `"0,0,0; 8,0,0 in"`.
template <auto M>
consteval Argument values(std::string_view key, std::string_view label, const Kind& k, int columns = 1) {
  Argument a{FieldInfo{.key = key, .label = label, .type = FieldType::quantity, .kind = &k}};
  a.columns = columns;
  a.list = [](void* owner) -> std::vector<double>* { return &field_detail::at<M>(owner); };
  return a;
}

/// Fields of a shared struct that stand among the sum's own (`fluid`, `temperature`, …): a group without a key.
/// All of them may be left out; the sum's check sees to what is needed.
template <auto M>
consteval Argument fields_of() {
  return Argument{group<M>("", "")}.may();
}

}  // namespace sw
