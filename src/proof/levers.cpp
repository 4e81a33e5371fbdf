#include "proof/levers.hpp"

#include <algorithm>
#include <cmath>

#include "field/measure.hpp"
#include "proof/trade_size.hpp"
#include "quantity/print.hpp"

namespace sw {
namespace {

constexpr double beyond = 1.05;      ///< a little past the limit, so that a tried change lands on its good side
constexpr double most_effort = 0.6;  ///< relative change; beyond it another part is meant, not this one changed
/// Of what only grows (flow, output, a core) any change means another part, and parts come twice as large.
constexpr double most_growth = 1.5;
constexpr int most_tries = 6;
constexpr double counts_from = 0.2;  ///< share of the doubt from which an input is moved again in a changed car
constexpr std::size_t most_parts = 2;

double range_edge(const FieldInfo& f, bool high) {
  return to_si(high ? f.range.high : f.range.low, *f.kind, unit_of(f));
}

double effort_allowed(const FieldInfo& f) { return f.grows ? most_growth : most_effort; }

/// A lever with the moves behind it: one, or those of several parts alike.
struct Handle {
  Lever lever;
  const FieldInfo* field = nullptr;
  std::vector<const Move*> moves;
  double slope = 0;   ///< of the margin, for one unit of `lever`
  double effort = 0;  ///< first-order guess
};

/// How much of a change a step is: a share of the value; of a temperature or of nothing, a share of the field's range.
double effort_of(const Handle& h, double step) {
  if (h.lever.factor) return step;
  auto& f = *h.field;
  if (f.range.set && (f.kind->reference == Reference::absolute || h.lever.now == 0))
    return step / (range_edge(f, true) - range_edge(f, false));
  return step / std::max(std::abs(h.lever.now), 1e-12);
}

/// The path with a star for its name in a list the shelf fills: figures of several parts of one kind.
std::string starred(const std::string& path) {
  for (auto dot = path.find('.'); dot != std::string::npos; dot = path.find('.', dot + 1)) {
    auto* f = find_field(build_fields(), path.substr(0, dot));
    const auto end = path.find('.', dot + 1);
    if (f && f->type == FieldType::list && !f->part.empty() && end != std::string::npos)
      return path.substr(0, dot) + ".*" + path.substr(end);
  }
  return {};
}

/// A value of several alike: what one unit of a common factor does.
double slope_of_factor(const Build& build, const Move& m, std::size_t index) {
  return m.slope(index) * value_at(build, m.path).value_or(1.0);
}

std::vector<Handle> handles(const Question& q) {
  std::vector<Handle> single, several;
  for (auto& m : q.study.moves) {
    const double slope = m.lever ? m.slope(q.index) : 0.0;
    if (slope == 0) continue;
    const auto now = value_at(q.build, m.path);
    auto* f = find_field(build_fields(), m.path);
    single.push_back({{.path = m.path, .now = now.value_or(1.0), .factor = !now}, f, {&m}, slope, 0});
    const std::string all = starred(m.path);
    if (all.empty()) continue;
    auto at = std::find_if(several.begin(), several.end(), [&](auto& h) { return h.lever.path == all; });
    if (at == several.end()) at = several.insert(at, {{.path = all, .now = 1, .factor = true}, f, {}, 0, 0});
    at->moves.push_back(&m);
    at->slope += slope_of_factor(q.build, m, q.index);
  }
  for (auto& h : several)
    if (h.moves.size() > 1 && h.slope != 0) single.push_back(std::move(h));
  const double wanted = q.half_width - *q.base[q.index].margin();
  for (auto& h : single) h.effort = effort_of(h, std::abs(wanted / h.slope));
  std::stable_sort(single.begin(), single.end(), [](auto& a, auto& b) { return a.effort < b.effort; });
  return single;
}

bool in_range(const Build& build, const Handle& h) {
  auto& l = h.lever;
  if (h.field->grows && l.needed < l.now) return false;  // nobody cures a car with a weaker part
  if (!l.factor) return in_range(l.needed, *h.field);
  return l.needed > 0 && std::all_of(h.moves.begin(), h.moves.end(), [&](auto* m) {
           const auto now = value_at(build, m->path);
           return !now || in_range(*now * l.needed, *h.field);
         });
}

/// Whether a change breaks what held before, or makes worse what failed: in the duties judged again or among the static
/// rules.
bool harms(const std::vector<Judged>& base, const std::vector<Judged>& changed, const Judged& target) {
  for (auto& c : changed) {
    auto was = std::find_if(base.begin(), base.end(), [&](auto& b) { return b.same_as(c); });
    if (was == base.end() || c.same_as(target) || !was->margin()) continue;
    if (!c.margin()) return true;
    const double slack = 0.01 * c.verdict.scale;
    if (*c.margin() < 0 && *c.margin() < *was->margin() - slack) return true;
  }
  return false;
}

std::optional<double> margin_in(const std::vector<Judged>& judged, const Judged& target) {
  for (auto& j : judged)
    if (j.same_as(target)) return j.margin();
  return std::nullopt;
}

std::vector<Judged> judge_one_duty(const Question& q, const Build& build) {
  const int duty = q.base[q.index].duty;
  const Car car(build);
  std::vector<bool> wanted(q.set.courses.size(), false);
  wanted[duty >= 0 ? static_cast<std::size_t>(duty) : 0] = true;
  return judge(car, q.set, run_duties(car, q.set, wanted), wanted);
}

/// The doubt of the judgement in a changed car, by moving again the inputs that made most of it. A car out of its depth
/// is in more doubt than the same car mended: the old half-width asked of the new one would rule out what does.
double doubt_in(const Question& q, const Build& changed, double margin) {
  double sum = 0;
  for (auto& m : q.study.moves) {
    const double before = m.has_doubt() ? m.change(q.index) : 0.0;
    if (q.half_width <= 0 || !(std::abs(before) > counts_from * q.half_width)) continue;
    double most = 0;
    for (double by : {m.up, m.down}) {
      Build moved = changed;
      if (by == 0 || !shift(moved, m.path, by)) continue;
      const auto got = margin_in(judge_one_duty(q, moved), q.base[q.index]);
      most = std::max(most, got ? std::abs(*got - margin) : std::abs(before));
    }
    sum += most * most;
  }
  return std::sqrt(sum);
}

/// The car with the lever at its value; empty where the change cannot be made.
std::optional<Build> changed_by(const Question& q, const Handle& h) {
  Build changed = q.build;
  for (auto* m : h.moves) {
    const auto now = value_at(q.build, m->path);
    const double by = h.lever.factor && now ? *now * (h.lever.needed - 1) : h.lever.needed - h.lever.now;
    if (!shift(changed, m->path, by)) return std::nullopt;
  }
  return changed;
}

/// The next trade size beyond a step; empty where there is none.
std::optional<double> rounded(const Handle& h, double needed) {
  const bool upward = needed > h.lever.now;
  return h.lever.factor ? std::optional(trade_factor(needed, upward)) : trade_size(*h.field, needed, upward);
}

/// Secant steps from the first-order guess until the limit is met, then the doubt there too.
bool settle(const Question& q, Handle& h) {
  const Judged& target = q.base[q.index];
  const double margin = *target.margin();
  double wanted = 0, slope = h.slope;
  for (int i = 0; i < most_tries; ++i) {
    const auto size = rounded(h, h.lever.now + beyond * (wanted - margin) / slope);
    if (!size || *size == h.lever.needed) return false;
    h.lever.needed = *size;
    h.lever.effort = effort_of(h, std::abs(*size - h.lever.now));
    if (h.lever.effort > effort_allowed(*h.field) || !in_range(q.build, h)) return false;
    const auto changed = changed_by(q, h);
    if (!changed) return false;
    const auto judged = judge_one_duty(q, *changed);
    const auto got = margin_in(judged, target);
    if (!got || harms(q.base, judged, target)) return false;
    if (*got >= 0) wanted = doubt_in(q, *changed, *got);
    if (*got >= wanted) return true;
    slope = (*got - margin) / (*size - h.lever.now);
    if (slope * h.slope <= 0) return false;
  }
  return false;
}

bool can_be_asked(const Question& q) {
  const Judged& j = q.base[q.index];
  return j.margin() && *j.margin() < 0 && !j.verdict.rule;
}

std::string place_words(const Judged& j, const DutySet& set) {
  std::string id(j.requirement->id);
  if (!j.verdict.place.empty()) id += "[" + j.verdict.place + "]";
  return j.duty < 0 ? id : id + "@" + set.courses[static_cast<std::size_t>(j.duty)].key;
}

}  // namespace

std::vector<Lever> levers(const Question& q, std::size_t most) {
  std::vector<Lever> out;
  if (!can_be_asked(q)) return out;
  for (auto& h : handles(q)) {
    if (out.size() == most) break;
    if (h.effort <= 2 * effort_allowed(*h.field) && settle(q, h)) out.push_back(h.lever);
  }
  return out;
}

std::optional<Conflict> conflict(const Question& q) {
  if (!can_be_asked(q)) return std::nullopt;
  std::optional<Conflict> found;
  double most = 0;
  for (auto& h : handles(q)) {
    if (h.moves.size() > 1 || h.effort > most_effort || h.field->grows) continue;
    const Move& m = *h.moves[0];
    for (std::size_t k = 0; k < q.base.size(); ++k) {
      auto& other = q.base[k];
      if (k == q.index || other.verdict.rule || !other.margin() || *other.margin() >= 0) continue;
      if (other.duty >= 0 && other.duty != q.base[q.index].duty) continue;
      // Only what the opposite would mend, not what it would merely ease.
      const double slope = m.slope(k), weight = std::abs(m.change(q.index) * m.change(k));
      if (!(slope * h.slope < 0) || effort_of(h, std::abs(*other.margin() / slope)) > most_effort) continue;
      if (weight > most) most = weight, found = Conflict{h.lever.path, k};
    }
  }
  return found;
}

std::vector<std::size_t> parts_that_hold(const Question& q, const std::vector<Swap>& tried) {
  std::vector<std::size_t> good;
  if (!can_be_asked(q)) return good;
  const Judged& target = q.base[q.index];
  for (std::size_t i = 0; i < tried.size(); ++i)
    if (const auto margin = margin_in(tried[i].judged, target); margin && *margin >= 0 &&
                                                                !harms(q.base, tried[i].judged, target) &&
                                                                *margin >= doubt_in(q, tried[i].build, *margin))
      good.push_back(i);
  return good;
}

std::string words(const Lever& l) {
  if (l.factor) {
    const double by = 100 * (l.needed - 1);
    return l.path + (by < 0 ? " less by " : " by ") + short_number(std::abs(by), 3) + " % throughout";
  }
  auto* f = find_field(build_fields(), l.path);
  return l.path + " from " + print(l.now, *f->kind, unit_of(*f), 3) + " to " + print(l.needed, *f->kind, unit_of(*f));
}

std::string offers(const Question& q, const std::vector<Swap>& tried, std::size_t most) {
  std::string text;
  std::size_t count = 0;
  auto offer = [&](const std::string& what) { text += (count++ == 0 ? "Holds with " : "; or ") + what; };
  for (std::size_t i : parts_that_hold(q, tried))
    if (count < std::min(most, most_parts)) offer("shelf part " + tried[i].part + " as " + tried[i].group);
  for (auto& l : levers(q, most - count)) offer(words(l));
  if (count > 0) return text;
  if (const auto c = conflict(q))
    text = "No " + c->path + " satisfies both this and " + place_words(q.base[c->other], q.set);
  return text;
}

}  // namespace sw
