#include "proof/trade_size.hpp"

#include <algorithm>
#include <cassert>
#include <cmath>
#include <vector>

#include "document/document.hpp"
#include "field/measure.hpp"
#include "field/stock.hpp"
#include "physics/wire.hpp"

namespace sw {
namespace {

/// Steps of a unit, and from `from` up a coarser one.
struct Step {
  std::string unit;
  double step = 0, from = 1e300, coarse = 0;
};

struct Sizes {
  std::vector<double> fuses;  ///< A, rising
  double factor_step = 0;
  std::vector<Step> steps, keys;          ///< by unit; by the field's key, in its own unit
  std::vector<std::string> paths, minds;  ///< of `bounds`, which keeps views of them
  std::vector<SettingBound> bounds;
};

/// A figure of the stock file; ours to have there.
double number_in(const Node& table, std::string_view key, std::optional<double> other = {}) {
  const Node* n = table.find(key);
  assert((n || other) && "stock/trade_sizes.toml");
  return n ? n->number : *other;
}

const Node& table_in(const Node& root, std::string_view key) {
  static const Node none;
  const Node* n = root.find(key);
  assert(n && "stock/trade_sizes.toml");
  return n ? *n : none;
}

Sizes read_sizes() {
  Sizes s;
  Diagnostics faults;
  const Node root = parse_text(std::string(stock_text("trade_sizes.toml")), 0, false, faults);
  assert(!faults.any_fault() && "stock/trade_sizes.toml");
  for (auto& rating : table_in(table_in(root, "fuse"), "ratings").items) s.fuses.push_back(rating.number);
  s.factor_step = number_in(table_in(root, "factor"), "step");
  for (auto& [unit, place, step] : table_in(root, "step").entries)
    s.steps.push_back({unit, number_in(step, "step"), number_in(step, "from", 1e300), number_in(step, "coarse", 0.0)});
  for (auto& [key, place, step] : table_in(root, "key").entries) s.keys.push_back({key, number_in(step, "step")});
  auto& settings = table_in(root, "setting").entries;
  for (auto& [path, place, bound] : settings) s.paths.push_back(path), s.minds.push_back(table_in(bound, "mind").text);
  for (std::size_t i = 0; i < settings.size(); ++i)
    s.bounds.push_back({s.paths[i], number_in(settings[i].value, "most_share"), s.minds[i]});
  return s;
}

const Sizes& sizes() {
  static const Sizes read = read_sizes();
  return read;
}

double to_step(double x, double step, bool upward) {
  constexpr double hair = 1e-6;  // of a step: a figure that stands on one already stays there
  const double n = x / step;
  return step * (upward ? std::ceil(n - hair) : std::floor(n + hair));
}

std::optional<double> fuse_size(double amps, bool upward) {
  auto& fuses = sizes().fuses;
  if (upward) {
    auto at = std::lower_bound(fuses.begin(), fuses.end(), amps - 1e-9);
    return at == fuses.end() ? std::nullopt : std::optional(*at);
  }
  auto at = std::upper_bound(fuses.begin(), fuses.end(), amps + 1e-9);
  return at == fuses.begin() ? std::nullopt : std::optional(*(at - 1));
}

std::optional<double> wire_size(double area, bool upward) {
  const auto gauge = physics::gauge_for_area(area);
  if (upward) return gauge ? std::optional(physics::gauge_area_m2(*gauge)) : std::nullopt;
  std::optional<double> best;
  for (auto n = physics::gauge_for_area(0); n; n = physics::next_thicker_gauge(*n))
    if (physics::gauge_area_m2(*n) <= area * (1 + 1e-9)) best = physics::gauge_area_m2(*n);
  return best;
}

}  // namespace

std::optional<double> trade_size(const FieldInfo& f, double si, bool upward) {
  if (f.kind->wire_gauge) return wire_size(si, upward);
  if (f.kind == &kind::current && f.key == "fuse") return fuse_size(si, upward);
  const double x = from_si(si, *f.kind, unit_of(f));
  auto& keys = sizes().keys;
  if (auto own = std::find_if(keys.begin(), keys.end(), [&](auto& s) { return s.unit == f.key; }); own != keys.end())
    return to_si(to_step(x, own->step, upward), *f.kind, unit_of(f));
  auto& steps = sizes().steps;
  auto known = std::find_if(steps.begin(), steps.end(), [&](auto& s) { return s.unit == unit_of(f); });
  // A unit without a step of its own: two digits.
  const double step = known == steps.end() ? std::pow(10.0, std::floor(std::log10(std::max(std::abs(x), 1e-30))) - 1)
                      : std::abs(x) >= known->from ? known->coarse
                                                   : known->step;
  return to_si(to_step(x, step, upward), *f.kind, unit_of(f));
}

std::optional<SettingBound> setting_bound(std::string_view path) {
  auto& bounds = sizes().bounds;
  auto at = std::find_if(bounds.begin(), bounds.end(), [&](auto& b) { return b.path == path; });
  return at == bounds.end() ? std::nullopt : std::optional(*at);
}

double trade_factor(double factor, bool upward) { return to_step(factor, sizes().factor_step, upward); }

}  // namespace sw
