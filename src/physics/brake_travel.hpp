#pragma once
// Where the stroke of a brake pedal goes: fluid taken up by what moves and what gives, and what fluid does that is shut
// in or stands below its reservoir. Volumes in m3, pressures in Pa gauge.
#include "physics/law.hpp"

namespace sw::physics {

/// Fluid one axle takes: V = n A (clearance + give p / p_ref) + lines p / p_ref.
/// Symbols: n pistons on the axle that move fluid, A area of one, clearance its free way to the disc or drum, give its
/// way at p_ref through pads, linings, caliper or drum, lines the swelling of hoses and the fluid's own give at p_ref.
/// Range: 0 <= p <= 14 MPa; pads are softer at first, so that below a third of p_ref up to a quarter more is taken
/// (common practice). slope: by p. Source: Limpert, Brake Design and Safety, ch. 5 (brake fluid volume analysis), from
/// memory.
struct Uptake {
  double pistons, area_m2, clearance_m, give_m, lines_m3, at_pa;
};
Slope brake_uptake(const Uptake& u, double pressure_pa);
/// The pressure at which that volume is taken; 0 (slope 0) while the clearance still fills. slope: by the volume.
Slope uptake_pressure(const Uptake& u, double volume_m3);

/// Pressure of fluid shut in and warmed: p = V beta dT / (dV/dp). beta 7.7e-4 1/K for glycol brake fluid (common
/// practice; 7 to 8e-4). Range: rises up to 150 K; the shell's own swelling, a twentieth of the fluid's, is left out.
/// slope: by the rise.
inline constexpr double brake_fluid_expansion_1_k = 7.7e-4;
Slope trapped_pressure(double fluid_m3, double rise_k, double compliance_m3_pa);

/// Pressure of a column of brake fluid, rho g h: 1050 kg/m3 (glycol fluids 1030 to 1070 at 20 degC, common practice).
/// slope: by the height. Negative heights suck.
inline constexpr double brake_fluid_density_kg_m3 = 1050;
Slope fluid_head(double height_m);

}  // namespace sw::physics
