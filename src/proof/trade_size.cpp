#include "proof/trade_size.hpp"

#include <algorithm>
#include <cmath>

#include "field/measure.hpp"
#include "physics/wire.hpp"

namespace sw {
namespace {

/// Steps of a unit, and from `from` up a coarser one: pulleys and hoses by the twentieth of an inch, cores by the half.
struct Step {
  std::string_view unit;
  double step, from = 1e300, coarse = 0;
};
constexpr Step steps[] = {
    {"in", 0.05, 10, 0.5},
    {"mm", 1, 250, 10},
    {"ft", 0.5},
    {"m", 0.1},
    {"A", 1, 20, 5},
    {"rpm", 25},
    {"cfm", 10, 200, 25},
    {"gal/min", 1},
    {"gph", 5},
    {"L/h", 10},
    {"L", 0.5},
    {"A h", 5},
    {"V", 0.1},
    {"mohm", 0.1, 1, 1},
    {"degC", 1},
    {"degF", 1},
    {"K", 0.5},
    {"deg", 5},
    {"lbf", 5},
    {"psi", 1},
    {"kPa", 5},
    {"hp", 0.1},
    {"kW", 0.1},
    {"kW/K", 0.1},
    {"W/K", 50},
    {"lb", 1},
    {"kg", 0.5},
    {"%", 1},
    {"", 0.01},
};
/// Blade fuses, then bolt-down ones (ISO 8820 ratings, from memory), A.
constexpr double fuses[] = {1,  2,  3,  4,  5,  7.5, 10,  15,  20,  25,  30,  35,  40,
                            50, 60, 70, 80, 90, 100, 125, 150, 175, 200, 225, 250, 300};
/// An engine idles well in a narrow span, and an automatic pulls harder at every revolution more.
constexpr std::string_view mind_idle = "mind creep in gear and the idle quality";
constexpr SettingBound bounds[] = {
    {"engine.idle_speed", 1.25, mind_idle},
    {"engine.idle_speed_air_conditioning", 1.25, mind_idle},
};

double to_step(double x, double step, bool upward) {
  constexpr double hair = 1e-6;  // of a step: a figure that stands on one already stays there
  const double n = x / step;
  return step * (upward ? std::ceil(n - hair) : std::floor(n + hair));
}

std::optional<double> fuse_size(double amps, bool upward) {
  if (upward) {
    auto* at = std::lower_bound(std::begin(fuses), std::end(fuses), amps - 1e-9);
    return at == std::end(fuses) ? std::nullopt : std::optional(*at);
  }
  auto* at = std::upper_bound(std::begin(fuses), std::end(fuses), amps + 1e-9);
  return at == std::begin(fuses) ? std::nullopt : std::optional(*(at - 1));
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
  auto* known = std::find_if(std::begin(steps), std::end(steps), [&](auto& s) { return s.unit == unit_of(f); });
  // A unit without a step of its own: two digits.
  const double step = known == std::end(steps)
                          ? std::pow(10.0, std::floor(std::log10(std::max(std::abs(x), 1e-30))) - 1)
                      : std::abs(x) >= known->from ? known->coarse
                                                   : known->step;
  return to_si(to_step(x, step, upward), *f.kind, unit_of(f));
}

std::optional<SettingBound> setting_bound(std::string_view path) {
  auto* at = std::find_if(std::begin(bounds), std::end(bounds), [&](auto& b) { return b.path == path; });
  return at == std::end(bounds) ? std::nullopt : std::optional(*at);
}

double trade_factor(double factor, bool upward) { return to_step(factor, 0.05, upward); }

}  // namespace sw
