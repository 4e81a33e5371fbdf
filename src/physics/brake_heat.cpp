#include "physics/brake_heat.hpp"

#include <cmath>

#include "physics/radiation.hpp"

namespace sw::physics {
namespace {

constexpr double air_power = 0.8;

}  // namespace

double stop_energy_j(double mass_kg, double speed_m_s, double end_speed_m_s) {
  return mass_kg / 2 * (speed_m_s * speed_m_s - end_speed_m_s * end_speed_m_s);
}

Slope stop_rise_k(double energy_j, double share, double rotors, double rotor_mass_kg, double specific_heat_j_kg_k) {
  const double slope = share / (rotors * rotor_mass_kg * specific_heat_j_kg_k);
  return {slope * energy_j, slope};
}

Slope rotor_conductance_w_k(const RotorCooling& cooling, double speed_m_s) {
  if (speed_m_s <= 0) return {cooling.standing_w_k, 0, speed_m_s == 0};
  const double moved = cooling.moving_w_k * std::pow(speed_m_s / cooling.moving_m_s, air_power);
  return {cooling.standing_w_k + moved, air_power * moved / speed_m_s};
}

Slope rotor_shed_w(const RotorCooling& cooling, double speed_m_s, double temperature_k, double ambient_k) {
  const double g = rotor_conductance_w_k(cooling, speed_m_s).value;
  const double radiating = cooling.emissivity * stefan_boltzmann_w_m2k4 * cooling.radiating_m2;
  return {g * (temperature_k - ambient_k) + radiating * (std::pow(temperature_k, 4) - std::pow(ambient_k, 4)),
          g + 4 * radiating * std::pow(temperature_k, 3)};
}

Slope held_rise_k(double power_w, double conductance_w_k, double capacity_j_k, double time_s, double start_k) {
  const double end = power_w / conductance_w_k, decay = std::exp(-time_s * conductance_w_k / capacity_j_k);
  return {end + (start_k - end) * decay, (end - start_k) * decay * conductance_w_k / capacity_j_k};
}

}  // namespace sw::physics
