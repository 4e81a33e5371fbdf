#pragma once
// Torque of a disc brake: T = 2 u p A r, both pad faces; u friction of the pads, p line pressure, A piston area of one
// side of the caliper (a sliding caliper's piston, one side's pistons of a fixed one), r effective radius. Uniform
// pressure on the pads; for usual pads the mean of their radii is within 2 % of the exact radius (Shigley, Mechanical
// Engineering Design, caliper brakes; Limpert, Brake Design and Safety; from memory).
#include "physics/law.hpp"

namespace sw::physics {

/// slope: d torque / d pressure. Pressure below 0 gives none.
Slope disc_torque_n_m(double friction, double pressure_pa, double piston_area_m2, double radius_m);
/// Exact effective radius of a ring-sector pad under uniform pressure, 2 (R^3 - r^3) / (3 (R^2 - r^2)).
double pad_radius_m(double inner_m, double outer_m);

}  // namespace sw::physics
