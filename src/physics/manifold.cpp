#include "physics/manifold.hpp"

#include <algorithm>
#include <cmath>
#include <numbers>

#include "quantity/customary.hpp"

namespace sw::physics {

ManifoldAt manifold_pressure(double idle_pa, double idle_speed, double speed, double share, double ambient_pa) {
  const double free = idle_pa * idle_speed / speed, closed = std::clamp(free, closed_least_pa, ambient_pa);
  const double s = std::clamp(share, 0.0, 1.0);
  return {closed + (ambient_pa - closed) * s, share > 0 && share < 1 ? ambient_pa - closed : 0,
          closed == free ? -free / speed * (1 - s) : 0};
}

double cam_vacuum_lost_pa(double duration_rad) {
  constexpr double stock_deg = 195, each_pa = 0.18 * in_hg_pa;
  return std::max(0.0, duration_rad * 180 / std::numbers::pi - stock_deg) * each_pa;
}

}  // namespace sw::physics
