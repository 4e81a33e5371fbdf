#pragma once
// Every solver's entry; solvers.cpp puts them in order.
#include "solve/solver.hpp"

namespace sw {

extern const Solver proportioning;  ///< knee (and slope) of the rear's reducing valve
extern const Solver pedal_ratio;    ///< ratio at which force and travel both hold
extern const Solver shims;          ///< stacks under every bracket
extern const Solver stack;          ///< shims that centre what is left of a stack's space
extern const Solver belt_length;    ///< length to order
extern const Solver fan_set_points;
extern const Solver wires;           ///< sizes and fuses of every wire
extern const Solver ground_points;   ///< where each load is grounded, and how thick the ground runs are
extern const Solver sender_match;    ///< resistors between sender and gauge
extern const Solver gauge_table;     ///< table to key into a cluster
extern const Solver tube_bends;      ///< bend card and cut length of every tube
extern const Solver cut_list;        ///< which tube is cut from which stick
extern const Solver flat_pattern;    ///< strips that brackets are bent from
extern const Solver steering_phase;  ///< yokes of the steering shaft
extern const Solver kick_down;       ///< hole for the throttle-valve cable
extern const Solver bolt_torque;     ///< of bolted joints

}  // namespace sw
