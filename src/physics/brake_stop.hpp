#pragma once
// How long a car takes to stop, and how long the rules let it take.
// Stop: S = V t + V^2 / (2 a), t the delay in which the car runs on; closed form, steady deceleration.
// Limit: S = a V + b V^2, V in km/h, S in m: 49 CFR 571.135 (S7.5 cold, S7.6 high speed, S7.10 one circuit failed,
// S7.14 hot), read in a stored copy of the Code; the same coefficients in UN R13-H Annex 3 (from memory). Passenger
// cars. What the squared term alone gives is the mean fully developed deceleration, 1 / (25.92 b).
#include <optional>
#include <span>

#include "physics/law.hpp"
#include "quantity/customary.hpp"

namespace sw::physics {

/// Distance, m, with the delay's. Above 0 m/s2. slope: d distance / d speed.
Slope stop_distance_m(double speed_m_s, double deceleration_m_s2, double delay_s = 0);
/// The deceleration that stops within a distance; empty where the delay alone uses it up. slope: d / d distance.
std::optional<Slope> stop_deceleration_m_s2(double speed_m_s, double distance_m, double delay_s = 0);
inline double stop_time_s(double speed_m_s, double deceleration_m_s2, double delay_s = 0) {
  return delay_s + speed_m_s / deceleration_m_s2;
}

/// What the rules allow for response and build-up: 0.10 m for each km/h.
inline constexpr double allowed_response_s = 0.36;

enum class StopTest { cold, high_speed, hot, failed_circuit };
struct StopLimit {
  double distance_m, slope_s;  ///< slope: d distance / d speed
  double deceleration_m_s2;    ///< mean fully developed
};
StopLimit stop_limit(StopTest test, double speed_m_s);

/// Deceleration, m/s2, asked of one stop from 60 mph after the other while the reserve of a vacuum booster runs out,
/// each at no more than `depletion_pedal_n`: 49 CFR 571.105 Table III, passenger cars with power assist.
std::span<const double> depletion_m_s2();
inline constexpr double depletion_pedal_n = 150 * lbf_n;

}  // namespace sw::physics
