#pragma once
// A flooded or sealed lead-acid starter battery of 3 or 6 cells, as an electromotive force behind a resistance.
//
// Validity: -30 to 50 degC, state of charge 0 to 1; outside, the ends are held. Sources beside each law. Where a law
// says "from memory" the figure is the textbook one and has not been read again.
#include "physics/law.hpp"

namespace sw::physics {

inline constexpr double battery_coldest_k = 243.15, battery_hottest_k = 323.15;

/// Open-circuit voltage after rest, straight in the state of charge: 11.8 V empty, 12.7 V full for six cells at 25 degC
/// (the 12.7/12.4/12.2/12.0 ladder of the trade; common practice, BCI), and +0.2 mV per kelvin and cell (Bode,
/// Lead-Acid Batteries, from memory). slope: d V / d state of charge.
Slope battery_open_volts(double state_of_charge, double temperature_k, int cells = 6);
/// The state of charge of a rested battery; the inverse, held within 0..1.
double battery_charge_from_volts(double open_v, double temperature_k, int cells = 6);

/// Internal resistance from its value full at 25 degC. Rises as the charge falls, 1 + 0.25 (1/s - 1) for s from 0.15
/// (doubles near s = 0.2; fitted to one measured 100 A h battery, 20 mohm
/// full and 44 mohm empty: open data set vmehra813/lead_acid_battery_data), and in the cold as
/// exp(0.014 (25 degC - T)): twice at -25 degC, the reason why cold cranking current halves (SAE J537 pairs of
/// 27 and -18 degC; common practice). slope: d R / d state of charge.
Slope battery_resistance(double full_25c_ohm, double state_of_charge, double temperature_k);

/// Resistance that a cold cranking rating implies: the rating holds 7.2 V (1.2 V a cell) for 30 s at -18 degC
/// (SAE J537, from memory). From the full battery's open voltage down to 7.2 V, brought to 25 degC.
double battery_resistance_from_cranking(double cranking_a, int cells = 6);
/// Current at which the terminals stand at `least_v` (7.2 V at cranking): (open - least) / resistance.
double battery_usable_current(double open_v, double resistance_ohm, double least_v = 7.2);

/// Peukert (1897): t = H (C / (I H))^k; from about C/20 to 3 C. slope: d t / d I.
Slope battery_discharge_time(double capacity_c, double rated_time_s, double exponent, double current_a);
/// Reserve capacity: minutes at 25 A to 10.5 V at 27 degC (SAE J537). charge = 25 A x time.
inline constexpr double reserve_test_current_a = 25;
double battery_reserve_charge_c(double reserve_s);

/// Current a battery takes at a held voltage: what its resistance and its gassing line allow. Above about 80 % full the
/// acceptance falls with the charge still missing: I <= 4 C (1 - s) per hour at 25 degC, halved every 15 K colder
/// (ampere-hour law of Mas, cited in Vinal, Storage Batteries, from memory: greatest charging current in A is about
/// the missing charge in A h at the start; a starter battery takes it faster, hence 4). slope: d I / d s.
Slope battery_charge_limit(double capacity_c, double state_of_charge, double temperature_k);
/// Share of the charge put in that stays: 0.95 up to 80 %, falling straight to 0.6 at full, where the rest is gas
/// (0.955 over a whole measured cycle of a 100 A h battery; common practice).
double battery_charge_share(double state_of_charge);

/// Slow part of a battery's volts, where it settles at a held current (into the battery positive), V; it is approached
/// with a lag of a minute. Going out: once the instant resistance more (common practice: what a minute's load shows is
/// about twice what the first instant does). Going in: in proportion to the current over the greatest the battery takes
/// (above), at which it stands 1.6 V over rest with six cells (common practice: nearly full that is where gassing
/// begins); that greatest current is never taken for less than the capacity over 150 h. slope: d V / d I.
inline constexpr double battery_polarization_lag_s = 60;
struct BatteryFigures {
  double capacity_c, full_25c_ohm;
  int cells = 6;
};
Slope battery_polarization(const BatteryFigures& battery, double current_a, double state_of_charge,
                           double temperature_k);

/// Gassing and so the useful charging voltage: 2.40 V a cell at 25 degC, -4 mV/K a cell (Bode, from memory).
double battery_charging_volts(double temperature_k, int cells = 6);

/// Self-discharge: share of the capacity a day at 20 degC, doubling every 10 K (Arrhenius rule of thumb; common
/// practice: 0.1 %/day calcium-calcium, 0.3 %/day conventional antimonial).
double battery_self_discharge_per_s(double share_per_day_20c, double temperature_k);

}  // namespace sw::physics
