#include <algorithm>
#include <cmath>

#include "model/told.hpp"
#include "physics/refrigerant.hpp"
#include "systems/air_conditioning/air_conditioning.hpp"

namespace sw::air_conditioning {
namespace {

const Model& of(const void* model) { return *static_cast<const Model*>(model); }

/// Heat and load are counted where the system is said to be there, whether or not anything turns its compressor: a car
/// described by halves would pass.
namespace drive {
constexpr Port needs[] = {{"belts.compressor_ratio", &kind::number}};
void evaluate(const void* model, const Evidenced& run, std::vector<Verdict>& out) {
  auto& m = of(model);
  const double ratio = run.at(0, 0);
  const bool driven = ratio > 0;
  if (!m.fitted && !driven) return;
  Verdict v{.fix_hint =
                "the compressor's pulley on the belt that turns it (drives = \"compressor\"), or fitted = false"};
  if (!m.fitted && !m.said) {
    v.missing = {m.fitted_path};
  } else if (!std::isnan(ratio)) {
    // A compressor that stays on the belt of a car whose system was taken out turns free.
    v.rule = driven;
    v.reason = m.fitted ? driven ? "a belt drives the compressor"
                                 : "air conditioning is fitted and no pulley of any belt drives its compressor"
                        : "the compressor turns with its clutch open: the car is said to have no air conditioning";
  }
  out.push_back(std::move(v));
}
}  // namespace drive

/// Pressure of the high side while the car stands.
namespace standing {
constexpr double late = 0.5, cuts_pa = 7e3;  ///< within a psi of the switch it has opened
constexpr std::string_view duties[] = {"hot-idle", "parade"};
enum Need { n_on, n_pressure, n_condensing, n_air, need_count };
constexpr Port needs[] = {{"air_conditioning.on", &kind::number},
                          {"air_conditioning.high_side", &kind::gauge_pressure},
                          {"air_conditioning.condensing", &kind::temperature},
                          {"air_conditioning.air_in", &kind::temperature}};
static_assert(std::size(needs) == need_count);
constexpr std::string_view chain[] = {"fans.voltage", "air.flow", "air_conditioning.air_in",
                                      "air_conditioning.condenser_heat", "air_conditioning.condensing"};
void evaluate(const void* model, const Evidenced& run, std::vector<Verdict>& out) {
  auto& m = of(model);
  if (!m.fitted || !(run.at(run.last(), n_on) > 0)) return;
  Verdict v{.predicted = run.trace->late_mean(run.slot(n_pressure), late),
            .high = m.most_idle_pa,
            .scale = m.most_idle_pa,
            .row = run.last(),
            .mean_share = late,
            .fix_hint =
                "fans that run with the air conditioning asked for (or by its pressure switch, on at 225 to 240 "
                "psi), sides and top between condenser and radiator closed, more air; then a licensed shop's look "
                "at the circuit"};
  if (!m.known) {
    v.predicted.reset();
    v.reason = "pressures are known for R134a alone";
  } else if (run.at(run.trace->highest(run.slot(n_pressure)), n_pressure) > m.cut_out_pa - cuts_pa) {
    v.because.push_back(told("the high pressure switch opens at", m.cut_out_pa, kind::gauge_pressure, "psi"));
  }
  out.push_back(std::move(v));
}
}  // namespace standing

/// Whether any electric fan turns while it is asked for and the car stands.
namespace fans {
constexpr std::string_view duties[] = {"hot-idle"};
enum Need { n_on, n_level, n_fitted, need_count };
constexpr Port needs[] = {
    {"air_conditioning.on", &kind::number}, {"fans.level", &kind::number}, {"fans.fitted", &kind::current}};
static_assert(std::size(needs) == need_count);
void evaluate(const void* model, const Evidenced& run, std::vector<Verdict>& out) {
  if (!of(model).fitted || !(run.at(0, n_fitted) > 0)) return;
  std::size_t row = 0, still = run.trace->rows();
  // The first row stands before the fans' controller has looked.
  for (row = 1; row < run.trace->rows() && still == run.trace->rows(); ++row)
    if (run.at(row, n_on) > 0 && !(run.at(row, n_level) > 0)) still = row;
  const bool ok = still == run.trace->rows();
  out.push_back({.row = ok ? 0 : still,
                 .reason = ok ? "a fan runs whenever it is asked for" : "it is asked for and no fan turns",
                 .fix_hint =
                     "with_air_conditioning = true on the fan before the condenser: a feed by the clutch's circuit "
                     "or the pressure switch",
                 .rule = ok});
}
}  // namespace fans

/// A heater that stays hot beside the evaporator.
namespace vents {
constexpr double most_k = 2;
void evaluate(const void* model, const Evidenced&, std::vector<Verdict>& out) {
  auto& m = of(model);
  if (!m.fitted || (!m.valve && !m.leak_w)) return;
  Verdict v{.high = most_k,
            .scale = most_k,
            .fix_hint = "the valve in the hose that comes from the intake, its arrow with the flow; both hoses marked"};
  const bool shut = m.valve == Valve::supply;
  if (!m.leak_w && !shut) v.missing.push_back(m.leak_path);
  if (!m.vent_kg_s) v.missing.push_back(m.vent_path);
  if (v.missing.empty()) {
    const double leak = m.leak_w.value_or(0);
    v.predicted = physics::air_rise_k(leak, *m.vent_kg_s).value;
    v.because.push_back(told("heat of the heater while cooling", leak, kind::power, "kW"));
    if (m.valve && !shut)
      v.because.push_back({.what = "heater valve",
                           .role = Role::given,
                           .text = std::string(valve_names[static_cast<std::size_t>(*m.valve)])});
    if (m.cooling_w) v.because.push_back(told("cooling left", *m.cooling_w - leak, kind::power, "kW"));
  }
  out.push_back(std::move(v));
}
}  // namespace vents

constexpr Requirement all[] = {
    {.id = "air_conditioning.compressor-drive",
     .title = "a belt drives the compressor",
     .kind = RequirementKind::rule,
     .hazard = Hazard::nuisance,
     .caution = Caution::belts_pulleys,
     .source = "common practice",
     .formula = "where air conditioning is fitted one pulley drives its compressor; where one does, it is said whether "
                "the system is there",
     .needs = drive::needs,
     .own_missing = true,
     .evaluate = drive::evaluate},
    {.id = "air_conditioning.high-side",
     .title = "pressure of the high side, standing",
     .kind = RequirementKind::most,
     .hazard = Hazard::nuisance,
     .caution = Caution::refrigerant,
     .quantity = &kind::gauge_pressure,
     .unit = "psi",
     .source = "common practice: 300 psi at a hot idle",
     .formula =
         "saturation at the air before the condenser plus its heat over effectiveness times the air's heat flow per "
         "degree; mean of the duty's second half",
     .duties = standing::duties,
     .needs = standing::needs,
     .chain = standing::chain,
     .evaluate = standing::evaluate},
    {.id = "air_conditioning.fan",
     .title = "a fan runs with the air conditioning",
     .kind = RequirementKind::rule,
     .hazard = Hazard::nuisance,
     .caution = Caution::refrigerant,
     .source = "common practice",
     .formula = "standing, one electric fan at least turns while it is asked for",
     .duties = fans::duties,
     .needs = fans::needs,
     .evaluate = fans::evaluate},
    {.id = "air_conditioning.vents",
     .title = "heater stays out of the cooling",
     .kind = RequirementKind::most,
     .hazard = Hazard::nuisance,
     .caution = Caution::refrigerant,
     .quantity = &kind::temperature_step,
     .unit = "K",
     .source = "common practice: 2 K at the vents",
     .formula = "heat of the heater while cooling over air flow times specific heat",
     .own_missing = true,
     .evaluate = vents::evaluate},
};

}  // namespace

std::span<const Requirement> System::requirements() { return all; }

}  // namespace sw::air_conditioning
