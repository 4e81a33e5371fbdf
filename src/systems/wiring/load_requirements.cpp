// The network solved again at the row that decides: what wires carry, what is lost in feeds, what reaches a load.
#include <algorithm>
#include <cmath>

#include "quantity/print.hpp"
#include "systems/wiring/checks.hpp"
#include "systems/wiring/laid.hpp"
#include "systems/wiring/states.hpp"

namespace sw::wiring {
namespace {

/// Light of a lamp goes with its volts to this power (Fink and Beaty, Standard Handbook for Electrical Engineers, 11th
/// ed. (1978), p. 22-8, as quoted by an encyclopedia, Lamp rerating).
constexpr double light_power = 3.4;
/// Volts lamps are made for, over the car's nominal: 13.5 of 12 (common practice).
constexpr double lamp_share = 1.125;

/// Share of the time a load's wire carries; of a run 1.
double share_of(const Model& m, const Conductor& c) {
  for (auto& l : m.loads)
    if (&l.wire == &c) return l.share;
  return 1;
}

}  // namespace

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

double bay_of(const Evidenced& run) {
  constexpr double late = 0.2;  // share of the duty
  return run.trace->late_mean(run.slot(heat::n_bay), late);
}

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

constexpr double least_told_a = 1e-3;  ///< a wire that is off carries what the solver leaves

std::string celsius(double k) { return print(k, kind::temperature, "degC", 3); }

void judge(const Conductor& c, double current, double bay_k, Verdict& v) {
  const auto table = lasting_limit(c);
  v.because = c.laid.told;
  if (!table) {
    v.missing.push_back(c.gauge_path);
  } else if (*table <= 0) {
    v.reason = outside_table;
  } else if (c.sized && in_bay(c.laid.zone) && air_k(c.laid.zone, bay_k) >= c.laid.insulation_k) {
    // Hot air spoils the insulation of a wire at rest too: it counts with the least current that is told.
    v.predicted = std::max(current, least_told_a);
    v.high = 0;
    v.scale = std::max(*table, 1.0);
    v.reason = "the air about it comes to " + celsius(air_k(c.laid.zone, bay_k)) + " and the insulation stands " +
               celsius(c.laid.insulation_k) + ": no current is allowed" +
               (current > least_told_a ? ", " + print(current, kind::current, "A", 3) + " flow" : "");
    v.fix_hint = "a wire with insulation for more than the bay's air, or a route out of the bay";
  } else {
    const double limit = c.sized ? std::min(*table, ampacity(c, bay_k).current_a) : *table;
    v.predicted = current;
    v.high = limit;
    v.scale = std::max(limit, 1.0);
    if (c.sized)
      v.because.push_back({.what = "the wire comes to",
                           .value = settles_at_k(c, current, bay_k),
                           .kind = &kind::temperature,
                           .unit = "degC"});
  }
  if (c.sized && in_bay(c.laid.zone))
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
  const double bay_k = bay_of(run);
  each_wire(m, [&](const Conductor& c) {
    if (c.stray) return;  // wiring.stray-current
    // A load that comes and goes heats its own wire with its full current while it is on.
    const double current = std::abs(s.current_a[c.branch]) / share_of(m, c);
    if (!lasting_limit(c) && &c == &m.fan_feed && current == 0) return;  // no electric fans, or none on
    Verdict v{.place = c.place, .row = row, .fix_hint = "a thicker wire, fewer in its bundle, or a cooler route"};
    judge(c, current, bay_k, v);
    out.push_back(std::move(v));
  });
}
}  // namespace heat

