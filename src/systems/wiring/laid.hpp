#pragma once
// How a wire is laid, its ampacity by it, and how that is told: the same figures with the same evidence wherever a wire
// is judged.
#include <algorithm>

#include "physics/wire.hpp"
#include "systems/wiring/wiring.hpp"

namespace sw::wiring {

/// Resistance of a copper conductor in that zone, as warm as it is there.
double ohm_per_m(Zone zone, double area_m2);
Laid laid(const Wire& w, const Resolver& r);
/// Whether the air about it is the engine bay's.
constexpr bool in_bay(Zone z) { return z == Zone::engine_bay || z == Zone::exhaust; }
/// How much hotter than the bay the air is beside an exhaust with its shield, a hand's breadth away (common practice).
inline constexpr double beside_exhaust_k = 40;
/// Air the ampacity table is for there.
inline double table_air_k(Zone z) {
  return physics::table_air_k(in_bay(z) ? physics::Zone::engine_bay : physics::Zone::cabin);
}
/// Air about a wire in such a zone where the bay has `bay_k`, never taken below the table's.
inline double air_k(Zone z, double bay_k) {
  const double air = z == Zone::exhaust ? bay_k + beside_exhaust_k : bay_k;
  return in_bay(z) ? std::max(air, table_air_k(z)) : table_air_k(z);
}

/// Temperature a conductor settles at: its rating is what its ampacity there makes of it (physics::wire_rise).
double settles_at_k(const Conductor& c, double current_a, double bay_k);
/// Ampacity in its zone and bundle; in the engine bay at `bay_k` where that is hotter than the table's air.
physics::Ampacity ampacity(const Conductor& c, std::optional<double> bay_k = {});

}  // namespace sw::wiring
