// Does the machine give what the car asks, at volts that all of it stands, and does it last?
#include <algorithm>
#include <cmath>

#include "quantity/print.hpp"
#include "systems/charging/checks.hpp"

namespace sw::charging {
namespace {

constexpr double late = 0.5;  ///< share of a duty over which its settled mean is taken

}  // namespace

/// Current the alternator can give, over what everything asks for.
namespace balance {
namespace {
/// Engine speed at which the machine, as hot as it is now, gives `load`; 0 where it never does.
double break_even(const Model& m, double load, double hot, double ratio) {
  const auto gives = [&](double w) { return m.output->at(w).value * hot; };
  double high = m.output->first();
  while (high < m.output->last() && gives(high) < load) high += 1.0;
  if (gives(high) < load) return 0;
  double low = std::max(high - 1.0, m.output->first());
  for (int i = 0; i < 20; ++i) {
    const double mid = 0.5 * (low + high);
    (gives(mid) < load ? low : high) = mid;
  }
  return high / ratio;
}
}  // namespace
void evaluate(const void* model, const Evidenced& run, std::vector<Verdict>& out) {
  auto& m = *static_cast<const Model*>(model);
  const double available = run.trace->late_mean(run.slot(n_available), late),
               load = run.trace->late_mean(run.slot(n_load), late);
  Verdict v{
      .predicted = available - load, .low = 0.0, .scale = std::max(load, 1.0), .row = run.last(), .mean_share = late};
  const double ratio = run.at(v.row, n_ratio), turning = run.trace->late_mean(run.slot(n_speed), late) * ratio,
               cold = m.output->at(turning).value;
  if (cold > 0) {
    if (const double even = break_even(m, load, available / cold, ratio); even > 0)
      v.because.push_back(
          {.what = "engine speed at which it breaks even", .value = even, .kind = &kind::shaft_speed, .unit = "rpm"});
  }
  v.fix_hint =
      "a machine that gives more at this speed, a smaller alternator pulley (mind its speed limit), a higher idle, or "
      "less load";
  out.push_back(std::move(v));
}
}  // namespace balance

/// Bus voltage against what the regulator means it to be, less the drop a charge lead may have.
namespace bus {
void evaluate(const void* model, const Evidenced& run, std::vector<Verdict>& out) {
  const double cells = static_cast<const Model*>(model)->cells;
  out.push_back({.predicted = run.trace->late_mean(run.slot(n_bus), late),
                 .low = run.trace->late_mean(run.slot(n_set), late) - lead_drop_v * cells / 6,
                 .scale = cells / 4,
                 .row = run.last(),
                 .mean_share = late,
                 .fix_hint = "where current is short, more of it at this speed; else thicker charge lead and ground, "
                             "or the sense wire moved to the bus"});
}
}  // namespace bus
namespace drops {
namespace {
void judge(const void* model, const Evidenced& run, double limit_v, std::vector<Verdict>& out) {
  const double share = static_cast<const Model*>(model)->cells / 6;
  // The settled mean: the minute in which a battery takes back what the start cost is not what a cable is judged by.
  out.push_back({.predicted = run.trace->late_mean(run.slot(0), late),
                 .high = limit_v * share,
                 .scale = 0.5 * share,
                 .row = run.last(),
                 .mean_share = late,
                 .fix_hint = "a thicker or shorter cable and bare, clean joint faces"});
}
}  // namespace
void ground(const void* model, const Evidenced& run, std::vector<Verdict>& out) {
  judge(model, run, ground_drop_v, out);
}
void lead(const void* model, const Evidenced& run, std::vector<Verdict>& out) { judge(model, run, lead_drop_v, out); }
}  // namespace drops

/// What a battery and the lamps stand for long: 2.48 V a cell.
namespace over {
constexpr double most_v_cell = 14.9 / 6;
void evaluate(const void* model, const Evidenced& run, std::vector<Verdict>& out) {
  const double cells = static_cast<const Model*>(model)->cells;
  out.push_back(
      {.predicted = run.trace->late_mean(run.slot(0), late),
       .high = most_v_cell * cells,
       .scale = cells / 4,
       .row = run.last(),
       .mean_share = late,
       .fix_hint =
           "the regulator the battery's maker asks for; machine, battery, starter and lamps all of the car's voltage"});
}
}  // namespace over

namespace rotor {
void evaluate(const void* model, const Evidenced& run, std::vector<Verdict>& out) {
  auto& m = *static_cast<const Model*>(model);
  if (!m.highest_rad_s) {
    out.push_back({.missing = {m.highest_path}});
    return;
  }
  out.push_back({.predicted = run.at(0, n_red) * run.at(0, n_ratio),
                 .high = m.highest_rad_s,
                 .scale = *m.highest_rad_s,
                 .fix_hint = "a larger alternator pulley"});
}
}  // namespace rotor

namespace winding {
void evaluate(const void* model, const Evidenced& run, std::vector<Verdict>& out) {
  const double limit = static_cast<const Model*>(model)->highest_k;
  const std::size_t row = run.trace->highest(run.slot(n_winding));
  out.push_back({.predicted = run.at(row, n_winding),
                 .high = limit,
                 .scale = limit - run.at(row, n_ambient),
                 .row = row,
                 .fix_hint = "cooler air led to the machine, or a larger one"});
}
}  // namespace winding

namespace recharge {
void evaluate(const void* model, const Evidenced& run, std::vector<Verdict>& out) {
  const double capacity = static_cast<const Model*>(model)->capacity_c;
  out.push_back({.predicted = (run.at(run.last(), 0) - run.at(0, 0)) * capacity,
                 .low = 0.0,
                 .scale = 0.1 * capacity,
                 .row = run.last(),
                 .fix_hint = "more output at the speeds this drive holds"});
}
}  // namespace recharge

namespace left {
void evaluate(const void*, const Evidenced& run, std::vector<Verdict>& out) {
  const std::size_t row = run.trace->lowest(run.slot(0));
  Verdict v{.predicted = run.at(row, 0),
            .low = starts_from,
            .scale = starts_from,
            .row = row,
            .fix_hint = "what makes current made cover current used: see charging.balance"};
  if (*v.predicted < starts_from) {
    std::size_t first = 0;
    while (run.at(first, 0) >= starts_from) ++first;
    v.because.push_back(
        {.what = "it is past that after", .value = run.trace->time[first], .kind = &kind::time, .unit = "min"});
  }
  out.push_back(std::move(v));
}
}  // namespace left

namespace polarity {
void evaluate(const void* model, const Evidenced&, std::vector<Verdict>& out) {
  auto& m = *static_cast<const Model*>(model);
  Verdict v{.fix_hint =
                "a machine of the car's polarity, or the whole car converted: battery, instruments, coil and every "
                "electronic part"};
  if (!m.earth_path.empty()) v.missing = {m.earth_path};
  if (!m.car_positive) v.missing.push_back(m.car_earth_path);
  if (v.missing.empty()) {
    const bool positive = *m.car_positive;
    v.rule = m.earth == Earth::isolated || (m.earth == Earth::positive) == positive;
    v.reason = std::string("the machine's case is ") + std::string(earth_names[static_cast<std::size_t>(m.earth)]) +
               ", the car has " + (positive ? "positive" : "negative") + " earth";
  }
  out.push_back(std::move(v));
}
}  // namespace polarity

namespace rated {
void evaluate(const void* model, const Evidenced&, std::vector<Verdict>& out) {
  auto& m = *static_cast<const Model*>(model);
  if (!m.battery_v) return;
  constexpr double same_v = 0.5;
  const auto volts = [](double v) { return print(v, kind::voltage, "V", 2); };
  out.push_back({.reason = "the battery is one of " + volts(*m.battery_v) + ", the car of " + volts(m.nominal_v),
                 .fix_hint = "a battery of the car's volts, or the whole car converted",
                 .rule = std::abs(*m.battery_v - m.nominal_v) < same_v});
}
}  // namespace rated

}  // namespace sw::charging
