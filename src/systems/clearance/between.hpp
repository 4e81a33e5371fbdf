#pragma once
// What a gap keeps apart: it says how much is wanted where nobody else does, and what to do first where it is not
// there.
#include <cstdint>
#include <string_view>

#include "model/keep_clear.hpp"
#include "quantity/customary.hpp"

namespace sw::clearance {

enum class Between : std::uint8_t { moving, steering_link, wire_and_hot, standing, brake_line, fuel_line, fan_belt };
inline constexpr std::string_view between_names[] = {
    "moving parts",   "steering link at ride",   "wire and hot part",
    "standing parts", "brake line and hot part", "fuel line and hot part",
    "fan or belt"};

/// What is lost where a gap closes: each has rules and cautions of its own.
enum class Concern : std::uint8_t { parts, wire, brakes, fuel, belts };
constexpr Concern concern_of(Between between) {
  switch (between) {
    case Between::wire_and_hot:
      return Concern::wire;
    case Between::brake_line:
      return Concern::brakes;
    case Between::fuel_line:
      return Concern::fuel;
    case Between::fan_belt:
      return Concern::belts;
    default:
      return Concern::parts;
  }
}

/// In the order of `Between`, and from a sleeved wire (common practice).
inline constexpr double usual_gaps_m[] = {0.5 * inch_m,      0.25 * inch_m,     2.0 * inch_m, 0.125 * inch_m,
                                          bare_to_exhaust_m, bare_to_exhaust_m, 0.5 * inch_m};
static_assert(std::size(usual_gaps_m) == std::size(between_names));
inline constexpr double sleeved_gap_m = 0.5 * inch_m;
inline double usual_gap_m(Between between) { return usual_gaps_m[static_cast<std::size_t>(between)]; }

inline const char* usual_fix(Between between) {
  switch (between) {
    case Between::steering_link:
      return "engine or pan higher, or a link and pan made for each other; clay on the pan, lock to lock at full bump";
    case Between::wire_and_hot:
      return "another way for the wire, a heat sleeve fastened at both ends, a shield; a fuse at its source";
    case Between::brake_line:
    case Between::fuel_line:
      return "another way for the line, clipped there; a shield with air behind it and the distance its maker gives";
    default:
      return "part and route chosen together; a wedge of the gap's size at full roll shows it before anything is "
             "bought";
  }
}

}  // namespace sw::clearance
