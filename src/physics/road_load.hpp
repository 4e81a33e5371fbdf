#pragma once
// What the road asks of a car at a steady speed.
// F = m g (Crr cos a + sin a) + rho CdA V^2 / 2, a = atan(rise over run); power F V. (Gillespie, Fundamentals of
// Vehicle Dynamics, ch. 4; Wong, Theory of Ground Vehicles, ch. 3.) Rolling taken as steady in speed, good to about 130
// km/h.
#include <optional>

#include "physics/atmosphere.hpp"

namespace sw::physics {

struct RoadLoadIn {
  double mass_kg, rolling, drag_area_m2;
  double grade = 0;  ///< rise over level run
  double density_kg_m3 = 1.225;
};
struct RoadLoad {
  double force_n, rolling_n, drag_n, grade_n;
  double force_slope_n_s_m;  ///< d force / d speed
  double power_w, power_slope_w_s_m;
};
/// Forward speeds; at negative speed drag still opposes motion, rolling does not turn round (not meant for it).
RoadLoad road_load(const RoadLoadIn& in, double speed_m_s);
/// The greatest speed a power holds; empty where it holds none (uphill faster is always harder; downhill, where the car
/// rolls by itself, a power of zero holds its coasting speed).
std::optional<double> road_load_speed(const RoadLoadIn& in, double power_w);

/// Fuel economy of 55 % city and 45 % highway by distance: harmonic (40 CFR Part 600). Any unit of distance per volume.
double combined_economy(double city, double highway);

}  // namespace sw::physics
