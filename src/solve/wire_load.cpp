#include "solve/wire_load.hpp"

#include <algorithm>
#include <cmath>

#include "proof/judge.hpp"
#include "systems/wiring/checks.hpp"
#include "systems/wiring/states.hpp"

namespace sw {
namespace {

bool decides(const Duty& d) { return d.engine != EngineState::off; }

/// The machine's most, a port that never changes.
double greatest_of(const Car& car, const std::vector<Trace>& runs) {
  const int slot = car.graph().slot(wiring::path::needs[0].name);
  if (slot < 0 || car.graph().unavailable.contains(wiring::path::needs[0].name)) return 0;
  for (auto& run : runs)
    if (run.summary.usable() && run.rows() > 0) return run.at(0, static_cast<std::size_t>(slot));
  return 0;
}

}  // namespace

CarWires::CarWires(const Build& build, const DutySet& set) : car_(build), model_(&car_.model<wiring::Model>()) {
  std::vector<bool> wanted;
  for (auto& c : set.courses) wanted.push_back(decides(*c.duty));
  const auto runs = run_duties(car_, set, wanted);
  machine_a_ = greatest_of(car_, runs);
  for (auto& f : wiring_feeds(car_, set, runs)) {
    if (!wanted[f.duty]) continue;
    At at{f, {}};
    if (!f.cranks) at.feed.feed.fan_a = f.fans_a;
    at.solution = wiring::solve(*model_, at.feed.feed);
    if (at.solution.summary.usable()) feeds_.push_back(std::move(at));
  }
}

WireLoad CarWires::load_of(const wiring::Conductor& c, double share) const {
  WireLoad load;
  auto& branch = model_->network.branches[c.branch];
  for (auto& at : feeds_) {
    const double a = std::abs(at.solution.current_a[c.branch]) / share;
    if (at.feed.cranks) {
      load.cranking_a = std::max(load.cranking_a, a);
    } else if (a > load.running_a) {
      auto& v = at.solution.node_v;
      load.running_a = a;
      load.before_v = load.after_v = 0;
      // Behind an open switch nothing is lost.
      if (std::abs(v[branch.from] - v[branch.to]) < wiring::dead_below_v(*model_)) continue;
      load.before_v = std::max(0.0, v[model_->n_bus] - v[branch.from]);
      load.after_v = std::max(0.0, v[branch.to] - v[model_->n_body]);
    }
  }
  return load;
}

double CarWires::node_v(wiring::dc::NodeIndex node, bool cranking) const {
  double most = 0;
  for (auto& at : feeds_)
    if (at.feed.cranks == cranking) most = std::max(most, std::abs(at.solution.node_v[node]));
  return most;
}

double CarWires::between_v(wiring::dc::NodeIndex a, wiring::dc::NodeIndex b) const {
  double most = 0;
  for (auto& at : feeds_)
    if (!at.feed.cranks) most = std::max(most, std::abs(at.solution.node_v[a] - at.solution.node_v[b]));
  return most;
}

double CarWires::hottest_bay_k() const {
  double hottest = 0;
  for (auto& at : feeds_) hottest = std::max(hottest, at.feed.bay_k);
  return hottest;
}

}  // namespace sw
