// The knee at which the rear does as much as it may and the front still locks first, light and laden.
#include <algorithm>
#include <cmath>
#include <functional>

#include "car/car.hpp"
#include "solve/list.hpp"
#include "systems/brakes/effort.hpp"

namespace sw {
namespace {

/// Adhesion by which the front is to lead: pads a tenth from their sheet then change nothing (common practice); where
/// that cannot be had, the least that covers a gauge's error.
constexpr double reserve = 0.05, scant = 0.02;
constexpr double trade_step_pa = 10 * psi_pa;   ///< to which a valve is set by its gauge
constexpr double highest_pa = 1500 * psi_pa;    ///< above which no valve of this kind begins
constexpr double least_knee_pa = 100 * psi_pa;  ///< below which none does
constexpr double slope_step = 0.05;

brakes::Valve& valve_of(Build& b, std::size_t index) {
  return std::get<brakes::Input>(b.inputs).valve.entries[index].second;
}

brakes::Stopped car_stopped(const Car& car, bool laden) {
  auto& v = car.model<vehicle::Model>();
  const auto& b = laden ? v.laden : v.light;
  return brakes::stopped(b.mass_kg, b.front_share, b.height_m, v.wheelbase_m,
                         car.model<driveline::Model>().wheel_radius_m, laden);
}

/// What keeps the balance from being reckoned.
std::vector<std::string> lacking(const Car& car) {
  std::vector<std::string> all;
  for (const char* port : {"brakes.line_pressure", "vehicle.mass", "driveline.wheel_radius"})
    if (auto it = car.graph().unavailable.find(port); it != car.graph().unavailable.end())
      for (auto& path : it->second)
        if (std::find(all.begin(), all.end(), path) == all.end()) all.push_back(path);
  return all;
}

/// The setting of one valve tried on the car: what is least of the lead of the front.
struct Trial {
  const Build& build;
  std::size_t valve;
  double lead(double knee_pa, double slope, bool laden) const {
    Build b = build;
    auto& v = valve_of(b, valve);
    v.knee = GaugePressure{knee_pa};
    v.slope = slope;
    if (v.laden_knee) v.laden_knee = GaugePressure{knee_pa};
    const Car car(b);
    return brakes::lock_order(car.model<brakes::Model>(), car_stopped(car, laden)).least;
  }
  /// The highest knee, to the trade's step, that keeps `wanted`; empty where none from the least up does.
  std::optional<double> knee(double slope, double wanted, const std::vector<bool>& loads) const {
    auto holds = [&](double k) {
      return std::all_of(loads.begin(), loads.end(), [&](bool laden) { return lead(k, slope, laden) >= wanted; });
    };
    if (!holds(least_knee_pa)) return std::nullopt;
    double low = least_knee_pa, high = highest_pa;
    if (holds(high)) return high;
    while (high - low > 0.1 * trade_step_pa) {
      const double mid = 0.5 * (low + high);
      (holds(mid) ? low : high) = mid;
    }
    return std::max(least_knee_pa, std::floor(low / trade_step_pa) * trade_step_pa);
  }
};

struct Found {
  double slope;
  std::vector<double> knee;  ///< of each set of loads
};

/// At the valve's own slope, else at the next lower one at which there is a knee.
std::optional<Found> search(const Trial& t, double slope, double wanted, const std::vector<std::vector<bool>>& sets) {
  for (double s = slope;; s = std::max(0.0, s - slope_step)) {
    Found f{s, {}};
    for (auto& loads : sets)
      if (auto k = t.knee(s, wanted, loads)) f.knee.push_back(*k);
    if (f.knee.size() == sets.size()) return f;
    if (s <= 0) return std::nullopt;
  }
}

void tell(Solution& out, const Trial& t, const Found& f, const std::vector<std::vector<bool>>& sets) {
  for (std::size_t i = 0; i < sets.size(); ++i)
    for (const bool laden : sets[i])
      out.because.push_back(
          {.what = std::string("front's lead over the rear, at its least, ") + (laden ? "laden" : "as driven"),
           .value = t.lead(f.knee[i], f.slope, laden)});
}

/// The one valve that reduces in the rear's line.
std::optional<std::size_t> the_valve(const Build& build, Solution& out) {
  auto& valves = std::get<brakes::Input>(build.inputs).valve.entries;
  std::vector<std::size_t> reducing;
  for (std::size_t i = 0; i < valves.size(); ++i) {
    auto& v = valves[i].second;
    if (v.acts != brakes::Acts::holds_off && !v.front.value_or(false) && v.slope.value_or(0) < 1) reducing.push_back(i);
  }
  if (reducing.size() == 1) return reducing[0];
  out.trouble = reducing.empty() ? "no valve in the rear's line reduces: describe one in [brakes.valve] with its slope"
                                 : "more than one valve reduces in the rear's line: take all but one out first";
  return std::nullopt;
}

std::string in_psi(double pa) { return std::to_string(std::lround(pa / psi_pa)) + " psi"; }

Solution solve(const Build& build, const DutySet&) {
  Solution out;
  const auto at = the_valve(build, out);
  if (!at) return out;
  const std::string path = "brakes.valve." + std::get<brakes::Input>(build.inputs).valve.entries[*at].first;
  Build ready = build;
  auto& v = valve_of(ready, *at);
  if (!v.slope) out.missing.push_back(path + ".slope");
  v.knee = GaugePressure{least_knee_pa};
  const Car car(ready);
  for (auto& m : lacking(car))
    if (std::find(out.missing.begin(), out.missing.end(), m) == out.missing.end()) out.missing.push_back(m);
  if (!out.missing.empty()) return out;

  const bool laden = car.model<vehicle::Model>().laden_known, feels = laden && v.laden_knee;
  const auto sets = feels   ? std::vector<std::vector<bool>>{{false}, {true}}
                    : laden ? std::vector<std::vector<bool>>{{false, true}}
                            : std::vector<std::vector<bool>>{{false}};
  const Trial trial{ready, *at};
  auto found = search(trial, *v.slope, reserve, sets);
  const bool spare = found.has_value();
  if (!found) found = search(trial, *v.slope, scant, sets);
  if (!found) found = search(trial, *v.slope, 0, sets);
  if (!found) {
    out.trouble = "the rear locks first even with its line held at " + in_psi(least_knee_pa) +
                  ": smaller rear cylinders, or more brake in front";
    return out;
  }
  const bool slope_too = found->slope != *v.slope;
  out.settings.push_back({path + ".knee", found->knee[0]});
  if (feels) out.settings.push_back({path + ".laden_knee", found->knee[1]});
  if (slope_too) out.settings.push_back({path + ".slope", found->slope});
  out.says = "Knee at " + in_psi(found->knee[0]) + (feels ? ", laden at " + in_psi(found->knee[1]) : "") +
             (slope_too ? ", with a slope of " + std::to_string(std::lround(found->slope * 100)) +
                              " % (that of the valve lets the rear lock first at any knee)"
                        : "") +
             ": the front locks first from 0.15 to 0.80 g" + (laden ? ", light and laden" : "") +
             (spare ? "." : ", with little or nothing to spare.");
  tell(out, trial, *found, sets);
  return out;
}

}  // namespace

const Solver proportioning{
    .key = "proportioning",
    .title = "knee of the rear's reducing valve",
    .judged_by = "brakes.lock-order",
    .caution = Caution::braking_loss,
    .formula =
        "the highest knee, in steps of 10 psi and at the valve's slope (a lower one where that cannot), at which "
        "the front uses at least 0.05 (where that cannot be had 0.02) more adhesion than the rear at every rate from "
        "0.15 to 0.80 g, "
        "light and laden",
    .source = "49 CFR 571.135 S7.2, UN R13-H annex 5 (from memory); what is to spare: common practice",
    .solve = solve};

}  // namespace sw
