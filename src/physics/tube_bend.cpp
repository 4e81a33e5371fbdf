#include "physics/tube_bend.hpp"

#include <cmath>
#include <numbers>

namespace sw::physics {
namespace {

constexpr double pi = std::numbers::pi;
/// rad: below it a corner is none, and half a turn one way is half a turn the other (rounding of written points)
constexpr double rounding = 1e-7;

}  // namespace

Slope bend_arc_m(double radius, double angle) { return {radius * angle, radius}; }

Slope bend_setback_m(double radius, double angle) {
  const double t = std::tan(angle / 2);
  return {radius * t, radius * (1 + t * t) / 2, std::abs(angle) < pi};
}

TubeBends tube_bends(std::span<const Vec3> points) {
  using enum TubeBends::Trouble;
  TubeBends tube;
  if (points.size() < 2) return tube;
  const auto stop = [&tube](TubeBends::Trouble trouble, std::size_t where) {
    tube.trouble = trouble;
    tube.where = where;
    return tube;
  };
  std::vector<Vec3> directions, normals;
  for (std::size_t i = 0; i + 1 < points.size(); ++i) {
    const Vec3 leg = points[i + 1] - points[i];
    if (!(norm(leg) > 0)) return stop(points_meet, i + 1);
    tube.legs_m.push_back(norm(leg));
    directions.push_back(unit(leg));
  }
  for (std::size_t i = 1; i < directions.size(); ++i) {
    tube.bends.push_back(angle_between(directions[i - 1], directions[i]));
    if (tube.bends.back() < rounding) return stop(no_corner, i);
    if (tube.bends.back() > pi - rounding) return stop(folded, i);
    normals.push_back(cross(directions[i - 1], directions[i]));
  }
  for (std::size_t i = 1; i < normals.size(); ++i) {
    const double turn = angle_about(directions[i], normals[i - 1], normals[i]);
    tube.rotations.push_back(turn < rounding - pi ? pi : turn);
  }
  tube.trouble = none;
  return tube;
}

TubeCut tube_cut(const TubeBends& tube, double radius) {
  TubeCut cut{.straights_m = tube.legs_m};
  for (double leg : tube.legs_m) cut.cut_m += leg;
  for (std::size_t i = 0; i < tube.bends.size(); ++i) {
    const double setback = bend_setback_m(1, tube.bends[i]).value;
    cut.straights_m[i] -= radius * setback;
    cut.straights_m[i + 1] -= radius * setback;
    cut.cut_slope += tube.bends[i] - 2 * setback;
  }
  cut.cut_m += radius * cut.cut_slope;
  return cut;
}

}  // namespace sw::physics
