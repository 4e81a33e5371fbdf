#pragma once
// What an alternator asks of its belt, and what it can give.
//
// Shaft power P = V I / efficiency (50 to 65 % is common practice for claw-pole machines), torque P / w.
// Output, from a sheet's three points: no current below the cut-in speed, then I = I_end (1 - exp(-(w - w_0)/w_1)), the
// shape every claw-pole curve has (stator reactance rises with speed); w_1 fitted to one further point of the data
// sheet (from memory: form used in vehicle network studies). Rated current is stated at 6000 rpm and 13.5 V (ISO 8854,
// from memory). A sheet's own curve is held beyond its last point: a machine gives no less there, its current nears a
// ceiling. Hot output is less: a straight line in the winding's temperature through the data sheet's cold and hot
// points, both at full output. Speeds are the rotor's, rad/s.
#include <optional>

#include "physics/law.hpp"

namespace sw::physics {

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

/// The two points of a data sheet: the winding's temperature cold and hot, and output hot over output cold.
struct HotLine {
  double cold_k, hot_k, share;
};
/// Air of the cold and of the hot point, and the winding's rise above it at full output: 23 and 95 degC, 75 K; 0.80 of
/// the cold output hot, so about -0.28 % a kelvin (common practice; a marine engine's manual has 0.82, see the test).
inline constexpr double usual_cold_air_k = 296.15, usual_hot_air_k = 368.15, usual_winding_rise_k = 75;
inline constexpr HotLine usual_hot_line{usual_cold_air_k + usual_winding_rise_k, usual_hot_air_k + usual_winding_rise_k,
                                        0.80};
/// Output over the cold point's: 1 - (1 - share) (T - cold) / (hot - cold). Range: up to the temperature at which a
/// fifth is left (alternator_hottest_k), held and not valid beyond. A cold winding is held at a fifth above its sheet,
/// which is the careful side. slope: d factor / d T.
double alternator_hottest_k(const HotLine& line);
Slope alternator_hot_factor(const HotLine& line, double winding_k);

struct AlternatorOutput {
  double current_a, slope_a_s;
};  ///< slope: d current / d rotor speed, A per rad/s
AlternatorOutput alternator_output(const AlternatorCurve& curve, double rotor_speed_rad_s,
                                   double winding_k = usual_hot_line.cold_k, const HotLine& line = usual_hot_line);

}  // namespace sw::physics
