#include "physics/estimate.hpp"

#include <cmath>
#include <numbers>

namespace sw::physics {

Estimate three_point(double shortest, double likely, double longest) {
  const double deviation = (longest - shortest) / 6;
  return {(shortest + 4 * likely + longest) / 6, deviation, deviation * deviation, 4.0 / 6};
}

Slope finish_chance(double mean, double deviation, double deadline) {
  if (!(deviation > 0)) return {deadline >= mean ? 1.0 : 0.0, 0};
  const double z = (deadline - mean) / deviation;
  return {std::erfc(-z / std::numbers::sqrt2) / 2,
          std::exp(-z * z / 2) * std::numbers::inv_sqrtpi / (std::numbers::sqrt2 * deviation)};
}

}  // namespace sw::physics
