// What the pump and its lines give: pressure at the rail, flow, drops, speeds, and what the injectors make of it.
#include <algorithm>
#include <cmath>

#include "quantity/customary.hpp"
#include "systems/fuel/checks.hpp"

namespace sw::fuel {
namespace {

const Model& of(const void* model) { return *static_cast<const Model*>(model); }

std::size_t worst_of(const Evidenced& run, auto margin) {
  std::size_t row = 0;
  for (std::size_t r = 1; r < run.trace->rows(); ++r)
    if (margin(r) < margin(row)) row = r;
  return row;
}

}  // namespace

namespace rail {
constexpr double band_pa = 2 * psi_pa;
void evaluate(const void* model, const Evidenced& run, std::vector<Verdict>& out) {
  auto& m = of(model);
  const auto low = [&](std::size_t r) {
    return m.carburettor ? m.carburettor_least_pa : held_pa(m, run.at(r, n_manifold)) - band_pa;
  };
  const auto high = [&](std::size_t r) {
    return m.carburettor ? m.carburettor_most_pa : held_pa(m, run.at(r, n_manifold)) + band_pa;
  };
  const std::size_t row =
      worst_of(run, [&](std::size_t r) { return std::min(run.at(r, n_rail) - low(r), high(r) - run.at(r, n_rail)); });
  const bool over = run.at(row, n_rail) > (low(row) + high(row)) / 2;
  out.push_back(
      {.predicted = run.at(row, n_rail),
       .low = low(row),
       .high = high(row),
       .scale = (high(row) - low(row)) / 2,
       .row = row,
       .fix_hint =
           m.carburettor
               ? (over ? "a regulator in the feed, or a pump of less pressure" : "a pump of more flow, or a wider feed")
           : over ? "a wider return (see fuel.lowest-pressure), a smaller pump, or one whose speed is controlled"
                  : "a pump of more flow at that pressure, its volts (wiring), or a wider feed"});
}
}  // namespace rail

namespace flow {
constexpr double reserve = 1.1;  ///< flow over demand (common practice)
void evaluate(const void* model, const Evidenced& run, std::vector<Verdict>& out) {
  auto& m = of(model);
  const std::size_t row = run.trace->highest(run.slot(n_demand));
  const double demand = run.at(row, n_demand), tank_k = run.at(row, n_tank);
  pipes::Network n = m.network;
  set_network(m,
              {.tank_k = tank_k,
               .fuel_m3 = run.at(row, n_mass) / density_kg_m3(m, tank_k),
               .demand_m3_s = 0,
               .volts = run.at(row, n_volts),
               .vacuum_pa = run.at(row, n_vacuum),
               .manifold_vacuum_pa = run.at(row, n_manifold),
               .running = true},
              n);
  // What would flow into a rail held at its least good pressure with nothing sent back.
  const double held = m.carburettor ? m.carburettor_least_pa : held_pa(m, run.at(row, n_manifold));
  n.nodes[m.n_rail].given_pa = held;
  if (m.e_regulator && !m.carburettor) n.elements[*m.e_regulator].law = pipes::Line{{{1e-4, 1e3, 0, 0}}};
  pipes::Solution s;
  if (!pipes::solve(n, s).usable()) {
    out.push_back({.reason = "the fuel lines have no solution: " + std::string(s.summary.reason)});
    return;
  }
  Verdict v{.predicted = s.flow_m3_s[m.e_pump],
            .low = reserve * demand,
            .scale = reserve * demand,
            .row = row,
            .fix_hint = "a pump of more flow at that pressure, a feed with less loss, or more volts at the pump"};
  v.because.push_back({.what = "with the rail held at", .value = held, .kind = &kind::gauge_pressure, .unit = "psi"});
  v.because.push_back({.what = "pressure the pump must make then",
                       .value = s.pressure_pa[m.n_out],
                       .kind = &kind::gauge_pressure,
                       .unit = "psi"});
  out.push_back(std::move(v));
}
}  // namespace flow

namespace lowest {
void evaluate(const void* model, const Evidenced& run, std::vector<Verdict>& out) {
  auto& m = of(model);
  if (m.carburettor || !m.set_pa) return;
  const auto own = [&](std::size_t r) { return m.least_drop_pa * std::pow(run.at(r, n_return) / m.least_at_m3_s, 2); };
  const auto most = [&](std::size_t r) { return held_pa(m, run.at(r, n_manifold)); };
  const std::size_t row = worst_of(run, [&](std::size_t r) { return most(r) - run.at(r, n_back) - own(r); });
  Verdict v{.predicted = run.at(row, n_back) + own(row),
            .high = most(row),
            .scale = *m.set_pa,
            .row = row,
            .fix_hint =
                "a wider return with smooth bends, a regulator of more flow, or a smaller or speed-controlled "
                "pump; never through the vent or the filler's vapour pipe"};
  v.because.push_back({.what = "the return line loses",
                       .value = run.at(row, n_back),
                       .kind = &kind::pressure_difference,
                       .unit = "psi"});
  v.because.push_back({.what = "the regulator itself, fully open",
                       .value = own(row),
                       .kind = &kind::pressure_difference,
                       .unit = "psi"});
  out.push_back(std::move(v));
}
}  // namespace lowest

namespace drop {
constexpr double most_pa = 6 * psi_pa;
void evaluate(const void* model, const Evidenced& run, std::vector<Verdict>& out) {
  if (of(model).carburettor) return;  // there a regulator in the feed takes what is too much
  const std::size_t row = run.trace->highest(run.slot(0));
  out.push_back({.predicted = run.at(row, 0),
                 .high = most_pa,
                 .scale = most_pa,
                 .row = row,
                 .fix_hint = "a wider or shorter feed, fewer sharp fittings, a fresh filter"});
}
}  // namespace drop

namespace velocity {
constexpr double suction_m_s = 1.2, pressure_m_s = 4.5;
void evaluate(const void* model, const Evidenced& run, std::vector<Verdict>& out) {
  auto& m = of(model);
  for (auto& r : m.runs) {
    // Behind a regulator that stands before it a feed carries what the engine burns alone.
    const bool back = r.list == "return";
    const bool whole = r.list == "suction" || returns_from_rail(m) || r.before_regulator;
    const int need = back ? n_return : whole ? n_flow : n_demand;
    const std::size_t row = run.trace->highest(run.slot(need));
    const double limit = r.list == "suction" ? suction_m_s : pressure_m_s;
    out.push_back({.place = r.name,
                   .predicted = run.at(row, need) / physics::pipe_area_m2(r.pipe.bore_m),
                   .high = limit,
                   .scale = limit,
                   .row = row,
                   .fix_hint = "a wider line, or less flow sent round"});
  }
}
}  // namespace velocity

namespace injector {
constexpr double most_open = 0.85;
void evaluate(const void* model, const Evidenced& run, std::vector<Verdict>& out) {
  auto& m = of(model);
  if (m.carburettor) return;
  if (!m.injector_missing.empty()) {
    out.push_back({.missing = m.injector_missing});
    return;
  }
  const std::size_t row = run.trace->highest(run.slot(n_demand));
  // An injector sprays from the rail into the manifold.
  const double across = run.at(row, n_rail) + run.at(row, n_manifold);
  const double each = *m.injector_kg_s * std::sqrt(std::max(across, 0.0) / *m.injector_pa);
  const double asked = run.at(row, n_demand) * density_kg_m3(m, run.at(row, n_tank)) / *m.injectors;
  if (!(each > 0)) {
    out.push_back({.row = row, .reason = "there is no pressure at the rail: see fuel.rail-pressure", .rule = false});
    return;
  }
  Verdict v{.predicted = asked / each,
            .high = most_open,
            .scale = most_open,
            .row = row,
            .fix_hint = "larger injectors, or more pressure if pump, hoses and calibration allow it"};
  v.because.push_back(
      {.what = "each injector gives at this pressure", .value = each, .kind = &kind::mass_flow, .unit = "lb/h"});
  v.because.push_back({.what = "each must give", .value = asked, .kind = &kind::mass_flow, .unit = "lb/h"});
  out.push_back(std::move(v));
}
}  // namespace injector

namespace told {
void evaluate(const void* model, const Evidenced& run, std::vector<Verdict>& out) {
  auto& m = of(model);
  if (m.carburettor) return;
  if (!m.calibration_missing.empty()) {
    out.push_back({.missing = m.calibration_missing});
    return;
  }
  // The controller is told one pressure across the injector, or one over the air to which it adds the vacuum it reads.
  const double told = m.told_kg_s.value_or(*m.injector_kg_s * std::sqrt(*m.told_pa / *m.injector_pa));
  const bool adds = m.calibration_referenced == false;
  const auto off = [&](std::size_t r) {
    const double vacuum = run.at(r, n_manifold), across = std::max(run.at(r, n_rail) + vacuum, 0.0);
    const double reckoned = told * std::sqrt(adds ? 1 + vacuum / *m.told_pa : 1.0);
    return *m.injector_kg_s * std::sqrt(across / *m.injector_pa) / reckoned - 1;
  };
  const std::size_t row = worst_of(run, [&](std::size_t r) { return -std::abs(off(r)); });
  Verdict v{.predicted = off(row),
            .low = -m.trim,
            .high = m.trim,
            .scale = m.trim,
            .row = row,
            .fix_hint =
                "one figure for the rail's pressure: enter the real one in the controller, or fit the "
                "regulator its figures were made for"};
  v.because.push_back(
      {.what = "the controller reckons with", .value = *m.told_pa, .kind = &kind::pressure_difference, .unit = "psi"});
  out.push_back(std::move(v));
}
}  // namespace told

}  // namespace sw::fuel
