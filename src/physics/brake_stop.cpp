#include "physics/brake_stop.hpp"

namespace sw::physics {
namespace {

constexpr double km_h_per_m_s = 3.6;
constexpr double linear_m_per_km_h = allowed_response_s / km_h_per_m_s;

constexpr double depletion[] = {16 * foot_m, 12 * foot_m,  10 * foot_m, 9 * foot_m,
                                8 * foot_m,  7.5 * foot_m, 7 * foot_m};

constexpr double squared(StopTest test) {
  switch (test) {
    case StopTest::cold:
      return 0.0060;
    case StopTest::high_speed:
      return 0.0067;
    case StopTest::hot:
      return 0.0079;
    case StopTest::failed_circuit:
      break;
  }
  return 0.0158;
}

}  // namespace

Slope stop_distance_m(double speed_m_s, double deceleration_m_s2, double delay_s) {
  return {speed_m_s * delay_s + speed_m_s * speed_m_s / (2 * deceleration_m_s2),
          delay_s + speed_m_s / deceleration_m_s2, deceleration_m_s2 > 0};
}

std::optional<Slope> stop_deceleration_m_s2(double speed_m_s, double distance_m, double delay_s) {
  const double left = distance_m - speed_m_s * delay_s;
  if (!(left > 0)) return {};
  const double a = speed_m_s * speed_m_s / (2 * left);
  return Slope{a, -a / left};
}

std::span<const double> depletion_m_s2() { return depletion; }

StopLimit stop_limit(StopTest test, double speed_m_s) {
  const double v = speed_m_s * km_h_per_m_s, b = squared(test);
  return {linear_m_per_km_h * v + b * v * v, km_h_per_m_s * (linear_m_per_km_h + 2 * b * v),
          1 / (2 * km_h_per_m_s * km_h_per_m_s * b)};
}

}  // namespace sw::physics
