// What a run shows: heat, boiling, flow, warming up, fans that come and go.
#include "systems/cooling/checks.hpp"

namespace sw::cooling {
namespace {

const Model& of(const void* model) { return *static_cast<const Model*>(model); }

}  // namespace

namespace temperature {
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
  // The run knows no steam: beyond boiling the figure says how much too small the core is, not what a gauge would show.
  const double boils = boiling_k(of(model), run.at(row, n_pressure));
  if (of(model).cap_pa && *v.predicted > boils) {
    std::size_t first = 0;
    while (run.at(first, n_coolant) <= boils) ++first;
    v.because.push_back({.what = "no gauge will show that: it boils over before, at",
                         .value = boils,
                         .kind = &kind::temperature,
                         .unit = "degC"});
    v.because.push_back(
        {.what = "that is, after", .value = run.trace->time[first], .kind = &kind::time, .unit = "min"});
  }
  out.push_back(std::move(v));
}
}  // namespace temperature

namespace boil {
constexpr double margin_k = 10 / 1.8;
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
  v.because.push_back(
      {.what = "coolant boils under this cap at", .value = boils, .kind = &kind::temperature, .unit = "degF"});
  out.push_back(std::move(v));
}
}  // namespace boil

namespace rise {
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
constexpr double warm_k = 353.15, longest_s = 900;
void evaluate(const void*, const Evidenced& run, std::vector<Verdict>& out) {
  std::size_t row = 0;
  while (row < run.last() && run.at(row, 0) < warm_k) ++row;
  const bool reached = run.at(row, 0) >= warm_k;
  Verdict v{.high = longest_s,
            .scale = longest_s,
            .row = row,
            .fix_hint = "a thermostat that closes, or one of a higher temperature"};
  if (reached) {
    v.predicted = run.trace->time[row];
  } else {
    v.reason = words("80 degC is not reached in the duty's %.0f min (limit %.0f min)", run.trace->time.back() / 60,
                     longest_s / 60);
    if (run.trace->time.back() >= longest_s) v.rule = false;  // no time can be told, but it is over the limit
  }
  out.push_back(std::move(v));
}
}  // namespace warm_up

namespace cycling {
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
                       .unit = "%"});
  out.push_back(std::move(v));
}
}  // namespace cycling

}  // namespace sw::cooling
