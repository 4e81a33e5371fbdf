#pragma once
// What a gap keeps apart: it says how much is wanted where nobody else does, and what to do first where it is not
// there.
#include <cstdint>
#include <string_view>

#include "quantity/customary.hpp"

namespace sw::clearance {

enum class Between : std::uint8_t { moving, steering_link, wire_and_hot, standing };
inline constexpr std::string_view between_names[] = {"moving parts", "steering link at ride", "wire and hot part",
                                                     "standing parts"};

/// In the order of `Between`, and from a sleeved wire (common practice).
inline constexpr double usual_gaps_m[] = {0.5 * inch_m, 0.25 * inch_m, 2.0 * inch_m, 0.125 * inch_m};
static_assert(std::size(usual_gaps_m) == std::size(between_names));
inline constexpr double sleeved_gap_m = 0.5 * inch_m;
inline double usual_gap_m(Between between) { return usual_gaps_m[static_cast<std::size_t>(between)]; }

inline const char* usual_fix(Between between) {
  switch (between) {
    case Between::steering_link:
      return "engine or pan higher, or a link and pan made for each other; clay on the pan, lock to lock at full bump";
    case Between::wire_and_hot:
      return "another way for the wire, a heat sleeve fastened at both ends, a shield; a fuse at its source";
    default:
      return "part and route chosen together; a wedge of the gap's size at full roll shows it before anything is "
             "bought";
  }
}

}  // namespace sw::clearance
