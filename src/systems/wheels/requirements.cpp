#include <algorithm>
#include <cmath>

#include "model/told.hpp"
#include "quantity/customary.hpp"
#include "systems/wheels/wheels.hpp"

namespace sw::wheels {
namespace {

const Model& of(const void* model) { return *static_cast<const Model*>(model); }
template <class F>
void both_axles(const Model& m, F&& look) {
  look("front", m.front);
  look("rear", m.rear);
}

/// Wheel over caliper: asked for on every axle that has discs, silent on others where neither radius is given.
namespace over_brake {
enum Need { n_front_disc, n_rear_disc, need_count };
constexpr Port needs[] = {{"brakes.front_disc", &kind::number}, {"brakes.rear_disc", &kind::number}};
static_assert(std::size(needs) == need_count);
constexpr double least_m = 0.125 * inch_m;
void radial(const void* model, const Evidenced& run, std::vector<Verdict>& out) {
  auto& m = of(model);
  both_axles(m, [&](const char* place, const AxleModel& a) {
    const bool disc = run.at(0, &a == &m.front ? n_front_disc : n_rear_disc) > 0;
    if (!disc && !a.barrel_m && !a.caliper_m) return;
    Verdict v{.place = place,
              .scale = least_m,
              .fix_hint =
                  "try the caliper's template in the wheel before anything is bought; a smaller caliper, or a "
                  "wheel with a larger barrel"};
    if (!a.barrel_m) v.missing.push_back(a.barrel_path);
    if (!a.caliper_m) v.missing.push_back(a.caliper_path);
    if (v.missing.empty()) {
      v.predicted = *a.barrel_m - *a.caliper_m;
      v.low = least_m;
    }
    out.push_back(std::move(v));
  });
}
void spokes(const void* model, const Evidenced&, std::vector<Verdict>& out) {
  both_axles(of(model), [&](const char* place, const AxleModel& a) {
    if (!a.spoke_m) return;
    out.push_back({.place = place,
                   .predicted = *a.spoke_m,
                   .low = least_m,
                   .scale = least_m,
                   .fix_hint = "a wheel with more room behind its spokes; a spacer only where studs and hub allow it"});
  });
}
}  // namespace over_brake

/// Tyre to body after everything that moved it.
namespace to_body {
constexpr double least_m = 0.25 * inch_m;
void evaluate(const void* model, const Evidenced&, std::vector<Verdict>& out) {
  both_axles(of(model), [&](const std::string& axle, const AxleModel& a) {
    const auto look = [&](const char* where, const std::optional<double>& before) {
      if (!before) return;
      Verdict v{.place = axle + where,
                .predicted = *before - a.hub_m - a.inward_m - a.wheel_m,
                .low = least_m,
                .scale = least_m,
                .fix_hint =
                    "a rotor of the hub's own width, a wheel with more back spacing, or more ride height; try "
                    "it with the spring out, lock to lock"};
      v.because.push_back(told("gap before", *before, kind::length, "in"));
      v.because.push_back(told("hub moved out", a.hub_m, kind::length, "in"));
      v.because.push_back(told("lip come nearer", a.inward_m, kind::length, "in"));
      v.because.push_back(told("wheel farther out", a.wheel_m, kind::length, "in"));
      const double alone = std::max({a.hub_m, a.inward_m, a.wheel_m});
      v.because.push_back(told("gap left by the greatest of them alone", *before - alone, kind::length, "in"));
      out.push_back(std::move(v));
    };
    look(" at bump", a.lip_m);
    look(" at lock", a.lock_m);
  });
}
}  // namespace to_body

namespace load {
enum Need { n_mass, n_share, n_laden, n_laden_mass, n_laden_share, need_count };
constexpr Port needs[] = {{"vehicle.mass", &kind::mass},
                          {"vehicle.front_share", &kind::number},
                          {"vehicle.laden", &kind::number},
                          {"vehicle.laden_mass", &kind::mass},
                          {"vehicle.laden_front_share", &kind::number}};
static_assert(std::size(needs) == need_count);
void evaluate(const void* model, const Evidenced& run, std::vector<Verdict>& out) {
  auto& m = of(model);
  if (!m.load_kg) return out.push_back({.missing = {m.load_path}});
  const bool laden = run.at(0, n_laden) > 0;
  const double mass = run.at(0, laden ? n_laden_mass : n_mass);
  const double front = run.at(0, laden ? n_laden_share : n_share);
  for (const bool rear : {false, true}) {
    Verdict v{.place = rear ? "rear" : "front",
              .predicted = 0.5 * mass * (rear ? 1 - front : front),
              .high = *m.load_kg,
              .scale = *m.load_kg,
              .fix_hint = "a tyre of a higher load index, at the pressure its maker asks for that load"};
    v.because.push_back(
        told(laden ? "weight laden" : "weight as driven; give `vehicle.laden_weight` too", mass, kind::mass, "lb"));
    out.push_back(std::move(v));
  }
}
}  // namespace load

namespace speed {
constexpr std::string_view running[] = {"*running"};
constexpr Port needs[] = {{"road.speed", &kind::speed}};
void evaluate(const void* model, const Evidenced& run, std::vector<Verdict>& out) {
  auto& m = of(model);
  if (!m.top_m_s) return out.push_back({.missing = {m.speed_path}});
  const std::size_t row = run.trace->highest(run.slot(0));
  out.push_back({.predicted = run.at(row, 0),
                 .high = *m.top_m_s,
                 .scale = *m.top_m_s,
                 .row = row,
                 .fix_hint = "a tyre of a higher speed letter than " + m.speed_name});
}
}  // namespace speed

namespace age {
constexpr double most_s = 10 * year_s, look_s = 6 * year_s;
void evaluate(const void* model, const Evidenced&, std::vector<Verdict>& out) {
  auto& m = of(model);
  if (!m.age_s) return out.push_back({.missing = {m.age_path}});
  Verdict v{.predicted = *m.age_s, .high = most_s, .scale = most_s, .fix_hint = "new tyres, whatever their tread"};
  if (*m.age_s > look_s)
    v.because.push_back(told("looked at every year by one who knows, from an age of", look_s, kind::time, "year"));
  out.push_back(std::move(v));
}
}  // namespace age

namespace diameter {
constexpr double rolling_over_free = 0.97;  ///< a loaded radial (common practice: 0.96 to 0.98)
constexpr double most_apart = 0.03;
constexpr Port needs[] = {{"driveline.wheel_radius", &kind::length}};
void evaluate(const void* model, const Evidenced& run, std::vector<Verdict>& out) {
  auto& m = of(model);
  if (!m.free_m) return;
  const double rolls = 2 * run.at(0, 0), by_size = rolling_over_free * *m.free_m;
  Verdict v{.predicted = rolls / by_size - 1,
            .low = -most_apart,
            .high = most_apart,
            .scale = most_apart,
            .fix_hint = "measure what the car rolls in ten turns; put right `driveline.tyre_diameter` or the size"};
  v.because.push_back(told("diameter by the size, free", *m.free_m, kind::length, "in"));
  v.because.push_back(told("and rolling under load", by_size, kind::length, "in"));
  v.because.push_back(told("diameter the driveline is reckoned with", rolls, kind::length, "in"));
  out.push_back(std::move(v));
}
}  // namespace diameter

constexpr Requirement all[] = {
    {.id = "wheels.over-caliper",
     .title = "wheel goes over the caliper",
     .kind = RequirementKind::least,
     .hazard = Hazard::harm,
     .caution = Caution::wheels_tyres,
     .quantity = &kind::length,
     .unit = "in",
     .source = "common practice: 1/8 in all round",
     .formula = "inside radius of the barrel where the caliper sits less the caliper's outside radius",
     .needs = over_brake::needs,
     .own_missing = true,
     .evaluate = over_brake::radial},
    {.id = "wheels.spokes",
     .title = "spokes clear the caliper",
     .kind = RequirementKind::least,
     .hazard = Hazard::harm,
     .caution = Caution::wheels_tyres,
     .quantity = &kind::length,
     .unit = "in",
     .source = "common practice: 1/8 in",
     .formula = "caliper's outer face to the back of the spokes, as measured",
     .own_missing = true,
     .evaluate = over_brake::spokes},
    {.id = "wheels.body",
     .title = "tyre clears the body",
     .kind = RequirementKind::least,
     .hazard = Hazard::harm,
     .caution = Caution::wheels_tyres,
     .quantity = &kind::length,
     .unit = "in",
     .source = "common practice: 1/4 in",
     .formula = "gap measured before, less hub moved out, lip come nearer and wheel farther out",
     .own_missing = true,
     .evaluate = to_body::evaluate},
    {.id = "wheels.load",
     .title = "tyres carry their axle",
     .kind = RequirementKind::most,
     .hazard = Hazard::harm,
     .caution = Caution::wheels_tyres,
     .quantity = &kind::mass,
     .unit = "lb",
     .source = "the load moulded on the tyre; 49 CFR 571.110 asks it of the axle's rating (from memory)",
     .formula = "half the axle's weight, laden where that is known",
     .needs = load::needs,
     .evaluate = load::evaluate},
    {.id = "wheels.speed",
     .title = "tyres stand the speed",
     .kind = RequirementKind::most,
     .hazard = Hazard::harm,
     .caution = Caution::wheels_tyres,
     .quantity = &kind::speed,
     .unit = "mph",
     .source = "speed letters of UN R30 (from memory)",
     .formula = "greatest road speed of the duty against the letter's",
     .duties = speed::running,
     .needs = speed::needs,
     .evaluate = speed::evaluate},
    {.id = "wheels.age",
     .title = "tyres are not too old",
     .kind = RequirementKind::most,
     .hazard = Hazard::harm,
     .caution = Caution::wheels_tyres,
     .quantity = &kind::time,
     .unit = "year",
     .source = "common practice: looked at every year from six, gone at ten, whatever the tread",
     .formula = "age by the date code",
     .own_missing = true,
     .evaluate = age::evaluate},
    {.id = "wheels.diameter",
     .title = "size and rolling diameter agree",
     .kind = RequirementKind::band,
     .hazard = Hazard::nuisance,
     .caution = Caution::none,
     .quantity = &kind::number,
     .unit = "%",
     .source = "common practice: a loaded radial rolls as 0.97 of its free diameter, within 3 %",
     .formula = "twice the driveline's rolling radius over 0.97 of the diameter the size text gives, less one",
     .needs = diameter::needs,
     .evaluate = diameter::evaluate},
};

}  // namespace

std::span<const Requirement> System::requirements() { return all; }

}  // namespace sw::wheels
