#include "proof/levers.hpp"

#include <algorithm>
#include <cmath>

#include "physics/wire.hpp"
#include "quantity/print.hpp"
#include "quantity/unit.hpp"

namespace sw {
namespace {

constexpr double beyond = 1.05;      ///< a little past the limit, so that a tried change lands on its good side
constexpr double most_effort = 0.6;  ///< relative change; beyond it another part is meant, not this one changed
constexpr int most_tries = 3;

double range_edge(const FieldInfo& f, bool high) {
  auto u = parse_unit_for(unit_of(f), *f.kind);
  const double x = high ? f.range.high : f.range.low;
  return std::holds_alternative<Unit>(u) ? to_si(x, std::get<Unit>(u)) : x;
}

bool in_range(const Lever& l) {
  auto* f = find_field(build_fields(), l.path);
  if (f && f->grows && l.needed < l.now) return false;  // nobody cures a car with a weaker part
  if (l.curve) return l.needed > 0;
  return f && (!f->range.set || (l.needed > range_edge(*f, false) && l.needed < range_edge(*f, true)));
}

/// How much of a change a step is: a share of the value; of a temperature or of nothing, a share of the field's range.
double effort_of(const std::string& path, double step, std::optional<double> now) {
  auto* f = find_field(build_fields(), path);
  if (!now) return step;
  if (f && f->range.set && (f->kind->reference == Reference::absolute || *now == 0))
    return step / (range_edge(*f, true) - range_edge(*f, false));
  return step / std::max(std::abs(*now), 1e-12);
}

/// Whether a change breaks what held before, or makes worse what failed: in the same duty or among the static rules.
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

/// The judgement's margin with the lever at its value; empty where the change cannot be made or harms something else.
std::optional<double> try_it(const Build& build, const DutySet& set, const std::vector<Judged>& base,
                             const Judged& target, const Lever& l) {
  Build changed = build;
  if (!shift(changed, l.path, l.needed - l.now)) return std::nullopt;
  const Car car(changed);
  std::vector<bool> wanted(set.courses.size(), false);
  wanted[target.duty >= 0 ? static_cast<std::size_t>(target.duty) : 0] = true;
  const auto judged = judge(car, set, run_duties(car, set, wanted), wanted);
  if (harms(base, judged, target)) return std::nullopt;
  for (auto& j : judged)
    if (j.same_as(target)) return j.margin();
  return std::nullopt;
}

/// Secant steps from the first-order guess until the limit is met.
bool settle(const Build& build, const DutySet& set, const std::vector<Judged>& base, const Judged& target,
            double margin, double wanted, double slope, Lever& l) {
  double step = beyond * (wanted - margin) / slope;
  for (int i = 0; i < most_tries; ++i) {
    l.needed = l.now + step;
    l.effort = effort_of(l.path, std::abs(step), l.curve ? std::nullopt : std::optional(l.now));
    if (l.effort > most_effort || !in_range(l)) return false;
    const auto got = try_it(build, set, base, target, l);
    if (!got) return false;
    if (*got >= wanted) return true;
    const double secant = (*got - margin) / step;
    if (secant * slope <= 0) return false;
    step = beyond * (wanted - margin) / secant;
  }
  return false;
}

}  // namespace

std::vector<Lever> levers(const Build& build, const DutySet& set, const std::vector<Judged>& base, std::size_t index,
                          double half_width, const Study& study, std::size_t most) {
  const auto margin = base[index].margin();
  if (!margin || *margin >= 0 || base[index].verdict.rule) return {};
  struct Guess {
    double effort, slope;
    const Move* move;
  };
  std::vector<Guess> guesses;
  for (auto& m : study.moves) {
    const double slope = m.lever ? m.slope(index) : 0.0;
    if (slope == 0) continue;
    guesses.push_back(
        {effort_of(m.path, std::abs((half_width - *margin) / slope), value_at(build, m.path)), slope, &m});
  }
  std::stable_sort(guesses.begin(), guesses.end(), [](auto& a, auto& b) { return a.effort < b.effort; });
  std::vector<Lever> out;
  for (auto& g : guesses) {
    if (out.size() == most || g.effort > 2 * most_effort) break;
    const auto now = value_at(build, g.move->path);
    Lever l{.path = g.move->path, .now = now.value_or(1.0), .needed = 0, .curve = !now};
    if (settle(build, set, base, base[index], *margin, half_width, g.slope, l)) out.push_back(l);
  }
  return out;
}

std::string words(const Lever& l) {
  if (l.curve) return l.path + " by " + short_number(100 * (l.needed - 1), 2) + " % throughout";
  auto* f = find_field(build_fields(), l.path);
  if (f->kind->wire_gauge)
    if (auto gauge = physics::gauge_for_area(l.needed); gauge && l.needed > l.now)
      return l.path + " from " + print(l.now, *f->kind, unit_of(*f)) + " to " + physics::gauge_text(*gauge);
  return l.path + " from " + print(l.now, *f->kind, unit_of(*f), 3) + " to " +
         print(l.needed, *f->kind, unit_of(*f), 3);
}

}  // namespace sw
