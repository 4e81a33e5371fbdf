#include "duty/duties.hpp"

#include <algorithm>
#include <cassert>

#include "field/stock.hpp"

namespace sw {
namespace {

Named<Duty> read_shipped() {
  struct All {
    Named<Duty> duty;
  };
  static constexpr FieldInfo table[] = {list<&All::duty>("duty", "duties")};
  Diagnostics faults;
  EvidenceMap evidence;
  All all;
  const Node root = parse_text(std::string(stock_text("duties.toml")), 0, false, faults);
  read(root, table, &all, "", evidence, faults);
  fill_defaults(table, &all, "", evidence);
  assert(!faults.any_fault() && "stock/duties.toml");
  return all.duty;
}

/// At its own field, or where that is not given at the duty's first. Nothing where one of its fields could not be read.
void tell(const std::string& duty, const CourseFault& f, const Build& build, Diagnostics& faults) {
  const auto& evidence = build.evidence;
  const auto path_of = [&](std::string_view key) { return "duty." + duty + "." + std::string(key); };
  const std::string path = path_of(f.key);
  const auto spoilt = [&](std::string_view key) { return build.spoilt.at(path_of(key)); };
  if (spoilt(f.key) || std::any_of(f.beside.begin(), f.beside.end(), spoilt)) return;
  auto it = evidence.find(path);
  if (it == evidence.end() || it->second.defaulted) it = evidence.lower_bound("duty." + duty + ".");
  const bool there = it != evidence.end() && it->first.starts_with("duty." + duty + ".");
  faults.fault(there ? it->second.place : Place{}, path, f.problem, f.hint);
}

/// A shipped duty with what the workshop's own of its name gives; like all tables of a build only what differs is said.
Duty laid_over(const Duty& shipped, const std::pair<std::string, Duty>& own, const EvidenceMap& evidence) {
  Duty out = own.second;
  auto given = [&](std::string_view key) {
    auto it = evidence.find("duty." + own.first + "." + std::string(key));
    return it == evidence.end() || !it->second.defaulted;
  };
  const bool steady = out.speed.has_value(), recorded = out.speed_trace || !out.trace_file.empty();
  for (auto& f : Duty::fields())
    if (!has_value(f, &own.second) || !given(f.key)) copy_leaf(f, &shipped, &out);
  // How it is driven is one thing, said by a speed, by a trace or by a file of one; a trace has its own length.
  if (steady || recorded) {
    out.speed = own.second.speed;
    out.speed_trace = own.second.speed_trace;
    out.trace_file = own.second.trace_file;
  }
  if (recorded) out.duration = own.second.duration;
  return out;
}

/// Why a duty cannot be put after the one it starts from; empty where only one before it has a fault of its own.
CourseFault why_never(const std::string& name, const Named<Duty>& all) {
  std::vector<std::string_view> names;
  for (auto& e : all.entries) names.push_back(e.first);
  const std::string& after = all.find(name)->after;
  CourseFault f{.key = "after", .problem = {}, .hint = {}};
  if (!all.find(after)) {
    f.problem = "there is no duty \"" + after + "\" to start from";
    if (const auto near = nearest(after, names); !near.empty()) f.hint = "did you mean \"" + std::string(near) + "\"?";
    return f;
  }
  const Duty* at = all.find(after);
  for (std::size_t steps = 0; at && steps < all.size(); ++steps) {
    if (at->after == name) f.problem = "starts from \"" + after + "\", and that in the end from this one";
    at = at->after == name ? nullptr : all.find(at->after);
  }
  return f;
}

/// Puts each duty after the one it starts from; names loops and strangers.
Named<Duty> in_order(const Named<Duty>& all, const Build& build, Diagnostics& faults) {
  Named<Duty> out;
  std::vector<bool> placed(all.size(), false);
  for (bool moved = true; moved;) {
    moved = false;
    for (std::size_t i = 0; i < all.size(); ++i) {
      auto& [name, duty] = all.entries[i];
      if (placed[i] || (!duty.after.empty() && !out.find(duty.after))) continue;
      out.entries.push_back(all.entries[i]);
      placed[i] = moved = true;
    }
  }
  for (std::size_t i = 0; i < all.size(); ++i) {
    if (placed[i] || build.spoilt.at("duty." + all.entries[i].second.after)) continue;
    const auto f = why_never(all.entries[i].first, all);
    if (!f.problem.empty()) tell(all.entries[i].first, f, build, faults);
  }
  return out;
}

}  // namespace

const Named<Duty>& shipped_duties() {
  static const Named<Duty> all = read_shipped();
  return all;
}

std::unique_ptr<DutySet> duties_of(const Build& build, const OpenText& open) {
  auto set = std::make_unique<DutySet>();
  Named<Duty> all = shipped_duties();
  for (auto& own : build.duty) {
    auto it = std::find_if(all.entries.begin(), all.entries.end(), [&](auto& e) { return e.first == own.first; });
    if (it != all.entries.end())
      it->second = laid_over(it->second, own, build.evidence);
    else
      all.entries.push_back(own);
  }
  set->duty = in_order(all, build, set->faults);
  const auto course = [&](const std::string& name, const Duty& duty) {
    std::string trace;
    std::vector<CourseFault> faults;
    if (!duty.trace_file.empty()) {
      if (auto text = open(build.folder / duty.trace_file))
        trace = *text;
      else
        faults.push_back(
            {"trace_file", "cannot read \"" + duty.trace_file + "\"", "it is looked for beside the build"});
    }
    Course made = make_course(name, duty, trace, faults);
    for (auto& f : faults) tell(name, f, build, set->faults);
    return made;
  };
  for (auto& [name, duty] : set->duty) set->courses.push_back(course(name, duty));
  // One that has no place in the order is looked at for its other faults all the same.
  for (auto& [name, duty] : all)
    if (!set->duty.find(name)) course(name, duty);
  set->faults.sort();
  return set;
}

Trace run_duty(const Car& car, const Course& course, const Trace* before, const RunOptions& options) {
  if (before && !before->summary.usable()) {
    Trace none;
    none.summary = {
        .outcome = before->summary.outcome,
        .reason = "it starts from " + course.duty->after + ", which did not come through: " + before->summary.reason};
    return none;
  }
  Rhs rhs(car.graph(), course);
  rhs.start();
  if (options.cut) {
    const int port = car.graph().slot(options.cut->port), as = car.graph().slot(options.cut->as);
    if (port >= 0 && as >= 0) rhs.hold(static_cast<std::uint16_t>(port), static_cast<std::uint16_t>(as));
  }
  if (before) rhs.start_from(&before->values[(before->rows() - 1) * before->width]);
  return integrate(rhs, course, options.control(*course.duty));
}

BaseRuns::BaseRuns(const Car& car, const DutySet& set, const std::vector<Trace>& traces) : traces_(&traces) {
  for (std::size_t i = 0; i < traces.size(); ++i) runs_.emplace_back(car.graph(), set.courses[i], traces[i]);
}

const Trace* BaseRuns::same(const Car& other, std::size_t duty) const {
  return runs_[duty].holds_for(other.graph()) ? &(*traces_)[duty] : nullptr;
}

std::vector<Trace> run_duties(const Car& car, const DutySet& set, const std::vector<bool>& wanted,
                              const RunOptions& options) {
  std::vector<Trace> traces(set.courses.size());
  std::vector<bool> needed = wanted.empty() ? std::vector<bool>(traces.size(), true) : wanted;
  auto index = [&](const std::string& name) {
    for (std::size_t i = 0; i < set.duty.size(); ++i)
      if (set.duty.entries[i].first == name) return i;
    return set.duty.size();
  };
  for (std::size_t i = needed.size(); i-- > 0;)
    if (auto& after = set.courses[i].duty->after; needed[i] && !after.empty()) needed[index(after)] = true;
  std::vector<bool> taken_over(traces.size(), false);
  for (std::size_t i = 0; i < traces.size(); ++i) {
    if (!needed[i]) continue;
    auto& after = set.courses[i].duty->after;
    // What starts where another run ends can be the same only where that one is.
    const bool asked = options.base && (after.empty() || taken_over[index(after)]);
    if (const Trace* same = asked ? options.base->same(car, i) : nullptr) {
      traces[i] = *same;
      taken_over[i] = true;
      continue;
    }
    traces[i] = run_duty(car, set.courses[i], after.empty() ? nullptr : &traces[index(after)], options);
  }
  return traces;
}

}  // namespace sw
