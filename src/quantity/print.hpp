#pragma once
// Numbers out, in the unit the field offers or the user asked for. Never locale dependent.
#include <string>
#include <string_view>

#include "quantity/kind.hpp"
#include "quantity/unit.hpp"

namespace sw {

/// SI value in `unit` (as a number); of AWG the gauge number, whole or not.
double in_unit(double si, const Unit& unit, const Kind& kind);
/// Shortest text that reads back to the same double: for files and JSON.
std::string exact_number(double value);
/// `digits` significant digits, trailing zeros kept out, thin thousands separation not used: for people.
std::string short_number(double value, int digits = 4);
/// `12.5 psi`: `si` in `unit` (default: the kind's first unit) to `digits` significant digits. A pure number has no
/// unit text. Wire sizes within 0.5 % of a gauge print as `10 AWG` when the unit is `AWG`, others then in mm2. A unit
/// that does not measure the kind is passed over for the kind's first, here and below: check the user's choice with
/// parse_unit_for before.
std::string print(double si, const Kind& kind, std::string_view unit = {}, int digits = 4);
/// As many digits as the half-width of the doubt supports (two digits of the half-width), at least one, at most six.
/// `half_width` is SI and a step (for a temperature without its zero); zero or less means no doubt is known.
std::string print_with_doubt(double si, double half_width, const Kind& kind, std::string_view unit = {});
/// Text that parse_quantity reads back to within 1e-12 of `si` (of a temperature: of 273 K where that is more).
std::string print_exact(double si, const Kind& kind, std::string_view unit = {});

}  // namespace sw
