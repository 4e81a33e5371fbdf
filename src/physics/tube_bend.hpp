#pragma once
// A tube bent by hand or machine: from the points a drawing gives to what a bender is set to.
//
// Points P_0 … P_n are the ends and the corners the straights would meet at. Leg i runs from P_i to P_i+1 in the unit
// direction u_i. At corner i the bend t_i is the angle from u_i-1 to u_i, in the plane with the normal n_i = u_i-1 x
// u_i; between two bends the tube is rotated by the angle from n_i to n_i+1 about u_i, right-handed: 0 bends on the
// same way, 180 deg the opposite way. A bend on the centre line radius R takes the tangent R tan(t/2) off both its legs
// and has the arc R t; what is cut is all straights and arcs. Lengths in m, angles in rad. Range: bends above 0 and
// below 180 deg. Spring-back, stretch in the bend and what fittings take are left out: a trial bend tells them. Source:
// geometry.
#include <cstddef>
#include <span>
#include <vector>

#include "physics/law.hpp"
#include "physics/vec3.hpp"

namespace sw::physics {

/// Arc on the centre line, R t, m. slope: d / d angle, m/rad.
Slope bend_arc_m(double radius_m, double angle);
/// Corner to tangent point, R tan(t/2), m. slope: d / d angle. Not valid from 180 deg on: there is no corner.
Slope bend_setback_m(double radius_m, double angle);

struct TubeBends {
  /// points_meet: two points are one; no_corner: the tube runs straight on; folded: it turns right back.
  enum class Trouble { none, too_few, points_meet, no_corner, folded };
  Trouble trouble = Trouble::too_few;
  std::size_t where = 0;          ///< point the trouble is at, counted from 0
  std::vector<double> legs_m;     ///< [i]: point i to point i + 1
  std::vector<double> bends;      ///< [i]: at point i + 1
  std::vector<double> rotations;  ///< [i]: from the bend at point i + 1 to the one after it, above -pi up to pi
  bool good() const { return trouble == Trouble::none; }
};
TubeBends tube_bends(std::span<const Vec3> points_m);

struct TubeCut {
  std::vector<double> straights_m;  ///< [i]: of leg i; below 0 where two bends run into each other
  double cut_m = 0;                 ///< all straights and arcs
  double cut_slope = 0;             ///< d cut / d radius
};
/// With every bend on the centre line radius `radius_m`.
TubeCut tube_cut(const TubeBends& tube, double radius_m);

}  // namespace sw::physics
