#include "physics/whirling.hpp"

#include <cmath>
#include <numbers>

namespace sw::physics {

double tube_whirls_rad_s(double length_m, double outside_m, double bore_m) {
  constexpr double steel_pa = 200e9, steel_kg_m3 = 7850;
  const double per_length = std::numbers::pi / length_m;
  return per_length * per_length * std::sqrt(steel_pa / steel_kg_m3) * std::hypot(outside_m, bore_m) / 4;
}

}  // namespace sw::physics
