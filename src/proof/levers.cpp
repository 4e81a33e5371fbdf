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
constexpr int most_gauges = 6;  ///< trade sizes a wire is made thicker by
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
  // Nobody cures a car with a weaker part or a thinner wire.
  if ((h.field->grows || h.field->kind->wire_gauge) && l.needed < l.now) return false;
  if (h.field->key == "joints" && l.needed > l.now) return false;  // nor with worse contacts
  if (const auto bound = setting_bound(l.path); bound && l.needed > bound->most_share * l.now) return false;
  if (!l.factor) return in_range(l.needed, *h.field);
  return l.needed > 0 && std::all_of(h.moves.begin(), h.moves.end(), [&](auto* m) {
           const auto now = value_at(build, m->path);
           return !now || in_range(*now * l.needed, *h.field);
         });
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

/// The last name of the group a leaf stands in: `charge` of `wiring.run.charge.gauge`.
std::string_view holder_of(std::string_view path) {
  const auto end = path.rfind('.');
  if (end == std::string_view::npos) return {};
  path = path.substr(0, end);
  return path.substr(path.rfind('.') + 1);  // none: npos + 1 is 0
}

/// Whether every standing rule at the lever's own place is met: a thicker wire behind a fuse too large for it is no
/// remedy yet.
bool rules_met(const std::vector<Judged>& judged, std::string_view path) {
  const auto place = holder_of(path);
  return std::none_of(judged.begin(), judged.end(),
                      [&](auto& j) { return j.verdict.place == place && j.verdict.rule && !*j.verdict.rule; });
}

bool touches_fuse(const Handle& h) { return h.field->kind->wire_gauge || h.field->key == "fuse"; }

/// The wires at the finding's own place, each in the first thicker trade size that does: tried one by one, because what
/// a wire carries goes by steps that no slope tells.
std::vector<Lever> thicker_wires(const Question& q) {
  std::vector<Lever> out;
  const Judged& target = q.base[q.index];
  if (target.verdict.place.empty()) return out;
  for (auto& m : q.study.moves) {
    auto* f = find_field(build_fields(), m.path);
    const auto now = value_at(q.build, m.path);
    if (!f || !f->kind->wire_gauge || !m.lever || !now || holder_of(m.path) != target.verdict.place) continue;
    Lever l{.path = m.path, .now = *now, .needed = *now};
    for (int i = 0; i < most_gauges; ++i) {
      constexpr double hair = 1e-6;
      const auto size = trade_size(*f, l.needed * (1 + hair), true);
      if (!size) break;
      l.needed = *size;
      Build changed = q.build;
      if (!shift(changed, m.path, *size - *now)) break;
      const auto judged = judge_one_duty(q, changed);
      const auto got = margin_in(judged, target);
      if (!got || *got <= *target.margin()) break;  // the wire is not what this turns on
      // A wire that gets hot is not left so because what it feeds then draws a little more from a car that is short.
      if (*got < 0 || !rules_met(judged, l.path) || harms(q.base, judged, target, false)) continue;
      if (*got < doubt_in(q, changed, *got)) continue;
      l.effort = l.needed / l.now - 1;
      l.leaves = leaves_failing(q, judged);
      out.push_back(l);
      break;
    }
  }
  return out;
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
    if (only_scales(target, judged, h.lever.needed / h.lever.now)) return false;
    if (touches_fuse(h) &&
        !std::all_of(h.moves.begin(), h.moves.end(), [&](auto* m) { return rules_met(judged, m->path); }))
      return false;
    if (*got >= 0) wanted = doubt_in(q, *changed, *got);
    if (*got >= wanted) {
      h.lever.leaves = leaves_failing(q, judged);
      return true;
    }
    slope = (*got - margin) / (*size - h.lever.now);
    if (slope * h.slope <= 0) return false;
  }
  return false;
}

bool can_be_asked(const Question& q) {
  const Judged& j = q.base[q.index];
  return j.margin() && *j.margin() < 0 && !j.verdict.rule;
}

}  // namespace

std::vector<Lever> levers(const Question& q, std::size_t most) {
  std::vector<Lever> out;
  if (!can_be_asked(q)) return out;
  out = thicker_wires(q);
  if (out.size() > most) out.resize(most);
  for (auto& h : handles(q)) {
    if (out.size() == most) break;
    if (std::any_of(out.begin(), out.end(), [&](auto& l) { return l.path == h.lever.path; })) continue;
    if (h.effort <= 2 * effort_allowed(*h.field) && settle(q, h)) out.push_back(h.lever);
  }
  return out;
}

namespace {

/// The same of a part: one of its figures is what the finding is measured by.
bool only_scales(const Question& q, const Swap& s) {
  return std::any_of(q.study.moves.begin(), q.study.moves.end(), [&](auto& m) {
    if (!m.path.starts_with(s.group + ".")) return false;
    const auto was = value_at(q.build, m.path), is = value_at(s.build, m.path);
    return was && is && *was != 0 && only_scales(q.base[q.index], s.judged, *is / *was);
  });
}

}  // namespace

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

std::vector<std::size_t> parts_that_hold(const Question& q, const std::vector<Swap>& tried, std::size_t most) {
  std::vector<std::size_t> good;
  if (!can_be_asked(q)) return good;
  const Judged& target = q.base[q.index];
  for (std::size_t i = 0; i < tried.size() && good.size() < most; ++i)
    if (const auto margin = margin_in(tried[i].judged, target);
        margin && *margin >= 0 && !only_scales(q, tried[i]) && !harms(q.base, tried[i].judged, target) &&
        *margin >= doubt_in(q, tried[i].build, *margin, {tried[i].group}))
      good.push_back(i);
  return good;
}

std::string words(const Lever& l) {
  if (l.factor) {
    const double by = 100 * (l.needed - 1);
    return l.path + (by < 0 ? " less by " : " by ") + short_number(std::abs(by), 3) + " % throughout";
  }
  auto* f = find_field(build_fields(), l.path);
  const auto bound = setting_bound(l.path);
  return l.path + " from " + print(l.now, *f->kind, unit_of(*f), 3) + " to " + print(l.needed, *f->kind, unit_of(*f)) +
         (bound && l.needed > l.now ? " (" + std::string(bound->mind) + ")" : "");
}

std::string offers(const Question& q, const std::vector<Swap>& tried, std::size_t most) {
  std::string text;
  std::size_t count = 0;
  auto offer = [&](const std::string& what) { text += (count++ == 0 ? "Holds with " : "; or ") + what; };
  const auto wires = can_be_asked(q) ? thicker_wires(q) : std::vector<Lever>();
  for (auto& l : wires)
    if (count < most) offer(words(l) + l.leaves);
  if (count < most)
    for (std::size_t i : parts_that_hold(q, tried, std::min(most - count, most_parts)))
      offer("shelf part " + words(tried[i]) + leaves_failing(q, tried[i].judged));
  const auto said = [&](const Lever& l) {
    return std::any_of(wires.begin(), wires.end(), [&](auto& w) { return w.path == l.path; });
  };
  if (count < most)
    for (auto& l : levers(q, most - count + wires.size()))
      if (count < most && !said(l)) offer(words(l) + l.leaves);
  if (count > 0) return text;
  if (const auto c = conflict(q)) text = "No " + c->path + " satisfies both this and " + id_of(q.base[c->other], q.set);
  return text;
}

}  // namespace sw
