#include "physics/tank_volume.hpp"

#include <algorithm>
#include <cmath>
#include <numbers>

namespace sw::physics {
namespace {

constexpr double pi = std::numbers::pi;

/// Area of a slice across one head at the height y from the axis.
double head_slice(const LyingTank& tank, double y) {
  const double r = tank.diameter_m / 2, a = tank.head_depth_m, w2 = std::max(0.0, r * r - y * y), w = std::sqrt(w2);
  if (w == 0) return 0;
  switch (tank.heads) {
    case TankHeads::flat:
      return 0;
    case TankHeads::ellipsoidal:
      return pi * a / (2 * r) * w2;
    case TankHeads::spherical: {
      const double sphere = (r * r + a * a) / (2 * a), c = sphere - a, q2 = sphere * sphere - y * y;
      return q2 * std::asin(std::min(1.0, w / std::sqrt(q2))) - w * c;
    }
    case TankHeads::conical:
      return a * w - (y == 0 ? 0 : a / r * y * y * std::asinh(w / std::abs(y)));
  }
  return 0;
}

/// One head below the depth, slices summed by Simpson's rule. By the angle t, y = -R cos t, so that the ends are
/// smooth.
double head_volume(const LyingTank& tank, double depth) {
  constexpr int pieces = 200;
  const double r = tank.diameter_m / 2, end = std::acos(std::clamp((r - depth) / r, -1.0, 1.0)), step = end / pieces;
  const auto at = [&](int k) { return head_slice(tank, -r * std::cos(k * step)) * r * std::sin(k * step); };
  double sum = at(0) + at(pieces);
  for (int k = 1; k < pieces; ++k) sum += at(k) * (k % 2 == 1 ? 4 : 2);
  return sum * step / 3;
}

/// Calls `law` with the depth kept between empty and full, and marks what lay outside.
template <class F>
Slope within(double depth, double height, const F& law) {
  Slope s = law(std::clamp(depth, 0.0, height));
  s.valid = depth >= 0 && depth <= height;
  if (!s.valid) s.slope = 0;
  return s;
}

}  // namespace

Slope box_volume_m3(double length, double width, double height, double depth) {
  return within(depth, height, [&](double h) { return Slope{length * width * h, length * width}; });
}

Slope lying_volume_m3(const LyingTank& tank, double depth) {
  const double r = tank.diameter_m / 2;
  return within(depth, 2 * r, [&](double h) {
    const double half = std::sqrt(std::max(0.0, h * (2 * r - h)));
    const double segment = r * r * std::acos((r - h) / r) - (r - h) * half;
    Slope s{segment * tank.length_m, 2 * half * tank.length_m};
    if (tank.heads == TankHeads::flat) return s;
    s.value += 2 * head_volume(tank, h);
    s.slope += 2 * head_slice(tank, h - r);
    return s;
  });
}

Slope ellipse_volume_m3(double width, double height, double length, double depth) {
  Slope s = lying_volume_m3({height, length}, depth);
  s.value *= width / height;
  s.slope *= width / height;
  return s;
}

Slope profile_volume_m3(std::span<const double> heights, std::span<const double> areas, double depth) {
  return within(depth, heights.back(), [&](double h) {
    double volume = 0;
    for (std::size_t i = 1; i < heights.size(); ++i) {
      const double from = heights[i - 1], to = heights[i];
      if (h > to) {
        volume += (areas[i - 1] + areas[i]) / 2 * (to - from);
        continue;
      }
      const double area = areas[i - 1] + (areas[i] - areas[i - 1]) * (h - from) / (to - from);
      return Slope{volume + (areas[i - 1] + area) / 2 * (h - from), area};
    }
    return Slope{volume, areas.back()};
  });
}

}  // namespace sw::physics
