#include "systems/wiring/carries.hpp"

#include <algorithm>

#include "physics/wire.hpp"
#include "systems/wiring/laid.hpp"

namespace sw::wiring {

std::optional<double> lasting_limit(const Conductor& c) {
  if (!c.sized) return c.limit_a > 0 ? std::optional(c.limit_a) : std::nullopt;
  return c.limit_a > 0 ? std::min(c.limit_a, c.ampacity_a) : c.ampacity_a;
}

std::optional<double> carries_for(const Conductor& c, double seconds, std::optional<double> bay_k) {
  if (c.stray) return stray_a;
  auto good = lasting_limit(c);
  if (!good || *good <= 0) return std::nullopt;
  if (!c.sized) return good;
  const double bay = bay_k.value_or(table_air_k(Zone::engine_bay));
  good = std::min(*good, ampacity(c, bay).current_a);
  // What stands in the run besides wire is rated for good and heats no slower.
  if (!(seconds > 0) || (c.limit_a > 0 && c.limit_a < c.ampacity_a)) return good;
  const double short_time =
      physics::short_time_current(c.area_m2, air_k(c.laid.zone, bay), c.laid.insulation_k, seconds);
  return std::max(*good, short_time);
}

}  // namespace sw::wiring
