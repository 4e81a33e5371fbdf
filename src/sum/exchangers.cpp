// The sum of heat exchangers by effectiveness and NTU: one thing is given, the rest is found from it.
#include <algorithm>

#include "physics/exchanger.hpp"
#include "sum/families.hpp"

namespace sw {
namespace {

struct ExchangerIn {
  std::optional<physics::Arrangement> arrangement;
  std::optional<ThermalConductance> capacity_hot, capacity_cold;
  std::optional<double> capacity_ratio;
  std::optional<ThermalConductance> ua;
  std::optional<double> ntu, effectiveness;
  std::optional<Power> heat;
  std::optional<Temperature> t_hot_out, t_cold_out;
  std::optional<Temperature> t_hot_in, t_cold_in;
  std::optional<Quantity<dim::heat_transfer>> u;
};
struct ExchangerOut {
  std::optional<double> effectiveness, ntu;
  std::optional<ThermalConductance> ua;
  std::optional<Power> heat;
  std::optional<Temperature> t_hot_out, t_cold_out;
  std::optional<Area> area;
};
constexpr std::string_view arrangements[] = {"counterflow", "parallel", "crossflow-unmixed", "crossflow-max-mixed",
                                             "crossflow-min-mixed"};
constexpr Argument exchanger_in[] = {
    choice<&ExchangerIn::arrangement>("arrangement", "how the streams run and which mixes", arrangements),
    may(quantity<&ExchangerIn::capacity_hot>("capacity_hot", "mass flow x specific heat, hot",
                                             kind::thermal_conductance)
            .above(0, 1e9)
            .in("W/K")),
    may(quantity<&ExchangerIn::capacity_cold>("capacity_cold", "mass flow x specific heat, cold",
                                              kind::thermal_conductance)
            .above(0, 1e9)
            .in("W/K")),
    may(number<&ExchangerIn::capacity_ratio>("capacity_ratio", "lesser over greater capacity").from(0, 1)),
    quantity<&ExchangerIn::ua>("ua", "heat per degree of mean difference", kind::thermal_conductance)
        .above(0, 1e9)
        .in("W/K"),
    number<&ExchangerIn::ntu>("ntu", "number of transfer units").from(0, 1e6),
    number<&ExchangerIn::effectiveness>("effectiveness", "heat over the greatest possible").from(0, 1),
    quantity<&ExchangerIn::heat>("heat", "heat exchanged", kind::power).from(0, 1e6).in("kW"),
    quantity<&ExchangerIn::t_hot_out>("t_hot_out", "hot stream out", kind::temperature).above(-273.15, 2000).in("degC"),
    quantity<&ExchangerIn::t_cold_out>("t_cold_out", "cold stream out", kind::temperature)
        .above(-273.15, 2000)
        .in("degC"),
    may(quantity<&ExchangerIn::t_hot_in>("t_hot_in", "hot stream in", kind::temperature)
            .above(-273.15, 2000)
            .in("degC")),
    may(quantity<&ExchangerIn::t_cold_in>("t_cold_in", "cold stream in", kind::temperature)
            .above(-273.15, 2000)
            .in("degC")),
    may(quantity<&ExchangerIn::u>("u", "overall heat transfer coefficient", kind::heat_transfer)
            .above(0, 1e6)
            .in("W/(m2 K)")),
};
constexpr Argument exchanger_out[] = {
    number<&ExchangerOut::effectiveness>("effectiveness", "heat over the greatest possible"),
    number<&ExchangerOut::ntu>("ntu", "number of transfer units"),
    quantity<&ExchangerOut::ua>("ua", "heat per degree of mean difference", kind::thermal_conductance),
    quantity<&ExchangerOut::heat>("heat", "heat exchanged", kind::power).in("kW"),
    quantity<&ExchangerOut::t_hot_out>("t_hot_out", "hot stream out", kind::temperature),
    quantity<&ExchangerOut::t_cold_out>("t_cold_out", "cold stream out", kind::temperature),
    quantity<&ExchangerOut::area>("area", "area of exchange", kind::area).in("m2"),
};
constexpr Rule exchanger_rules[] = {one_of("capacity_hot", "capacity_ratio"),
                                    all_or_none_of("capacity_hot", "capacity_cold"),
                                    one_of("ua", "ntu", "effectiveness", "heat", "t_hot_out", "t_cold_out")};

void exchanger_check(const ExchangerIn& in, Remarks& say) {
  for (auto key : {"ua", "heat", "t_hot_out", "t_cold_out"}) {
    if (!say.given(key)) continue;
    say.need("capacity_hot", std::string(key) + " needs both capacities");
    say.need("capacity_cold", std::string(key) + " needs both capacities");
    if (std::string_view(key) == "ua") continue;
    say.need("t_hot_in", std::string(key) + " needs both temperatures in");
    say.need("t_cold_in", std::string(key) + " needs both temperatures in");
  }
  if (in.t_hot_in && in.t_cold_in && in.t_hot_in->si <= in.t_cold_in->si)
    say.fault("t_hot_in", "is not above t_cold_in", "exchange the sides");
}

/// What is known of the capacities; `lesser` stays empty where only their ratio was given.
struct Capacities {
  std::optional<double> hot, cold, lesser;
  double ratio = 0;
};
Capacities capacities(const ExchangerIn& in) {
  if (!in.capacity_hot) return {.ratio = *in.capacity_ratio};
  const double hot = in.capacity_hot->si, cold = in.capacity_cold->si;
  return {hot, cold, std::min(hot, cold), std::min(hot, cold) / std::max(hot, cold)};
}

/// Effectiveness where it follows from the heat; empty where NTU is the thing given.
std::optional<double> effectiveness_given(const ExchangerIn& in, const Capacities& c) {
  if (in.effectiveness) return in.effectiveness;
  if (in.ua || in.ntu) return std::nullopt;
  double heat_w = 0;
  if (in.heat)
    heat_w = in.heat->si;
  else if (in.t_hot_out)
    heat_w = *c.hot * (in.t_hot_in->si - in.t_hot_out->si);
  else
    heat_w = *c.cold * (in.t_cold_out->si - in.t_cold_in->si);
  return heat_w / (*c.lesser * (in.t_hot_in->si - in.t_cold_in->si));
}

void exchanger(const ExchangerIn& in, ExchangerOut& out, Remarks& say) {
  const Capacities c = capacities(in);
  double eff = 0;
  std::optional<double> ntu;
  if (const auto given = effectiveness_given(in, c)) {
    eff = *given;
    if (eff < 0)
      return say.fault(in.t_hot_out ? "t_hot_out" : "t_cold_out", "the hot stream must cool and the cold one warm");
    const auto found = physics::ntu_for(*in.arrangement, eff, c.ratio);
    if (found.valid)
      ntu = found.value;
    else
      say.outside("no exchanger of this arrangement reaches that effectiveness");
  } else {
    ntu = in.ntu ? *in.ntu : in.ua->si / *c.lesser;
    const auto e = physics::effectiveness(*in.arrangement, *ntu, c.ratio);
    if (!e.valid) return say.fault(in.ntu ? "ntu" : "ua", "is beyond an NTU of 500, where the series ends");
    eff = e.value;
  }
  out.effectiveness = eff;
  out.ntu = ntu;
  if (!c.lesser) return;
  if (ntu) out.ua = ThermalConductance{*ntu * *c.lesser};
  if (out.ua && in.u) out.area = Area{out.ua->si / in.u->si};
  if (!in.t_hot_in || !in.t_cold_in) return;
  const double heat_w = eff * *c.lesser * (in.t_hot_in->si - in.t_cold_in->si);
  out.heat = Power{heat_w};
  out.t_hot_out = Temperature{in.t_hot_in->si - heat_w / *c.hot};
  out.t_cold_out = Temperature{in.t_cold_in->si + heat_w / *c.cold};
}

constexpr Sum sums[] = {
    entry<exchanger, exchanger_check>(
        {.name = "exchanger",
         .title = "Heat exchanger by effectiveness and transfer units",
         .inputs = exchanger_in,
         .outputs = exchanger_out,
         .rules = exchanger_rules,
         .range = "steady flow, constant specific heats, no loss outside; capacity ratio 0 to 1, crossflow series up "
                  "to NTU 500",
         .source = "Kays and London, Compact Heat Exchangers, 3rd ed., ch. 2; unmixed crossflow: Mason (1954)",
         .caution = "hot coolant is under pressure and fans start by themselves: work on a cold system, as the maker "
                    "instructs"}),
};

}  // namespace

std::span<const Sum> exchanger_sums() { return sums; }

}  // namespace sw
