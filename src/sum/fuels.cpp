// Sums of fuel and ignition.
#include <numbers>

#include "physics/engine.hpp"
#include "sum/families.hpp"
#include "sum/figures.hpp"

namespace sw {
namespace {

constexpr std::string_view fuel_fire =
    "fuel and its vapour burn: no sparks or flame, battery off, pressure let down, extinguisher at hand, as the makers "
    "instruct";
constexpr std::string_view high_voltage =
    "an ignition coil gives tens of kilovolts: keep clear of a live secondary and never leave it without a spark gap";

struct FlowIn {
  std::optional<Power> power;
  std::optional<SpecificConsumption> bsfc;
  std::optional<MassFlow> mass_flow;
  std::optional<VolumeFlow> flow;
  std::optional<Density> density;
};
struct FlowOut {
  std::optional<MassFlow> mass_flow;
  std::optional<VolumeFlow> flow;
};
constexpr Argument flow_in[] = {
    positive<&FlowIn::power>("power", "at the shaft", kind::power, "hp"),
    positive<&FlowIn::bsfc>("bsfc", "fuel for that work", kind::specific_consumption, "lb/(hp h)"),
    positive<&FlowIn::mass_flow>("mass_flow", "fuel by mass", kind::mass_flow, "lb/h"),
    positive<&FlowIn::flow>("flow", "fuel by volume", kind::volume_flow, "gph"),
    may(positive<&FlowIn::density>("density", "of the fuel", kind::density, "kg/m3")),
};
constexpr Argument flow_out[] = {
    result<&FlowOut::mass_flow>("mass_flow", "fuel by mass", kind::mass_flow, "lb/h"),
    result<&FlowOut::flow>("flow", "fuel by volume", kind::volume_flow, "gph"),
};
constexpr Rule flow_rules[] = {one_of("power", "mass_flow", "flow"), all_or_none_of("power", "bsfc")};

void flow_check(const FlowIn& in, Remarks& say) {
  if (in.mass_flow && !in.power && !in.density) say.need("density", "needed: a mass flow alone gives no other");
  if (in.flow && !in.power && !in.density) say.need("density", "needed: a volume flow alone gives no other");
}

void fuel_flow(const FlowIn& in, FlowOut& out, Remarks&) {
  if (in.power) out.mass_flow = MassFlow{physics::fuel_mass_flow_kg_s(in.power->si, in.bsfc->si)};
  if (in.flow) out.mass_flow = MassFlow{in.flow->si * in.density->si};
  const double mass = in.mass_flow ? in.mass_flow->si : out.mass_flow->si;
  if (in.density && !in.flow) out.flow = VolumeFlow{mass / in.density->si};
}

struct InjectorIn {
  std::optional<Power> power;
  std::optional<SpecificConsumption> bsfc;
  std::optional<int> count;
  std::optional<double> duty;
};
struct InjectorOut {
  std::optional<MassFlow> mass_flow;
};
constexpr Argument injector_in[] = {
    positive<&InjectorIn::power>("power", "at the shaft", kind::power, "hp"),
    positive<&InjectorIn::bsfc>("bsfc", "fuel for that work", kind::specific_consumption, "lb/(hp h)"),
    integer<&InjectorIn::count>("count", "injectors").from(1, 100),
    ratio<&InjectorIn::duty>("duty", "share of time open", 1),
};
constexpr Argument injector_out[] = {
    result<&InjectorOut::mass_flow>("mass_flow", "of each, held open", kind::mass_flow, "lb/h")};

void injector(const InjectorIn& in, InjectorOut& out, Remarks&) {
  out.mass_flow = MassFlow{physics::injector_mass_flow_kg_s(in.power->si, in.bsfc->si, *in.count, *in.duty)};
}

struct PressureIn {
  std::optional<MassFlow> rated_mass_flow;
  std::optional<PressureDifference> rated_pressure, pressure;
};
struct PressureOut {
  std::optional<MassFlow> mass_flow;
};
constexpr Argument pressure_in[] = {
    positive<&PressureIn::rated_mass_flow>("rated_mass_flow", "held open, at the rated pressure", kind::mass_flow,
                                           "lb/h"),
    positive<&PressureIn::rated_pressure>("rated_pressure", "across the injector", kind::pressure_difference, "psi"),
    positive<&PressureIn::pressure>("pressure", "across the injector", kind::pressure_difference, "psi"),
};
constexpr Argument pressure_out[] = {
    result<&PressureOut::mass_flow>("mass_flow", "held open", kind::mass_flow, "lb/h")};

void injector_pressure(const PressureIn& in, PressureOut& out, Remarks& say) {
  const double ratio = in.pressure->si / in.rated_pressure->si;
  if (ratio < 0.5 || ratio > 2)
    say.outside("the square root is good from half to twice the rated pressure (common practice)");
  out.mass_flow =
      MassFlow{physics::injector_at_pressure_kg_s(in.rated_mass_flow->si, in.rated_pressure->si, in.pressure->si)};
}

struct AirFuelIn {
  std::string formula;
};
struct AirFuelOut {
  std::optional<double> ratio;
};
constexpr Argument air_fuel_in[] = {text<&AirFuelIn::formula>("formula", "of the fuel, as C8H18")};
constexpr Argument air_fuel_out[] = {number<&AirFuelOut::ratio>("ratio", "air over fuel by mass, no oxygen left")};

void air_fuel_check(const AirFuelIn& in, Remarks& say) {
  if (!in.formula.empty() && !physics::stoichiometric_air_fuel(in.formula))
    say.fault("formula", "expected a fuel of C, H, O and N such as C8H18, got \"" + in.formula + "\"");
}

void air_fuel(const AirFuelIn& in, AirFuelOut& out, Remarks&) {
  out.ratio = physics::stoichiometric_air_fuel(in.formula);
}

struct EfficiencyIn {
  std::optional<SpecificConsumption> bsfc;
  std::optional<SpecificEnergy> heating_value;
};
struct EfficiencyOut {
  std::optional<double> efficiency;
};
constexpr Argument efficiency_in[] = {
    positive<&EfficiencyIn::bsfc>("bsfc", "fuel for the work", kind::specific_consumption, "lb/(hp h)"),
    positive<&EfficiencyIn::heating_value>("heating_value", "lower heating value", kind::specific_energy, "MJ/kg"),
};
constexpr Argument efficiency_out[] = {number<&EfficiencyOut::efficiency>("efficiency", "work over fuel's heat")};

void efficiency(const EfficiencyIn& in, EfficiencyOut& out, Remarks& say) {
  out.efficiency = physics::brake_efficiency(in.bsfc->si, in.heating_value->si);
  if (*out.efficiency > 1) say.outside("more work than the fuel holds: check the figures");
}

struct CoilIn {
  std::optional<Inductance> inductance;
  std::optional<Current> current;
  std::optional<Time> time;
  std::optional<Voltage> supply;
  std::optional<Resistance> resistance;
};
struct CoilOut {
  std::optional<Quantity<dim::energy>> energy;
  std::optional<Time> time;
  std::optional<Current> current;
};
constexpr Argument coil_in[] = {
    positive<&CoilIn::inductance>("inductance", "of the primary", kind::inductance, "mH"),
    positive<&CoilIn::current>("current", "reached", kind::current, "A"),
    positive<&CoilIn::time>("time", "from switching on", kind::time, "ms"),
    may(positive<&CoilIn::supply>("supply", "voltage", kind::voltage, "V")),
    may(quantity<&CoilIn::resistance>("resistance", "of the whole circuit", kind::resistance).in("ohm").from(0, 1e6)),
};
constexpr Argument coil_out[] = {
    result<&CoilOut::energy>("energy", "stored", kind::energy, "mJ"),
    result<&CoilOut::time>("time", "from switching on", kind::time, "ms"),
    result<&CoilOut::current>("current", "reached", kind::current, "A"),
};
constexpr Rule coil_rules[] = {one_of("current", "time")};

void coil_check(const CoilIn& in, Remarks& say) {
  if (in.time && !in.supply) say.need("supply", "needed with a time: it drives the current");
  if (in.time && !in.resistance) say.need("resistance", "needed with a time: it bounds the current");
}

void coil(const CoilIn& in, CoilOut& out, Remarks& say) {
  const double l = in.inductance->si;
  if (in.time) out.current = Current{physics::coil_current_a(l, in.resistance->si, in.supply->si, in.time->si)};
  out.energy = Quantity<dim::energy>{physics::coil_energy_j(l, in.current ? in.current->si : out.current->si)};
  if (!in.current || !in.supply || !in.resistance) return;
  const auto t = physics::coil_time_s(l, in.resistance->si, in.supply->si, in.current->si);
  if (t)
    out.time = Time{*t};
  else
    say.outside("the supply over the resistance never reaches that current");
}

struct DwellIn {
  std::optional<Angle> dwell_angle;
  std::optional<int> cylinders;
  std::optional<ShaftSpeed> engine_speed;
};
struct DwellOut {
  std::optional<double> share;
  std::optional<Time> time;
};
constexpr Argument dwell_in[] = {
    positive<&DwellIn::dwell_angle>("dwell_angle", "of the distributor", kind::angle, "deg", 360),
    integer<&DwellIn::cylinders>("cylinders", "number of cylinders").from(1, 16),
    may(positive<&DwellIn::engine_speed>("engine_speed", "engine speed", kind::shaft_speed, "rpm")),
};
constexpr Argument dwell_out[] = {
    number<&DwellOut::share>("share", "of the time closed"),
    result<&DwellOut::time>("time", "closed each time", kind::time, "ms"),
};

void dwell(const DwellIn& in, DwellOut& out, Remarks& say) {
  out.share = physics::dwell_share(in.dwell_angle->si, *in.cylinders);
  if (*out.share > 1) say.outside("more than the angle from one cylinder to the next");
  if (in.engine_speed) out.time = Time{physics::dwell_time_s(in.dwell_angle->si, in.engine_speed->si)};
}

constexpr Sum sums[] = {
    entry<fuel_flow, flow_check>({.name = "fuel-flow",
                                  .title = "Fuel an engine burns",
                                  .inputs = flow_in,
                                  .outputs = flow_out,
                                  .rules = flow_rules,
                                  .range = "0.50 lb/(hp h) is usual at full throttle (common practice)",
                                  .source = "definition of specific consumption",
                                  .caution = fuel_fire}),
    entry<injector>({.name = "injector",
                     .title = "Size of each injector",
                     .inputs = injector_in,
                     .outputs = injector_out,
                     .range = "duty up to about 0.85 (common practice)",
                     .source = "P x bsfc / (count x duty)",
                     .caution = fuel_fire}),
    entry<injector_pressure>({.name = "injector-pressure",
                              .title = "Injector at another pressure",
                              .inputs = pressure_in,
                              .outputs = pressure_out,
                              .range = "0.5 to 2 times the rated pressure",
                              .source = "flow with the square root of the pressure (Bernoulli)",
                              .caution = fuel_fire}),
    entry<air_fuel, air_fuel_check>(
        {.name = "air-fuel",
         .title = "Air to burn a fuel just so",
         .inputs = air_fuel_in,
         .outputs = air_fuel_out,
         .range = "fuels of carbon, hydrogen, oxygen and nitrogen; air 20.95 % oxygen by volume",
         .source =
             "element balance; Heywood, Internal Combustion Engine Fundamentals, eq. 3.5, table D.4 (from memory)"}),
    entry<efficiency>(
        {.name = "efficiency",
         .title = "Brake efficiency from consumption",
         .inputs = efficiency_in,
         .outputs = efficiency_out,
         .range = "lower heating value, gasoline about 44 MJ/kg",
         .source =
             "1 / (bsfc x heating value); Heywood, Internal Combustion Engine Fundamentals, eq. 2.24 (from memory)"}),
    entry<coil, coil_check>({.name = "coil",
                             .title = "Energy and rise time of an ignition coil",
                             .inputs = coil_in,
                             .outputs = coil_out,
                             .rules = coil_rules,
                             .range = "an unsaturated core, rise from no current",
                             .source = "energy L i^2 / 2; i = V/R (1 - exp(-t R/L))",
                             .caution = high_voltage}),
    entry<dwell>({.name = "dwell",
                  .title = "Dwell of an ignition distributor",
                  .inputs = dwell_in,
                  .outputs = dwell_out,
                  .range = "four-stroke, distributor at half engine speed",
                  .source = "geometry",
                  .caution = high_voltage}),
};

}  // namespace

std::span<const Sum> fuel_sums() { return sums; }

}  // namespace sw
