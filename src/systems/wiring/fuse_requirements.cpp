// Standing rules: fuse against wire and load, charge path against the machine.
#include <algorithm>
#include <cmath>
#include <cstdio>

#include "systems/wiring/checks.hpp"

namespace sw::wiring {
namespace {

std::string amps(double a) {
  char text[32];
  std::snprintf(text, sizeof text, "%.3g A", a);
  return text;
}

/// Every run from the battery's live post but the starter's cable needs a fuse there.
bool leaves_battery(const Model& m, const Conductor& c) {
  auto& b = m.network.branches[c.branch];
  const auto other = b.from == m.n_battery ? b.to : b.to == m.n_battery ? b.from : m.n_starter;
  return other != m.n_starter;
}

/// Rules are told apart by names: where one stands for two things, which the reader refuses, none is told.
bool told_twice(const Model& m, std::vector<Verdict>& out) {
  if (m.named_twice) out.push_back({.reason = "a name stands for two wires"});
  return m.named_twice;
}

/// Whether the fan feed is judged: there are electric fans, or it cannot be told yet and something is known of it.
bool feeds_fans(const Model& m, const Evidenced& run) {
  const double fitted = run.at(0, 0);
  return std::isnan(fitted) ? m.fan_feed.sized || m.fan_feed.fused : fitted > 0;
}

}  // namespace

/// A fuse no larger than its wire carries. Both figures decide harm: neither has a stand-in.
namespace protects {
void evaluate(const void* model, const Evidenced& run, std::vector<Verdict>& out) {
  auto& m = *static_cast<const Model*>(model);
  if (told_twice(m, out)) return;
  auto judge = [&](const Conductor& c, bool must) {
    if (!must && !c.fused) return;
    Verdict v{.place = c.place, .because = c.laid.told, .fix_hint = "a smaller fuse, or a wire that carries it"};
    if (c.unfused) {
      v.rule = false;
      v.reason = "nothing protects it";
      v.fix_hint = "a fuse at its source, no larger than the wire carries";
      out.push_back(std::move(v));
      return;
    }
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
  if (feeds_fans(m, run)) judge(m.fan_feed, true);
}
}  // namespace protects

/// A fuse that carries its load for good.
namespace carries {
namespace {
void judge(const Conductor& c, double load_a, std::vector<Verdict>& out) {
  if (!c.fused || std::isnan(load_a)) return;
  out.push_back({.place = c.place,
                 .predicted = fuse_loading * load_a,
                 .high = c.fuse_a,
                 .scale = c.fuse_a,
                 .fix_hint = "the next larger fuse, with a wire that it still protects"});
}
}  // namespace
void evaluate(const void* model, const Evidenced& run, std::vector<Verdict>& out) {
  auto& m = *static_cast<const Model*>(model);
  if (told_twice(m, out)) return;
  for (auto& l : m.loads) judge(l.wire, l.rated_a, out);
  if (feeds_fans(m, run)) judge(m.fan_feed, run.at(0, 0), out);
}
}  // namespace carries

/// The same of the runs between nodes, whose current only the solved network tells: with every electric fan on, at the
/// end of a duty.
namespace through {
void evaluate(const void* model, const Evidenced& run, std::vector<Verdict>& out) {
  auto& m = *static_cast<const Model*>(model);
  const auto s = solve_all_fans(m, run);
  if (!solved(m, s, out)) return;
  for (auto& c : m.runs)
    if (c.fused)
      out.push_back({.place = c.place,
                     .predicted = fuse_loading * std::abs(s.current_a[c.branch]),
                     .high = c.fuse_a,
                     .scale = c.fuse_a,
                     .row = run.last(),
                     .fix_hint = "a larger fuse, with a wire that it still protects, or the loads shared out"});
}
}  // namespace through

/// The old charge path behind a new machine: each run of it must carry the machine's whole output.
namespace path {
void evaluate(const void* model, const Evidenced& run, std::vector<Verdict>& out) {
  auto& m = *static_cast<const Model*>(model);
  if (told_twice(m, out)) return;
  for (std::size_t i : m.charge_path) {
    auto& c = m.runs[i];
    Verdict v{
        .place = c.place,
        .because = c.laid.told,
        .fix_hint = "a new charge lead straight to the battery, fused there, past ammeter and bulkhead connector"};
    auto limit = lasting_limit(c);
    if (limit && *limit > 0 && c.fused && c.fuse_a < *limit) {
      // A fuse that opens throws the machine off the battery while it gives its most.
      limit = c.fuse_a;
      v.fix_hint = "a larger fuse, with a lead that it still protects";
    }
    if (const double greatest = run.at(0, 0); std::isnan(greatest)) {
      if (!limit) v.missing.push_back(c.gauge_path);
    } else if (limit && *limit <= 0) {
      v.reason = outside_table;
    } else if (limit) {
      v.predicted = greatest;
      v.high = *limit;
      v.scale = std::max(*limit, 1.0);
    } else {
      v.missing.push_back(c.gauge_path);
    }
    out.push_back(std::move(v));
  }
}
}  // namespace path

}  // namespace sw::wiring
