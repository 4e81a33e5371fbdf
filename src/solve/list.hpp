#pragma once
// Every solver's entry; solvers.cpp puts them in order.
#include "solve/solver.hpp"

namespace sw {

extern const Solver proportioning;  ///< knee (and slope) of the rear's reducing valve
extern const Solver pedal_ratio;    ///< ratio at which force and travel both hold
extern const Solver shims;          ///< stacks under every bracket
extern const Solver belt_length;    ///< length to order
extern const Solver fan_set_points;
extern const Solver wires;           ///< sizes and fuses of every wire
extern const Solver ground_points;   ///< where each load is grounded, and how thick the ground runs are
extern const Solver sender_match;    ///< resistors between sender and gauge
extern const Solver gauge_table;     ///< table to key into a cluster
extern const Solver steering_phase;  ///< yokes of the steering shaft
extern const Solver kick_down;       ///< hole for the throttle-valve cable
extern const Solver bolt_torque;     ///< of bolted joints

}  // namespace sw
