// The network solved again at the row that decides: what wires carry, what is lost in feeds, what reaches a load.
#include <algorithm>
#include <cmath>

#include "quantity/print.hpp"
#include "systems/wiring/checks.hpp"
#include "systems/wiring/laid.hpp"

namespace sw::wiring {
namespace {

constexpr double feed_drop_v = 0.5;

/// The network solved again at a row. The run's rows hold what the block read.
dc::Solution solve(const Model& m, const Feed& feed) {
  dc::Network n = m.network;
  set_feed(m, feed, n);
  dc::Solution s;
  dc::solve(n, s);
  return s;
}
Feed feed_at(const Evidenced& run, std::size_t row) {
  return network::feed_from([&](int i) { return run.at(row, n_first_read + i); });
}
/// Share of the time a load's wire carries; of a run 1.
double share_of(const Model& m, const Conductor& c) {
  for (auto& l : m.loads)
    if (&l.wire == &c) return l.share;
  return 1;
}

/// Every wire with what it carries.
template <class Visit>
void each_wire(const Model& m, Visit visit) {
  for (auto& c : m.runs) visit(c);
  for (auto& l : m.loads) visit(l.wire);
  visit(m.fan_feed);
}

}  // namespace

dc::Solution solve_all_fans(const Model& m, const Evidenced& run) {
  Feed feed = feed_at(run, run.last());
  feed.fan_a = run.at(run.last(), n_fitted);
  return solve(m, feed);
}

bool solved(const Model& m, const dc::Solution& s, std::vector<Verdict>& out) {
  if (!s.summary.usable()) out.push_back({.reason = trouble(m, s.summary)});
  return s.summary.usable();
}

/// Current in each wire against what it carries for good, in the engine bay in the air of this duty.
namespace heat {
namespace {

constexpr double late = 0.2;  ///< share of the duty whose mean bay air a wire is held to: it follows in minutes

constexpr double least_told_a = 1e-3;  ///< a wire that is off carries what the solver leaves

std::string celsius(double k) { return print(k, kind::temperature, "degC", 3); }

void judge(const Conductor& c, double current, double bay_k, Verdict& v) {
  const auto table = lasting_limit(c);
  v.because = c.laid.told;
  if (!table) {
    v.missing.push_back(c.gauge_path);
  } else if (*table <= 0) {
    v.reason = outside_table;
  } else if (c.sized && c.laid.zone == Zone::engine_bay && bay_k >= c.laid.insulation_k) {
    // Hot air spoils the insulation of a wire at rest too: it counts with the least current that is told.
    v.predicted = std::max(current, least_told_a);
    v.high = 0;
    v.scale = std::max(*table, 1.0);
    v.reason = "the bay comes to " + celsius(bay_k) + " and the insulation stands " + celsius(c.laid.insulation_k) +
               ": no current is allowed" +
               (current > least_told_a ? ", " + print(current, kind::current, "A", 3) + " flow" : "");
    v.fix_hint = "a wire with insulation for more than the bay's air, or a route out of the bay";
  } else {
    const double limit = c.sized ? std::min(*table, ampacity(c, bay_k).current_a) : *table;
    v.predicted = current;
    v.high = limit;
    v.scale = std::max(limit, 1.0);
  }
  if (c.sized && c.laid.zone == Zone::engine_bay)
    v.because.push_back({.what = "air under the bonnet, late in the duty",
                         .value = bay_k,
                         .kind = &kind::temperature,
                         .unit = "degC",
                         .path = "bay.temperature"});
}

}  // namespace

void evaluate(const void* model, const Evidenced& run, std::vector<Verdict>& out) {
  auto& m = *static_cast<const Model*>(model);
  const std::size_t row = run.last();
  const auto s = solve_all_fans(m, run);
  if (!solved(m, s, out)) return;
  const double bay_k = run.trace->late_mean(run.slot(n_bay), late);
  each_wire(m, [&](const Conductor& c) {
    // A load that comes and goes heats its own wire with its full current while it is on.
    const double current = std::abs(s.current_a[c.branch]) / share_of(m, c);
    if (!lasting_limit(c) && &c == &m.fan_feed && current == 0) return;  // no electric fans, or none on
    Verdict v{.place = c.place, .row = row, .fix_hint = "a thicker wire, fewer in its bundle, or a cooler route"};
    judge(c, current, bay_k, v);
    out.push_back(std::move(v));
  });
}
}  // namespace heat

/// Volts lost in each load's own feed and ground.
namespace feed {
void evaluate(const void* model, const Evidenced& run, std::vector<Verdict>& out) {
  auto& m = *static_cast<const Model*>(model);
  const auto s = solve_all_fans(m, run);
  if (!solved(m, s, out)) return;
  auto judge = [&](const Conductor& c, const char* fix_hint) {
    const double current = std::abs(s.current_a[c.branch]) / share_of(m, c);
    if (!(current > 0)) return;
    Verdict v{.place = c.place, .high = feed_drop_v, .scale = 1.0, .row = run.last(), .fix_hint = fix_hint};
    if (c.sized)
      v.predicted = current * c.resistance_ohm;
    else
      v.missing.push_back(c.gauge_path);
    out.push_back(std::move(v));
  };
  for (auto& l : m.loads) judge(l.wire, "a thicker or shorter feed, or a relay close to the load");
  judge(m.fan_feed, "a thicker or shorter feed and ground for the fans");
}
}  // namespace feed

/// Volts at each load that says what it needs.
namespace least {
void evaluate(const void* model, const Evidenced& run, std::vector<Verdict>& out) {
  auto& m = *static_cast<const Model*>(model);
  const std::size_t row = run.trace->lowest(run.slot(0));
  const auto s = solve(m, feed_at(run, row));
  if (!solved(m, s, out)) return;
  for (auto& l : m.loads)
    if (l.least_v > 0 && s.current_a[l.wire.branch] != 0) {
      Verdict v{.place = l.wire.place,
                .low = l.least_v,
                .scale = 2.0,
                .row = row,
                .fix_hint = "more bus voltage, or a thicker feed"};
      if (l.wire.sized)
        v.predicted = std::abs(s.load_v[l.wire.branch]);
      else
        v.missing.push_back(l.wire.gauge_path);
      out.push_back(std::move(v));
    }
}
}  // namespace least

}  // namespace sw::wiring
