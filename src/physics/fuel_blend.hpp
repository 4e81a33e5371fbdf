#pragma once
// Gasoline with ethanol in it, and its vapour in a hot car.
//
// Vapour pressure of the blend at 37.8 degC over that of the gasoline it was made from: rises to 1.0 psi by 5 % ethanol
// and stays there to 15 % (40 CFR 1090.215 allows blends of 9 to 10 % the 1.0 psi by which they lie above; that it is
// reached by 5 % and hardly changes to 15 % is common knowledge of blending, from memory). Range 0 to 0.15 by volume;
// beyond it falls again: `valid` false.
// True vapour pressure: physics/gasoline (AP-42). That law's table ends at 37.8 degC; its form, ln p straight in 1/T
// (Clausius and Clapeyron), is continued to 100 degC here, where the heat of vaporization changes by some 10 %: `valid`
// up to there, with a half-width of 8 % that the caller must carry. n-hexane, 31 K beyond the table, lies 10 % off
// (tests).
// Density and heat by volume and mass: ethanol 789 kg/m3 at 20 degC, lower heating value 26.8 MJ/kg, gasoline 43.5
// (Heywood, Internal Combustion Engine Fundamentals, table D.4, from memory).
#include "physics/law.hpp"

namespace sw::physics {

inline constexpr double gasoline_heating_value_j_kg = 43.5e6, ethanol_heating_value_j_kg = 26.8e6;
inline constexpr double hottest_vapour_k = 373.15;

/// What ethanol adds to the vapour pressure at 37.8 degC, Pa; slope to the share.
Slope ethanol_vapour_rise_pa(double ethanol_share);
/// True vapour pressure of a blend; slope to temperature. `reid_pa` is that of the gasoline before ethanol.
Slope fuel_vapour_pressure_pa(double reid_pa, double ethanol_share, double temperature_k);
/// Temperature at which it reaches a pressure, K.
double fuel_bubble_k(double reid_pa, double ethanol_share, double pressure_pa);
/// Mass of the blend that holds the heat of one mass of gasoline.
double blend_mass_ratio(double ethanol_share);
/// Density of the blend, kg/m3, that of the gasoline being `gasoline_kg_m3` at the same temperature.
double blend_density_kg_m3(double ethanol_share, double gasoline_kg_m3, double temperature_k);

}  // namespace sw::physics
