#pragma once
// The gauges with senders of a car, for the solvers that set them, with the tank's shape where a float goes by depth.
#include "quantity/print.hpp"
#include "solve/model_of.hpp"
#include "solve/solver.hpp"
#include "systems/fuel/fuel.hpp"
#include "systems/gauges/checks.hpp"

namespace sw {

inline constexpr std::string_view all_readings =
    "gauges.fuel-reading gauges.temperature-reading gauges.pressure-reading";

inline gauges::TankShape tank_of(const Car& car) {
  if (!told_of<fuel::System>(car)) return {};
  auto& m = model_of<fuel::System>(car);
  return {fuel::share_below(m, 0.25), fuel::share_below(m, 0.5), fuel::share_below(m, 0.75)};
}

/// Calls `look(terms, dial)` for every gauge of the car.
template <class Look>
void each_dial(const Car& car, Look look) {
  auto& m = model_of<gauges::System>(car);
  for (auto* terms : {&gauges::fuel_terms, &gauges::temperature_terms, &gauges::pressure_terms})
    for (auto& dial : m.*terms->list) look(*terms, dial);
}

/// Adds what working on this gauge's sender can do to what is said already; a fire is graver than a scald.
inline void add_caution(const gauges::Terms& t, Solution& out) {
  if (&t == &gauges::fuel_terms)
    out.caution = Caution::fuel_fire;
  else if (&t == &gauges::temperature_terms && out.caution == Caution::none)
    out.caution = Caution::hot_coolant;
}

/// An error in words; what rounding leaves is none.
inline std::string step_words(const gauges::Terms& t, const gauges::DialModel& m, double step) {
  return print(step < 1e-9 * m.span() ? 0 : step, t.step, t.step_unit, 2);
}

/// Everything a usable gauge could be read with is missing from each: what to say.
inline std::vector<std::string> missing_of_all(const Car& car) {
  std::vector<std::string> missing;
  bool any = false;
  each_dial(car, [&](auto&, auto& dial) {
    any = any || dial.usable();
    missing.insert(missing.end(), dial.missing.begin(), dial.missing.end());
  });
  if (any) return {};
  if (missing.empty()) missing.push_back("gauges: a fuel, temperature or pressure gauge with its sender");
  return missing;
}

}  // namespace sw
