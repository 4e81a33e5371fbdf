#pragma once
// A series-wound starter motor against the engine it turns.
//
// Motor: V = E + I R, E = c I w (unsaturated field), torque at its shaft T = c I^2. Sized by two points of its data
// sheet: stall (V_s, I_s, T_s) gives R = V_s / I_s and c = T_s / I_s^2. Above `saturation_a` the flux stays: E = c
// I_sat w and T = c I_sat I (Fitzgerald, Electric Machinery, series motor; the straight saturation is a
// simplification). Engine: friction torque at cranking, mostly oil shear, rises in the cold with the oil's viscosity.
// Starter and engine turn in the ratio of ring gear to pinion teeth (common practice 9:1 to 18:1, reduction gear in).

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

/// Torque to crank, N m: mean effective friction pressure x displacement / (4 pi). At 20 degC about 1.5 bar for a
/// petrol engine (common practice); in the cold it rises with (oil viscosity at T over at 20 degC)^0.5 (from memory:
/// cranking friction goes with the square root of viscosity for a bearing and ring mix; SAE cold-starting papers).
/// Viscosity by Walther's form between two data points of the oil.
struct CrankTorque {
  double value_n_m, slope_n_m_k;
};  ///< slope: d torque / d oil temperature
CrankTorque cranking_torque(double displacement_m3, double oil_temperature_k, double viscosity_40c_m2_s,
                            double viscosity_100c_m2_s, double friction_20c_pa = 1.5e5);
/// Walther (ASTM D341): log10 log10 (v + 0.7) = A - B log10 T, v in mm2/s, T in K. m2/s in and out.
double oil_viscosity_m2_s(double temperature_k, double viscosity_40c_m2_s, double viscosity_100c_m2_s);

struct CrankPoint {
  double engine_speed_rad_s, current_a, volts;
  bool turns;
};
/// Speed at which a starter on a battery (emf behind battery and cable resistance) holds the engine's torque.
CrankPoint crank(const Starter& starter, double emf_v, double resistance_ohm, double engine_torque_n_m);

}  // namespace sw::physics
