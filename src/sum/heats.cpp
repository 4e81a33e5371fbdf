// Sums of heat: convection in tubes, mean temperature difference, coolant flow. Exchangers stand in exchangers.cpp.
#include "physics/convection.hpp"
#include "physics/exchanger.hpp"
#include "sum/families.hpp"
#include "sum/fluid_args.hpp"

namespace sw {
namespace {

constexpr std::string_view hot_coolant =
    "hot coolant is under pressure and fans start by themselves: work on a cold system, as the maker instructs";

enum class TubeMode { heated, cooled };
struct TubeIn {
  std::optional<double> reynolds, prandtl;
  std::optional<TubeMode> mode;
  std::optional<double> factor;
  std::optional<Length> bore;
  std::optional<Quantity<dim::conductivity>> conductivity;
  std::optional<Length> length;
  std::optional<TemperatureStep> wall_difference;
};
struct TubeOut {
  std::optional<double> nusselt_dittus_boelter, nusselt_gnielinski;
  std::optional<Quantity<dim::heat_transfer>> coefficient_dittus_boelter, coefficient_gnielinski;
  std::optional<TemperatureStep> rise;
};
constexpr std::string_view mode_choices[] = {"heated", "cooled"};
constexpr Argument tube_in[] = {
    number<&TubeIn::reynolds>("reynolds", "Reynolds number").above(0, 1e9),
    number<&TubeIn::prandtl>("prandtl", "Prandtl number").above(0, 1e5),
    choice<&TubeIn::mode>("mode", "what happens to the fluid", mode_choices),
    may(number<&TubeIn::factor>("factor", "Darcy friction factor, a smooth tube's where left out").above(0, 1)),
    may(quantity<&TubeIn::bore>("bore", "inside diameter", kind::length).above(0, 1e4).in("mm")),
    may(quantity<&TubeIn::conductivity>("conductivity", "thermal conductivity of the fluid", kind::conductivity)
            .above(0, 1e4)
            .in("W/(m K)")),
    may(quantity<&TubeIn::length>("length", "length of the tube", kind::length).above(0, 1e5).in("m")),
    may(quantity<&TubeIn::wall_difference>("wall_difference", "wall to fluid, held along the tube",
                                           kind::temperature_step)
            .in("K")),
};
constexpr Argument tube_out[] = {
    number<&TubeOut::nusselt_dittus_boelter>("nusselt_dittus_boelter", "Nusselt number by Dittus-Boelter"),
    number<&TubeOut::nusselt_gnielinski>("nusselt_gnielinski", "Nusselt number by Gnielinski"),
    quantity<&TubeOut::coefficient_dittus_boelter>("coefficient_dittus_boelter",
                                                   "heat transfer coefficient by Dittus-Boelter", kind::heat_transfer),
    quantity<&TubeOut::coefficient_gnielinski>("coefficient_gnielinski", "heat transfer coefficient by Gnielinski",
                                               kind::heat_transfer),
    quantity<&TubeOut::rise>("rise", "how far the fluid's temperature goes towards the wall's", kind::temperature_step),
};

void tube_convection(const TubeIn& in, TubeOut& out, Remarks& say) {
  const double re = *in.reynolds, pr = *in.prandtl;
  const auto dittus = physics::nusselt_dittus_boelter(re, pr, *in.mode == TubeMode::heated);
  const auto gnielinski = physics::nusselt_gnielinski(re, pr, in.factor ? *in.factor : physics::smooth_tube_factor(re));
  out.nusselt_dittus_boelter = dittus.value;
  out.nusselt_gnielinski = gnielinski.value;
  if (!dittus.valid) say.outside("Dittus-Boelter: Re from 10 000, Pr 0.6 to 160");
  if (!gnielinski.valid) say.outside("Gnielinski: Re 3000 to 5e6, Pr 0.5 to 2000");
  if (in.bore && in.conductivity) {
    out.coefficient_dittus_boelter = Quantity<dim::heat_transfer>{dittus.value * in.conductivity->si / in.bore->si};
    out.coefficient_gnielinski = Quantity<dim::heat_transfer>{gnielinski.value * in.conductivity->si / in.bore->si};
  }
  // heat h pi D L dT over capacity Re Pr k pi D / 4
  if (in.bore && in.length && in.wall_difference)
    out.rise = TemperatureStep{4 * dittus.value * in.length->si / in.bore->si / (re * pr) * in.wall_difference->si};
}

enum class TwoWays { counterflow, parallel };
struct LmtdIn {
  std::optional<TwoWays> arrangement;
  std::optional<Temperature> t_hot_in, t_hot_out, t_cold_in, t_cold_out;
  std::optional<Power> heat;
  std::optional<double> correction;
  std::optional<Area> area;
};
struct LmtdOut {
  std::optional<TemperatureStep> lmtd;
  std::optional<ThermalConductance> ua;
  std::optional<Quantity<dim::heat_transfer>> u;
};
constexpr std::string_view two_ways[] = {"counterflow", "parallel"};
constexpr Argument lmtd_in[] = {
    choice<&LmtdIn::arrangement>("arrangement", "how the streams run", two_ways),
    quantity<&LmtdIn::t_hot_in>("t_hot_in", "hot stream in", kind::temperature).above(-273.15, 2000).in("degC"),
    quantity<&LmtdIn::t_hot_out>("t_hot_out", "hot stream out", kind::temperature).above(-273.15, 2000).in("degC"),
    quantity<&LmtdIn::t_cold_in>("t_cold_in", "cold stream in", kind::temperature).above(-273.15, 2000).in("degC"),
    quantity<&LmtdIn::t_cold_out>("t_cold_out", "cold stream out", kind::temperature).above(-273.15, 2000).in("degC"),
    may(quantity<&LmtdIn::heat>("heat", "heat exchanged", kind::power).above(0, 1e6).in("kW")),
    number<&LmtdIn::correction>("correction", "factor of the arrangement on the mean difference")
        .above(0, 1)
        .or_else(1, Source::chosen),
    may(quantity<&LmtdIn::area>("area", "area of exchange", kind::area).above(0, 1e6).in("m2")),
};
constexpr Argument lmtd_out[] = {
    quantity<&LmtdOut::lmtd>("lmtd", "logarithmic mean temperature difference", kind::temperature_step),
    quantity<&LmtdOut::ua>("ua", "heat per degree of mean difference", kind::thermal_conductance),
    quantity<&LmtdOut::u>("u", "overall heat transfer coefficient", kind::heat_transfer),
};

void lmtd(const LmtdIn& in, LmtdOut& out, Remarks& say) {
  const double hot_in = in.t_hot_in->si, hot_out = in.t_hot_out->si, cold_in = in.t_cold_in->si,
               cold_out = in.t_cold_out->si;
  const bool counter = *in.arrangement == TwoWays::counterflow;
  const auto mean =
      physics::log_mean_difference(hot_in - (counter ? cold_out : cold_in), hot_out - (counter ? cold_in : cold_out));
  if (hot_out > hot_in || cold_out < cold_in)
    say.fault("t_hot_out, t_cold_out", "the hot stream must cool and the cold one warm");
  if (!mean.valid || mean.value_k < 0)
    say.fault("t_hot_in, t_hot_out, t_cold_in, t_cold_out",
              "the streams would have to cross: the hot one must stay the hotter at both ends");
  if (!say.faults().empty()) return;
  out.lmtd = TemperatureStep{mean.value_k};
  if (!in.heat) return;
  const double ua = in.heat->si / (*in.correction * mean.value_k);
  out.ua = ThermalConductance{ua};
  if (in.area) out.u = Quantity<dim::heat_transfer>{ua / in.area->si};
}

struct CoolantIn {
  std::optional<Power> heat;
  std::optional<VolumeFlow> flow;
  std::optional<TemperatureStep> rise;
  AnyFluid fluid;
};
struct CoolantOut {
  std::optional<Power> heat;
  std::optional<VolumeFlow> flow;
  std::optional<TemperatureStep> rise;
};
constexpr Argument coolant_in[] = {
    quantity<&CoolantIn::heat>("heat", "heat carried", kind::power).above(0, 1e6).in("kW"),
    quantity<&CoolantIn::flow>("flow", "flow by volume", kind::volume_flow).above(0, 1e6).in("L/min"),
    quantity<&CoolantIn::rise>("rise", "temperature rise", kind::temperature_step).above(0, 1000).in("K"),
    fields_of<&CoolantIn::fluid>(),
};
constexpr Argument coolant_out[] = {
    quantity<&CoolantOut::heat>("heat", "heat carried", kind::power).in("kW"),
    quantity<&CoolantOut::flow>("flow", "flow by volume", kind::volume_flow).in("L/min"),
    quantity<&CoolantOut::rise>("rise", "temperature rise", kind::temperature_step),
};
constexpr Rule coolant_rules[] = {two_of("heat", "flow", "rise")};

void coolant_check(const CoolantIn& in, Remarks& say) {
  check_fluid(in.fluid, {.density = true, .specific_heat = true}, say);
}

void coolant_flow(const CoolantIn& in, CoolantOut& out, Remarks& say) {
  const auto f = state_of(in.fluid, say);
  const double per_volume = f.density_kg_m3 * f.specific_heat_j_kg_k;
  if (!in.heat)
    out.heat = Power{per_volume * in.flow->si * in.rise->si};
  else if (!in.flow)
    out.flow = VolumeFlow{in.heat->si / (per_volume * in.rise->si)};
  else
    out.rise = TemperatureStep{in.heat->si / (per_volume * in.flow->si)};
}

constexpr Sum sums[] = {
    entry<tube_convection>({.name = "tube-convection",
                            .title = "Heat transfer of a fluid in a tube",
                            .inputs = tube_in,
                            .outputs = tube_out,
                            .range = "Dittus-Boelter Re from 10 000, Pr 0.6 to 160; Gnielinski Re 3000 to 5e6, Pr 0.5 "
                                     "to 2000; rise by Dittus-Boelter",
                            .source = "Dittus-Boelter as McAdams, Heat Transmission (1942); Gnielinski, Int. Chem. "
                                      "Eng. 16 (1976) 359; smooth tube: Petukhov (1970)"}),
    entry<lmtd>({.name = "lmtd",
                 .title = "Logarithmic mean temperature difference",
                 .inputs = lmtd_in,
                 .outputs = lmtd_out,
                 .range = "steady flow, constant specific heats; the hot stream the hotter at both ends",
                 .source = "Bergman, Lavine, Incropera and DeWitt, Introduction to Heat Transfer, 6th ed., ch. 11",
                 .caution = hot_coolant}),
    entry<coolant_flow, coolant_check>({.name = "coolant-flow",
                                        .title = "Heat, flow and temperature rise of a coolant",
                                        .inputs = coolant_in,
                                        .outputs = coolant_out,
                                        .rules = coolant_rules,
                                        .range = "no boiling; properties at the temperature given",
                                        .source = "heat balance: heat = density x specific heat x flow x rise",
                                        .caution = hot_coolant}),
};

}  // namespace

std::span<const Sum> heat_sums() { return sums; }

}  // namespace sw
