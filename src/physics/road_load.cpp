#include "physics/road_load.hpp"

#include <algorithm>
#include <cmath>

#include "quantity/customary.hpp"

namespace sw::physics {

RoadLoad road_load(const RoadLoadIn& in, double speed_m_s) {
  const double weight = in.mass_kg * standard_gravity_m_s2, slope = std::atan(in.grade);
  const double half = 0.5 * in.density_kg_m3 * in.drag_area_m2;
  RoadLoad r{};
  r.rolling_n = weight * in.rolling * std::cos(slope);
  r.grade_n = weight * std::sin(slope);
  r.drag_n = half * speed_m_s * std::abs(speed_m_s);
  r.force_n = r.rolling_n + r.grade_n + r.drag_n;
  r.force_slope_n_s_m = 2 * half * std::abs(speed_m_s);
  r.power_w = r.force_n * speed_m_s;
  r.power_slope_w_s_m = r.force_n + speed_m_s * r.force_slope_n_s_m;
  return r;
}

std::optional<double> road_load_speed(const RoadLoadIn& in, double power_w) {
  // Power rises with speed, beyond its least where the car would roll by itself: bracket from there, then bisect with
  // Newton inside the bracket.
  const RoadLoad rest = road_load(in, 0);
  const double half = 0.5 * in.density_kg_m3 * in.drag_area_m2;
  double low = rest.force_n < 0 && half > 0 ? std::sqrt(-rest.force_n / (3 * half)) : 0, high = low + 1;
  if (road_load(in, low).power_w > power_w) return {};
  while (road_load(in, high).power_w < power_w)
    if ((high *= 2) > 1e5) return {};
  double v = high;
  for (int i = 0; i < 200; ++i) {
    const RoadLoad r = road_load(in, v);
    const double error = r.power_w - power_w;
    (error > 0 ? high : low) = v;
    const double next = r.power_slope_w_s_m > 0 ? v - error / r.power_slope_w_s_m : low;
    const double before = v;
    v = next > low && next < high ? next : 0.5 * (low + high);
    if (std::abs(v - before) <= 1e-15 * v) break;
  }
  return v;
}

double combined_economy(double city, double highway) { return 1 / (0.55 / city + 0.45 / highway); }

}  // namespace sw::physics
