// Switches and relays: what their contacts carry, and whether a coil gets the volts that close it.
#include <cmath>

#include "systems/wiring/checks.hpp"

namespace sw::wiring {

namespace contact {
void evaluate(const void* model, const Evidenced& run, std::vector<Verdict>& out) {
  auto& m = *static_cast<const Model*>(model);
  if (m.switches.empty()) return;
  const auto s = solve_all_fans(m, run);
  if (!solved(m, s, out)) return;
  for (auto& sw : m.switches) {
    const double a = std::abs(s.current_a[sw.branch]);
    if (!(a > 0)) continue;
    Verdict v{.place = sw.place,
              .row = run.last(),
              .fix_hint = sw.coil ? "a relay rated for more, or its loads shared out over two"
                                  : "a relay that carries the load and a switch that carries only its coil"};
    if (sw.limit_a > 0) {
      v.predicted = a;
      v.high = sw.limit_a;
      v.scale = sw.limit_a;
    } else {
      v.missing.push_back(sw.limit_path);
    }
    out.push_back(std::move(v));
  }
}
}  // namespace contact

namespace coil {
void evaluate(const void* model, const Evidenced& run, std::vector<Verdict>& out) {
  auto& m = *static_cast<const Model*>(model);
  const bool any = std::any_of(m.switches.begin(), m.switches.end(), [](auto& s) { return s.coil.has_value(); });
  if (!any) return;
  const std::size_t row = run.trace->lowest(run.slot(0));
  const Feed feed = feed_at(run, row);
  const auto s = solve(m, feed);
  if (!solved(m, s, out)) return;
  for (auto& sw : m.switches)
    if (sw.coil && sw.closed.holds(feed.state))
      out.push_back({.place = sw.place,
                     .predicted = std::abs(s.load_v[*sw.coil]),
                     .low = sw.pull_in_v,
                     .scale = m.nominal_v / 3,
                     .row = row,
                     .fix_hint = "its coil fed from a better point, or by a thicker wire; a sound ground for it"});
}
}  // namespace coil

}  // namespace sw::wiring
