#pragma once
// Units: a closed table of names, and expressions over it such as `W/(m2 K)`, `lb/(hp h)`, `ohm cmil/ft`.
// SI value = number * factor + offset; an offset only for a single temperature unit used for an absolute temperature.
//
//   unit    = product { "/" product-factor }      read from left to right: `gal/min/rpm`; `a/b c` is (a/b) c
//   product = factor { (" " | "-" | "*") factor } `-` only between names: `lb-ft`
//   factor  = (name | "(" unit ")") [ ["^"] whole number ]   `m2`, `m^2`, `m^-2`; brackets only with "^"
//   A lone `1` stands for "nothing" before a "/": `1/mile`.
#include <span>
#include <string>
#include <string_view>
#include <variant>

#include "quantity/kind.hpp"

namespace sw {

struct Unit {
  Dimension dimension;
  double factor = 1.0;
  double offset = 0.0;  ///< kelvin at the unit's zero; used only where the kind is an absolute temperature
  Reference reference = Reference::none;  ///< what a unit that says so counts from: psia, psig
  bool gauge = false;  ///< AWG: numbers are wire gauges (1/0 is 0, 2/0 is -1), not multiples of anything
};

/// What went wrong with a text, in words for its writer, without place or field (the caller adds those).
struct TextFault {
  std::string given;     ///< the text as written (unprintable bytes as \xNN, cut when very long)
  std::string expected;  ///< what was meant to be there: `a length such as "17 1/4 in"`
  std::string remark;    ///< what is wrong with it: `which is a pressure`
  std::string hint;      ///< what to do, or empty
  /// `expected a length such as "17 1/4 in", got "2.0 psi", which is a pressure`; the hint is left to the caller.
  std::string sentence() const;
};

/// Reads a unit expression. `lb` is a mass, except in mass times length, which nobody means: there it is the force of
/// a torque (`lb-ft`, `lb in`). `rev` is an angle, except alone over a length (`rev/mile`), where it is a count.
std::variant<Unit, TextFault> parse_unit(std::string_view text);

/// The unit `text` used for `kind`; a fault where it measures something else. An empty text is right only for a
/// pure number; a vacuum or gauge kind takes any pressure unit, and `psig`, `psia` only where they say the same.
/// The offset is kept only where the kind is an absolute temperature.
std::variant<Unit, TextFault> parse_unit_for(std::string_view text, const Kind& kind);

/// SI value of `number` written in `unit`, which comes from parse_unit_for, and back (see in_unit in print.hpp).
double to_si(double number, const Unit& unit);

/// Every unit name the table knows, with prefixes, for completion and hints.
std::span<const std::string_view> unit_names();

}  // namespace sw
