#pragma once
// What the tests of quantity share: reading a text that must be right, or one that must be refused.
#include <gtest/gtest.h>

#include <string>
#include <string_view>

#include "quantity/parse.hpp"

namespace sw {

inline double si_of(std::string_view text, const Kind& kind) {
  const auto read = parse_quantity(text, kind);
  if (auto* fault = std::get_if<TextFault>(&read)) {
    ADD_FAILURE() << fault->sentence() << "; " << fault->hint;
    return 0;
  }
  return std::get<Parsed>(read).si;
}

inline TextFault fault_of(std::string_view text, const Kind& kind) {
  const auto read = parse_quantity(text, kind);
  if (auto* fault = std::get_if<TextFault>(&read)) return *fault;
  ADD_FAILURE() << '"' << text << "\" was taken for a " << kind.name << " of " << std::get<Parsed>(read).si;
  return {};
}

inline Unit unit_of(std::string_view text) {
  const auto read = parse_unit(text);
  if (auto* fault = std::get_if<TextFault>(&read)) {
    ADD_FAILURE() << fault->sentence() << "; " << fault->hint;
    return {};
  }
  return std::get<Unit>(read);
}

inline TextFault unit_fault_of(std::string_view text, const Kind& kind) {
  const auto read = parse_unit_for(text, kind);
  if (auto* fault = std::get_if<TextFault>(&read)) return *fault;
  ADD_FAILURE() << '"' << text << "\" was taken for a unit of " << kind.name;
  return {};
}

}  // namespace sw
