#pragma once
// Foot to fluid: pedal, vacuum booster, master cylinder.
//
// Pressure: p = (F r + B) / (pi d^2 / 4), F at the pedal, r pedal ratio, B what the booster adds, d master bore
// (Pascal). Return spring and efficiency of the pedal are taken into B or left out.
// Booster: run-out assist A = e (vacuum x all diaphragm areas) - spring. Up to the knee the output is gain x input;
// from the knee, input A / (gain - 1), on it is input + A. Falling vacuum lowers A and so the knee; without vacuum
// output is input. Common theory of the vacuum booster; Limpert, Brake Design and Safety, ch. on brake boosters (from
// memory). The jump-in force at the start of assist is left out.
#include <span>

#include "physics/law.hpp"

namespace sw::physics {

/// slope: d pressure / d pedal force.
Slope line_pressure_pa(double pedal_force_n, double pedal_ratio, double bore_m, double boost_n = 0);

/// Of diaphragms by their effective diameters.
double booster_area_m2(std::span<const double> diameters_m);
/// Force added at run-out, never below 0. slope: d force / d vacuum.
Slope booster_assist_n(double vacuum_pa, double area_m2, double efficiency = 1, double spring_n = 0);
/// Push-rod force from the pedal at run-out. Gain above 1.
Slope booster_knee_n(double assist_n, double gain);

struct BoosterForce {
  double force_n;       ///< at the master cylinder, or at the pedal's push rod
  double slope;         ///< d output / d input, or its inverse
  double assist_slope;  ///< d force / d run-out assist
  bool run_out;
};
/// What reaches the master for a push-rod force.
BoosterForce booster_output(double input_n, double gain, double assist_n);
/// What the push rod must give for a force at the master.
BoosterForce booster_input(double output_n, double gain, double assist_n);

}  // namespace sw::physics
