#pragma once
// An electric fuel pump by its own curve, at the volts it really gets.
//
//   Q(p, V) = Q_r(p) - Q_r(0) (1 - V / V_r)
// Q_r flow against the pressure across it at rated volts V_r. It stands for a permanent-magnet motor on a displacement
// pump: speed n = (V - I R) / k, current I = I_0 + c p by the torque, flow Q = D n - g p by what leaks back. All but
// the first term hold no volts, so other volts shift the whole curve in flow, by D V_r / k for the rated volts; what
// D (I_0 R) / k takes from that is left out (some 5 %: with few volts a little too much is said to flow). The pressure
// at which nothing flows sinks with the volts of itself. A pump driven by the engine or at its rated volts: V = V_r.
// Beyond its points the curve goes on straight, by its last secant; nothing flows back (a check valve).
// Source: the machine's equations as in Fitzgerald, Electric Machinery, ch. 7 (from memory); the shift is their sum.
// Range: 0.6 to 1.25 of the rated volts, and inside the points of the curve; outside continued, `valid` false.
//
// The relief valve beside it opens at its pressure and passes the whole free flow a tenth above it (common practice).
#include <optional>

#include "physics/interpolant.hpp"

namespace sw::physics {

inline constexpr double least_volts_share = 0.6, most_volts_share = 1.25;  ///< of the rated volts

class PumpCurve {
 public:
  /// Flow against pressure across the pump, m3/s against Pa. Empty where flow grows with pressure anywhere or the
  /// curve has too few or too many points.
  static std::optional<PumpCurve> make(const Curve& flow_at_pressure);
  /// From one rated point, straight: free_ratio is the flow against no pressure over the rated one.
  static std::optional<PumpCurve> make(double rated_m3_s, double rated_pa, double free_ratio);

  /// Flow, slope to the pressure (never positive); not valid beyond the points.
  struct At {
    double flow_m3_s, slope_m3_s_pa;
    bool inside;
  };
  At at(double pressure_pa) const;
  double free_m3_s() const { return free_m3_s_; }

 private:
  explicit PumpCurve(Interpolant f) : curve_(f) {}
  Interpolant curve_;
  double first_slope_ = 0, last_slope_ = 0, free_m3_s_ = 0;
};

struct PumpFlow {
  double flow_m3_s = 0;      ///< out of the pump's relief-protected outlet; never negative
  double d_pressure = 0;     ///< d flow / d pressure across it
  double d_volts_share = 0;  ///< d flow / d (V / V_r)
  double spilt_m3_s = 0;     ///< what the relief valve sends back
  bool valid = true;
};
/// `relief_pa`: pressure at which its relief valve opens, where it has one.
PumpFlow pump_flow(const PumpCurve& curve, double pressure_pa, double volts_share,
                   std::optional<double> relief_pa = {});
/// The pressure at which it sends nothing on, its relief valve taking all: what a blocked line sees.
double dead_head_pa(const PumpCurve& curve, double volts_share, std::optional<double> relief_pa = {});

}  // namespace sw::physics
