#pragma once
// An ignition coil filled anew for every spark: resistance and inductance in series with a ballast and a switch that
// keeps some volts for itself and may hold the current at a limit.
//
// Rise: i = (V - u)/R (1 - exp(-t R/L)), R coil and ballast together, u the switch's drop, t the time it is closed;
// held at the limit once that is reached, what is left of the volts then falling on the switch. Energy L i^2 / 2
// (physics/engine has both for one coil alone; any text on RL circuits, for example Fitzgerald, Basic Electrical
// Engineering, from memory). Over a period T, with I = (V - u)/R and a = L/R:
//   closed charge Q = I (t - a (1 - e^{-t/a})), closed square S = I^2 (t - 2 a (1 - e^{-t/a}) + a/2 (1 - e^{-2t/a})),
// to both of which a limit i adds i (t - t_i) and i^2 (t - t_i). Mean current Q/T, heat of a resistance r is r S/T,
// heat of the switch (u Q + (V - u - i R) i (t - t_i))/T. Iron loss and saturation are left out: a coil driven past its
// rated current stores less than this.
#include "physics/law.hpp"

namespace sw::physics {

struct CoilCircuit {
  double inductance_h;
  double coil_ohm;
  double ballast_ohm = 0;
  double drop_v = 0;     ///< of the switch
  double limit_a = 1e9;  ///< at which the switch holds the current
};

struct CoilRise {
  double current_a = 0;
  double energy_j = 0;     ///< L i^2 / 2
  double slope_time = 0;   ///< d current / d time
  double slope_volts = 0;  ///< d current / d volts
  bool held = false;       ///< at the switch's limit
  double held_from_s = 0;  ///< after which it is; the closed time where it never is
};
/// After `closed_s` on `volts`. No current where the volts do not exceed the switch's drop.
CoilRise coil_rise(const CoilCircuit& circuit, double volts, double closed_s);

/// Means over a period in which the switch is closed once for that time.
struct CoilHeat {
  double mean_a = 0, coil_w = 0, ballast_w = 0, switch_w = 0;
};
CoilHeat coil_heat(const CoilCircuit& circuit, double volts, double closed_s, double period_s);

/// The same with the switch closed for good.
CoilHeat coil_standing(const CoilCircuit& circuit, double volts);

/// Time between the sparks of one coil in a four-stroke engine: 4 pi / (speed x sparks in two turns). slope: d / d
/// speed.
Slope spark_period_s(double engine_speed_rad_s, double sparks_in_two_turns);

}  // namespace sw::physics
