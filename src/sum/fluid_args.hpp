#pragma once
// The fluid of a sum: by name and state, or by the figures the law needs. Shared by every sum that moves or heats one.
#include <span>

#include "physics/fluid.hpp"
#include "sum/sum.hpp"

namespace sw {

using Viscosity = Quantity<dim::viscosity>;
using KinematicViscosity = Quantity<dim::kinematic_viscosity>;

/// A fluid by name.
struct NamedFluid {
  std::optional<physics::Fluid> fluid;
  std::optional<Temperature> temperature;
  std::optional<AbsolutePressure> pressure;
  std::optional<double> mass_fraction, volume_fraction;
  static std::span<const FieldInfo> fields();
};

/// By name, or by figures.
struct AnyFluid {
  NamedFluid named;
  std::optional<Density> density;
  std::optional<SpecificHeat> specific_heat;
  std::optional<Viscosity> viscosity;
  std::optional<KinematicViscosity> kinematic_viscosity;
  static std::span<const FieldInfo> fields();
};

/// Which figures a law needs of a fluid that is not named.
struct FluidNeeds {
  bool density = false, specific_heat = false, viscosity = false;
};

/// Fractions given where the fluid has none, missing or doubled where it is a glycol.
void check_fraction(std::optional<physics::Fluid> fluid, Remarks& say);
void check_fluid(const AnyFluid& in, FluidNeeds needs, Remarks& say);

/// Mass fraction of the glycol in water; 0 for another fluid.
double mass_fraction_of(physics::Fluid fluid, std::optional<double> by_mass, std::optional<double> by_volume);

/// The figures the law asked for (others stay 0); says where the fluid's own range ends.
physics::FluidState state_of(const AnyFluid& in, Remarks& say);
physics::FluidState state_of(const NamedFluid& in, Remarks& say);

inline constexpr std::string_view fluid_choices[] = {"water", "ethylene-glycol", "propylene-glycol", "air", "gasoline"};

}  // namespace sw
