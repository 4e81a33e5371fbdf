#pragma once
// Where the pedal's travel goes, in the whole system and with one circuit lost.
#include "systems/brakes/effort.hpp"

namespace sw::brakes {

inline constexpr double judged_pa = 900 * psi_pa;  ///< pressure at which strokes are judged (common practice)

/// Fluid an axle takes up, m3, and what the whole of it gives, m3/Pa.
physics::Uptake uptake_of(const AxleModel& axle);
double taken_m3(const AxleModel& axle, double line_pa, bool laden);

/// Stroke of the push rod at a line pressure, m.
double stroke_at(const Model& m, double line_pa);
/// Line pressure reached by a stroke; 0 while nothing touches yet.
double pressure_at_stroke(const Model& m, double stroke_m);

/// Strokes of the two chambers: that of the front (or of one diagonal), and the other.
struct Chambers {
  double first_m, second_m;
};
Chambers chambers(const Model& m);
/// What the chambers need at a line pressure.
Chambers chambers_at(const Model& m, double line_pa, bool laden = false);

enum class Lost { first, second };
/// The brakes with a circuit lost: valves that open for it out of the line of what is left.
Model without(const Model& m, Lost lost);
/// Braking force left at a line pressure.
double force_left(const Model& m, Lost lost, double line_pa, const Stopped& s);
/// Line pressure at which what is left brakes with that force; empty where it never does.
std::optional<double> pressure_left_for(const Model& m, Lost lost, double force_n, const Stopped& s);
/// Push-rod stroke then: the lost chamber runs through, the other builds pressure.
double stroke_left_at(const Model& m, Lost lost, double line_pa, bool laden = false);
/// The rate at which what is left locks its axle on a dry road.
double lock_left(const Model& m, Lost lost, const Stopped& s);

}  // namespace sw::brakes
