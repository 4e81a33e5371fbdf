#pragma once
// What pedal, lines and brakes give: pressures, forces and the rate at which an axle locks. Blocks, requirements and
// solvers all ask these functions. Rates are shares of gravity; pressures Pa gauge at the master cylinder unless said.
#include "physics/brake_balance.hpp"
#include "quantity/customary.hpp"
#include "systems/brakes/brakes.hpp"

namespace sw::brakes {

/// The car a stop is made with.
struct Stopped {
  physics::Balance balance;
  double weight_n, wheel_radius_m;
  bool laden = false;
};
Stopped stopped(double mass_kg, double front_share, double height_m, double wheelbase_m, double wheel_radius_m,
                bool laden);

/// Pressure at an axle's cylinders.
double cylinder_pressure(const AxleModel& axle, double line_pa, bool laden);
/// Braking force of an axle's two wheels at the road.
double axle_force(const AxleModel& axle, double line_pa, const Stopped& s);
double braking_force(const Model& m, double line_pa, const Stopped& s);
/// Line pressure at which the car brakes with `force_n`.
double line_pressure_for(const Model& m, double force_n, const Stopped& s);

/// Force the booster adds once it has run out; below nothing where its spring is stronger than what vacuum there is.
double assist_at(const Model& m, double vacuum_pa);
/// Pedal to master cylinder and back, with what vacuum stands in the booster.
double pressure_at_pedal(const Model& m, double pedal_n, double vacuum_pa);
double pedal_at_pressure(const Model& m, double line_pa, double vacuum_pa);

/// What each axle uses of its grip at a line pressure, and the rate there; not valid where an axle has left the road.
struct Use {
  double rate, front, rear;
  bool valid;
};
Use use_at(const Model& m, double line_pa, const Stopped& s);
/// The first axle to lock as the line pressure rises on a road of that adhesion, at which rate, and what the other uses
/// of it then.
struct Lock {
  double rate, line_pa, other_use;
  bool rear;
};
Lock first_lock(const Model& m, double adhesion, const Stopped& s);

/// Adhesion the front uses less that of the rear, at its least between two rates: below nothing the rear locks first
/// somewhere between them.
struct Order {
  double least, rate, line_pa;
};
inline constexpr double lowest_rate = 0.15, highest_rate = 0.80;  ///< 49 CFR 571.135 S7.2; UN R13-H annex 5
Order lock_order(const Model& m, const Stopped& s, double low = lowest_rate, double high = highest_rate);

/// The rate reached at that pedal force, or where the first axle locks on a dry road.
double rate_at_pedal(const Model& m, double pedal_n, double vacuum_pa, const Stopped& s);

/// Stop at a rate, 0.10 V m (V in km/h) before it among it: what the rules allow for response and build-up.
double stop_m(double speed_m_s, double rate);

}  // namespace sw::brakes
