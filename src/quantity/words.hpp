#pragma once
// The wording of faults in texts, in one place because it is under test.
#include <optional>
#include <string>
#include <string_view>

#include "quantity/kind.hpp"
#include "quantity/unit.hpp"

namespace sw {

/// `text` fit to stand in a message: bytes that are not printable ASCII as \xNN, cut after 60 characters.
std::string shown(std::string_view text);
/// `a length`, `an area`; kinds named in the plural go without: `turns per length`.
std::string with_article(std::string_view name);
/// What a unit measures, for "which is a pressure"; empty where no kind has that dimension.
std::string measured_by(const Unit& unit);
/// A fault of a value or a unit that should be of `kind`.
TextFault value_fault(std::string_view given, const Kind& kind, std::string remark, std::string hint = {});
TextFault unit_fault(std::string_view given, const Kind& kind, std::string remark, std::string hint = {});

/// Length in bytes and plain spelling of a sign beyond ASCII that is understood where `text` begins with one
/// (the degree, ohm and micro signs); length 0 where it does not.
struct Sign {
  std::size_t length = 0;
  std::string_view plain;
};
Sign sign_at(std::string_view text);
/// The first character that can stand in no value: a control character, or one beyond ASCII that sign_at does not
/// know. With its place, counted in characters from 1, and a hint for those that are often pasted in.
struct Foreign {
  std::size_t place;
  std::string_view hint;
};
std::optional<Foreign> foreign_character(std::string_view text);

std::string_view trimmed(std::string_view text);

}  // namespace sw
