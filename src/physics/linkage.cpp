#include "physics/linkage.hpp"

#include <algorithm>
#include <cmath>

namespace sw::physics {
namespace {

/// The two links to B, which lies at (x, y) from A = (ax, ay).
FourBarAngles angles_to(const FourBar& bars, double crank_angle, double bx, double by) {
  const double coupler =
      std::atan2(by - bars.crank_m * std::sin(crank_angle), bx - bars.crank_m * std::cos(crank_angle));
  const double rocker = std::atan2(by, bx - bars.ground_m), apart = std::sin(rocker - coupler);
  return {rocker, coupler, bars.crank_m * std::sin(crank_angle - coupler) / (bars.rocker_m * apart),
          bars.crank_m * std::sin(crank_angle - rocker) / (bars.coupler_m * apart)};
}

}  // namespace

std::optional<FourBarPosition> four_bar(const FourBar& bars, double crank_angle) {
  const double ax = bars.crank_m * std::cos(crank_angle), ay = bars.crank_m * std::sin(crank_angle);
  const double sx = bars.ground_m - ax, sy = -ay, s = std::hypot(sx, sy), b = bars.coupler_m, c = bars.rocker_m;
  if (!(s > 0) || s > b + c || s < std::abs(b - c)) return std::nullopt;
  const double ux = sx / s, uy = sy / s;  // along AP; left of it lies (-uy, ux)
  const double along = (b * b - c * c + s * s) / (2 * s), aside = std::sqrt(std::max(0.0, b * b - along * along));
  const double fx = ax + along * ux, fy = ay + along * uy;
  return FourBarPosition{angles_to(bars, crank_angle, fx - aside * uy, fy + aside * ux),
                         angles_to(bars, crank_angle, fx + aside * uy, fy - aside * ux)};
}

double grashof_m(const FourBar& bars) {
  const auto [least, most] = std::minmax({bars.crank_m, bars.coupler_m, bars.rocker_m, bars.ground_m});
  return 2 * (least + most) - (bars.crank_m + bars.coupler_m + bars.rocker_m + bars.ground_m);
}

std::optional<Slope> slider_crank(const SliderCrank& p, double t) {
  const double aside = p.crank_m * std::sin(t) - p.offset_m, along2 = p.rod_m * p.rod_m - aside * aside;
  if (!(along2 >= 0)) return std::nullopt;
  const double along = std::sqrt(along2);
  return Slope{p.crank_m * std::cos(t) + along, -p.crank_m * std::sin(t) - aside * p.crank_m * std::cos(t) / along};
}

}  // namespace sw::physics
