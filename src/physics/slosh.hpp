#pragma once
// Liquid in a box tank under a steady sideways acceleration.
//
// The surface stands across the pull, tilted by a/g; cut off by floor and roof it is
//   z(x) = min(max(h + (a/g) (x - L/2), 0), H),   mean of z over 0..L = V / A
// x along the pull's axis, L the tank's length that way, H its height, h the height in the middle the mean asks for:
// found by bisection in a function that only rises. A wedge that leaves floor bare has the base sqrt(2 V / (W a/g)),
// W the width across. A baffle keeps to its cell what the cell holds: give the cell's length for L, and the place in
// it. Range: a steady pull (a bend, a long braking); no waves, upright walls. Source: relative equilibrium of liquids,
// any text of fluid mechanics: White, Fluid Mechanics, ch. 2 (from memory).
namespace sw::physics {

struct TiltedTank {
  double length_m = 0, height_m = 0;
  double mean_depth_m = 0;  ///< volume over floor area, at most the height
};
/// Depth at a place, m from the wall the liquid runs away from, under `pull` = a/g >= 0 towards the other wall.
double tilted_depth_m(const TiltedTank& tank, double from_wall_m, double pull);
/// The least mean depth at which the depth there is `wanted_m` under the pull; the height where none is enough.
double mean_depth_for_m(const TiltedTank& tank, double from_wall_m, double pull, double wanted_m);

}  // namespace sw::physics
