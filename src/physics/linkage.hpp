#pragma once
// Plane linkages with pinned links: four bars, and a crank that drives a slide.
//
// Four bars: a crank a from O, a coupler b from its far pin A to B, a rocker c from P to B, the ground d from O to P
// along x. B is where the circle b about A meets the circle c about P. With s = |AP|, e = (b^2 - c^2 + s^2)/2s along AP
// and f = sqrt(b^2 - e^2) square to it, B lies f to the left of AP (open) or to its right (crossed). Rates, by the
// crank's angle t:
//   d rocker = a sin(t - coupler)/(c sin(rocker - coupler)),   d coupler = a sin(t - rocker)/(b sin(rocker - coupler)).
// Slider and crank: x = r cos t + sqrt(l^2 - (r sin t - e)^2), e the slide's offset towards t = 90 deg.
// Lengths in m, angles in rad, anticlockwise from the ground or the slide, above -pi up to pi. Range: all lengths above
// 0; empty where the links do not reach each other. Rates have no end where coupler and rocker lie in line, or the rod
// square to the slide. Source: Norton, Design of Machinery, chapters 2, 4 and 6 (from memory); the circles are
// geometry.
#include <optional>

#include "physics/law.hpp"

namespace sw::physics {

struct FourBar {
  double crank_m, coupler_m, rocker_m, ground_m;
};

struct FourBarAngles {
  double rocker, coupler;              ///< direction from P to B, from A to B
  double rocker_slope, coupler_slope;  ///< d / d crank angle
};
struct FourBarPosition {
  FourBarAngles open, crossed;
};
std::optional<FourBarPosition> four_bar(const FourBar& bars, double crank_angle);

/// Shortest and longest less the other two, m: at most 0 where one link can turn all the way (Grashof). Norton, chapter
/// 2.
double grashof_m(const FourBar& bars);

struct SliderCrank {
  double crank_m, rod_m, offset_m = 0;
};
/// Position along the slide from the crank's pivot, on the far side, m. slope: d / d crank angle, m/rad.
std::optional<Slope> slider_crank(const SliderCrank& parts, double crank_angle);

}  // namespace sw::physics
