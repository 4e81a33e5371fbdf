#pragma once
// Heat of braking: what a stop puts into rotors or drums, and how they shed it.
// Stop: E = m (V1^2 - V2^2) / 2; rise of n rotors that take a share s of it: s E / (n m_r c), nothing shed.
// Lumped: m c dT/dt = P - G(V, T) (T - T_a); at steady P and G, T - T_a = P/G + (start - P/G) exp(-G t / (m c)).
// Conductance G = G_0 + G_1 (V / V_1)^0.8 for the air dragged through and past it, and radiation e s A (T^4 - T_a^4)
// over the step. Turbulent air along a plate or in a vane, h ~ V^0.8; Limpert, Brake Design and Safety, thermal chapter
// (from memory). Temperature steady through the part: good for stops and slopes, not for the skin within one stop.
#include "physics/law.hpp"

namespace sw::physics {

double stop_energy_j(double mass_kg, double speed_m_s, double end_speed_m_s = 0);
/// slope: d rise / d energy.
Slope stop_rise_k(double energy_j, double share, double rotors, double rotor_mass_kg, double specific_heat_j_kg_k);

struct RotorCooling {
  double standing_w_k;           ///< G_0, by its own draught and into the hub
  double moving_w_k;             ///< G_1, at the speed V_1
  double moving_m_s = 80 / 3.6;  ///< V_1
  double radiating_m2 = 0;       ///< outside surface
  double emissivity = 0.55;      ///< cast iron, worn bright in the track, rust elsewhere (from memory)
};
/// W/K; slope: d conductance / d speed (none at rest).
Slope rotor_conductance_w_k(const RotorCooling& cooling, double speed_m_s);
/// Heat shed to air, W. slope: d heat / d temperature.
Slope rotor_shed_w(const RotorCooling& cooling, double speed_m_s, double temperature_k, double ambient_k);
/// Step above the air after a time at steady power and conductance, radiation left out. slope: d / d time.
Slope held_rise_k(double power_w, double conductance_w_k, double capacity_j_k, double time_s, double start_k = 0);

}  // namespace sw::physics
