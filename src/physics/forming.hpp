#pragma once
// What cold forming does to a tube, and a nut to a flare: strains and a shear stress.
namespace sw::physics {

/// True strain of the rim of a flare: ln(flare over tube). Source: any text on metal forming (from memory).
double flare_strain(double tube_m, double flare_m);
/// Strain of the outer fibre of a bend to the centre line: outside over twice the radius. Source: beam theory; walls
/// thin against the radius.
double bend_strain(double outside_m, double radius_m);
/// Wall left on the outer side of a bend to the centre line: wall/(1 + strain), what it is stretched it thins by. m.
/// Source: constant volume, no strain round the tube. The bending allowances of ASME B31.1, table 102.4.5, are within
/// 8 % of it from 3 to 6 diameters.
double bent_wall_m(double outside_m, double wall_m, double radius_m);
/// Shear in the wall under a ring the nut presses: load over its edge, load by the nut factor of dry threads. Pa.
double ring_shear_pa(double torque_nm, double thread_m, double ring_m, double wall_m);

}  // namespace sw::physics
