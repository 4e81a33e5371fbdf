#pragma once
// What a tank holds at a depth. Each law gives the volume below the depth h and, as its slope, the area of the liquid's
// surface there: d V / d h.
//
//   box       l w h
//   cylinder  lying, straight part: L times the segment R^2 acos((R - h)/R) - (R - h) sqrt(2 R h - h^2)
//   heads     one at each end, of depth a, by slices across them (y from the axis, w = sqrt(R^2 - y^2)):
//             ellipsoidal  pi a/2R w^2
//             spherical    q^2 asin(w/q) - w c, sphere of radius r = (R^2 + a^2)/2a, c = r - a, q^2 = r^2 - y^2
//             conical      a w - (a/R) y^2 asinh(w/|y|)
//             summed by Simpson's rule, to 1e-7 of the whole tank or better
//   ellipse   the cylinder stretched sideways
//   profile   between heights the surface runs in a line: trapezoids
// Lengths in m, volumes in m3. Range: 0 <= h <= height, walls left out; a spherical head's depth up to R. Below 0 the
// volume is 0, above the top the whole, both marked not valid. Source: geometry; Jones, Calculating Tank Volume, is
// checked against.
#include <span>

#include "physics/law.hpp"

namespace sw::physics {

Slope box_volume_m3(double length_m, double width_m, double height_m, double depth_m);

enum class TankHeads { flat, ellipsoidal, spherical, conical };
struct LyingTank {
  double diameter_m, length_m;  ///< length: of the straight part
  TankHeads heads = TankHeads::flat;
  double head_depth_m = 0;
};
Slope lying_volume_m3(const LyingTank& tank, double depth_m);
Slope ellipse_volume_m3(double width_m, double height_m, double length_m, double depth_m);

/// heights_m and areas_m2 hold one figure a row, heights rising from 0; the last is the top.
Slope profile_volume_m3(std::span<const double> heights_m, std::span<const double> areas_m2, double depth_m);

}  // namespace sw::physics
