#include "proof/judge.hpp"

#include <algorithm>
#include <cmath>

#include "proof/validity.hpp"

namespace sw {
namespace {

std::string_view state_word(const Duty& d) {
  return engine_state_names[static_cast<std::size_t>(d.engine.value_or(EngineState::running))];
}

std::string lost(const Trace& run) { return "the run did not come through: " + run.summary.reason; }

/// What no figure can come of must say why; a number that is not one is our own fault or a figure beyond all laws.
void tidy(Verdict& v, const Trace* run) {
  auto finite = [](const std::optional<double>& x) { return !x || std::isfinite(*x); };
  if (finite(v.predicted) && finite(v.low) && finite(v.high) && std::isfinite(v.scale)) return;
  v.predicted.reset();
  v.reason = run && !run->summary.usable()
                 ? lost(*run)
                 : "the figures lead outside what the laws cover: check the inputs of this part of the car";
}

std::optional<double> margin_of(const Verdict& v) {
  if (v.rule) return *v.rule ? 1.0 : -1.0;
  if (!v.predicted) return std::nullopt;
  double m = 1e300;
  if (v.low) m = std::min(m, *v.predicted - *v.low);
  if (v.high) m = std::min(m, *v.high - *v.predicted);
  return m;
}

class Judge {
 public:
  Judge(const Car& car, const DutySet& set, const std::vector<Trace>& traces) : car_(car), set_(set), traces_(traces) {
    for (auto& t : traces) breaches_.push_back(breaches(car.graph(), t));
  }

  void look(const Requirement& r, std::size_t system, int duty) {
    std::vector<Verdict> found;
    const std::size_t at = duty >= 0 ? static_cast<std::size_t>(duty) : static_rules_read(traces_);
    if (r.own_missing)
      on_its_own(r, system, at, found);
    else if (auto missing = missing_for(r, system); !missing.empty())
      found.push_back({.missing = {missing.begin(), missing.end()}});
    else if (at == traces_.size())
      found.push_back({.reason = "no duty was run to look at it in"});
    else if (duty >= 0 && !traces_[at].summary.usable())
      found.push_back({.reason = lost(traces_[at])});
    else if (auto* breach = duty >= 0 ? breach_for(r, at) : nullptr)
      before(*breach, r, system, at, found);
    else
      evaluate(r, system, traces_[at], set_.courses[at].duty, found);
    if (r.may_lack < r.needs.size()) blame(r, found);
    for (auto& v : found) {
      tidy(v, at < traces_.size() ? &traces_[at] : nullptr);
      out.push_back({&r, system, duty, std::move(v)});
    }
  }

  std::vector<Judged> out;

