#pragma once
// Where a figure came from and how far it can be trusted.
#include <array>
#include <map>
#include <optional>
#include <string>
#include <string_view>

#include "field/tree.hpp"

namespace sw {

enum class Source : std::uint8_t { stated, measured, data_sheet, typical, chosen, solved, road_test };
inline constexpr std::array<std::string_view, 7> source_names = {"stated", "measured", "data sheet", "typical",
                                                                 "chosen", "solved",   "road test"};
std::optional<Source> find_source(std::string_view name);
constexpr std::string_view name_of(Source s) { return source_names[static_cast<std::size_t>(s)]; }

/// Half-width of a 95 % band: a share of the value, or an absolute amount in the field's own unit (a step for a
/// temperature), whichever is set; both add.
struct Spread {
  double share = 0, absolute = 0;
};
using Spreads = std::array<Spread, 7>;  // indexed by Source

/// What is usual where a field says nothing of its own (common practice: tape and meter readings to 2 %, data sheets
/// to 5 %, typical figures to 20 %, a setting exactly as chosen).
inline constexpr Spreads usual_spreads = {
    {{.share = 0.05}, {.share = 0.02}, {.share = 0.05}, {.share = 0.20}, {}, {}, {.share = 0.03}}};

/// Evidence of one leaf.
struct Evidence {
  Source source = Source::stated;
  double half_width = 0;     ///< SI; of a curve a share of its values
  bool given_width = false;  ///< the user's own plus-minus, not the field table's
  bool defaulted = false;    ///< nobody gave it: the field table's stand-in
  std::string part;          ///< shelf part it came from, or empty
  Place place;
};

/// As it stands in a because-list: `data sheet of high-idle-140`, `typical, nobody gave it`.
std::string evidence_words(const Evidence& e);

/// Path of a leaf (`cooling.radiator.core_width`) to its evidence. Leaves nobody gave and without default are absent.
using EvidenceMap = std::map<std::string, Evidence, std::less<>>;

}  // namespace sw
