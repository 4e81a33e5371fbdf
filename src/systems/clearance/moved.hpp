#pragma once
// How the engine stands as against where it was when gaps were measured, by the mounts' ports, and reading them.
#include <cmath>

#include "model/requirement.hpp"
#include "model/told.hpp"

namespace sw::clearance {

struct EngineMoved {
  double front_rise_m = 0, pitch_rad = 0, intake_raised_m = 0;
  /// How far it rises `ahead_m` in front of the front mounts.
  double rise_m(double ahead_m) const { return front_rise_m - ahead_m * std::tan(pitch_rad); }
  bool at_all() const { return front_rise_m != 0 || pitch_rad != 0; }
};

enum Need { n_rise, n_pitch, n_intake, need_count };
inline constexpr Port needs[] = {
    {"mounts.front_rise", &kind::length}, {"mounts.pitch", &kind::angle}, {"mounts.intake_raised", &kind::length}};
static_assert(std::size(needs) == need_count);
/// What is not the engine's does not ask how it stands.
inline constexpr std::size_t engine_may_lack = 0;

inline bool engine_known(const Evidenced& run) {
  return !run.lacks(n_rise) && !run.lacks(n_pitch) && !run.lacks(n_intake);
}
inline EngineMoved moved_in(const Evidenced& run) {
  if (!engine_known(run)) return {};
  return {.front_rise_m = run.at(0, n_rise), .pitch_rad = run.at(0, n_pitch), .intake_raised_m = run.at(0, n_intake)};
}

}  // namespace sw::clearance
