#pragma once
// A number with its dimension in the type. The value is SI; nothing but the parser and the printer knows other units.
#include "quantity/dimension.hpp"

namespace sw {

template <Dimension D, Reference R = Reference::none>
struct Quantity {
  static constexpr Dimension dimension = D;
  static constexpr Reference reference = R;
  double si = 0.0;
  constexpr auto operator<=>(const Quantity&) const = default;
};

template <Dimension D>
constexpr Quantity<D> operator+(Quantity<D> a, Quantity<D> b) {
  return {a.si + b.si};
}
template <Dimension D>
constexpr Quantity<D> operator-(Quantity<D> a, Quantity<D> b) {
  return {a.si - b.si};
}
/// Absolute less absolute is a plain step; absolute plus step is absolute again. Two absolutes cannot be added.
template <Dimension D, Reference R>
requires(R != Reference::none) constexpr Quantity<D> operator-(Quantity<D, R> a, Quantity<D, R> b) {
  return {a.si - b.si};
}
template <Dimension D, Reference R>
requires(R != Reference::none) constexpr Quantity<D, R> operator+(Quantity<D, R> a, Quantity<D> step) {
  return {a.si + step.si};
}
template <Dimension D>
constexpr Quantity<D> operator*(double k, Quantity<D> a) {
  return {k * a.si};
}
/// Products keep their dimension; a product without one is a plain double.
template <Dimension A, Dimension B>
constexpr auto operator*(Quantity<A> a, Quantity<B> b) {
  if constexpr (A * B == Dimension{})
    return a.si * b.si;
  else
    return Quantity<A * B>{a.si * b.si};
}
template <Dimension A, Dimension B>
constexpr auto operator/(Quantity<A> a, Quantity<B> b) {
  if constexpr (A == B)
    return a.si / b.si;
  else
    return Quantity<A / B>{a.si / b.si};
}

namespace dim {
inline constexpr Dimension none{};
inline constexpr Dimension length{.length = 1};
inline constexpr Dimension area{.length = 2};
inline constexpr Dimension volume{.length = 3};
inline constexpr Dimension mass{.mass = 1};
inline constexpr Dimension time{.time = 1};
inline constexpr Dimension current{.current = 1};
inline constexpr Dimension temperature{.temperature = 1};
inline constexpr Dimension angle{.angle = 1};
inline constexpr Dimension speed = length / time;
inline constexpr Dimension acceleration = speed / time;
inline constexpr Dimension shaft_speed = angle / time;
inline constexpr Dimension angular_acceleration = shaft_speed / time;
inline constexpr Dimension frequency = none / time;
inline constexpr Dimension force = mass * acceleration;
inline constexpr Dimension torque = force * length;
inline constexpr Dimension spring_rate = force / length;
inline constexpr Dimension energy = torque;
inline constexpr Dimension power = energy / time;
inline constexpr Dimension pressure = force / area;
inline constexpr Dimension volume_flow = volume / time;
inline constexpr Dimension mass_flow = mass / time;
inline constexpr Dimension density = mass / volume;
inline constexpr Dimension charge = current * time;
inline constexpr Dimension voltage = power / current;
inline constexpr Dimension resistance = voltage / current;
inline constexpr Dimension inductance = resistance * time;
inline constexpr Dimension resistance_per_length = resistance / length;
inline constexpr Dimension conductance_thermal = power / temperature;  // W/K
inline constexpr Dimension heat_capacity = energy / temperature;       // J/K
inline constexpr Dimension specific_heat = heat_capacity / mass;
inline constexpr Dimension conductivity = power / length / temperature;
inline constexpr Dimension heat_transfer = power / area / temperature;
inline constexpr Dimension viscosity = pressure * time;
inline constexpr Dimension kinematic_viscosity = area / time;
inline constexpr Dimension specific_consumption = mass / energy;
inline constexpr Dimension specific_energy = energy / mass;
inline constexpr Dimension inertia = mass * area;
inline constexpr Dimension mass_per_length = mass / length;
inline constexpr Dimension per_length = none / length;
inline constexpr Dimension displacement_flow = volume_flow / shaft_speed;  // volume moved a radian
inline constexpr Dimension per_temperature = none / temperature;
inline constexpr Dimension voltage_per_temperature = voltage / temperature;
inline constexpr Dimension irradiance = power / area;
inline constexpr Dimension resistivity = resistance * length;
inline constexpr Dimension time_squared = time * time;
inline constexpr Dimension distance_per_volume = length / volume;
}  // namespace dim

using Length = Quantity<dim::length>;
using Area = Quantity<dim::area>;
using Volume = Quantity<dim::volume>;
using Mass = Quantity<dim::mass>;
using Time = Quantity<dim::time>;
using Current = Quantity<dim::current>;
using TemperatureStep = Quantity<dim::temperature>;
using Temperature = Quantity<dim::temperature, Reference::absolute>;
using Angle = Quantity<dim::angle>;
using Speed = Quantity<dim::speed>;
using Acceleration = Quantity<dim::acceleration>;
using ShaftSpeed = Quantity<dim::shaft_speed>;
using Frequency = Quantity<dim::frequency>;
using Force = Quantity<dim::force>;
using SpringRate = Quantity<dim::spring_rate>;
using Torque = Quantity<dim::torque>;  // and Energy: the same dimension, told apart by the kind of the field
using Power = Quantity<dim::power>;
using PressureDifference = Quantity<dim::pressure>;
using AbsolutePressure = Quantity<dim::pressure, Reference::absolute>;
using GaugePressure = Quantity<dim::pressure, Reference::gauge>;
using VacuumPressure = Quantity<dim::pressure, Reference::vacuum>;
using VolumeFlow = Quantity<dim::volume_flow>;
using MassFlow = Quantity<dim::mass_flow>;
using Density = Quantity<dim::density>;
using Charge = Quantity<dim::charge>;
using Voltage = Quantity<dim::voltage>;
using Resistance = Quantity<dim::resistance>;
using Inductance = Quantity<dim::inductance>;
using ThermalConductance = Quantity<dim::conductance_thermal>;
using HeatCapacity = Quantity<dim::heat_capacity>;
using SpecificHeat = Quantity<dim::specific_heat>;
using SpecificConsumption = Quantity<dim::specific_consumption>;
using SpecificEnergy = Quantity<dim::specific_energy>;
using Inertia = Quantity<dim::inertia>;
using DisplacementFlow = Quantity<dim::displacement_flow>;
using VoltagePerTemperature = Quantity<dim::voltage_per_temperature>;
using Irradiance = Quantity<dim::irradiance>;
using Resistivity = Quantity<dim::resistivity>;

}  // namespace sw
