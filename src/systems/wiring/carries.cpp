#include "systems/wiring/carries.hpp"

#include <algorithm>

#include "physics/wire.hpp"
#include "systems/wiring/laid.hpp"

namespace sw::wiring {

std::optional<double> lasting_limit(const Conductor& c) {
  if (!c.sized) return c.limit_a > 0 ? std::optional(c.limit_a) : std::nullopt;
  return c.limit_a > 0 ? std::min(c.limit_a, c.ampacity_a) : c.ampacity_a;
}

std::optional<double> carries_for(const Conductor& c, double seconds) {
  if (c.stray) return stray_a;
  const auto good = lasting_limit(c);
  if (!good || !c.sized || !(seconds > 0)) return good;
  // What stands in the run besides wire is rated for good and heats no slower.
  if (c.limit_a > 0 && c.limit_a < c.ampacity_a) return good;
  const double air = table_air_k(c.laid.zone);
  return std::max(*good, physics::short_time_current(c.area_m2, air, c.laid.insulation_k, seconds));
}

}  // namespace sw::wiring
