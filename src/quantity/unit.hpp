#pragma once
// Units: a closed table of names, and expressions over it such as `W/(m2 K)`, `lb/(hp h)`, `ohm cmil/ft`.
// SI value = number * factor + offset; an offset only for a single temperature unit used for an absolute temperature.
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
};

/// What went wrong with a text, in words for its writer, without place or field (the caller adds those).
struct TextFault {
  std::string given;     ///< the text, quoted as written
  std::string expected;  ///< what was meant to be there: `a length such as "17 1/4 in"`
  std::string hint;      ///< what to do, or empty
  std::string sentence() const;  ///< `expected a length such as "17 1/4 in", got "2.0 psi", which is a pressure`
};

/// Reads a unit expression. `lb` is a mass, and a force beside a length in a torque (`lb-ft`, `lb in`) or over an
/// area (`psi` has its own name).
std::variant<Unit, TextFault> parse_unit(std::string_view text);

/// The unit `text` used for `kind`; a fault where it measures something else. An empty text is right only for a
/// pure number; a vacuum or gauge kind takes any pressure unit, and `psig`, `psia` only where they say the same.
std::variant<Unit, TextFault> parse_unit_for(std::string_view text, const Kind& kind);

/// Every unit name the table knows, for completion and hints.
std::span<const std::string_view> unit_names();

}  // namespace sw
