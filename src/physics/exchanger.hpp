#pragma once
// Heat exchangers by effectiveness and number of transfer units (NTU).
//
//   eff = q / (C_min (T_hot,in - T_cold,in)),   N = UA / C_min,   C = C_min / C_max   (C = m c_p, W/K)
//   counterflow             (1 - e) / (1 - C e),  e = exp(-N (1 - C));   N / (1 + N) at C = 1
//   parallel                (1 - exp(-N (1 + C))) / (1 + C)
//   crossflow, unmixed      1/(C N) sum_n P_n(N) P_n(C N),  P_n(x) = 1 - exp(-x) sum_{m<=n} x^m / m!   (exact)
//   crossflow, C_max mixed  (1/C) (1 - exp(-C (1 - exp(-N))))
//   crossflow, C_min mixed  1 - exp(-(1/C) (1 - exp(-C N)))
//   one-term crossflow      1 - exp(N^0.22 / C (exp(-C N^0.78) - 1)): unmixed; up to 4 % below the
//                          series (near N 0.3, C 1). The series costs a third more and is used in time loops too.
// At C -> 0 all become 1 - exp(-N); the code is smooth there and at C = 1.
// Range: N >= 0 (the series up to 500), 0 <= C <= 1. Outside `valid` is false and the value is 0.
// Source: Kays and London, Compact Heat Exchangers, 3rd ed., ch. 2; the series: Mason, Proc. 2nd US Natl. Congress of
// Applied Mechanics (1954) 801-803; the one-term formula: Incropera, Fundamentals of Heat and Mass Transfer, eq. 11.32
// (numbers of pages and equations from memory).
#include "physics/law.hpp"

namespace sw::physics {

enum class Arrangement { counterflow, parallel, crossflow_unmixed, crossflow_max_mixed, crossflow_min_mixed };

struct Effectiveness {
  double value = 0;
  double d_ntu = 0;    ///< d value / d N
  double d_ratio = 0;  ///< d value / d C
  bool valid = true;
};
Effectiveness effectiveness(Arrangement arrangement, double ntu, double capacity_ratio);
Effectiveness crossflow_one_term(double ntu, double capacity_ratio);

/// Conductance of a core by its face speed: UA = UA_1 (v / v_1)^n, slope d UA / d v. The air's side governs in a
/// radiator and goes with about the 0.4th to 0.5th power of speed for louvred fins (Kays and London, ch. 10, from
/// memory); n and (v_1, UA_1) are the core's. Range: creeping to 30 m/s of face speed, where louvres 1.2 mm apart come
/// to the end of what was measured, a Reynolds number of 3000 (Chang and Wang 1997, from memory); the power continues
/// outside it.
inline constexpr double slowest_face_m_s = 0.05, fastest_face_m_s = 30;
Slope core_conductance(double rated_w_k, double rated_face_m_s, double exponent, double face_m_s);

/// N that gives `eff`; not valid where no exchanger of that arrangement reaches it.
struct Ntu {
  double value = 0;
  bool valid = true;
};
Ntu ntu_for(Arrangement arrangement, double eff, double capacity_ratio);

/// Logarithmic mean of the temperature differences at the two ends (counterflow or parallel), K.
/// Not valid (and 0) where a difference is zero or the two have opposite signs: the streams would cross.
struct MeanDifference {
  double value_k = 0;
  bool valid = true;
};
MeanDifference log_mean_difference(double difference_a_k, double difference_b_k);

}  // namespace sw::physics
