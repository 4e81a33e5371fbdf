// Does the coil fill in the time and at the volts there are, and does it and its switch bear what it costs?
#include <algorithm>
#include <cmath>

#include "model/told.hpp"
#include "systems/ignition/checks.hpp"

namespace sw::ignition {
namespace {

constexpr double late = 0.5;  ///< share of a duty over which its settled mean is taken
constexpr double ampere = 1;

/// What a ballast does that stands where it should not, or lacks where it should stand.
std::string weak_hint(const Model& m) {
  if (m.coil.ballast_ohm > 0 && m.by != By::points)
    return "take the ballast or resistance wire out of the coil's feed: its switch needs the car's full volts";
  return "more volts at the coil (a relay and a wire of its own), a coil that fills faster, or more dwell where the "
         "switch allows it";
}
void tell_without_ballast(const Model& m, double volts, double closed_s, Verdict& v) {
  if (!(m.coil.ballast_ohm > 0)) return;
  auto bare = m.coil;
  bare.ballast_ohm = 0;
  v.because.push_back(told("coil current without the ballast", physics::coil_rise(bare, volts, closed_s).current_a,
                           kind::current, "A"));
}

}  // namespace

namespace spark {
void running(const void* model, const Evidenced& run, std::vector<Verdict>& out) {
  auto& m = of(model);
  const std::size_t row = run.trace->lowest(run.slot(n_spark));
  Verdict v{
      .predicted = run.at(row, n_spark), .low = m.needed_j, .scale = m.needed_j, .row = row, .fix_hint = weak_hint(m)};
  tell_without_ballast(m, run.at(row, n_volts), dwell_at(m, run.at(row, n_speed), run.at(row, n_volts)).closed_s, v);
  out.push_back(std::move(v));
}
void cranking(const void* model, const Evidenced& run, std::vector<Verdict>& out) {
  auto& m = of(model);
  const std::size_t row = run.trace->lowest(run.slot(n_spark));
  Verdict v{.predicted = run.at(row, n_spark),
            .low = m.needed_j,
            .scale = m.needed_j,
            .row = row,
            .fix_hint = m.coil.ballast_ohm > 0 && m.by != By::points
                            ? weak_hint(m)
                            : "volts at the coil while the starter turns: battery and cables; a feed past the ballast "
                              "where there is one; a feed that is live with the key at start"};
  const bool fed = run.at(row, n_volts) > 0;
  if (!fed) v.reason = "the coil has no volts while the starter turns: its feed is dead with the key at start";
  if (fed && !m.bypassed && run.at(row, n_speed) > 0)
    tell_without_ballast(m, run.at(row, n_volts), dwell_at(m, run.at(row, n_speed), run.at(row, n_volts)).closed_s, v);
  out.push_back(std::move(v));
}
void red_line(const void* model, const Evidenced& run, std::vector<Verdict>& out) {
  auto& m = of(model);
  const std::size_t row = run.trace->lowest(run.slot(n_red_volts));
  const double volts = run.at(row, n_red_volts);
  const Dwell dwell = dwell_at(m, run.at(row, n_red), volts);
  const auto rise = physics::coil_rise(circuit(m, false), volts, dwell.closed_s);
  Verdict v{.predicted = m.transfer * rise.energy_j,
            .low = m.needed_j,
            .scale = m.needed_j,
            .row = row,
            .fix_hint = weak_hint(m)};
  v.because.push_back(told("from spark to spark of one coil", dwell.period_s, kind::time, "ms"));
  v.because.push_back(told("of which the coil is fed", dwell.closed_s, kind::time, "ms"));
  v.because.push_back(told("coil current as the switch opens", rise.current_a, kind::current, "A"));
  tell_without_ballast(m, volts, dwell.closed_s, v);
  out.push_back(std::move(v));
}
}  // namespace spark

namespace supply {
void evaluate(const void* model, const Evidenced& run, std::vector<Verdict>& out) {
  auto& m = of(model);
  if (m.by == By::points) return;
  if (!m.least_v) return out.push_back({.missing = {m.least_v_path}});
  const std::size_t row = run.trace->lowest(run.slot(0));
  out.push_back({.predicted = run.at(row, 0),
                 .low = *m.least_v,
                 .scale = 2.0,
                 .row = row,
                 .fix_hint =
                     "a feed of its own from a relay, live with the key at start too; a stronger battery, thicker "
                     "cables; no ballast before a module"});
}
}  // namespace supply

namespace burden {
void current(const void* model, const Evidenced& run, std::vector<Verdict>& out) {
  auto& m = of(model);
  if (!m.most_a) return out.push_back({.missing = {m.most_a_path}});
  const std::size_t row = run.trace->highest(run.slot(0));
  out.push_back({.predicted = run.at(row, 0),
                 .high = *m.most_a,
                 .scale = std::max(*m.most_a, ampere),
                 .row = row,
                 .fix_hint = m.by == By::points
                                 ? "the ballast this coil is made for, or a coil of more resistance"
                                 : "less dwell, a coil of more resistance, or a driver made for this coil"});
}
void coil(const void* model, const Evidenced& run, std::vector<Verdict>& out) {
  auto& m = of(model);
  out.push_back({.predicted = run.trace->late_mean(run.slot(0), late),
                 .high = m.coil_w,
                 .scale = m.coil_w,
                 .row = run.last(),
                 .mean_share = late,
                 .fix_hint =
                     "less dwell (by time, not by angle), the ballast this coil is made for, or a coil made for "
                     "full volts"});
}
void in_switch(const void* model, const Evidenced& run, std::vector<Verdict>& out) {
  auto& m = of(model);
  if (!m.most_w) return;
  out.push_back({.predicted = run.trace->late_mean(run.slot(0), late),
                 .high = *m.most_w,
                 .scale = *m.most_w,
                 .row = run.last(),
                 .mean_share = late,
                 .fix_hint =
                     "less dwell, so that the current limit is only just reached; the module on bare metal with "
                     "its paste, away from heat"});
}
void standing(const void* model, const Evidenced&, std::vector<Verdict>& out) {
  auto& m = of(model);
  Verdict v{.high = m.coil_w,
            .scale = m.coil_w,
            .fix_hint =
                "never leave the key on with the engine standing; a module that cuts the current off, or the "
                "ballast this coil is made for"};
  if (!m.standing) {
    if (m.by) v.missing = {m.standing_path};
    if (v.missing.empty()) return;
  } else if (*m.standing == Standing::cuts_off) {
    return;
  } else {
    const auto heat = physics::coil_standing(circuit(m, false), m.battery_v);
    if (std::isnan(heat.coil_w)) return;  // the coil's own figures lack; the other findings say so
    v.predicted = heat.coil_w;
    v.because.push_back(told("battery at rest", m.battery_v, kind::voltage, "V"));
    v.because.push_back(told("coil current, switch closed", heat.mean_a, kind::current, "A"));
    if (heat.ballast_w > 0) v.because.push_back(told("heat in the ballast", heat.ballast_w, kind::power, "W"));
    if (m.by != By::points) v.because.push_back(told("heat in the switch", heat.switch_w, kind::power, "W"));
  }
  out.push_back(std::move(v));
}
}  // namespace burden

}  // namespace sw::ignition
