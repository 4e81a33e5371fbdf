#pragma once
// Loose spellings of the workshop, where only one reading is possible: `RPM`, `amps`, `ft-lbs`, `lph`, `180 F`.
#include <optional>
#include <string>
#include <string_view>

#include "quantity/kind.hpp"

namespace sw {

/// `unit` in the spelling of the unit table: other case where that names exactly one unit of the kind (never where `m`
/// and `M` would change places), plurals and names, `C` and `F` where a temperature is meant. None where nothing in it
/// is loose, or it could be read in two ways. What comes back may still measure something else.
std::optional<std::string> respelled(std::string_view unit, const Kind& kind);

/// The number before `ga`, `gauge` or `AWG` in any case, or the whole text where it is `4/0`: what a wire's size is
/// written as. None where the text is no gauge.
struct GaugeText {
  std::string_view number, unit;
};
std::optional<GaugeText> gauge_in(std::string_view text);

}  // namespace sw
