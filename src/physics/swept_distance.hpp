#pragma once
// The least distance between two solids over the whole range of what moves them: proven, not sampled.
//
// Each solid is carried by motions, one in the other, each with a setting that runs from `low` to `high`: a turn about
// an axis (rad) or a way along a line (m). Settings are looked at in cells, each with its middle c and half widths h.
// What no distance in a cell lies below comes two ways, and the better is taken:
//   by reach:      d(c) - sum of reach_i h_i. No point goes farther than reach_i for a unit of a setting: for a turn
//   how
//                  far the farthest lies from the axis, wherever motions within this one have brought it; 1 for a line.
//   by direction:  for two convex pieces and any unit direction n, the least n.x of one less the greatest n.y of the
//                  other, radii off, is no more than their distance. Over the cell a point's n.x falls by no more than
//                    sum of |n . v_i| h_i + sum of reach_i h_i^2/2 over turns + sum of reach_i h_i h_j,
//                  v_i its speed at c by setting i, the last sum over turns j and what they carry. n is taken where the
//                  distance rises fastest, so that near a least the first sum vanishes.
// Cells are halved, the one that may hide the least first, until none may hide anything `tolerance_m` below the least
// that was met. `floor_m` is what no distance lies below; where the count of poses runs out first it says how far the
// search came. Where the two touch the search ends: by how much they would overlap at most is not looked for. Motions
// both solids have alike, from the outermost in, do not move them against each other and are left out. The pose met is
// then improved setting by setting, so that it goes smoothly with the figures. Source: geometry and Taylor's bound;
// halving by such bounds is the branch and bound of any text on global optimization. Checked against closed forms and
// against trying out everything.
#include <vector>

#include "physics/solid_distance.hpp"

namespace sw::physics {

struct Setting {
  Vec3 point, direction;  ///< an axis or a line; unit direction
  bool turns = true;
  double low = 0, high = 0;
  bool operator==(const Setting&) const = default;
  RigidMotion at(double value) const {
    return turns ? turned_about(point, direction, value) : shifted(value * direction);
  }
};

struct Carried {
  Solid solid;                        ///< where it stands with every setting at 0
  std::vector<std::size_t> settings;  ///< the innermost first
  RigidMotion after;                  ///< what was moved for good, the settings' axes with it
  bool operator==(const Carried&) const = default;
};

struct SweptDistance {
  double least_m = 0, floor_m = 0;
  std::vector<double> pose;  ///< a value a setting
  long poses = 0;            ///< that were looked at
};

struct SweptLimits {
  double tolerance_m = 5e-4;  ///< a fiftieth of an inch: finer than points are measured by tape
  long poses = 100000;
};
SweptDistance swept_distance(Carried a, Carried b, const std::vector<Setting>& settings,
                             const SweptLimits& limits = {});
/// At one pose.
double distance_at(const Carried& a, const Carried& b, const std::vector<Setting>& settings,
                   const std::vector<double>& pose);

}  // namespace sw::physics
