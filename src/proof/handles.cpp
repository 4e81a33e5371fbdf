#include "proof/handles.hpp"

#include <algorithm>
#include <cmath>

#include "field/measure.hpp"
#include "proof/trade_size.hpp"

namespace sw {
namespace {

/// Of what only grows (flow, output, a core) any change means another part, and parts come twice as large.
constexpr double most_growth = 1.5;

double range_edge(const FieldInfo& f, bool high) {
  return to_si(high ? f.range.high : f.range.low, *f.kind, unit_of(f));
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

}  // namespace

double effort_allowed(const FieldInfo& f) { return f.grows ? most_growth : most_effort; }

double effort_of(const Handle& h, double step) {
  if (h.lever.factor) return step;
  auto& f = *h.field;
  if (f.range.set && (f.kind->reference == Reference::absolute || h.lever.now == 0))
    return step / (range_edge(f, true) - range_edge(f, false));
  return step / std::max(std::abs(h.lever.now), 1e-12);
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

std::optional<Build> changed_by(const Build& build, const Handle& h) {
  Build changed = build;
  for (auto* m : h.moves) {
    const auto now = value_at(build, m->path);
    const double by = h.lever.factor && now ? *now * (h.lever.needed - 1) : h.lever.needed - h.lever.now;
    if (!shift(changed, m->path, by)) return std::nullopt;
  }
  return changed;
}

std::optional<double> rounded(const Handle& h, double needed) {
  const bool upward = needed > h.lever.now;
  return h.lever.factor ? std::optional(trade_factor(needed, upward)) : trade_size(*h.field, needed, upward);
}

}  // namespace sw
