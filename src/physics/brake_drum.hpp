#pragma once
// A long shoe on a fixed pivot inside a drum (Shigley, Mechanical Engineering Design, internal expanding rim brakes;
// from memory, worked out anew). Pressure on the lining grows as the sine of the angle from the pivot, p = p_a sin t /
// sin t_a; rigid shoe and drum, friction steady.
//   friction moment  M_f = f p_a b r / sin t_a  [-r cos t - a/2 sin^2 t]  from t1 to t2
//   normal moment    M_N = p_a b r a / sin t_a  [t/2 - sin 2t / 4]
//   force            F = (M_N -+ M_f) / c, minus for the leading shoe; torque T = f p_a b r^2 (cos t1 - cos t2)/sin t_a
// The trailing shoe at the same force has the peak pressure p_a (M_N - M_f) / (M_N + M_f).
// Symbols: r drum radius, b lining width, f friction, t1 and t2 lining ends from the pivot, t_a angle of the peak
// pressure (90 deg where the lining reaches it, else t2), a pivot to drum centre, c pivot to the line of force. A
// leading shoe whose M_f reaches M_N grabs by itself: no force holds it back, not valid.
#include "physics/law.hpp"

namespace sw::physics {

struct DrumShoe {
  double radius_m, width_m, friction, start_rad, end_rad, peak_rad, pivot_radius_m, lever_m;
};
struct DrumShoeForce {
  double force_n;                                      ///< that gives the leading shoe its peak pressure
  double leading_n_m, trailing_n_m;                    ///< torques at that force
  double leading_torque_per_n, trailing_torque_per_n;  ///< d torque / d force, m
  bool valid;                                          ///< false: the leading shoe grabs
};
DrumShoeForce drum_shoe(const DrumShoe& shoe, double peak_pressure_pa);

}  // namespace sw::physics
