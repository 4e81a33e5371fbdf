#include <algorithm>
#include <cmath>
#include <cstdio>

#include "model/outside.hpp"
#include "systems/cooling/cooling.hpp"

namespace sw::cooling {
namespace {

const Model& of(const void* model) { return *static_cast<const Model*>(model); }
constexpr std::string_view every_running[] = {"*running"};
constexpr std::string_view running_and_soak[] = {"*running", "hot-soak"};
constexpr std::string_view idling[] = {"hot-idle", "parade"};
constexpr std::string_view hot_running[] = {"hot-idle", "parade", "grade", "cruise"};
constexpr Port coolant_port{"cooling.engine_temperature", &kind::temperature};

std::string words(const char* format, double a, double b) {
  char text[160];
  std::snprintf(text, sizeof text, format, a, b);
  return text;
}

namespace temperature {
enum Need { n_coolant, n_ambient, n_pressure };
constexpr Port needs[] = {coolant_port, outside::ambient, outside::pressure};
constexpr std::string_view chain[] = {"alternator.available",
                                      "load.current",
                                      "bus.voltage",
                                      "fans.voltage",
                                      "air.flow",
                                      "air_conditioning.condenser_heat",
                                      "radiator.air_in",
                                      "cooling.flow",
                                      "driveline.cooler_heat",
                                      "engine.heat_to_coolant",
                                      "cooling.engine_temperature"};
void evaluate(const void* model, const Evidenced& run, std::vector<Verdict>& out) {
  const std::size_t row = run.trace->highest(run.slot(n_coolant));
  const double limit = of(model).highest_k;
  if (run.at(run.trace->lowest(run.slot(n_coolant)), n_coolant) < of(model).coolant->freezing_k()) {
    out.push_back({.reason = "the coolant starts below its freezing point: see cooling.freezing"});
    return;
  }
  Verdict v{.predicted = run.at(row, n_coolant),
            .high = limit,
            .scale = limit - run.at(row, n_ambient),
            .row = row,
            .fix_hint = "more air at the volts there really are, a larger core, or less heat put in before it"};
  // The run knows no steam: beyond this the figure says how much too small the core is, not what a gauge would show.
  const double boils = boiling_k(of(model), run.at(row, n_pressure));
  if (of(model).cap_pa && *v.predicted > boils)
    v.because.push_back({.what = "long before that it boils under its cap, at",
                         .value = boils,
                         .kind = &kind::temperature,
                         .unit = "degC",
                         .evidence = "computed"});
  out.push_back(std::move(v));
}
}  // namespace temperature

namespace boil {
constexpr double margin_k = 10 / 1.8;
enum Need { n_metal, n_pressure, n_running, n_coolant };
constexpr Port needs[] = {
    {"engine.metal_temperature", &kind::temperature}, outside::pressure, outside::running, coolant_port};
constexpr std::string_view chain[] = {"cooling.engine_temperature", "engine.metal_temperature"};
void evaluate(const void* model, const Evidenced& run, std::vector<Verdict>& out) {
  auto& m = of(model);
  if (!m.cap_pa) {
    out.push_back({.missing = {m.cap_path}});
    return;
  }
  // With the pump turning the coolant itself must not boil; once it stands, what lies against the hottest metal must
  // not.
  const int hottest = run.at(0, n_running) > 0 ? n_coolant : n_metal;
  const std::size_t row = run.trace->highest(run.slot(hottest));
  const double boils = boiling_k(m, run.at(row, n_pressure));
  Verdict v{.predicted = boils - run.at(row, hottest),
            .low = margin_k,
            .scale = 40.0,
            .row = row,
            .fix_hint = "the cap the weakest part allows, more glycol, or a cooler engine when it is stopped"};
  v.because.push_back({.what = "coolant boils under this cap at",
                       .value = boils,
                       .kind = &kind::temperature,
                       .unit = "degF",
                       .evidence = "computed"});
  out.push_back(std::move(v));
}
}  // namespace boil

namespace freezing {
constexpr std::string_view duties[] = {"*cranking", "*off"};
constexpr Port needs[] = {coolant_port, outside::ambient};
void evaluate(const void* model, const Evidenced& run, std::vector<Verdict>& out) {
  out.push_back({.predicted = of(model).coolant->freezing_k(),
                 .high = run.at(0, 1),
                 .scale = 40.0,
                 .fix_hint = "more glycol; drain plain water before frost"});
}
}  // namespace freezing

namespace cap {
void evaluate(const void* model, const Evidenced&, std::vector<Verdict>& out) {
  auto& m = of(model);
  Verdict v{.fix_hint = "a weaker cap, or the weakest part replaced; then pressure-test the whole system cold"};
  if (!m.cap_pa) v.missing.push_back(m.cap_path);
  if (!m.weakest_pa) v.missing.push_back(m.weakest_path);
  if (v.missing.empty()) {
    v.predicted = *m.cap_pa;
    v.high = *m.weakest_pa;
    v.scale = std::max(*m.weakest_pa, 1.0);
  }
  out.push_back(std::move(v));
}
}  // namespace cap

namespace rotation {
constexpr Port needs[] = {{"belts.pump_direction", &kind::number}};
void evaluate(const void* model, const Evidenced& run, std::vector<Verdict>& out) {
  auto& m = of(model);
  Verdict v{.fix_hint = "the pump made for the other rotation, or the belt routed over its other side"};
  if (!m.rotation) {
    v.missing.push_back(m.rotation_path);
  } else {
    const bool with = run.at(0, 0) > 0;
    v.rule = *m.rotation == Rotation::either || (*m.rotation == Rotation::with_crank) == with;
    v.reason = std::string("the belt turns the pump ") + (with ? "with" : "against") +
               " the crank, its impeller is made to turn " +
               std::string(rotation_names[static_cast<std::size_t>(*m.rotation)]);
  }
  out.push_back(std::move(v));
}
}  // namespace rotation

namespace direction {
void evaluate(const void* model, const Evidenced&, std::vector<Verdict>& out) {
  auto& m = of(model);
  for (std::size_t i = 0; i < m.fans; ++i)
    out.push_back({.place = m.fan[i].name,
                   .reason = m.fan[i].reversed ? "it blows against the travel: fan and road air fight at the core"
                                               : "it blows with the travel",
                   .fix_hint = "blades turned round; polarity swapped only where the blades are made for both ways",
                   .rule = !m.fan[i].reversed});
}
}  // namespace direction

namespace rise {
enum Need { n_into, n_flow };
constexpr Port needs[] = {{"engine.heat_to_coolant", &kind::power}, {"cooling.flow", &kind::volume_flow}};
constexpr std::string_view chain[] = {"belts.pump_speed", "cooling.flow", "engine.heat_to_coolant"};
void evaluate(const void* model, const Evidenced& run, std::vector<Verdict>& out) {
  auto& m = of(model);
  const std::size_t row = run.last();
  const auto c = m.coolant->at(368.15);
  const double flow = run.at(row, n_flow);
  out.push_back({.predicted = run.at(row, n_into) / (flow * c.density_kg_m3 * c.specific_heat_j_kg_k),
                 .high = 12.0,
                 .scale = 12.0,
                 .row = row,
                 .fix_hint = "a faster pump (smaller pulley), the right rotation, or a freer circuit"});
}
}  // namespace rise

namespace need {
constexpr Port needs[] = {{"cooling.flow", &kind::volume_flow}};
constexpr std::string_view chain[] = {"engine.speed", "belts.pump_speed", "cooling.flow"};
void evaluate(const void* model, const Evidenced& run, std::vector<Verdict>& out) {
  auto& m = of(model);
  if (m.needed_m3_s <= 0) return;
  const std::size_t row = run.trace->lowest(run.slot(0));
  out.push_back({.predicted = run.at(row, 0),
                 .low = m.needed_m3_s,
                 .scale = m.needed_m3_s,
                 .row = row,
                 .fix_hint = "a smaller pump pulley, a higher idle with air conditioning, or a pump of more flow"});
}
}  // namespace need

namespace warm_up {
constexpr double warm_k = 353.15;
constexpr Port needs[] = {coolant_port};
constexpr std::string_view duties[] = {"warm-up"};
constexpr std::string_view chain[] = {"cooling.opening", "engine.heat_to_coolant", "cooling.engine_temperature"};
void evaluate(const void*, const Evidenced& run, std::vector<Verdict>& out) {
  std::size_t row = 0;
  while (row < run.last() && run.at(row, 0) < warm_k) ++row;
  const bool reached = run.at(row, 0) >= warm_k;
  Verdict v{.high = 900.0,
            .scale = 900.0,
            .row = row,
            .fix_hint = "a thermostat that closes, or one of a higher temperature"};
  if (reached) {
    v.predicted = run.trace->time[row];
  } else {
    v.reason = words("80 degC is not reached in the duty's %.0f min (limit %.0f min)", run.trace->time.back() / 60, 15);
    if (run.trace->time.back() >= 900.0) v.rule = false;  // no time can be told, but it is over the limit
  }
  out.push_back(std::move(v));
}
}  // namespace warm_up

namespace cycling {
constexpr Port needs[] = {{"fans.level", &kind::number}};
constexpr std::string_view chain[] = {"fans.level", "cooling.engine_temperature"};
void evaluate(const void* model, const Evidenced& run, std::vector<Verdict>& out) {
  if (of(model).electric == 0) return;
  long starts = 0;
  double on = 0;
  for (std::size_t r = 1; r < run.trace->rows(); ++r) {
    if (run.at(r, 0) > run.at(r - 1, 0)) ++starts;
    if (run.at(r, 0) > 0) on += run.trace->time[r] - run.trace->time[r - 1];
  }
  const double hours = run.trace->time.back() / 3600;
  Verdict v{.predicted = static_cast<double>(starts) / hours,
            .high = 60.0,
            .scale = 60.0,
            .row = run.last(),
            .fix_hint = "set-points further apart"};
  v.because.push_back({.what = "share of the time a fan runs",
                       .value = on / run.trace->time.back(),
                       .kind = &kind::number,
                       .unit = "%",
                       .evidence = "computed"});
  out.push_back(std::move(v));
}
}  // namespace cycling

namespace expansion {
constexpr Port needs[] = {coolant_port};
void evaluate(const void* model, const Evidenced&, std::vector<Verdict>& out) {
  auto& m = of(model);
  if (!m.tank_m3) return;
  const double cold = m.coolant->at(283.15).density_kg_m3, hot = m.coolant->at(m.highest_k).density_kg_m3;
  out.push_back({.predicted = (m.engine_m3 + m.radiator_m3) * (cold / hot - 1),
                 .high = *m.tank_m3,
                 .scale = *m.tank_m3 > 0 ? *m.tank_m3 : 1e-3,
                 .fix_hint = "a larger recovery bottle"});
}
}  // namespace expansion

namespace set_points {
constexpr Port needs[] = {coolant_port};
void evaluate(const void* model, const Evidenced&, std::vector<Verdict>& out) {
  auto& m = of(model);
  for (std::size_t i = 0; i < m.electric; ++i) {
    auto& f = m.fan[i];
    const bool apart = f.on_k - f.off_k >= 2, above = f.off_k >= m.opens_k;
    out.push_back({.place = f.name,
                   .reason = words("switched off at %.0f degC, thermostat opens at %.0f degC", f.off_k - 273.15,
                                   m.opens_k - 273.15) +
                             (apart ? "" : "; on and off less than 2 K apart"),
                   .fix_hint = "off above the thermostat's opening, on at least 3 K above off",
                   .rule = apart && above});
  }
}
}  // namespace set_points

constexpr Requirement all[] = {
    {.id = "cooling.coolant-temperature",
     .title = "coolant stays below its limit",
     .kind = RequirementKind::most,
     .hazard = Hazard::damage,
     .caution = Caution::hot_coolant,
     .quantity = &kind::temperature,
     .unit = "degC",
     .source = "common practice: 105 degC under a sound cap",
     .formula = "heat into the coolant against heat from the core by effectiveness and transfer units (Kays and "
                "London), air by fans at their own volts and by road speed",
     .duties = every_running,
     .needs = temperature::needs,
     .chain = temperature::chain,
     .alone_port = "fans.voltage",
     .alone_as = "fans.rated_voltage",
     .alone_says = "alone, with the fans at their rated volts",
     .alone_fix = "first see that the fans get their volts: charging.balance and charging.bus-voltage of the same duty",
     .evaluate = temperature::evaluate},
    {.id = "cooling.boil-margin",
     .title = "margin to boiling",
     .kind = RequirementKind::least,
     .hazard = Hazard::harm,
     .caution = Caution::hot_coolant,
     .quantity = &kind::temperature_step,
     .unit = "degF",
     .source = "common practice: 10 degF",
     .formula = "boiling temperature of the mixture at air pressure plus cap, less the hottest coolant (running) or "
                "coolant-side metal (standing)",
     .duties = running_and_soak,
     .needs = boil::needs,
     .chain = boil::chain,
     .evaluate = boil::evaluate},
    {.id = "cooling.freezing",
     .title = "coolant does not freeze",
     .kind = RequirementKind::most,
     .hazard = Hazard::damage,
     .quantity = &kind::temperature,
     .unit = "degC",
     .source = "freezing points after Melinder 2010",
     .formula = "freezing point of the mixture against the air the car stands in",
     .duties = freezing::duties,
     .needs = freezing::needs,
     .evaluate = freezing::evaluate},
    {.id = "cooling.cap",
     .title = "cap no stronger than the weakest part",
     .kind = RequirementKind::most,
     .hazard = Hazard::harm,
     .caution = Caution::hot_coolant,
     .quantity = &kind::gauge_pressure,
     .unit = "psi",
     .source = "common practice: cap by the weakest part",
     .formula = "cap pressure against the lowest rating of radiator, heater core and hoses",
     .own_missing = true,
     .evaluate = cap::evaluate},
    {.id = "cooling.pump-rotation",
     .title = "pump turns the way its impeller is made",
     .kind = RequirementKind::rule,
     .hazard = Hazard::damage,
     .source = "common practice",
     .formula = "a pulley on the belt's face turns with the crank, on its back against it",
     .needs = rotation::needs,
     .own_missing = true,
     .evaluate = rotation::evaluate},
    {.id = "cooling.fan-direction",
     .title = "fan blows with the travel",
     .kind = RequirementKind::rule,
     .hazard = Hazard::damage,
     .caution = Caution::fans_start,
     .source = "common practice",
     .formula = "direction of the fan's air at the core",
     .own_missing = true,
     .evaluate = direction::evaluate},
    {.id = "cooling.fan-set-points",
     .title = "fan set-points fit the thermostat",
     .kind = RequirementKind::rule,
     .hazard = Hazard::nuisance,
     .caution = Caution::fans_start,
     .source = "common practice",
     .formula = "off at or above the thermostat's opening, else the fan never stops; on at least 2 K above off",
     .needs = set_points::needs,
     .evaluate = set_points::evaluate},
    {.id = "cooling.coolant-rise",
     .title = "coolant rise through the engine",
     .kind = RequirementKind::most,
     .hazard = Hazard::damage,
     .quantity = &kind::temperature_step,
     .unit = "K",
     .source = "common practice: more than 12 K is low flow",
     .formula = "heat into the coolant over flow, density and specific heat, thermostat open",
     .duties = hot_running,
     .needs = rise::needs,
     .chain = rise::chain,
     .evaluate = rise::evaluate},
    {.id = "cooling.pump-flow",
     .title = "coolant flow at idle",
     .kind = RequirementKind::least,
     .hazard = Hazard::nuisance,
     .quantity = &kind::volume_flow,
     .unit = "gal/min",
     .source = "the maker's figure, as given in the build",
     .formula = "pump flow by the affinity law at its belt-driven speed",
     .duties = idling,
     .needs = need::needs,
     .chain = need::chain,
     .evaluate = need::evaluate},
    {.id = "cooling.warm-up",
     .title = "time to 80 degC",
     .kind = RequirementKind::most,
     .hazard = Hazard::nuisance,
     .quantity = &kind::time,
     .unit = "min",
     .source = "common practice: 15 min",
     .formula = "heat into metal, oil and coolant with the thermostat closed",
     .duties = warm_up::duties,
     .needs = warm_up::needs,
     .chain = warm_up::chain,
     .evaluate = warm_up::evaluate},
    {.id = "cooling.fan-cycling",
     .title = "fan starts an hour",
     .kind = RequirementKind::most,
     .hazard = Hazard::nuisance,
     .caution = Caution::fans_start,
     .quantity = &kind::number,
     .unit = "",
     .source = "common practice: one a minute",
     .formula = "starts counted over the duty",
     .duties = idling,
     .needs = cycling::needs,
     .chain = cycling::chain,
     .evaluate = cycling::evaluate},
    {.id = "cooling.expansion",
     .title = "room for the coolant to swell",
     .kind = RequirementKind::most,
     .hazard = Hazard::nuisance,
     .caution = Caution::hot_coolant,
     .quantity = &kind::volume,
     .unit = "L",
     .source = "densities after Melinder 2010",
     .formula = "volume times cold over hot density less one, 10 degC to the highest temperature",
     .needs = expansion::needs,
     .evaluate = expansion::evaluate},
};

}  // namespace

std::span<const Requirement> System::requirements() { return all; }

}  // namespace sw::cooling
