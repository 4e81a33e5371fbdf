#include "sum/fluid_args.hpp"

#include "physics/atmosphere.hpp"

namespace sw {

std::span<const FieldInfo> NamedFluid::fields() {
  static constexpr FieldInfo table[] = {
      choice<&NamedFluid::fluid>("fluid", "fluid by name", fluid_choices),
      quantity<&NamedFluid::temperature>("temperature", "temperature of the fluid", kind::temperature)
          .above(-273.15, 1000)
          .in("degC"),
      quantity<&NamedFluid::pressure>("pressure", "absolute pressure of the fluid", kind::absolute_pressure)
          .above(0, 1e5)
          .in("kPa")
          .or_else(101.325, Source::chosen),
      number<&NamedFluid::mass_fraction>("mass_fraction", "glycol in water, by mass").from(0, 1),
      number<&NamedFluid::volume_fraction>("volume_fraction", "glycol in water, by volume").from(0, 1),
  };
  static_assert(std::size(table) == member_count<NamedFluid>());
  return table;
}

std::span<const FieldInfo> AnyFluid::fields() {
  static constexpr FieldInfo table[] = {
      group<&AnyFluid::named>("", ""),
      quantity<&AnyFluid::density>("density", "density", kind::density).above(0, 1e5).in("kg/m3"),
      quantity<&AnyFluid::specific_heat>("specific_heat", "specific heat", kind::specific_heat)
          .above(0, 1e5)
          .in("J/(kg K)"),
      quantity<&AnyFluid::viscosity>("viscosity", "dynamic viscosity", kind::viscosity).above(0, 1e6).in("mPa s"),
      quantity<&AnyFluid::kinematic_viscosity>("kinematic_viscosity", "kinematic viscosity", kind::kinematic_viscosity)
          .above(0, 1e6)
          .in("mm2/s"),
  };
  return table;
}

void check_fraction(std::optional<physics::Fluid> fluid, Remarks& say) {
  const bool mass = say.given("mass_fraction"), volume = say.given("volume_fraction");
  if (mass && volume) say.fault("mass_fraction, volume_fraction", "contradict each other: give only one of these");
  if (!fluid) return;
  if (physics::is_glycol(*fluid) && !mass && !volume)
    say.fault("mass_fraction, volume_fraction", "missing: give one of these, the glycol's part in water");
  if (physics::is_glycol(*fluid)) return;
  for (auto key : {"mass_fraction", "volume_fraction"})
    if (say.given(key)) say.fault(key, "belongs to a glycol in water", "leave it out");
}

void check_fluid(const AnyFluid& in, FluidNeeds needs, Remarks& say) {
  check_fraction(in.named.fluid, say);
  if (say.given("fluid")) {
    say.need("temperature", "temperature of the fluid");
    for (auto key : {"density", "specific_heat", "viscosity", "kinematic_viscosity"})
      if (say.given(key))
        say.fault(key, "contradicts fluid, which has its own", "give the fluid by name or by its figures");
    return;
  }
  for (auto key : {"temperature", "pressure", "mass_fraction", "volume_fraction"})
    if (say.given(key)) say.fault(key, "belongs to a fluid by name", "name the fluid, or leave it out");
  if (needs.density) say.need("density", "or a fluid by name");
  if (needs.specific_heat) say.need("specific_heat", "or a fluid by name");
  const bool dynamic = say.given("viscosity"), kinematic = say.given("kinematic_viscosity");
  if (dynamic && kinematic)
    say.fault("viscosity, kinematic_viscosity", "contradict each other: give only one of these");
  if (needs.viscosity && !dynamic && !kinematic)
    say.fault("viscosity, kinematic_viscosity", "missing: give one of these, or a fluid by name");
  if (needs.viscosity && kinematic && !needs.density) say.need("density", "kinematic viscosity needs it");
}

double mass_fraction_of(physics::Fluid fluid, std::optional<double> by_mass, std::optional<double> by_volume) {
  if (!physics::is_glycol(fluid)) return 0;
  if (by_mass) return *by_mass;
  return by_volume ? physics::mass_fraction_of(physics::glycol_of(fluid), *by_volume) : 0;
}

physics::FluidState state_of(const NamedFluid& in, Remarks& say) {
  const double w = mass_fraction_of(*in.fluid, in.mass_fraction, in.volume_fraction);
  const auto s = physics::fluid_state(*in.fluid, w, in.temperature->si, in.pressure->si);
  if (!s.valid)
    say.outside(
        "the fluid's properties: liquid water from freezing to boiling at its pressure, up to 200 degC; glycol up to "
        "60 % by mass "
        "from freezing to 100 degC; air 200 to 500 K; gasoline 240 to 340 K");
  if (*in.fluid == physics::Fluid::gasoline) say.note("gasoline is a typical summer fuel; a given fuel differs");
  return s;
}

physics::FluidState state_of(const AnyFluid& in, Remarks& say) {
  if (in.named.fluid) return state_of(in.named, say);
  physics::FluidState s;
  if (in.density) s.density_kg_m3 = in.density->si;
  if (in.specific_heat) s.specific_heat_j_kg_k = in.specific_heat->si;
  if (in.viscosity)
    s.viscosity_pa_s = in.viscosity->si;
  else if (in.kinematic_viscosity)
    s.viscosity_pa_s = in.kinematic_viscosity->si * s.density_kg_m3;
  return s;
}

}  // namespace sw
