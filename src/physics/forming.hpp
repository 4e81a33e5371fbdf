#pragma once
// What cold forming does to a tube, and a nut to a flare: strains and a shear stress.
namespace sw::physics {

/// True strain of the rim of a flare: ln(flare over tube). Source: any text on metal forming (from memory).
double flare_strain(double tube_m, double flare_m);
/// Strain of the outer fibre of a bend to the centre line: outside over twice the radius. Source: beam theory; walls
/// thin against the radius.
double bend_strain(double outside_m, double radius_m);
/// Shear in the wall under a ring the nut presses: load over its edge, load = torque/(0.2 thread) (nut factor of dry
/// threads, common practice). Pa.
double ring_shear_pa(double torque_nm, double thread_m, double ring_m, double wall_m);

}  // namespace sw::physics
