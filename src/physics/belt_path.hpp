#pragma once
// The path of a belt round any number of pulleys in one plane, by tangents.
//
// The belt visits the pulleys in the order given and comes back to the first. A pulley it touches with its face turns
// one way, one it touches with its back the other. With the signed radius R (+r face, -r back) and the belt run
// anticlockwise round faces, the straight from pulley i to j, at centre distance D in direction a, points in
//   t = a - asin((R_j - R_i) / D)      and is  sqrt(D^2 - (R_j - R_i)^2)  long;
// the wrap on a pulley is the turn between the straights before and after it, taken the way that pulley turns; the
// length is all straights and arcs. Pitch radii: where the cords run. Moving a centre changes the length by
// (u_in - u_out) . dc, a pitch radius by its wrap (both exact: the tangent points drop out to first order).
// Range: pulleys that do not overlap. Source: plane geometry; open and crossed two-pulley belts as in any theory of
// machines (physics/belt) are special cases and are checked against.
#include <cstddef>
#include <span>
#include <string>
#include <vector>

namespace sw::physics {

struct BeltPulley {
  double x_m = 0, y_m = 0;  ///< centre, seen from the front of the engine
  double radius_m = 0;      ///< pitch radius, above 0
  bool back = false;        ///< the belt's back lies on it
};

struct BeltPath {
  enum class Trouble { none, too_few, overlap, off_pulley };
  struct Straight {
    double length_m = 0;                                        ///< free span from this pulley to the next
    double direction = 0;                                       ///< rad, anticlockwise from x
    double from_x_m = 0, from_y_m = 0, to_x_m = 0, to_y_m = 0;  ///< tangent points
  };
  Trouble trouble = Trouble::too_few;
  std::size_t where = 0;  ///< pulley the trouble is at (overlap: it and the next)
  double length_m = 0;
  std::vector<Straight> straight;        ///< [i]: from pulley i to i + 1, the last back to the first
  std::vector<double> wrap;              ///< rad, 0 up to 2 pi
  std::vector<double> slope_x, slope_y;  ///< d length / d centre of pulley i
  bool good() const { return trouble == Trouble::none; }
};

/// Either order of going round gives the same path; the values come back in the order given.
BeltPath belt_path(std::span<const BeltPulley> pulleys);

/// What is wrong, with the pulley's name in words; empty where the path is good.
std::string belt_trouble(const BeltPath& path, std::span<const std::string> names);

}  // namespace sw::physics
