#include "physics/brake_fluid.hpp"

#include <cmath>

#include "quantity/customary.hpp"

namespace sw::physics {
namespace {

constexpr double water_boils_k = 373.15;

}  // namespace

BoilingPoints least_boiling(BrakeFluid grade) {
  switch (grade) {
    case BrakeFluid::dot_3:
      return {205 + zero_celsius_k, 140 + zero_celsius_k};
    case BrakeFluid::dot_4:
      return {230 + zero_celsius_k, 155 + zero_celsius_k};
    case BrakeFluid::dot_5:
    case BrakeFluid::dot_5_1:
      break;
  }
  return {260 + zero_celsius_k, 180 + zero_celsius_k};
}

Slope boiling_at_water_k(const BoilingPoints& points, double water_share) {
  const double above = points.dry_k - water_boils_k;
  const double rate = std::log(above / (points.wet_k - water_boils_k)) / wet_water_share;
  const double now = above * std::exp(-rate * water_share);
  return {water_boils_k + now, -rate * now, water_share >= 0 && water_share <= most_water_share};
}

}  // namespace sw::physics
