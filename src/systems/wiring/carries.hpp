#pragma once
// What a conductor carries: for good, by table and by what else stands in it; for the seconds of a start or a fault.
#include "systems/wiring/wiring.hpp"

namespace sw::wiring {

/// Current that metal which is not meant to conduct may carry: what a meter calls none (common practice).
inline constexpr double stray_a = 1.0;

/// Volts a load's feed may lose in a 12 V car: FAA AC 43.13-1B ch. 11, 0.5 V on a 14 V bus, continuous (from memory).
inline constexpr double feed_drop_v = 0.5;
/// Rating of a fuse over its lasting current: it is loaded to 80 % for good (common practice: 70 to 80 %).
inline constexpr double fuse_loading = 1.25;
/// How long a start is held before it is given up (common practice).
inline constexpr double start_s = 10;

/// What a conductor carries for good: the wire's ampacity and the rating of what else stands in the run, whichever is
/// less; empty where neither is known.
std::optional<double> lasting_limit(const Conductor& c);
/// What it carries for so many seconds without its insulation passing its rating (physics::short_time_current), never
/// less than for good; 0 s: for good. In the engine bay at `bay_k` where that is hotter than the table's air. Of a
/// stray path always `stray_a`; empty where nothing is known, or the ampacity table does not have the wire.
std::optional<double> carries_for(const Conductor& c, double seconds, std::optional<double> bay_k = {});

}  // namespace sw::wiring
