#pragma once
// A series-wound starter motor against the engine it turns.
//
// Motor: V = E + I R, E = c I w (unsaturated field), torque at its shaft T = c I^2. Sized by two points of its data
// sheet: stall (V_s, I_s, T_s) gives R = V_s / I_s and c = T_s / I_s^2. Above `saturation_a` the flux stays: E = c
// I_sat w and T = c I_sat I (Fitzgerald, Electric Machinery, series motor; the straight saturation is a
// simplification). Engine: friction torque at cranking, mostly oil shear, rises in the cold with the oil's viscosity.
// Starter and engine turn in the ratio of ring gear to pinion teeth (common practice 9:1 to 18:1, reduction gear in).
#include "physics/law.hpp"

namespace sw::physics {

struct Starter {
  double resistance_ohm;     ///< brushes and windings, at its temperature
  double torque_per_a2_n_m;  ///< c
  double saturation_a = 1e9;
  double ratio = 12;  ///< motor turns an engine turn
  double gear_efficiency = 0.85;
};
Starter starter_from_stall(double stall_v, double stall_a, double stall_torque_n_m, double ratio);

struct StarterPoint {
  double current_a;
  double slope_s;            ///< d current / d terminal voltage at that engine speed
  double engine_torque_n_m;  ///< at the crankshaft
};
/// At terminal voltage and engine speed (rad/s).
StarterPoint starter_at(const Starter& starter, double volts, double engine_speed_rad_s);

/// Walther (ASTM D341): log10 log10 (v + 0.7) = A - B log10 T, v in mm2/s, T in K. m2/s in and out.
double oil_viscosity_m2_s(double temperature_k, double viscosity_40c_m2_s, double viscosity_100c_m2_s);

/// How much harder an engine is to crank with its oil at T than at 20 degC: (viscosity at T over at 20 degC)^0.25.
/// The exponent is that of the trade's table of what cranking asks over 80 degF (common practice): 155 % at 32 degF,
/// 210 at 0 degF, 350 at -20 degF (a garage's page on battery replacement, read in a stored copy; it names no origin),
/// and 200 to 250 % of the current at 0 degF (quality-on.blogspot.com, Battery testing, February 2011, stored copy).
/// With a 15W-40 of 110 and 14.5 mm2/s the law gives 158, 241 and 336 %. The theory of a bearing at one speed says half
/// power and more; but the engine then turns slower, which shears its oil less. Range: -29 degC, where the table ends,
/// to 100 degC, the oil's second point; beyond, the end is held. slope: d factor / d T.
inline constexpr double crank_viscosity_power = 0.25, coldest_crank_k = 244.15, warmest_crank_k = 373.15;
inline constexpr double crank_reference_k = 293.15;
Slope crank_factor(double oil_temperature_k, double viscosity_40c_m2_s, double viscosity_100c_m2_s);
/// Torque to crank, N m: mean effective friction pressure x displacement / (4 pi) x that factor. At 20 degC about 1.5
/// bar for a petrol engine (common practice). slope: d torque / d oil temperature.
Slope cranking_torque(double displacement_m3, double oil_temperature_k, double viscosity_40c_m2_s,
                      double viscosity_100c_m2_s, double friction_20c_pa = 1.5e5);

/// Speed of a motor whose flux stays, from one known point: w = w_1 (V - I R) / (V_1 - I_1 R), never below 0 (E = c
/// I_sat w, as above). slope: d speed / d V. Not valid (and 0) where the known point has no back e.m.f.
struct MotorPoint {
  double volts, current_a, speed_rad_s;
};
Slope motor_speed(const MotorPoint& known, double resistance_ohm, double volts, double current_a);

struct CrankPoint {
  double engine_speed_rad_s, current_a, volts;
  bool turns;
};
/// Speed at which a starter on a battery (emf behind battery and cable resistance) holds the engine's torque.
CrankPoint crank(const Starter& starter, double emf_v, double resistance_ohm, double engine_torque_n_m);

}  // namespace sw::physics
