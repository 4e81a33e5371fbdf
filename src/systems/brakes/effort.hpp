#pragma once
// What pedal, lines and brakes give: pressures, forces and the rate at which an axle locks. Blocks, requirements and
// solvers all ask these functions. Rates are shares of gravity; pressures Pa gauge at the master cylinder unless said.
#include "physics/load_transfer.hpp"
#include "systems/brakes/brakes.hpp"

namespace sw::brakes {

inline constexpr double gravity_m_s2 = 9.80665;
inline constexpr double psi_pa = 6894.757293168, lbf_n = 4.4482216152605, inch_m = 0.0254;

/// The car a stop is made with.
struct Stopped {
  physics::CarOnAxles car;
  double wheel_radius_m;
  bool laden = false;
};

/// Pressure at an axle's cylinders.
double cylinder_pressure(const AxleModel& axle, double line_pa, bool laden);
/// Braking force of an axle's two wheels at the road.
double axle_force(const AxleModel& axle, double line_pa, const Stopped& s);
double braking_force(const Model& m, double line_pa, const Stopped& s);
/// Line pressure at which the car brakes with `force_n`.
double line_pressure_for(const Model& m, double force_n, const Stopped& s);

/// Pedal to master cylinder and back, with what vacuum stands in the booster.
double pressure_at_pedal(const Model& m, double pedal_n, double vacuum_pa);
double pedal_at_pressure(const Model& m, double line_pa, double vacuum_pa);

/// What each axle uses of its grip at a line pressure.
physics::AdhesionUse use_at(const Model& m, double line_pa, const Stopped& s);
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

/// Mean rate that a stop within S = 0.10 V + k V^2 asks (V km/h, S m): 1 / (25.92 k) m/s2; and the stop of a rate.
inline constexpr double lost_m_h_km = 0.10;
double stop_m(double speed_m_s, double rate);

}  // namespace sw::brakes
