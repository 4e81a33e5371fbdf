#include "quantity/kind.hpp"

namespace sw {
namespace kind {
namespace {
// A kind that is added to kind.hpp is added here too; kind_test counts both.
constexpr const Kind* list[] = {
    &number,
    &length,
    &area,
    &wire_size,
    &volume,
    &mass,
    &time,
    &current,
    &temperature,
    &temperature_step,
    &angle,
    &speed,
    &acceleration,
    &shaft_speed,
    &angular_acceleration,
    &frequency,
    &force,
    &spring_rate,
    &torque,
    &energy,
    &power,
    &pressure_difference,
    &absolute_pressure,
    &gauge_pressure,
    &vacuum,
    &volume_flow,
    &mass_flow,
    &density,
    &charge,
    &voltage,
    &resistance,
    &inductance,
    &resistance_per_length,
    &thermal_conductance,
    &heat_capacity,
    &specific_heat,
    &conductivity,
    &heat_transfer,
    &viscosity,
    &kinematic_viscosity,
    &specific_consumption,
    &specific_energy,
    &inertia,
    &mass_per_length,
    &per_length,
    &displacement_flow,
    &per_temperature,
    &voltage_per_temperature,
    &irradiance,
    &resistivity,
    &stress,
    &pulses_per_length,
    &time_squared,
    &fuel_economy,
};
}  // namespace
}  // namespace kind

std::span<const Kind* const> all_kinds() { return kind::list; }

const Kind* find_kind(std::string_view name) {
  for (const Kind* k : all_kinds())
    if (k->name == name) return k;
  return nullptr;
}

}  // namespace sw
