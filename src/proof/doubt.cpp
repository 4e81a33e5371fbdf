#include "proof/doubt.hpp"

#include <algorithm>
#include <atomic>
#include <cmath>
#include <exception>
#include <limits>
#include <mutex>
#include <thread>

#include "quantity/unit.hpp"

namespace sw {
namespace {

constexpr double lever_share = 0.1;  ///< how far a chosen figure is moved to see what it does

double si_of(double in_unit_value, const FieldInfo& f) {
  auto u = parse_unit_for(unit_of(f), *f.kind);
  return std::holds_alternative<Unit>(u) ? to_si(in_unit_value, std::get<Unit>(u)) : in_unit_value;
}

double a_tenth(const FieldInfo& f, double value) {
  if (f.range.set && (f.kind->reference == Reference::absolute || value == 0))
    return lever_share * (si_of(f.range.high, f) - si_of(f.range.low, f));
  return lever_share * std::abs(value);
}

/// Moves up and down by `by`, or as far as the field's range goes.
void set_moves(const FieldInfo& f, double value, double by, Move& m) {
  m.up = by;
  m.down = -by;
  if (!f.range.set) return;
  m.up = std::clamp(by, 0.0, std::max(0.0, si_of(f.range.high, f) - value));
  m.down = -std::clamp(by, 0.0, std::max(0.0, value - si_of(f.range.low, f)));
}

void add_move(const Build& build, const Leaf& leaf, std::vector<Move>& moves) {
  auto it = build.evidence.find(leaf.path);
  if (it == build.evidence.end() || leaf.path.starts_with("duty.")) return;
  Move m{.path = leaf.path, .evidence = it->second, .lever = leaf.field->lever, .grows = leaf.field->grows};
  const double width = it->second.half_width;
  if (leaf.field->type == FieldType::curve) {
    m.up = width > 0 ? width : m.lever ? lever_share : 0.0;
    m.down = -m.up;
  } else if (leaf.field->type == FieldType::quantity || leaf.field->type == FieldType::number ||
             (leaf.field->type == FieldType::integer && width > 0)) {
    const auto value = leaf.field->access.get(leaf.owner);
    if (!value) return;
    if (const double by = width > 0 ? width : m.lever ? a_tenth(*leaf.field, *value) : 0.0; by > 0)
      set_moves(*leaf.field, *value, by, m);
  }
  if (m.up != 0 && m.down != 0 && !m.has_doubt()) m.down = 0;  // a lever without doubt is only asked which way it works
  if (m.up != 0 || m.down != 0) moves.push_back(std::move(m));
}

/// As much of a move as leaves a car that can be: a switch is not off above where it is on, whatever the thermometer's
/// doubt.
double possible(const Build& build, const std::string& path, double by) {
  constexpr int halvings = 6;
  for (int i = 0; i < halvings && by != 0; ++i, by /= 2) {
    Build moved = build;
    if (!shift(moved, path, by) || !Car(moved).faults().any_fault()) return by;
  }
  return 0;
}

/// Margins of the moved car in the base's order. The moved car gives the same judgements in the same order unless a
/// run was lost, so the search is a walk. What was not judged again cannot change.
void compare(const std::vector<Judged>& base, const std::vector<Judged>& moved, const Touched::Reach* reach,
             std::vector<double>& change) {
  std::size_t at = 0;
  for (auto& b : base) {
    if (reach && !reach->requirements.contains(b.requirement)) {
      change.push_back(0);
      continue;
    }
    double d = std::numeric_limits<double>::quiet_NaN();
    for (std::size_t k = 0; k < moved.size(); ++k) {
      auto& m = moved[(at + k) % moved.size()];
      if (!m.same_as(b)) continue;
      if (m.margin() && b.margin()) d = *m.margin() - *b.margin();
      at = (at + k + 1) % moved.size();
      break;
    }
    change.push_back(d);
  }
}

}  // namespace

double Move::change(std::size_t i) const {
  const double a = i < change_up.size() ? change_up[i] : 0.0, b = i < change_down.size() ? change_down[i] : 0.0;
  if (!std::isfinite(a) || !std::isfinite(b)) return std::numeric_limits<double>::quiet_NaN();
  return std::abs(a) >= std::abs(b) ? a : b;
}

double Move::reach(std::size_t i, int toward) const {
  if (!std::isfinite(change(i))) return std::numeric_limits<double>::quiet_NaN();
  const double a = i < change_up.size() ? change_up[i] : 0.0, b = i < change_down.size() ? change_down[i] : 0.0;
  return std::max({0.0, toward * a, toward * b});
}

double Move::slope(std::size_t i) const {
  if (up != 0 && i < change_up.size() && std::isfinite(change_up[i]) && change_up[i] != 0) return change_up[i] / up;
  if (down != 0 && i < change_down.size() && std::isfinite(change_down[i])) return change_down[i] / down;
  return 0;
}

double a_tenth(const Build& build, const std::string& path) {
  auto leaf = find_leaf(build_fields(), &build, path);
  if (!leaf.field) return 0;
  if (leaf.field->type == FieldType::curve) return lever_share;
  const auto value = value_at(build, path);
  return value ? a_tenth(*leaf.field, *value) : 0.0;
}

std::optional<double> value_at(const Build& build, const std::string& path) {
  auto leaf = find_leaf(build_fields(), &build, path);
  return leaf.field && leaf.field->access.get ? leaf.field->access.get(leaf.owner) : std::nullopt;
}

bool shift(Build& build, const std::string& path, double by) {
  auto leaf = find_leaf(build_fields(), &build, path);
  if (!leaf.field) return false;
  if (leaf.field->type == FieldType::curve) {
    auto& curve = *leaf.field->access.curve_to(leaf.owner);
    if (!curve) return false;
    for (double& y : curve->y) y *= 1 + by;
    return true;
  }
  const auto value = leaf.field->access.get ? leaf.field->access.get(leaf.owner) : std::nullopt;
  if (!value) return false;
  leaf.field->access.set(leaf.owner, *value + by);
  return true;
}

Study study(const Build& build, const DutySet& set, const std::vector<Judged>& base, const StudyOptions& options) {
  Study s;
  each_leaf(build_fields(), &build, "", [&](const Leaf& leaf) { add_move(build, leaf, s.moves); });
  for (auto& m : s.moves) {
    m.up = possible(build, m.path, m.up);
    m.down = possible(build, m.path, m.down);
  }
  std::atomic<std::size_t> next{0}, done{0};
  std::mutex guard;
  std::exception_ptr broken;
  auto one = [&](const Move& m, double by, std::vector<double>& change) {
    Build moved = build;
    if (by == 0 || !shift(moved, m.path, by)) return;
    const Car car(moved);
    const Touched::Reach* reach = options.touched ? options.touched->by(m.path) : nullptr;
    const auto& wanted = reach ? reach->duties : options.wanted;
    const auto traces = run_duties(car, set, wanted, {.base = options.runs});
    compare(base, judge(car, set, traces, wanted, reach ? &reach->requirements : nullptr), reach, change);
  };
  auto work = [&] {
    try {
      for (std::size_t i = next++; i < s.moves.size(); i = next++) {
        one(s.moves[i], s.moves[i].up, s.moves[i].change_up);
        one(s.moves[i], s.moves[i].down, s.moves[i].change_down);
        ++done;
        const std::lock_guard lock(guard);
        if (options.progress) options.progress(static_cast<double>(done) / static_cast<double>(s.moves.size()));
      }
    } catch (...) {
      const std::lock_guard lock(guard);
      broken = std::current_exception();
      next = s.moves.size();
    }
  };
  {
    std::vector<std::jthread> others;
    for (unsigned t = 1; t < options.threads; ++t) others.emplace_back(work);
    work();
  }
  if (broken) std::rethrow_exception(broken);
  return s;
}

}  // namespace sw
