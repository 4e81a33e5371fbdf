#include "proof/doubt.hpp"

#include <atomic>
#include <cmath>
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

/// A move that stays inside the field's range: down where up would leave it, nothing where neither fits.
double inside(const FieldInfo& f, double value, double by) {
  if (!f.range.set) return by;
  const double low = si_of(f.range.low, f), high = si_of(f.range.high, f);
  if (value + by < high) return by;
  if (value - by > low) return -by;
  return 0;
}

void add_move(const Build& build, const Leaf& leaf, std::vector<Move>& moves) {
  auto it = build.evidence.find(leaf.path);
  if (it == build.evidence.end() || leaf.path.starts_with("duty.")) return;
  Move m{.path = leaf.path, .evidence = it->second, .lever = leaf.field->lever};
  if (leaf.field->type == FieldType::curve) {
    m.by = it->second.half_width > 0 ? it->second.half_width : m.lever ? lever_share : 0.0;
  } else if (leaf.field->type == FieldType::quantity || leaf.field->type == FieldType::number) {
    const auto value = leaf.field->access.get(leaf.owner);
    if (!value) return;
    const double by = it->second.half_width > 0 ? it->second.half_width : m.lever ? lever_share * std::abs(*value) : 0.0;
    m.by = by > 0 ? inside(*leaf.field, *value, by) : 0.0;
  }
  if (m.by != 0) moves.push_back(std::move(m));
}

/// Margins of the moved car in the base's order. The moved car gives the same judgements in the same order unless a
/// run was lost, so the search is a walk.
void compare(const std::vector<Judged>& base, const std::vector<Judged>& moved, std::vector<double>& change) {
  std::size_t at = 0;
  for (auto& b : base) {
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

std::optional<double> value_at(const Build& build, const std::string& path) {
  Build& open = const_cast<Build&>(build);  // find_leaf hands out a changeable owner; nothing is changed here
  auto leaf = find_leaf(build_fields(), &open, path);
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
  std::atomic<std::size_t> next{0}, done{0};
  std::mutex say;
  auto work = [&] {
    for (std::size_t i = next++; i < s.moves.size(); i = next++) {
      Build moved = build;
      if (shift(moved, s.moves[i].path, s.moves[i].by)) {
        const Car car(moved);
        compare(base, judge(car, set, run_duties(car, set, options.wanted), options.wanted), s.moves[i].change);
      }
      ++done;
      if (options.progress && say.try_lock()) {
        options.progress(static_cast<double>(done) / static_cast<double>(s.moves.size()));
        say.unlock();
      }
    }
  };
  std::vector<std::thread> others;
  for (unsigned t = 1; t < options.threads; ++t) others.emplace_back(work);
  work();
  for (auto& t : others) t.join();
  return s;
}

}  // namespace sw
