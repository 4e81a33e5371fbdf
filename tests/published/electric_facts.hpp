#pragma once
// What the systems judge by where a published figure of the electrical area has no sum: read from findings and models
// of the hand car.
#include <cmath>
#include <limits>

#include "systems/judged.hpp"

namespace sw::published {

/// The limit of every feed of the car, V; not a number where they differ.
inline double feed_drop() {
  const rig::Judging j(rig::hand_car(), "hot-idle");
  double limit = std::numeric_limits<double>::quiet_NaN();
  for (auto* f : j.of("wiring.feed-drop", "hot-idle")) {
    const double high = f->verdict.high.value();
    if (!std::isnan(limit) && high != limit) return std::numeric_limits<double>::quiet_NaN();
    limit = high;
  }
  return limit;
}

/// The lamps' 12 A over the rating the rule asks for them, %.
inline double load_of_the_asked_fuse() {
  const rig::Judging j(rig::hand_car(), "hot-idle");
  return 100 * 12 / j.one("wiring.fuse-load", "", "headlamps").verdict.predicted.value();
}

/// The usual shape of an alternator's output, its 150 A rated and nothing else known.
inline physics::Interpolant usual_output() {
  Build b = rig::hand_car();
  std::get<charging::Input>(b.inputs).alternator.output_curve.reset();
  return rig::resolved<charging::System>(b).model.output.value();
}
/// Where that shape ends, rpm, and what it gives there, A.
inline double speed_of_rated_current() { return usual_output().last() / rig::rpm; }
inline double current_at_rated_speed() { return usual_output().at(6000 * rig::rpm).value; }

}  // namespace sw::published
