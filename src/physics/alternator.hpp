#pragma once
// What an alternator asks of its belt, and what it can give.
//
// Shaft power P = V I / efficiency (50 to 65 % is common practice for claw-pole machines), torque P / w.
// Output: no current below the cut-in speed, then I = I_end (1 - exp(-(w - w_0)/w_1)), the shape every claw-pole curve
// has (stator reactance rises with speed); w_1 fitted to one further point of the data sheet (from memory: form used in
// vehicle network studies). Hot output is less: -0.2 % a kelvin over the data sheet's 25 degC machine (common practice,
// about 15 to 20 % at 100 degC). Rated current is stated at 6000 rpm and 13.5 V (ISO 8854, from memory).
// Speeds are the rotor's, rad/s.
#include <optional>

namespace sw::physics {

inline constexpr double rated_rotor_speed_rad_s = 6000 * 0.10471975511965977;

struct ShaftLoad {
  double power_w, torque_n_m, torque_slope_n_m_a;
};  ///< slope: d torque / d current
/// Torque is 0 at standstill, where nothing is generated either.
ShaftLoad alternator_load(double volts, double current_a, double efficiency, double rotor_speed_rad_s);

struct AlternatorCurve {
  double cut_in_rad_s, end_a, bend_rad_s;
};
/// Through zero at the cut-in speed, (idle speed, idle current) and (rated speed, rated current). Empty where no curve
/// of this shape passes through them: speeds out of order, or the idle point not above the straight line to the rated.
std::optional<AlternatorCurve> alternator_curve(double cut_in_rad_s, double idle_speed_rad_s, double idle_a,
                                                double rated_speed_rad_s, double rated_a);
struct AlternatorOutput {
  double current_a, slope_a_s;
};  ///< slope: d current / d rotor speed, A per rad/s
AlternatorOutput alternator_output(const AlternatorCurve& curve, double rotor_speed_rad_s, double machine_k = 298.15);

}  // namespace sw::physics
