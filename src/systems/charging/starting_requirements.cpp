// Does it crank in the cold, and how long may it stand and still do so?
#include <algorithm>
#include <cmath>

#include "physics/starter.hpp"
#include "systems/charging/checks.hpp"

namespace sw::charging {

namespace cranking {
namespace {
/// The usual load test allows 9.6 V at 70 degF and 8.5 V at 0 degF, a straight line between (common practice, from
/// memory).
double least_v(const Model& m, double air_k) {
  if (m.least_crank_v > 0) return m.least_crank_v;
  const double at = std::clamp((air_k - 255.37) / (294.26 - 255.37), 0.0, 1.0);
  return (8.5 + 1.1 * at) * m.cells / 6;
}
}  // namespace
void volts(const void* model, const Evidenced& run, std::vector<Verdict>& out) {
  auto& m = *static_cast<const Model*>(model);
  const std::size_t row = run.trace->lowest(run.slot(0));
  out.push_back({.predicted = run.at(row, 0),
                 .low = least_v(m, run.at(row, 1)),
                 .scale = m.cells / 3,
                 .row = row,
                 .fix_hint = "a battery with more cold cranking current, or a lighter oil"});
}
void speed(const void* model, const Evidenced& run, std::vector<Verdict>& out) {
  auto& m = *static_cast<const Model*>(model);
  const std::size_t row = run.trace->lowest(run.slot(n_starter_v));
  const auto now = physics::motor_speed({m.starter_v, m.starter_a, m.crank_rad_s}, m.starter_ohm,
                                        run.at(row, n_starter_v), run.at(row, n_starter_a));
  if (!now.valid) {  // within the doubt of its figures, which by themselves are refused
    out.push_back({.reason = "the starter's resistance leaves no volts to turn it at its rated current"});
    return;
  }
  out.push_back(
      {.predicted = now.value,
       .low = m.least_crank_rad_s,
       .scale = m.crank_rad_s,
       .row = row,
       .fix_hint = "thicker battery and ground cables, a stronger battery, a lighter oil, or a geared starter"});
}
void loop(const void* model, const Evidenced& run, std::vector<Verdict>& out) {
  const std::size_t row = run.trace->lowest(run.slot(n_at_starter));
  const double share = loop_drop_v * static_cast<const Model*>(model)->cells / 6;
  out.push_back({.predicted = run.at(row, n_battery_v) - run.at(row, n_at_starter),
                 .high = share,
                 .scale = share,
                 .row = row,
                 .fix_hint = "thicker or shorter starter and block-to-battery cables"});
}
}  // namespace cranking

namespace standing {
namespace {
/// Time to the least charge: where the run passes it, else on the straight line through what the run lost, which tells
/// draw and self-discharge together.
double time_left(const Evidenced& run, std::size_t row, double longest) {
  const double from = run.at(0, 1), now = run.at(row, 1), time = run.trace->time[row];
  if (from <= starts_from) return 0;
  if (now >= from) return longest;
  if (now >= starts_from) return std::min(longest, time * (from - starts_from) / (from - now));
  const double before = run.at(row - 1, 1), earlier = run.trace->time[row - 1];
  return earlier + (time - earlier) * (before - starts_from) / (before - now);
}
}  // namespace
void evaluate(const void* model, const Evidenced& run, std::vector<Verdict>& out) {
  auto& m = *static_cast<const Model*>(model);
  if (run.duty->method != Method::rest) return;  // minutes after a stop tell nothing of weeks
  std::size_t row = 0;
  while (row < run.last() && (row == 0 || run.at(row, 1) > starts_from)) ++row;
  // Nobody leaves a battery on its posts for a winter.
  constexpr double longest_connected_s = 60 * 86400.0;
  const double rest_s = run.trace->time[run.last()];
  const double asked = rest_s > longest_connected_s ? m.days_s : std::max(m.days_s, rest_s);
  const double longest = 10 * m.days_s, left = time_left(run, row, longest);
  out.push_back({.predicted = left,
                 .low = asked,
                 .scale = m.days_s,
                 .row = row,
                 .reason = left >= longest ? "at least so long" : "",
                 .fix_hint = "find the draw with an ammeter in the battery lead, pull fuses one by one; for a longer "
                             "rest unhook the battery or keep it charged"});
}
}  // namespace standing

}  // namespace sw::charging
