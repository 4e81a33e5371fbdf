#pragma once
// First critical speed of a tube that turns between two joints: a uniform beam on two pins, w = (pi/L)^2 sqrt(E I/m'),
// with I/A = (Do^2 + Di^2)/16. E steel 200 GPa, density 7850 kg/m3 (common practice). Range: a straight, balanced tube,
// joints that hold it in place and do not clamp it; yokes and slip joint lower it some per cent. Source:
// Euler-Bernoulli beam, any text on vibrations (from memory).
namespace sw::physics {

/// rad/s; lengths in m.
double tube_whirls_rad_s(double length_m, double outside_m, double bore_m);

}  // namespace sw::physics
