#include "physics/coupled.hpp"

#include <cmath>
#include <numbers>

namespace sw::physics {

Slope mutual_capacitance_f(const WiresBeside& w) {
  constexpr double e0 = 8.8541878128e-12;  // CODATA 2018
  const double own = std::log(2 * w.height_m / w.lead_radius_m) * std::log(2 * w.height_m / w.wire_radius_m);
  const double ratio = 2 * w.height_m / w.apart_m, p = 0.5 * std::log1p(ratio * ratio);
  const double scale = 2 * std::numbers::pi * e0 * w.permittivity * w.length_m, below = own - p * p;
  const double slope_p = -ratio * ratio / (1 + ratio * ratio) / w.apart_m;
  return {scale * p / below, scale * (own + p * p) / (below * below) * slope_p,
          w.apart_m >= w.lead_radius_m + w.wire_radius_m && below > 0};
}

Slope coupled_v(double c, double input_ohm, double edge_v, double edge_s) {
  const double rate = edge_v / edge_s, lag = input_ohm * c;
  if (lag <= 0) return {0, input_ohm * rate};
  const double gone = std::exp(-edge_s / lag);
  return {lag * rate * (1 - gone), input_ohm * rate * (1 - gone - edge_s / lag * gone)};
}

}  // namespace sw::physics
