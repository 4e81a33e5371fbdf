// Sums of fluids: properties, boiling, vapour pressure, the standard atmosphere.
#include "physics/atmosphere.hpp"
#include "physics/gasoline.hpp"
#include "sum/families.hpp"
#include "sum/fluid_args.hpp"

namespace sw {
namespace {

constexpr std::string_view hot_coolant =
    "hot coolant is under pressure: open no cap or hose until the system is cold, as the maker instructs";
constexpr std::string_view fuel_vapour =
    "gasoline vapour burns and explodes: no flame, spark or hot part near, ventilate, follow the maker and local code";

struct PropertiesIn {
  NamedFluid fluid;
};
struct PropertiesOut {
  std::optional<Density> density;
  std::optional<SpecificHeat> specific_heat;
  std::optional<Quantity<dim::conductivity>> conductivity;
  std::optional<Viscosity> viscosity;
  std::optional<Temperature> freezing, boiling;
  std::optional<double> mass_fraction, volume_fraction;
};
constexpr Argument properties_in[] = {fields_of<&PropertiesIn::fluid>()};
constexpr Argument properties_out[] = {
    quantity<&PropertiesOut::density>("density", "density", kind::density),
    quantity<&PropertiesOut::specific_heat>("specific_heat", "specific heat", kind::specific_heat),
    quantity<&PropertiesOut::conductivity>("conductivity", "thermal conductivity", kind::conductivity),
    quantity<&PropertiesOut::viscosity>("viscosity", "dynamic viscosity", kind::viscosity),
    quantity<&PropertiesOut::freezing>("freezing", "freezing point", kind::temperature),
    quantity<&PropertiesOut::boiling>("boiling", "boiling point at the pressure", kind::temperature),
    number<&PropertiesOut::mass_fraction>("mass_fraction", "glycol in water, by mass"),
    number<&PropertiesOut::volume_fraction>("volume_fraction", "glycol in water, by volume"),
};

void properties_check(const PropertiesIn& in, Remarks& say) {
  say.need("fluid", "fluid by name");
  check_fraction(in.fluid.fluid, say);
}

void properties(const PropertiesIn& in, PropertiesOut& out, Remarks& say) {
  const NamedFluid& f = in.fluid;
  const double w = mass_fraction_of(*f.fluid, f.mass_fraction, f.volume_fraction);
  if (f.temperature) {
    const auto s = state_of(f, say);
    out.density = Density{s.density_kg_m3};
    out.specific_heat = SpecificHeat{s.specific_heat_j_kg_k};
    out.conductivity = Quantity<dim::conductivity>{s.conductivity_w_m_k};
    out.viscosity = Viscosity{s.viscosity_pa_s};
  }
  if (*f.fluid == physics::Fluid::air || *f.fluid == physics::Fluid::gasoline) return;
  const auto freezing = physics::freezing_temperature(*f.fluid, w),
             boiling = physics::boiling_temperature(*f.fluid, w, f.pressure->si);
  if (freezing.valid)
    out.freezing = Temperature{freezing.value};
  else
    say.outside("freezing point: glycol up to 60 % by mass");
  if (boiling.valid)
    out.boiling = Temperature{boiling.value};
  else
    say.outside("boiling point: glycol up to 70 % by mass, 27 to 187 degC");
  if (!physics::is_glycol(*f.fluid)) return;
  out.mass_fraction = w;
  out.volume_fraction = physics::volume_fraction_of(physics::glycol_of(*f.fluid), w);
}

struct BoilingIn {
  std::optional<physics::Fluid> fluid;
  std::optional<double> mass_fraction, volume_fraction;
  std::optional<AbsolutePressure> pressure;
  std::optional<Length> altitude;
  std::optional<GaugePressure> cap;
  std::optional<Temperature> temperature;
};
struct BoilingOut {
  std::optional<Temperature> temperature;
  std::optional<AbsolutePressure> pressure;
};
constexpr std::string_view coolant_choices[] = {"water", "ethylene-glycol", "propylene-glycol"};
constexpr Argument boiling_in[] = {
    choice<&BoilingIn::fluid>("fluid", "fluid by name", coolant_choices),
    may(number<&BoilingIn::mass_fraction>("mass_fraction", "glycol in water, by mass").from(0, 1)),
    may(number<&BoilingIn::volume_fraction>("volume_fraction", "glycol in water, by volume").from(0, 1)),
    quantity<&BoilingIn::pressure>("pressure", "absolute pressure", kind::absolute_pressure).above(0, 1e4).in("kPa"),
    quantity<&BoilingIn::altitude>("altitude", "altitude above the sea", kind::length).from(-16000, 36000).in("ft"),
    quantity<&BoilingIn::cap>("cap", "pressure the cap holds above the outside air", kind::gauge_pressure)
        .from(0, 500)
        .in("psi")
        .or_else(0, Source::chosen),
    quantity<&BoilingIn::temperature>("temperature", "temperature", kind::temperature).above(-273.15, 1000).in("degC"),
};
constexpr Argument boiling_out[] = {
    quantity<&BoilingOut::temperature>("temperature", "boiling point", kind::temperature),
    quantity<&BoilingOut::pressure>("pressure", "absolute pressure it boils at", kind::absolute_pressure),
};
constexpr Rule boiling_rules[] = {one_of("pressure", "altitude", "temperature")};

void boiling_check(const BoilingIn& in, Remarks& say) {
  check_fraction(in.fluid, say);
  if (say.given("cap") && !say.given("altitude"))
    say.fault("cap", "goes with altitude alone", "give altitude, or add the cap to pressure");
}

void boiling(const BoilingIn& in, BoilingOut& out, Remarks& say) {
  const double w = mass_fraction_of(*in.fluid, in.mass_fraction, in.volume_fraction);
  physics::Slope found;
  if (in.temperature) {
    found = physics::boiling_pressure(*in.fluid, w, in.temperature->si);
    out.pressure = AbsolutePressure{found.value};
  } else {
    double pressure_pa = in.pressure ? in.pressure->si : 0;
    if (in.altitude) {
      const auto air = physics::standard_atmosphere(in.altitude->si);
      if (!air.valid) say.outside("standard atmosphere: up to 11 km");
      pressure_pa = air.pressure_pa + in.cap->si;
    }
    found = physics::boiling_temperature(*in.fluid, w, pressure_pa);
    out.temperature = Temperature{found.value};
  }
  if (!found.valid) say.outside("water boils between 0 and 350 degC here; mixtures up to 70 % by mass, 27 to 187 degC");
}

struct VapourIn {
  std::optional<AbsolutePressure> rvp;
  std::optional<Temperature> temperature;
  std::optional<TemperatureStep> slope;
};
struct VapourOut {
  std::optional<AbsolutePressure> pressure;
  std::optional<double> constant_a;
  std::optional<TemperatureStep> constant_b;
};
constexpr Argument vapour_in[] = {
    quantity<&VapourIn::rvp>("rvp", "Reid vapour pressure", kind::absolute_pressure).above(0, 50).in("psi"),
    may(quantity<&VapourIn::temperature>("temperature", "temperature of the fuel", kind::temperature)
            .above(-273.15, 300)
            .in("degC")),
    quantity<&VapourIn::slope>("slope", "slope of the distillation curve, for each percent evaporated",
                               kind::temperature_step)
        .above(0, 20)
        .in("degF")
        .or_else(3),
};
constexpr Argument vapour_out[] = {
    quantity<&VapourOut::pressure>("pressure", "true vapour pressure", kind::absolute_pressure).in("psi"),
    number<&VapourOut::constant_a>("constant_a", "A of ln(psi) = A - B/T"),
    quantity<&VapourOut::constant_b>("constant_b", "B, T in degR", kind::temperature_step).in("degR"),
};

void vapour_pressure(const VapourIn& in, VapourOut& out, Remarks& say) {
  const double t = in.temperature ? in.temperature->si : physics::standard_temperature_k;
  const auto v = physics::gasoline_vapour_pressure(in.rvp->si, t, in.slope->si);
  if (in.temperature) out.pressure = AbsolutePressure{v.pressure_pa};
  out.constant_a = v.constant_a;
  out.constant_b = TemperatureStep{v.constant_b_k};
  if (!v.valid) say.outside("gasoline of 2 to 15 psi Reid, slope 2 to 4 degF, 0 to 100 degF");
}

enum class VolatilityClass { aa, a, b, c, d, e };
struct ClassIn {
  std::optional<VolatilityClass> volatility;
};
struct ClassOut {
  std::optional<AbsolutePressure> vapour_pressure;
};
constexpr std::string_view class_choices[] = {"aa", "a", "b", "c", "d", "e"};
constexpr Argument class_in[] = {choice<&ClassIn::volatility>("class", "volatility class", class_choices)};
constexpr Argument class_out[] = {quantity<&ClassOut::vapour_pressure>(
    "vapour_pressure", "greatest vapour pressure at 37.8 degC", kind::absolute_pressure)};

void gasoline_class(const ClassIn& in, ClassOut& out, Remarks&) {
  out.vapour_pressure = AbsolutePressure{physics::gasoline_class_limit_pa(static_cast<int>(*in.volatility))};
}

struct AtmosphereIn {
  std::optional<Length> altitude;
};
struct AtmosphereOut {
  std::optional<AbsolutePressure> pressure;
  std::optional<Temperature> temperature;
  std::optional<Density> density;
  std::optional<double> density_ratio;
  std::optional<Viscosity> viscosity;
};
constexpr Argument atmosphere_in[] = {
    quantity<&AtmosphereIn::altitude>("altitude", "geometric altitude above the sea", kind::length)
        .from(-5000, 80000)
        .in("m")};
constexpr Argument atmosphere_out[] = {
    quantity<&AtmosphereOut::pressure>("pressure", "pressure", kind::absolute_pressure),
    quantity<&AtmosphereOut::temperature>("temperature", "temperature", kind::temperature),
    quantity<&AtmosphereOut::density>("density", "density", kind::density),
    number<&AtmosphereOut::density_ratio>("density_ratio", "density over that at the sea"),
    quantity<&AtmosphereOut::viscosity>("viscosity", "dynamic viscosity", kind::viscosity),
};

void atmosphere(const AtmosphereIn& in, AtmosphereOut& out, Remarks& say) {
  const auto a = physics::standard_atmosphere(in.altitude->si);
  out.pressure = AbsolutePressure{a.pressure_pa};
  out.temperature = Temperature{a.temperature_k};
  out.density = Density{a.density_kg_m3};
  out.density_ratio = a.density_kg_m3 / physics::standard_atmosphere(0).density_kg_m3;
  out.viscosity = Viscosity{a.viscosity_pa_s};
  if (!a.valid) say.outside("the lowest layer of the atmosphere, 5 km below to 11 km above the sea");
}

constexpr Sum sums[] = {
    entry<properties, properties_check>(
        {.name = "properties",
         .title = "Properties of a fluid",
         .inputs = properties_in,
         .outputs = properties_out,
         .range = "water 0 to 200 degC, liquid; glycol in water up to 60 % by mass, freezing point to 100 degC; air "
                  "200 to 500 K; gasoline typical, 240 to 340 K",
         .source = "water: IAPWS R7-97(2012), R12-08, R15-11; glycols: Melinder, Properties of Secondary Working "
                   "Fluids, IIR 2010; air: U.S. Standard Atmosphere, 1976 (ideal gas, Sutherland)",
         .caution = "glycols are poisonous and gasoline burns: keep them from people, animals and drains"}),
    entry<boiling, boiling_check>(
        {.name = "boiling",
         .title = "Boiling point of a coolant, or the pressure it boils at",
         .inputs = boiling_in,
         .outputs = boiling_out,
         .rules = boiling_rules,
         .range = "water 0 to 350 degC; glycol in water up to 70 % by mass, 27 to 187 degC, as an ideal mixture",
         .source =
             "water: IAPWS R7-97(2012) region 4; mixtures: Raoult's law; altitude: U.S. Standard Atmosphere, 1976",
         .caution = hot_coolant}),
    entry<vapour_pressure>({.name = "vapour-pressure",
                            .title = "True vapour pressure of gasoline",
                            .inputs = vapour_in,
                            .outputs = vapour_out,
                            .range = "gasoline of 2 to 15 psi Reid, slope 2 to 4 degF, 0 to 100 degF",
                            .source = "US EPA AP-42, chapter 7.1, Organic Liquid Storage Tanks",
                            .caution = fuel_vapour}),
    entry<gasoline_class>({.name = "gasoline-class",
                           .title = "Greatest vapour pressure of a gasoline class",
                           .inputs = class_in,
                           .outputs = class_out,
                           .range = "classes aa to e",
                           .source = "ASTM D4814, table 1 (from memory)",
                           .caution = fuel_vapour}),
    entry<atmosphere>({.name = "atmosphere",
                       .title = "The standard atmosphere at an altitude",
                       .inputs = atmosphere_in,
                       .outputs = atmosphere_out,
                       .range = "5 km below to 11 km above the sea (geopotential)",
                       .source = "U.S. Standard Atmosphere, 1976"}),
};

}  // namespace

std::span<const Sum> fluid_sums() { return sums; }

}  // namespace sw
