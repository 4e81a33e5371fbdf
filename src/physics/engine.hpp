#pragma once
// Laws of a four-stroke spark-ignition engine. SI: speeds rad/s, powers W, consumption kg/J, pressures Pa absolute.
// Sources: Heywood, Internal Combustion Engine Fundamentals (chapter, equation or table beside each; from memory).
#include <optional>
#include <string_view>

namespace sw::physics {

/// P = T w
double shaft_power_w(double torque_n_m, double speed_rad_s);
/// Brake mean effective pressure 4 pi T / V_d (Heywood eq. 2.19).
double mean_effective_pressure_pa(double torque_n_m, double displacement_m3);
/// The other way round: torque of a mean pressure, four-stroke.
double mean_pressure_torque_n_m(double pressure_pa, double displacement_m3);
/// pi/4 bore^2 stroke n
double displacement_m3(double bore_m, double stroke_m, double cylinders);

/// Air drawn: V_d w / (4 pi) x volumetric efficiency (Heywood eq. 2.27), m3/s, with d / d speed.
struct AirFlow {
  double flow_m3_s, slope_m3_rad;
};
AirFlow engine_air(double displacement_m3, double speed_rad_s, double volumetric_efficiency);

double fuel_mass_flow_kg_s(double power_w, double bsfc_kg_j);
/// eta = 1 / (bsfc x lower heating value) (Heywood eq. 2.24)
double brake_efficiency(double bsfc_kg_j, double heating_value_j_kg);

/// Willans line: fuel energy rate = (friction mep x V_d w/(4 pi) + P) / indicated efficiency. Straight lines of fuel
/// against power at one speed hold for a spark-ignition engine up to about 80 % load (Heywood 13; Willans 1888);
/// richer mixture above it is not in it. Fit: efficiency about 0.35 to 0.38, friction 1.2 to 2.0 bar with its pumping.
struct WillansIn {
  double displacement_m3, indicated_efficiency, friction_pa, heating_value_j_kg;
};
struct FuelRate {
  double fuel_kg_s, slope_kg_j, fuel_heat_w;
};  ///< slope: d fuel / d power
FuelRate willans_fuel(const WillansIn& in, double power_w, double speed_rad_s);

/// The same line as a car's figures give it: Q = Q_0 n / n_0 + e P, Q_0 the fuel's heat at idle without load, n_0 the
/// idle speed. Through one working point (heat, power, speed) besides: e = (heat - Q_0 n / n_0) / power. Negative power
/// asks for no more than the engine's own turning. Slopes d Q / d power and d Q / d speed. Range: as above.
struct WillansLine {
  double idle_heat_w, idle_speed_rad_s, heat_per_power;
};
WillansLine willans_line(double idle_heat_w, double idle_speed_rad_s, double heat_w, double power_w,
                         double speed_rad_s);
struct FuelHeat {
  double heat_w, slope_power, slope_speed_j;
};
FuelHeat willans_heat(const WillansLine& line, double power_w, double speed_rad_s);

/// Otto cycle efficiency 1 - r^(1-k) (Cengel and Boles, Thermodynamics, gas power cycles).
double otto_efficiency(double compression_ratio, double heat_ratio = 1.4);

/// Heat to coolant = share_coolant / share_shaft x P, with d / d P. Of the fuel's heat 17 to 26 % goes to coolant and
/// 25 to 28 % to the shaft in a spark-ignition engine at full power (Heywood table 12.1).
struct CoolantHeat {
  double heat_w, slope;
};
CoolantHeat coolant_heat(double power_w, double share_coolant, double share_shaft);
/// The same over the whole range of a Willans line: c_0 Q_0 sqrt(n / n_0) + c e P. An idling engine gives the coolant a
/// larger share of its heat than a working one, so the fuel without load counts with its own share c_0, and grows with
/// the root of speed (gas side heat transfer goes with less than speed; common practice); what power burns more counts
/// with the share c at load. Slope to power. Usual: 0.22 at load, 0.40 to 0.50 at idle (common practice).
struct CoolantShares {
  double idle, load;
};
CoolantHeat coolant_heat(const WillansLine& line, const CoolantShares& shares, double power_w, double speed_rad_s);
inline constexpr double least_coolant_share = 0.17, greatest_coolant_share = 0.26;

/// SAE J1349, naturally aspirated spark ignition: 1.180 (990 mbar / p_dry) sqrt(T / 298 K) - 0.18, T in K as degC +
/// 273. Good for 0.93 to 1.07 (from memory).
double power_correction(double dry_pressure_pa, double temperature_k);

/// Mass of air to burn a kilogram of fuel C_a H_b O_c N_d with none left: (a + b/4 - c/2) 137.86... /M: 4.76 mol of air
/// (28.97 kg/kmol x 1 with O2 20.95 % by volume) a mole of oxygen (Heywood eq. 3.5).
std::optional<double> stoichiometric_air_fuel(std::string_view formula);

/// Injector: each of `count` gives bsfc x P / (count x duty), held open. Flow goes with the square root of the pressure
/// across it (Bernoulli, steady discharge coefficient).
double injector_mass_flow_kg_s(double power_w, double bsfc_kg_j, double count, double duty);
double injector_at_pressure_kg_s(double rated_kg_s, double rated_pa, double pressure_pa);

/// Ignition coil as L with R on a steady supply: i = V/R (1 - exp(-t R/L)), energy L i^2 / 2.
double coil_energy_j(double inductance_h, double current_a);
double coil_current_a(double inductance_h, double resistance_ohm, double supply_v, double time_s);
/// Empty where the supply cannot drive that current.
std::optional<double> coil_time_s(double inductance_h, double resistance_ohm, double supply_v, double current_a);

/// Share of the time the points are closed, dwell x cylinders / 2 pi; time of each at an engine speed (distributor at
/// half).
double dwell_share(double dwell, double cylinders);
double dwell_time_s(double dwell, double engine_speed_rad_s);

}  // namespace sw::physics
