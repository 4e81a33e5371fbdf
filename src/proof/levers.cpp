#include "proof/levers.hpp"

#include <algorithm>
#include <cmath>

#include "proof/handles.hpp"
#include "proof/trade_size.hpp"
#include "proof/trial.hpp"

namespace sw {
namespace {

constexpr double beyond = 1.05;  ///< a little past the limit, so that a tried change lands on its good side
constexpr int most_tries = 6;
constexpr int most_gauges = 6;  ///< trade sizes a wire is made thicker by

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

/// The first thicker trade size of a wire that does: tried one by one, because what a wire carries goes by steps that
/// no slope tells.
std::optional<Lever> thicker(const Question& q, const FieldInfo& f, const std::string& path, double now) {
  const Judged& target = q.base[q.index];
  Lever l{.path = path, .now = now, .needed = now};
  for (int i = 0; i < most_gauges; ++i) {
    constexpr double hair = 1e-6;
    const auto size = trade_size(f, l.needed * (1 + hair), true);
    Build changed = q.build;
    if (!size || !shift(changed, path, *size - now)) return std::nullopt;
    l.needed = *size;
    Trial trial(q, changed);
    const auto got = trial.margin();
    if (!got || *got <= *target.margin()) return std::nullopt;  // the wire is not what this turns on
    // A wire that gets hot is not left so because what it feeds then draws a little more from a car that is short.
    if (!rules_met(trial.own(), path) || !trial.mends(false)) continue;
    l.effort = l.needed / l.now - 1;
    l.leaves = leaves_failing(q, trial.own());
    return l;
  }
  return std::nullopt;
}

/// Whether the lever at its needed value only measures the finding out, or leaves a fuse that does not protect.
bool no_remedy(const Question& q, const Handle& h, const std::vector<Judged>& judged) {
  return only_scales(q.base[q.index], judged, h.lever.needed / h.lever.now) ||
         (touches_fuse(h) &&
          !std::all_of(h.moves.begin(), h.moves.end(), [&](auto* m) { return rules_met(judged, m->path); }));
}

/// Secant steps from the first-order guess until the limit is met, then the doubt there too, then every other duty.
bool settle(const Question& q, Handle& h) {
  const double margin = *q.base[q.index].margin();
  double wanted = 0, slope = h.slope;
  for (int i = 0; i < most_tries; ++i) {
    const auto size = rounded(h, h.lever.now + beyond * (wanted - margin) / slope);
    if (!size || *size == h.lever.needed) return false;
    h.lever.needed = *size;
    h.lever.effort = effort_of(h, std::abs(*size - h.lever.now));
    if (h.lever.effort > effort_allowed(*h.field) || !in_range(q.build, h)) return false;
    const auto changed = changed_by(q.build, h);
    if (!changed) return false;
    Trial trial(q, *changed);
    const auto got = trial.margin();
    if (!got || trial.harms_own(true) || no_remedy(q, h, trial.own())) return false;
    if (*got >= 0) wanted = trial.doubt();
    if (*got >= wanted) {
      h.lever.leaves = leaves_failing(q, trial.own());
      return trial.mends();
    }
    slope = (*got - margin) / (*size - h.lever.now);
    if (slope * h.slope <= 0) return false;
  }
  return false;
}

}  // namespace

bool can_be_asked(const Question& q) {
  const Judged& j = q.base[q.index];
  return j.margin() && *j.margin() < 0 && !j.verdict.rule;
}

std::vector<Lever> thicker_wires(const Question& q) {
  std::vector<Lever> out;
  const Judged& target = q.base[q.index];
  if (!can_be_asked(q) || target.verdict.place.empty()) return out;
  for (auto& m : q.study.moves) {
    auto* f = find_field(build_fields(), m.path);
    const auto now = value_at(q.build, m.path);
    if (!f || !f->kind->wire_gauge || !m.lever || !now || holder_of(m.path) != target.verdict.place) continue;
    if (auto l = thicker(q, *f, m.path, *now)) out.push_back(std::move(*l));
  }
  return out;
}

std::vector<Lever> other_levers(const Question& q, const std::vector<Lever>& said, std::size_t most) {
  std::vector<Lever> out;
  if (!can_be_asked(q)) return out;
  for (auto& h : handles(q)) {
    if (out.size() == most) break;
    if (std::any_of(said.begin(), said.end(), [&](auto& l) { return l.path == h.lever.path; })) continue;
    if (h.effort <= 2 * effort_allowed(*h.field) && settle(q, h)) out.push_back(h.lever);
  }
  return out;
}

std::vector<Lever> levers(const Question& q, std::size_t most) {
  std::vector<Lever> out = thicker_wires(q);
  if (out.size() > most) out.resize(most);
  for (auto& l : other_levers(q, out, most - out.size())) out.push_back(l);
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

}  // namespace sw
