#pragma once
// Pressure in the manifold of a throttled engine.
//
// Manifold: the air an idling engine needs is the same at any altitude, so the absolute pressure p_0 at idle speed n_0
// stays; with the throttle closed at another speed the same air fills more strokes, p_c = p_0 n_0 / n (choked throttle:
// Heywood, Internal Combustion Engine Fundamentals, eq. 7.22, from memory), never below `closed_least_pa` (24 inHg seen
// on the overrun, common practice) nor above the air. Between closed and open, p = p_c + (p_a - p_c) s, s power to the
// road over full power: indicated work is near straight in manifold pressure (Heywood, ch. 5, from memory). Naturally
// aspirated engines. Vacuum is p_a - p.
#include "physics/law.hpp"

namespace sw::physics {

inline constexpr double closed_least_pa = 20e3;

struct ManifoldAt {
  double pressure_pa;  ///< absolute
  double slope_share;  ///< d pressure / d share
  double slope_speed;  ///< d pressure / d speed
};
/// At engine speed and share of full power; speeds in one unit, above 0.
ManifoldAt manifold_pressure(double idle_pa, double idle_speed, double speed, double share, double ambient_pa);

/// How much a long camshaft costs an idling engine, Pa: 0.18 inHg for each degree of duration (at 0.050 in of lift,
/// mean of inlet and exhaust) above 195 deg (common practice; 236/242 deg idles at about 9 inHg).
double cam_vacuum_lost_pa(double duration_rad);

}  // namespace sw::physics
