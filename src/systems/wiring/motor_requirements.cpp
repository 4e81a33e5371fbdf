// A motor held still, and what a load draws as it is switched on: fuse and wire against time.
#include <algorithm>
#include <cmath>

#include "physics/fuse.hpp"
#include "quantity/print.hpp"
#include "systems/wiring/checks.hpp"
#include "systems/wiring/laid.hpp"

namespace sw::wiring {

namespace stall {
namespace {

/// The network with that load's motor held still: its winding is then a resistance.
double stalled_a(const Model& m, const Feed& feed, const LoadModel& l) {
  dc::Network n = m.network;
  set_feed(m, feed, n);
  auto& branch = n.branches[l.wire.branch];
  branch.law = dc::Resistor{l.rated_v / l.stall_a};
  branch.closed = true;
  dc::Solution s;
  return dc::solve(n, s).usable() ? std::abs(s.current_a[l.wire.branch]) : std::nan("");
}

struct Comes {
  double to_k;
  std::string told;
};
/// Temperature of its wire: what it settles at where no fuse opens, else what it came to by the time the fuse, at the
/// latest its standard allows, has opened.
Comes comes_to(const Conductor& c, double current_a, double bay_k) {
  const double air = air_k(c.laid.zone, bay_k), settles = settles_at_k(c, current_a, bay_k);
  if (!c.fused) return {settles, "no fuse opens"};
  const auto window = physics::blade_fuse_time(current_a / c.fuse_a);
  if (!window.longest_s) return {settles, "its fuse carries that for good"};
  const double until = physics::short_time_temperature(c.area_m2, air, current_a, *window.longest_s);
  return {std::min(settles, until),
          "its fuse opens within " + print(*window.longest_s, kind::time, "s", 2) + " at the latest"};
}

}  // namespace

void evaluate(const void* model, const Evidenced& run, std::vector<Verdict>& out) {
  auto& m = *static_cast<const Model*>(model);
  const double bay_k = bay_of(run);
  Feed feed = feed_at(run, run.last());
  for (auto& l : m.loads) {
    if (!(l.stall_a > 0)) continue;
    Verdict v{.place = l.wire.place,
              .row = run.last(),
              .because = l.wire.laid.told,
              .fix_hint =
                  "a wire that carries the fuse's rating and a fuse that opens while the motor stands, or a "
                  "breaker in the motor"};
    if (!l.wire.sized) {
      v.missing.push_back(l.wire.gauge_path);
    } else if (!(l.wire.ampacity_a > 0)) {
      v.reason = outside_table;
    } else if (const double a = stalled_a(m, feed, l); std::isnan(a)) {
      v.reason = "the network has no solution with the motor held still";
    } else {
      const Comes comes = comes_to(l.wire, a, bay_k);
      v.predicted = comes.to_k;
      v.high = l.wire.laid.insulation_k;
      v.scale = 50;
      v.because.insert(v.because.begin(),
                       {.what = "current with the motor held still", .value = a, .kind = &kind::current, .unit = "A"});
      v.because.insert(v.because.begin() + 1, {.what = "fuse", .text = comes.told});
    }
    out.push_back(std::move(v));
  }
}
}  // namespace stall

namespace inrush {
namespace {
constexpr double no_trial = 100;  ///< times as long as it lasts: nobody asks whether the fuse stands it
}
void evaluate(const void* model, const Evidenced&, std::vector<Verdict>& out) {
  auto& m = *static_cast<const Model*>(model);
  if (m.named_twice) return;
  for (auto& l : m.loads) {
    if (!l.wire.fused || !(l.inrush_a > 0)) continue;
    const double carries = physics::shortest_melting(l.inrush_a / l.wire.fuse_a);
    if (carries > no_trial * l.inrush_s) continue;
    out.push_back(
        {.place = l.wire.place,
         .predicted = carries,
         .low = l.inrush_s,
         .scale = l.inrush_s,
         .because = {{.what = "as it is switched on", .value = l.inrush_a, .kind = &kind::current, .unit = "A"}},
         .fix_hint = "a fuse the next size up on a wire it still protects, or a slower one"});
  }
}
}  // namespace inrush

}  // namespace sw::wiring
