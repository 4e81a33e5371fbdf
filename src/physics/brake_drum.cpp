#include "physics/brake_drum.hpp"

#include <cmath>

namespace sw::physics {

DrumShoeForce drum_shoe(const DrumShoe& s, double peak_pressure_pa) {
  const double by_peak = peak_pressure_pa * s.width_m * s.radius_m / std::sin(s.peak_rad);
  const auto lever = [&](double t) {
    return -s.radius_m * std::cos(t) - s.pivot_radius_m / 2 * std::pow(std::sin(t), 2);
  };
  const auto arc = [](double t) { return t / 2 - std::sin(2 * t) / 4; };
  const double rub = s.friction * by_peak * (lever(s.end_rad) - lever(s.start_rad));
  const double push = by_peak * s.pivot_radius_m * (arc(s.end_rad) - arc(s.start_rad));
  const double torque = s.friction * by_peak * s.radius_m * (std::cos(s.start_rad) - std::cos(s.end_rad));
  DrumShoeForce r{};
  r.force_n = (push - rub) / s.lever_m;
  r.leading_n_m = torque;
  r.trailing_n_m = torque * (push - rub) / (push + rub);
  r.leading_torque_per_n = torque * s.lever_m / (push - rub);
  r.trailing_torque_per_n = torque * s.lever_m / (push + rub);
  r.valid = push > rub;
  return r;
}

}  // namespace sw::physics
