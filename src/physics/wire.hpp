#pragma once
// Copper conductors: gauge, resistance, ampacity.
//
// Gauge n: d = 0.005 in * 92^((36-n)/39) (ASTM B258, from memory); 1/0 is n = 0, 2/0 is n = -1 ...
// Bare copper: R/L = resistivity / area * (1 + alpha (T - 20 degC)), 10.371 ohm cmil/ft, alpha = 0.00393 1/K
// (NBS Handbook 100, from memory); good for -50 to 150 degC, linear outside.
// Cables: the greatest resistance their standard allows at 20 degC, log-log between tabled sizes.
// All quantities SI: area m2, resistance per length ohm/m, temperature K, current A.
#include <optional>
#include <string>

#include "quantity/customary.hpp"

namespace sw::physics {

inline constexpr double copper_resistivity_20c_ohm_m = 10.371 * 5.067074790974977e-10 / foot_m;  ///< 1 cmil in m2
inline constexpr double copper_alpha_20c_per_k = 0.00393;

double gauge_diameter_m(double gauge);
double gauge_area_m2(double gauge);
double area_gauge(double area_m2);
double round_diameter_m(double area_m2);
/// Gauges a shop buys, thickest first: 4/0 .. 1/0, 1, 2, 4, 6 ... 30 as n = -3 .. 0, 1, 2, 4, 6 ... 30.
/// The thinnest of them whose area is at least `area_m2`; empty where even 4/0 is too thin.
std::optional<int> gauge_for_area(double area_m2);
/// The next thicker one; empty above 4/0.
std::optional<int> next_thicker_gauge(int gauge);
/// `10 AWG`, `2/0 AWG`
std::string gauge_text(int gauge);

enum class Cable { copper, road_vehicle, flexible };

struct WireResistance {
  double per_length_ohm_m;
  double temperature_factor;  ///< over the value at 20 degC, as the cable's standard has it
  double slope_ohm_m_k;       ///< d per_length / d temperature
  bool tabled;                ///< false where the size lies outside the standard's table (then copper stands in)
};
/// copper: solid, NBS. road_vehicle: ISO 6722-1 table (from memory) with alpha 0.00393. flexible: IEC 60228 class 5,
/// plain copper, with that standard's 0.004 per kelvin (254.5/(234.5 + T) is the exact form; the tables use 0.004:
/// 0.893 at 50 degC is 1/1.12, the factor that brings a measured value back to 20 degC).
WireResistance wire_resistance(double area_m2, Cable cable, double temperature_k,
                               double resistivity_20c_ohm_m = copper_resistivity_20c_ohm_m);

enum class Zone { cabin, engine_bay };
/// Air the table is for: 30 degC, in an engine space 50 degC.
double table_air_k(Zone zone);
struct Ampacity {
  double current_a;
  bool tabled;           ///< false where gauge or insulation lies outside the table
  double slope_a_k = 0;  ///< d current / d air temperature; 0 up to the table's air and from the insulation's limit on
};
/// 33 CFR 183.425 Table 5, below 50 V, by the insulation's temperature (60, 75, 80, 90, 105, 125, 200 degC; the
/// nearest below counts) and gauge 18 to 4/0 (a size between two is read at the thinner). Note 1: engine space (50 degC
/// instead of 30 degC) times 0.58, 0.75, 0.78, 0.82, 0.85, 0.89, 1. Note 2: current-carrying conductors in one bundle,
/// 3 times 0.70, 4 to 6 times 0.60, 7 to 24 times 0.50, 25 and more times 0.40. The regulation asks note 2 only from
/// 50 V up; taken here at any voltage, which is the careful side. Table and note 2 read in stored copies, note 1 for
/// 105 degC too, its other factors from memory.
///
/// In air of another temperature than the zone's the current goes with sqrt((T_insulation - T_air) / (T_insulation -
/// T_table)): heat I^2 R leaves over a fixed conductance, and the conductor may come to T_insulation. This is the
/// correction formula of NFPA 70 (NEC) 310.15(B) (from memory); note 1's factors are the same formula from 30 to 50
/// degC but for 200 degC. Air cooler than the table's is taken as the table's; at T_insulation and above the current is
/// 0. Between two columns T_insulation is the wire's own, the amperes those of the column below: the careful side.
Ampacity wire_ampacity(double area_m2, double insulation_k, Zone zone, int bundle, std::optional<double> air_k = {});

/// Current that brings a copper conductor from one temperature to another in a time too short for heat to leave it:
/// I = K S sqrt(ln((T_to + 234.5)/(T_from + 234.5)) / t), degC, K = 226 A s^0.5/mm2 (IEC 60949, also IEC 60364-5-54
/// annex A, whose k of 115 for 70 to 160 degC and 143 for 90 to 250 degC it gives; from memory). Range: up to 5 s by
/// the standard; beyond, heat leaves, and the current told is the careful side. 0 where it is as hot already.
double short_time_current(double area_m2, double from_k, double to_k, double time_s);
/// The temperature it comes to; the same law turned round.
double short_time_temperature(double area_m2, double from_k, double current_a, double time_s);

/// Temperature rise of a conductor over its surroundings from the current it is rated for: rise = rated_rise
/// (I / I_rated)^2 (heat I^2 R over a fixed conductance; common practice), with slope d rise / d current.
struct WireRise {
  double rise_k, slope_k_a;
};
WireRise wire_rise(double current_a, double rated_a, double rated_rise_k);

}  // namespace sw::physics