/// Volts lost between the bus and a load: in switches and runs before it, in its own feed, and on its way back to the
/// body.
namespace feed {
namespace {
struct Lost {
  double own_v, before_v, after_v;
  double all() const { return own_v + before_v + after_v; }
};
Lost lost(const Model& m, const dc::Solution& s, const Conductor& c, double share) {
  auto& b = m.network.branches[c.branch];
  // A node that stands better than the bus or the body loses nothing.
  return {.own_v = std::abs(s.current_a[c.branch]) / share * c.resistance_ohm,
          .before_v = std::max(0.0, s.node_v[m.n_bus] - s.node_v[b.from]),
          .after_v = std::max(0.0, s.node_v[b.to] - s.node_v[m.n_body])};
}
/// Whether anything feeds it: behind an open switch a load loses nothing, nor does a lamp both ends of which are live.
bool fed(const Model& m, const dc::Solution& s, const Conductor& c) {
  auto& b = m.network.branches[c.branch];
  return s.current_a[c.branch] != 0 && std::abs(s.node_v[b.from] - s.node_v[b.to]) >= dead_below_v(m);
}
void judge(const Model& m, const dc::Solution& s, const Conductor& c, Verdict v, std::vector<Verdict>& out) {
  const double share = share_of(m, c);
  if (!fed(m, s, c)) return;
  const Lost l = lost(m, s, c, share);
  v.place = c.place;
  v.high = feed_drop_v * m.nominal_v / 12;
  v.scale = m.nominal_v / 12;
  const auto volts = [&](const char* what, double volt) {
    if (volt > 1e-3) v.because.push_back({.what = what, .value = volt, .kind = &kind::voltage, .unit = "V"});
  };
  volts("in switches and runs before its own feed", l.before_v);
  volts("in its own feed, ground and joints", l.own_v);
  volts("on its way back to the body", l.after_v);
  if (l.after_v > l.own_v && l.after_v > l.before_v)
    v.fix_hint =
        "its way back: a bare, tight ground joint, a thicker or shorter strap, or its ground moved to the body";
  if (c.sized)
    v.predicted = l.all();
  else
    v.missing.push_back(c.gauge_path);
  out.push_back(std::move(v));
}
}  // namespace
void evaluate(const void* model, const Evidenced& run, std::vector<Verdict>& out) {
  auto& m = *static_cast<const Model*>(model);
  const auto s = solve_all_fans(m, run);
  if (!solved(m, s, out)) return;
  for (auto& l : m.loads)
    if (l.behaviour != Behaviour::lamp)
      judge(m, s, l.wire, {.row = run.last(), .fix_hint = "a thicker or shorter feed, or a relay close to the load"},
            out);
  judge(m, s, m.fan_feed, {.row = run.last(), .fix_hint = "a thicker or shorter feed and ground for the fans"}, out);
}
}  // namespace feed

/// The same of lamps, with the light that is left.
namespace lamps {
void evaluate(const void* model, const Evidenced& run, std::vector<Verdict>& out) {
  auto& m = *static_cast<const Model*>(model);
  const auto s = solve_all_fans(m, run);
  if (!solved(m, s, out)) return;
  for (auto& l : m.loads) {
    if (l.behaviour != Behaviour::lamp || s.current_a[l.wire.branch] == 0) continue;
    const double volts = std::abs(s.load_v[l.wire.branch]);
    Verdict v{.row = run.last(),
              .fix_hint = "a relay near the lamps, fed from the bus by its own fused wire, and a ground of its own"};
    v.because = {
        {.what = "at the lamps", .value = volts, .kind = &kind::voltage, .unit = "V"},
        {.what = "volts lamps are made for", .value = lamp_share * m.nominal_v, .kind = &kind::voltage, .unit = "V"},
        {.what = "light that is left, of that at the volts lamps are made for",
         .value = std::pow(volts / (lamp_share * m.nominal_v), light_power),
         .unit = "%"}};
    feed::judge(m, s, l.wire, std::move(v), out);
  }
}
}  // namespace lamps

/// Current in metal that is not meant to carry any.
namespace stray {
void evaluate(const void* model, const Evidenced& run, std::vector<Verdict>& out) {
  auto& m = *static_cast<const Model*>(model);
  if (std::none_of(m.runs.begin(), m.runs.end(), [](auto& c) { return c.stray; })) return;
  const std::size_t row = run.duty->engine == EngineState::cranking ? run.trace->lowest(run.slot(0)) : run.last();
  const auto s = solve(m, feed_at(run, row));
  if (!solved(m, s, out)) return;
  for (auto& c : m.runs) {
    if (!c.stray) continue;
    const double a = std::abs(s.current_a[c.branch]);
    out.push_back(
        {.place = c.place,
         .predicted = a,
         .high = stray_a,
         .scale = 10 * stray_a,
         .row = row,
         .because = {{.what = "heat in it", .value = a * a * c.resistance_ohm, .kind = &kind::power, .unit = "W"}},
         .fix_hint = "a ground strap between what it joins, thick enough to take the current instead"});
  }
}
}  // namespace stray

/// Volts at each load that says what it needs.
namespace least {
void evaluate(const void* model, const Evidenced& run, std::vector<Verdict>& out) {
  auto& m = *static_cast<const Model*>(model);
  const std::size_t row = run.trace->lowest(run.slot(0));
  const auto s = solve(m, feed_at(run, row));
  if (!solved(m, s, out)) return;
  for (auto& l : m.loads)
    if (l.least_v > 0 && feed::fed(m, s, l.wire)) {
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
