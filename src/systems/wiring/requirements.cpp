#include <algorithm>
#include <cmath>
#include <cstdio>
#include <optional>

#include "systems/wiring/network_block.hpp"

namespace sw::wiring {
namespace {

constexpr std::string_view every_running[] = {"*running"};
constexpr Port bus_needs[] = {{"bus.voltage", &kind::voltage},
                              network::reads[0],
                              network::reads[1],
                              network::reads[2],
                              network::reads[3],
                              network::reads[4],
                              network::reads[5],
                              network::reads[6],
                              network::reads[7],
                              network::reads[8],
                              {"fans.fitted", &kind::current}};
constexpr int n_fitted = 1 + network::read_count;
constexpr double feed_drop_v = 0.5;

std::string amps(double a) {
  char text[32];
  std::snprintf(text, sizeof text, "%.3g A", a);
  return text;
}

/// The network solved again at a row. The run's rows hold what the block read.
dc::Solution solve(const Model& m, const Feed& feed) {
  dc::Network n = m.network;
  set_feed(m, feed, n);
  dc::Solution s;
  dc::solve(n, s);
  return s;
}
Feed feed_at(const Evidenced& run, std::size_t row) {
  return network::feed_from([&](int i) { return run.at(row, i + 1); });
}
/// At the end of the duty with every electric fan on: that is what their wires and those before them must stand,
/// whether or not a fan happens to run at that instant.
dc::Solution solve_all_fans(const Model& m, const Evidenced& run) {
  Feed feed = feed_at(run, run.last());
  feed.fan_a = run.at(run.last(), n_fitted);
  return solve(m, feed);
}

/// Share of the time a load's wire carries; of a run 1.
double share_of(const Model& m, const Conductor& c) {
  for (auto& l : m.loads)
    if (&l.wire == &c) return l.share;
  return 1;
}

/// Whether the network came to a solution; where not, the finding says so and gives no number.
bool solved(const dc::Solution& s, std::vector<Verdict>& out) {
  if (!s.summary.usable())
    out.push_back({.reason = std::string("the network has no solution here: ") + s.summary.reason});
  return s.summary.usable();
}

/// Every wire with what it carries.
template <class Visit>
void each_wire(const Model& m, Visit visit) {
  for (auto& c : m.runs) visit(c);
  for (auto& l : m.loads) visit(l.wire);
  visit(m.fan_feed);
}

/// What a conductor carries for good: the wire's ampacity and the rating of what else stands in the run, whichever is
/// less; empty where neither is known.
std::optional<double> lasting_limit(const Conductor& c) {
  if (!c.sized) return c.limit_a > 0 ? std::optional(c.limit_a) : std::nullopt;
  return c.limit_a > 0 ? std::min(c.limit_a, c.ampacity_a) : c.ampacity_a;
}

constexpr const char* outside_table = "the wire's size or insulation lies outside the ampacity table";

/// Current in each wire against what it carries for good.
namespace heat {
constexpr std::string_view chain[] = {"load.current", "bus.voltage"};
void evaluate(const void* model, const Evidenced& run, std::vector<Verdict>& out) {
  auto& m = *static_cast<const Model*>(model);
  const std::size_t row = run.last();
  const auto s = solve_all_fans(m, run);
  if (!solved(s, out)) return;
  each_wire(m, [&](const Conductor& c) {
    const auto limit = lasting_limit(c);
    // A load that comes and goes heats its own wire with its full current while it is on.
    const double current = std::abs(s.current_a[c.branch]) / share_of(m, c);
    if (!limit && &c == &m.fan_feed && current == 0) return;  // no electric fans, or none on
    Verdict v{.place = c.place,
              .scale = std::max(limit.value_or(0), 1.0),
              .row = row,
              .fix_hint = "a thicker wire, fewer in its bundle, or a cooler route"};
    if (!limit) {
      v.missing.push_back(c.gauge_path);
    } else if (*limit > 0) {
      v.predicted = current;
      v.high = *limit;
    } else {
      v.reason = outside_table;
    }
    out.push_back(std::move(v));
  });
}
}  // namespace heat

/// Volts lost in each load's own feed and ground.
namespace feed {
void evaluate(const void* model, const Evidenced& run, std::vector<Verdict>& out) {
  auto& m = *static_cast<const Model*>(model);
  const std::size_t row = run.last();
  const auto s = solve_all_fans(m, run);
  if (!solved(s, out)) return;
  for (auto& l : m.loads) {
    const double current = std::abs(s.current_a[l.wire.branch]) / l.share;
    if (current > 0)
      out.push_back({.place = l.wire.place,
                     .predicted = current * l.wire.resistance_ohm,
                     .high = feed_drop_v,
                     .scale = 1.0,
                     .row = row,
                     .fix_hint = "a thicker or shorter feed, or a relay close to the load"});
  }
  if (const double current = std::abs(s.current_a[m.fans]); current > 0) {
    Verdict v{.place = "fans",
              .high = feed_drop_v,
              .scale = 1.0,
              .row = row,
              .fix_hint = "a thicker or shorter feed and ground for the fans"};
    if (m.fan_feed.sized)
      v.predicted = current * m.fan_feed.resistance_ohm;
    else
      v.missing.push_back(m.fan_feed.gauge_path);
    out.push_back(std::move(v));
  }
}
}  // namespace feed

/// Volts at each load that says what it needs.
namespace least {
void evaluate(const void* model, const Evidenced& run, std::vector<Verdict>& out) {
  auto& m = *static_cast<const Model*>(model);
  const std::size_t row = run.trace->lowest(run.slot(0));
  const auto s = solve(m, feed_at(run, row));
  if (!solved(s, out)) return;
  for (auto& l : m.loads)
    if (l.least_v > 0 && s.current_a[l.wire.branch] != 0)
      out.push_back({.place = l.wire.place,
                     .predicted = std::abs(s.load_v[l.wire.branch]),
                     .low = l.least_v,
                     .scale = 2.0,
                     .row = row,
                     .fix_hint = "more bus voltage, or a thicker feed"});
}
}  // namespace least

/// Every run from the battery's live post but the starter's cable needs a fuse there.
bool leaves_battery(const Model& m, const Conductor& c) {
  auto& b = m.network.branches[c.branch];
  const auto other = b.from == m.n_battery ? b.to : b.to == m.n_battery ? b.from : m.n_starter;
  return other != m.n_starter;
}

/// A fuse no larger than its wire carries. Both figures decide harm: neither has a stand-in.
namespace protects {
void evaluate(const void* model, const Evidenced& run, std::vector<Verdict>& out) {
  auto& m = *static_cast<const Model*>(model);
  auto judge = [&](const Conductor& c, bool must) {
    if (!must && !c.fused) return;
    Verdict v{.place = c.place, .fix_hint = "a smaller fuse, or a wire that carries it"};
    if (!c.sized) v.missing.push_back(c.gauge_path);
    if (!c.fused) v.missing.push_back(c.fuse_path);
    if (v.missing.empty() && c.ampacity_a <= 0) {
      v.reason = outside_table;
    } else if (v.missing.empty()) {
      v.rule = c.fuse_a <= c.ampacity_a;
      v.reason = "fuse " + amps(c.fuse_a) + ", wire carries " + amps(c.ampacity_a) + " in its bundle and zone";
    }
    out.push_back(std::move(v));
  };
  // Battery, starter and ground cables are not fused in a car; every load's feed and the charge path are.
  for (std::size_t i = 0; i < m.runs.size(); ++i)
    judge(m.runs[i], leaves_battery(m, m.runs[i]) ||
                         std::find(m.charge_path.begin(), m.charge_path.end(), i) != m.charge_path.end());
  for (auto& l : m.loads) judge(l.wire, true);
  if (run.at(0, 1) > 0) judge(m.fan_feed, true);
}
constexpr Port needs[] = {{"bus.voltage", &kind::voltage}, {"fans.fitted", &kind::current}};
}  // namespace protects

/// A fuse that carries its load for good.
namespace carries {
void judge(const Conductor& c, double load_a, std::vector<Verdict>& out) {
  if (!c.fused) return;
  out.push_back({.place = c.place,
                 .predicted = 1.25 * load_a,
                 .high = c.fuse_a,
                 .scale = c.fuse_a,
                 .fix_hint = "the next larger fuse, with a wire that it still protects"});
}
void evaluate(const void* model, const Evidenced& run, std::vector<Verdict>& out) {
  auto& m = *static_cast<const Model*>(model);
  for (auto& l : m.loads) judge(l.wire, l.rated_a, out);
  if (run.at(0, 1) > 0) judge(m.fan_feed, run.at(0, 1), out);
}
}  // namespace carries

/// The old charge path behind a new machine: each run of it must carry the machine's whole output.
namespace path {
constexpr Port needs[] = {{"bus.voltage", &kind::voltage}, {"alternator.greatest", &kind::current}};
void evaluate(const void* model, const Evidenced& run, std::vector<Verdict>& out) {
  auto& m = *static_cast<const Model*>(model);
  for (std::size_t i : m.charge_path) {
    auto& c = m.runs[i];
    Verdict v{
        .place = c.place,
        .fix_hint = "a new charge lead straight to the battery, fused there, past ammeter and bulkhead connector"};
    if (const auto limit = lasting_limit(c); limit && *limit <= 0) {
      v.reason = outside_table;
    } else if (limit) {
      v.predicted = run.at(0, 1);
      v.high = *limit;
      v.scale = std::max(*limit, 1.0);
    } else {
      v.missing.push_back(c.gauge_path);
    }
    out.push_back(std::move(v));
  }
}
}  // namespace path

constexpr std::string_view ampacity_source = "33 CFR 183.425 Table 5 and notes";

constexpr Requirement all[] = {
    {.id = "wiring.wire-current",
     .title = "wire carries its current",
     .kind = RequirementKind::most,
     .hazard = Hazard::harm,
     .caution = Caution::electrical_fire,
     .quantity = &kind::current,
     .unit = "A",
     .source = ampacity_source,
     .formula = "network current at the end of the duty with all electric fans on, against table ampacity by size, "
                "insulation, zone and bundle",
     .duties = every_running,
     .needs = bus_needs,
     .chain = heat::chain,
     .evaluate = heat::evaluate},
    {.id = "wiring.feed-drop",
     .title = "volts lost in the feed",
     .kind = RequirementKind::most,
     .hazard = Hazard::nuisance,
     .quantity = &kind::voltage,
     .unit = "V",
     .source = "FAA AC 43.13-1B ch. 11: 0.5 V on a 14 V bus, continuous (from memory)",
     .formula = "current times resistance of the load's own feed, ground and joints",
     .duties = every_running,
     .needs = bus_needs,
     .evaluate = feed::evaluate},
    {.id = "wiring.least-voltage",
     .title = "volts the load needs",
     .kind = RequirementKind::least,
     .hazard = Hazard::nuisance,
     .quantity = &kind::voltage,
     .unit = "V",
     .source = "the part's data sheet",
     .formula = "network solved at the duty's lowest bus voltage",
     .duties = every_running,
     .needs = bus_needs,
     .evaluate = least::evaluate},
    {.id = "wiring.fuse-wire",
     .title = "fuse protects the wire",
     .kind = RequirementKind::rule,
     .hazard = Hazard::harm,
     .caution = Caution::electrical_fire,
     .source = ampacity_source,
     .formula = "fuse rating at most the wire's ampacity in its bundle and zone",
     .needs = protects::needs,
     .evaluate = protects::evaluate},
    {.id = "wiring.fuse-load",
     .title = "fuse carries the load",
     .kind = RequirementKind::most,
     .hazard = Hazard::nuisance,
     .caution = Caution::electrical_fire,
     .quantity = &kind::current,
     .unit = "A",
     .source = "common practice: a blade fuse is loaded to 70 to 80 % of its rating for good",
     .formula = "1.25 times the load's current (80 %)",
     .needs = protects::needs,
     .evaluate = carries::evaluate},
    {.id = "wiring.charge-path",
     .title = "charge path carries the machine's output",
     .kind = RequirementKind::most,
     .hazard = Hazard::harm,
     .caution = Caution::electrical_fire,
     .quantity = &kind::current,
     .unit = "A",
     .source = ampacity_source,
     .formula = "greatest output of the machine against ampacity or rating of each run from its stud to the battery",
     .needs = path::needs,
     .evaluate = path::evaluate},
};

}  // namespace

std::span<const Requirement> System::requirements() { return all; }

}  // namespace sw::wiring
