#pragma once
// How braking shifts weight forward, and which axle locks first under a fixed division of the braking force.
//
// Symbols: L wheelbase, a centre of gravity behind the front axle, h its height, z deceleration over g (rolling
// included), f rolling resistance over weight, k adhesion, p front share of the braking force.
//   front share of the weight   w(z) = (L - a + h z) / L
//   adhesion an axle uses       k_f = p (z - f) / w,  k_r = (1 - p) (z - f) / (1 - w)
//   rate at which an axle by itself reaches k: front z = (k (L - a)/L + p f) / (p - k h/L),
//                                              rear  z = (k a/L + (1 - p) f) / (1 - p + k h/L)
//   ideal share                 w(k + f): both axles use k
//   both lock together          z = (p L - (L - a)) / h, whatever the adhesion
// Sources: Limpert, Brake Design and Safety, ch. on straight-line braking (there with the rear shares); Mannering and
// Washburn, Principles of Highway Engineering, ch. 2 (both from memory). Level road, no lift from the air, no pitch.
// Range: 0 <= z <= a/h, where the rear wheels leave the road; continued beyond.
//
// Adhesion line: the least rate a car must reach at an adhesion, z = 0.1 + s (k - 0.2), 0.2 <= k <= 0.8; s = 0.7 in
// UN R13-H Annex 5, 0.85 in Directive 71/320/EEC (both from memory).
#include <optional>

#include "physics/law.hpp"

namespace sw::physics {

struct Balance {
  double wheelbase_m, cg_behind_front_m, cg_height_m;
};
/// slope: d share / d rate.
Slope front_weight_share(const Balance& car, double rate);
inline Slope ideal_front_share(const Balance& car, double adhesion, double rolling = 0) {
  return front_weight_share(car, adhesion + rolling);
}

struct AdhesionUse {
  double front, rear;              ///< adhesion each axle needs at the rate
  double front_slope, rear_slope;  ///< d / d rate
  bool valid;                      ///< both axles are on the road
};
AdhesionUse adhesion_use(const Balance& car, double front_share, double rate, double rolling = 0);

/// The rate at which an axle by itself reaches the adhesion; empty where it never does. slope: d rate / d adhesion.
std::optional<Slope> front_lock_rate(const Balance& car, double front_share, double adhesion, double rolling = 0);
std::optional<Slope> rear_lock_rate(const Balance& car, double front_share, double adhesion, double rolling = 0);
/// The rate at which both lock together; empty where below 0 (the rear always locks first).
std::optional<double> both_lock_rate(const Balance& car, double front_share);

enum class AdhesionLine { un_r13h, eec_71_320 };
inline constexpr double adhesion_line_from = 0.2, adhesion_line_to = 0.8;
/// Least rate at that adhesion. slope: d rate / d adhesion.
Slope adhesion_line_rate(AdhesionLine line, double adhesion);
/// The adhesion at which a rate is the least allowed. slope: d adhesion / d rate.
Slope adhesion_line_adhesion(AdhesionLine line, double rate);

}  // namespace sw::physics
