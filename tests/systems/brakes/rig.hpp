#pragma once
// The hand car's brakes by themselves, and the car they stop.
#include "systems/brakes/travel.hpp"
#include "systems/judged.hpp"

namespace sw::rig {

inline constexpr double psi = 6894.757293168, in2 = inch * inch, in3 = inch * in2, in_hg = 3386.389;

/// Its brakes, changed.
inline brakes::Model hand_brakes(const std::string& change = "") {
  const Build build = hand_car(change);
  return resolved<brakes::System>(build).model;
}

/// 3700 lb, 54 % on the front, 21 in high, 110 in long, 13 in wheels: the hand car's own figures.
inline brakes::Stopped hand_stop() {
  return brakes::stopped(3700 * pound, 0.54, 21 * inch, 110 * inch, 13 * inch, false);
}

/// What the hand car is judged in a stop.
inline Judging stopping(const std::string& change) { return Judging(hand_car(change), "panic-stop"); }

}  // namespace sw::rig
