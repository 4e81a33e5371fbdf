#pragma once
// Steps a duty through time: a linearly implicit two-stage scheme of order two (ROS2, Verwer, Spee, Blom and
// Hundsdorfer 1999, SIAM J. Sci. Comput. 20), which keeps its order with any Jacobian, so that one is kept over many
// steps. Steps are cut where a switch moves. The time loop allocates nothing beyond the rows of the trace.
#include "duty/rhs.hpp"
#include "model/trace.hpp"

namespace sw {

struct StepControl {
  double tolerance = 0.02;     ///< local error of a step, in units of each state's scale
  double first_step = 0.25;    ///< s, at the start and after an event
  double longest_step = 60.0;  ///< s
};
StepControl step_control(const Duty& duty);

/// Runs the whole course. `rhs` must have been started. Where it does not come through, the summary says why and the
/// rows up to there stay in the trace.
Trace integrate(Rhs& rhs, const Course& course, const StepControl& control);

}  // namespace sw
