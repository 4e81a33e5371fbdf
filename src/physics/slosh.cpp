#include "physics/slosh.hpp"

#include <algorithm>
#include <cmath>

namespace sw::physics {
namespace {

/// Integral of min(max(z, 0), H) for z rising linearly from `low` to `high`, over its mean slope's span: the mean.
double clipped_mean(double low, double high, double top) {
  if (high - low < 1e-12) return std::clamp(low, 0.0, top);
  const auto area = [&](double z) {  // integral of the clipped line up to z, from below the floor
    if (z <= 0) return 0.0;
    return z < top ? z * z / 2 : top * top / 2 + top * (z - top);
  };
  return (area(high) - area(low)) / (high - low);
}

double middle_height(const TiltedTank& t, double pull) {
  const double half = pull * t.length_m / 2;
  double low = -half, high = t.height_m + half;
  for (int k = 0; k < 100; ++k) {
    const double h = 0.5 * (low + high);
    (clipped_mean(h - half, h + half, t.height_m) < t.mean_depth_m ? low : high) = h;
  }
  return 0.5 * (low + high);
}

}  // namespace

double tilted_depth_m(const TiltedTank& t, double from_wall_m, double pull) {
  if (t.mean_depth_m <= 0) return 0;
  if (t.mean_depth_m >= t.height_m) return t.height_m;
  return std::clamp(middle_height(t, pull) + pull * (from_wall_m - t.length_m / 2), 0.0, t.height_m);
}

double mean_depth_for_m(const TiltedTank& t, double from_wall_m, double pull, double wanted_m) {
  double low = 0, high = t.height_m;
  for (int k = 0; k < 60; ++k) {
    const double mean = 0.5 * (low + high);
    (tilted_depth_m({t.length_m, t.height_m, mean}, from_wall_m, pull) < wanted_m ? low : high) = mean;
  }
  return high;
}

}  // namespace sw::physics
