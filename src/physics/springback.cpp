#include "physics/springback.hpp"

#include <algorithm>
#include <cmath>
#include <numbers>

namespace sw::physics {
namespace {

constexpr double pi = std::numbers::pi;

/// Moment of a disc over its flow stress, elastic within `c` of the middle, m3.
double disc_m3(double a, double c) {
  if (c >= a) return pi * a * a * a * a / (4 * c);
  const double side = std::sqrt(a * a - c * c);
  return (a * a * a * a * std::asin(c / a) - c * (a * a - 2 * c * c) * side) / (2 * c) + 4.0 / 3 * side * side * side;
}

}  // namespace

double plate_springback(double flow_stress, double young, double thickness, double radius) {
  const double x = std::min(flow_stress * radius / (young * thickness), 0.5);  // at 0.5 it is elastic throughout
  return 4 * x * x * x - 3 * x + 1;
}

double tube_springback(double flow_stress, double young, double outside, double wall, double radius) {
  const double a = outside / 2, b = a - wall, c = flow_stress * radius / young;
  const double second_moment = pi / 4 * (a * a * a * a - b * b * b * b);
  const double moment = flow_stress * (disc_m3(a, c) - disc_m3(b, c));
  return std::max(0.0, 1 - moment * radius / (young * second_moment));
}

}  // namespace sw::physics
