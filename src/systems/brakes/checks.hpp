#pragma once
// What each requirement of the brakes reads and how it is judged. The tables of them are requirements.cpp (what a stop
// shows) and parts_table.cpp (what fits what); the evaluations stand in stop_requirements.cpp, failed_requirements.cpp
// (something lost), stroke_requirements.cpp and parts_requirements.cpp. Tables of their own beside their evaluations:
// engine_off_requirements.cpp and heat_requirements.cpp.
#include "model/outside.hpp"
#include "model/told.hpp"
#include "systems/brakes/effort.hpp"

namespace sw::brakes {

inline constexpr Port radius_port{"driveline.wheel_radius", &kind::length, "in"};
inline constexpr Port vacuum_port{"vacuum.booster", &kind::vacuum, "inHg"};
inline constexpr Port line_port{"brakes.line_pressure", &kind::gauge_pressure, "psi", "line pressure"};
inline constexpr Port pedal_port{"brakes.pedal", &kind::force, "lbf", "force on the pedal"};

/// Ports of every requirement that looks at the car on the road; those that ask how hard the foot presses read all,
/// those of balance all but vacuum and pedal: a car without a booster has its pedal's figures without any vacuum.
namespace road {
enum Need {
  n_mass,
  n_share,
  n_height,
  n_wheelbase,
  n_laden,
  n_laden_mass,
  n_laden_share,
  n_laden_height,
  n_radius,
  n_acceleration,
  n_line,
  balance_count,
  n_vacuum = balance_count,
  n_pedal,
  need_count
};
inline constexpr Port ports[] = {{"vehicle.mass", &kind::mass},
                                 {"vehicle.front_share", &kind::number},
                                 {"vehicle.centre_height", &kind::length},
                                 {"vehicle.wheelbase", &kind::length},
                                 {"vehicle.laden", &kind::number},
                                 {"vehicle.laden_mass", &kind::mass},
                                 {"vehicle.laden_front_share", &kind::number},
                                 {"vehicle.laden_centre_height", &kind::length},
                                 radius_port,
                                 outside::acceleration,
                                 line_port,
                                 vacuum_port,
                                 pedal_port};
static_assert(std::size(ports) == need_count);
inline constexpr std::span<const Port> balance{ports, balance_count}, foot{ports};

/// The car of a row, as driven or laden.
Stopped car_at(const Evidenced& run, std::size_t row, bool laden);
bool laden_known(const Evidenced& run);
/// Whether what the foot does can be told: with a booster all that hangs on it, without one the pedal's own figures.
bool foot_known(const Model& m, const Evidenced& run);
/// The row with the least vacuum among those that brake; where none does the last: the stop after a wait.
std::size_t weakest_row(const Evidenced& run);
/// The row of hardest braking.
std::size_t hardest_row(const Evidenced& run);
}  // namespace road

inline const Model& of(const void* model) { return *static_cast<const Model*>(model); }
/// A rate of braking, a share of gravity, as a line of a because-list.
inline Because told_rate(std::string what, double rate) {
  return told(std::move(what), rate * standard_gravity_m_s2, kind::acceleration, "g");
}
/// `format` with two figures in it.
std::string words(const char* format, double a, double b = 0);
/// Notes the paths of what is missing; true where nothing is.
bool all_given(std::initializer_list<const Known*> needed, Verdict& v);
/// Whether that rate is where the first axle locks on a dry road, and what helps then: no foot stops it shorter.
bool locks_at(const Model& m, double rate, const Stopped& s);
inline constexpr const char* better_balance =
    "an axle locks there: braking force moved to the axle that has grip left (the valve's knee, `solve proportioning`; "
    "one that feels the load), tyres that grip better; more vacuum or pressure does nothing";
/// Whether there is a booster to look at; where nobody said, a verdict that asks.
bool has_booster(const Model& m, std::vector<Verdict>& out);
/// Both axles by name.
template <class F>
void each_axle(const Model& m, F&& look) {
  look("front", m.front);
  look("rear", m.rear);
}

/// What a service stop of 49 CFR 571.135 is judged at: S7.5 to S7.14, greatest force of the foot and speed.
inline constexpr double panic_n = 500, hundred_km_h_m_s = 100 / 3.6;

/// A hard stop on a good road, g: what a leg is judged at, and what sweeps the whole of a booster.
inline constexpr double hard_rate = 0.8;
/// Its S7.12: a grade held by hand or foot.
inline constexpr double parking_grade = 0.20, parking_hand_n = 400, parking_foot_n = 500;

using Evaluate = void(const void* model, const Evidenced& run, std::vector<Verdict>& out);

// What a stop shows.
Evaluate pedal_force, lock_order_verdicts, adhesion_use_verdicts, stopping_distance, lamp, line_pressure;
// What is left when something fails, and standing.
Evaluate booster_failed, circuit_lost, travel_lost, parking;
// Where the stroke goes.
Evaluate master_stroke, chamber_stroke, pedal_height, drain_back, trapped_pressure;
// What fits what.
Evaluate rod_gap, rod_angle, reservoir, residual_disc, residual_drum, reducing_valves, difference_warning, fluid_mix,
    hose_slack, circuits;

std::span<const Requirement> stop_requirements();
std::span<const Requirement> engine_off_requirements();
std::span<const Requirement> parts_requirements();

}  // namespace sw::brakes
