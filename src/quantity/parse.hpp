#pragma once
// Text in: `3/8 in`, `17 1/4 in`, `1-1/8 in`, `12.5 psi`, `10 AWG`, `180 degF`, `6 %`, `2/0 AWG`; also `750 RPM`,
// `11 amps`, `14 ga`, `3,700 lbs`, where only one reading is possible (respell.hpp).
#include <optional>
#include <string_view>
#include <variant>
#include <vector>

#include "quantity/unit.hpp"

namespace sw {

struct Parsed {
  double si;              ///< in SI
  double written;         ///< the number as written, in `unit` (for wire gauges: the gauge number, 2/0 being -1)
  std::string_view unit;  ///< the unit text as written, a view into the input; empty for a gauge written `4/0`
};

/// One number at the start of `text`: `12`, `-0.5`, `1e-3`, `3/8`, `17 1/4`, `1-1/8`, `1,500`. Returns the value and
/// how many characters it used; none where there is no number, it is not finite, divides by zero, or its fraction is
/// not below one (`1 5/4`). A fraction is whole number over whole number.
struct NumberText {
  double value;
  std::size_t used;
};
std::optional<NumberText> parse_number(std::string_view text);

/// A value of `kind`. A value with a dimension must carry a unit; a pure number stands bare or in `%`. Below absolute
/// zero or a perfect vacuum there is nothing: an absolute kind refuses it.
std::variant<Parsed, TextFault> parse_quantity(std::string_view text, const Kind& kind);

/// A value whose kind is not known beforehand (`convert`): every kind its unit fits, in the order of all_kinds(); none
/// for a unit that measures nothing we have a kind for. `si` is what the first of them reads; only for temperature
/// (read as a temperature, not a step) do they differ.
struct Guess {
  double si;
  std::string_view unit;
  std::vector<const Kind*> kinds;
};
std::variant<Guess, TextFault> parse_any(std::string_view text);

}  // namespace sw
