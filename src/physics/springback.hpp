#pragma once
// What a cold bend keeps when the die lets go: the share of its angle and of its curvature.
//
// Pure bending, the stress rising by Young's modulus E to the flow stress Y and constant beyond it. Bent to the radius
// R on the centre line, all within c = Y R/E of the middle is elastic still. Let go, the moment M that did it comes off
// elastically:  kept = 1 - M R/(E I)  of the curvature, and of the angle too, as the length of the arc stays. The set
// angle is the wanted one over `kept`, the radius that is left R over `kept`.
//   plate of thickness t   4 x^3 - 3 x + 1 with x = Y R/(E t)
//   round tube             M of the disc of its outside less that of its bore; of a disc of radius a, c < a,
//                          Y [(a^4 asin(c/a) - c (a^2 - 2 c^2) sqrt(a^2 - c^2))/(2 c) + 4/3 (a^2 - c^2)^(3/2)]
// Symbols: Pa, m. Range: kept from 0 (wholly elastic) to 1; a round section that stays round, no stretch along it. Y is
// the stress at the strain of the bend; an annealed metal's yield stress alone tells too little springback. A trial
// bend of the same tube goes before any figure from here. Sources: plate: Kalpakjian, Manufacturing Processes for
// Engineering Materials, chapter on sheet-metal forming (from memory; a published page on forming gives the same law);
// tube: the same argument, integrated over the round section.
namespace sw::physics {

double plate_springback(double flow_stress_pa, double young_pa, double thickness_m, double radius_m);
double tube_springback(double flow_stress_pa, double young_pa, double outside_m, double wall_m, double radius_m);

}  // namespace sw::physics
