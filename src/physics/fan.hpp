#pragma once
// Fans before a core: fan laws, and the balance of fans, core and road.
//
// Fan laws (one fan, one density): flow with speed, pressure with its square, power with its cube (any fan engineering
// text). A fan that gives the face speed v_i before its core and v_0 = r v_i blowing free has, at share s of its speed,
//   dp = dp_0 s^2 - (dp_0 / v_0^2) v^2,   dp_0 (1 - 1/r^2) = k v_i^2,
// k v^2 being the core's loss. The road adds k R^2: R is the face speed it leaves with fans that turn freely. All are
// squares, so the balance is closed; k and the air's density stand in all terms alike and drop out:
//   v^2 = F^2 - B^2 + (1 - 1/r^2) R^2,
// F and B the face speeds that the fans with and against the travel give standing, at their present speed. Fans side by
// side add flow: their face speeds add up to F. Beyond its free flow a fan with the travel gives no pressure more and
// is carried along, as it is switched off; what that costs is in R, so R is the least there is. One that blows against
// the travel has no such ease. Range: r > 1, fans of one design; where both ways blow at once the sum is still taken
// and `valid` is false.
#include <span>

#include "physics/law.hpp"

namespace sw::physics {

struct FanBalance {
  double forward_m_s, backward_m_s;  ///< F, B >= 0
  double ram_m_s;                    ///< R >= 0
  double free_ratio;                 ///< r
};
struct FaceSpeed {
  double value_m_s = 0;  ///< positive with the travel
  double d_forward = 0, d_ram = 0;
  double ram_part = 0;  ///< of the pressure that drives air with the travel, what the road gives; 0..1
  bool carried = false;
  bool valid = true;
};
FaceSpeed face_speed(const FanBalance& in);

/// A fan by its own curve, dp = p_0 - a v^2, v being its flow over the core's face.
struct FanCurve {
  double shut_off_pa;  ///< p_0
  double slope;        ///< a, Pa/(m/s)2
  bool valid = true;   ///< false where pressure does not fall with flow
};
/// By least squares in v^2, from two points or more.
FanCurve fan_curve(std::span<const double> face_m_s, std::span<const double> pressure_pa);
/// Fans side by side meet one pressure and add flow, so where p_0 are alike 1/sqrt(a) add; else p_0 is weighed by them.
FanCurve side_by_side(const FanCurve& one, const FanCurve& other);
/// Installed on a core of loss k: p_0 - a v^2 = k v^2.
struct Installed {
  double face_m_s;
  double free_ratio;  ///< free face speed over the installed one
  double d_loss;      ///< d face speed / d k
};
Installed fan_on_core(const FanCurve& fan, double core_loss);

/// Share of its rated speed that a fan's motor turns at other volts: V / V_rated, none with its poles changed. A
/// motor's back e.m.f. goes with speed and takes the same share of the volts where its current goes with them, as fan
/// motors are reckoned in the network (permanent magnets or a saturated field; Fitzgerald, Electric Machinery). slope:
/// d share / d V.
Slope fan_speed_share(double volts, double rated_v);
/// Power at a share of rated speed: its cube. slope: d power / d share.
Slope affinity_power(double rated_w, double speed_share);

}  // namespace sw::physics
