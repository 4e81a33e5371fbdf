#pragma once
// The air of an engine bay, as one well-mixed volume.
//
//   Q = U_out (T_o - T) + s C_air (T_core - T) + Q_engine + U_b A_b a/h_o G
//
// U_out: ventilation beside the core and the panels, standing and by road speed; s C_air: what of the core's air passes
// through the bay; the last term is the sun on the bonnet by the sol-air temperature, T_o + (a/h_o) G for the outside
// of a panel (ASHRAE Handbook Fundamentals, ch. 18; a/h_o = 0.052 m2 K/W for a dark surface, films h_o = 17 and, heat
// flowing up, h_i = 9.26 W/m2 K; from memory): most of what shines on a bonnet goes back to the outside air.
// Range: temperatures of a running or cooling car. What ventilates the bay beside the core, 25 W/K standing and 8 W/K for
// each m/s, are guesses of their order; a measured bay temperature takes their place.
#include "physics/law.hpp"

namespace sw::physics {

inline constexpr double dark_panel_m2k_w = 0.052, outside_film_w_m2k = 17.0, inside_film_w_m2k = 9.26;
/// 1/U = 1/h_o + 1/h_i of a thin panel.
inline constexpr double thin_panel_w_m2k = 1 / (1 / outside_film_w_m2k + 1 / inside_film_w_m2k);
/// Sol-air temperature of a surface: T_o + (a/h_o) G, G the sun on it in W/m2. slope: d T / d G.
Slope sol_air(double outside_k, double absorptance_over_film_m2k_w, double sun_w_m2);

struct BayHeat {
  double outside_k, road_m_s;
  double core_air_w_k, core_out_k;  ///< heat capacity rate of the core's air, 0 or more, and its temperature
  double engine_w;                  ///< from the engine's surface and exhaust
  double sun_w_m2;
};
struct BayBalance {
  double heat_w, slope_w_k;  ///< into the air; d heat / d T, never positive
};
BayBalance bay_balance(const BayHeat& in, double air_k);

}  // namespace sw::physics