 private:
  std::set<std::string> missing_for(const Requirement& r, std::size_t system) const {
    auto& own = car_.systems()[system].missing;
    std::set<std::string> all(own.begin(), own.end());
    all.merge(blame_of(r.needs.first(std::min(r.may_lack, r.needs.size()))));
    return all;
  }
  /// The missing figures that keep ports from being computed.
  std::set<std::string> blame_of(std::span<const Port> ports) const {
    std::set<std::string> all;
    for (auto& p : ports)
      if (auto it = car_.graph().unavailable.find(p.name); it != car_.graph().unavailable.end())
        all.insert(it->second.begin(), it->second.end());
    return all;
  }
  void on_its_own(const Requirement& r, std::size_t system, std::size_t at, std::vector<Verdict>& found) const {
    static const Trace none;
    const bool ran = at < traces_.size() && traces_[at].rows() > 0;
    evaluate(r, system, ran ? traces_[at] : none, ran ? set_.courses[at].duty : nullptr, found);
    blame(r, found);
    for (auto& v : found)
      if (untold(v))
        v.reason = ran && !traces_[at].summary.usable() ? lost(traces_[at]) : "no duty was run to look at it in";
  }
  static bool untold(const Verdict& v) { return !v.rule && !v.predicted && v.missing.empty() && v.reason.empty(); }
  void blame(const Requirement& r, std::vector<Verdict>& found) const {
    const auto all = blame_of(r.needs);
    for (auto& v : found) {
      if (v.predicted && std::isnan(*v.predicted)) v.predicted.reset();
      if (untold(v)) v.missing.assign(all.begin(), all.end());
    }
  }
  /// A run has no figures from where it leaves a law's range. What an instant before that fails already does fail; it
  /// is told by the laws' continuation.
  void before(const Breach& breach, const Requirement& r, std::size_t system, std::size_t at,
              std::vector<Verdict>& found) const {
    const std::string why = "outside the range of a law: " + breach.says;
    std::vector<Verdict> inside;
    if (breach.row > 0) evaluate(r, system, traces_[at].before(breach.row), set_.courses[at].duty, inside);
    evaluate(r, system, traces_[at], set_.courses[at].duty, found);
    for (auto& v : found) {
      const bool fails = v.mean_share == 0 && fails_at(v) && std::any_of(inside.begin(), inside.end(), [&](auto& i) {
                           return i.place == v.place && fails_at(i);
                         });
      if (fails)
        v.reason = "a law continued: " + breach.says;
      else
        v = {.place = v.place, .reason = why};
    }
    if (found.empty()) found.push_back({.reason = why});
  }
  static bool fails_at(const Verdict& v) { return margin_of(v).value_or(1) < 0; }
  const Breach* breach_for(const Requirement& r, std::size_t at) const {
    for (auto& b : breaches_[at])
      for (auto& p : r.needs)
        if (const int slot = car_.graph().slot(p.name); slot >= 0 && b.spoilt[static_cast<std::size_t>(slot)])
          return &b;
    return nullptr;
  }
  void evaluate(const Requirement& r, std::size_t system, const Trace& trace, const Duty* duty,
                std::vector<Verdict>& found) const {
    std::vector<std::uint16_t> slots;
    for (auto& p : r.needs) {
      const int slot = car_.graph().slot(p.name);
      slots.push_back(slot < 0 ? Evidenced::absent : static_cast<std::uint16_t>(slot));
    }
    r.evaluate(car_.systems()[system].model, {&trace, duty, slots.data()}, found);
  }

  const Car& car_;
  const DutySet& set_;
  const std::vector<Trace>& traces_;
  std::vector<std::vector<Breach>> breaches_;  ///< of each trace
};

}  // namespace

std::optional<double> Judged::margin() const { return margin_of(verdict); }

std::size_t static_rules_read(const std::vector<Trace>& traces) {
  std::size_t first = traces.size();
  for (std::size_t i = traces.size(); i-- > 0;)
    if (traces[i].rows() > 0 &&
        (traces[i].summary.usable() || first == traces.size() || !traces[first].summary.usable()))
      first = i;
  return first;
}

namespace {
/// A duty in which the brakes work: it says so, or goes downhill.
bool brakes_in(const Duty& duty) {
  constexpr double downhill = -0.02;
  auto& c = duty.conditions;
  return std::find(c.begin(), c.end(), condition_names[static_cast<std::size_t>(Condition::brake)]) != c.end() ||
         duty.grade.value_or(0) < downhill;
}
}  // namespace

bool looks_at(const Requirement& r, const std::string& key, const Duty& duty) {
  return std::any_of(r.duties.begin(), r.duties.end(), [&](std::string_view d) {
    return d == key ||
           (d.starts_with('*') && (d.substr(1) == state_word(duty) || (d == "*braking" && brakes_in(duty))));
  });
}

std::vector<Judged> judge(const Car& car, const DutySet& set, const std::vector<Trace>& traces,
                          const std::vector<bool>& wanted, const std::set<const Requirement*>* only) {
  Judge j(car, set, traces);
  for (std::size_t s = 0; s < car.systems().size(); ++s) {
    if (!car.systems()[s].described) continue;
    for (auto& r : car.systems()[s].requirements) {
      if (only && !only->contains(&r)) continue;
      if (r.duties.empty()) {
        j.look(r, s, -1);
        continue;
      }
      for (std::size_t d = 0; d < set.courses.size(); ++d)
        if ((wanted.empty() || wanted[d]) && looks_at(r, set.courses[d].key, *set.courses[d].duty))
          j.look(r, s, static_cast<int>(d));
    }
  }
  return std::move(j.out);
}

}  // namespace sw
