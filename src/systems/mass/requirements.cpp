#include <algorithm>
#include <cmath>

#include "model/told.hpp"
#include "quantity/customary.hpp"
#include "systems/mass/mass.hpp"

namespace sw::mass {
namespace {

const Model& of(const void* model) { return *static_cast<const Model*>(model); }

enum Need { n_mass, n_share, n_laden, n_laden_mass, n_laden_share, n_weighed, n_weighed_share, need_count };
constexpr Port needs[] = {{"vehicle.mass", &kind::mass},
                          {"vehicle.front_share", &kind::number},
                          {"vehicle.laden", &kind::number},
                          {"vehicle.laden_mass", &kind::mass},
                          {"vehicle.laden_front_share", &kind::number},
                          {"vehicle.weighed_mass", &kind::mass},
                          {"vehicle.weighed_front_share", &kind::number}};
static_assert(std::size(needs) == need_count);

/// What stands on an axle, kg, of a car whose mass and front's share are these needs.
double on_axle(const Evidenced& run, bool front, int mass, int share) {
  const double f = run.at(0, share);
  return run.at(0, mass) * (front ? f : 1 - f);
}
template <class Look>
void each_axle(const Model& m, Look look) {
  look("front", true, m.front);
  look("rear", false, m.rear);
}
Because weight(std::string what, double kg) { return told(std::move(what), kg, kind::mass, "lb"); }

namespace load {
void evaluate(const void* model, const Evidenced& run, std::vector<Verdict>& out) {
  auto& m = of(model);
  if (!m.axles_told()) return;
  each_axle(m, [&](const char* place, bool front, const AxleModel& axle) {
    if (!axle.rating_kg) return out.push_back({.place = place, .missing = {axle.rating_path}});
    const double driven = on_axle(run, front, n_mass, n_share);
    const double laden = run.at(0, n_laden) > 0 ? on_axle(run, front, n_laden_mass, n_laden_share) : driven;
    Verdict v{.place = place,
              .predicted = std::max(driven, laden),
              .high = *axle.rating_kg,
              .scale = *axle.rating_kg,
              .fix_hint =
                  "weight moved to the other axle or left out; axle, springs and wheels of a higher rating all "
                  "together"};
    v.because.push_back(weight("as weighed, before the parts", on_axle(run, front, n_weighed, n_weighed_share)));
    v.because.push_back(weight("as driven", driven));
    if (laden > driven) v.because.push_back(weight("laden", laden));
    out.push_back(std::move(v));
  });
}
}  // namespace load

namespace height {
void evaluate(const void* model, const Evidenced& run, std::vector<Verdict>& out) {
  auto& m = of(model);
  each_axle(m, [&](const char* place, bool front, const AxleModel& axle) {
    if (!axle.wheel_rate_n_m) return;
    const double more = on_axle(run, front, n_mass, n_share) - on_axle(run, front, n_weighed, n_weighed_share);
    Verdict v{.place = place,
              .predicted = more * standard_gravity_m_s2 / (2 * *axle.wheel_rate_n_m),
              .low = -m.within_m,
              .high = m.within_m,
              .scale = m.within_m,
              .fix_hint =
                  "springs for the weight, or a packing under those there are; then joint angles, gaps and "
                  "lamps measured anew"};
    v.because.push_back(weight("more on the axle", more));
    out.push_back(std::move(v));
  });
}
}  // namespace height

namespace sides {
enum SideNeed { n_known, n_left, side_need_count };
constexpr Port side_needs[] = {{"vehicle.sides_known", &kind::number}, {"vehicle.left_share", &kind::number}};
static_assert(std::size(side_needs) == side_need_count);
constexpr double most = 0.03;
void evaluate(const void*, const Evidenced& run, std::vector<Verdict>& out) {
  if (!(run.at(0, n_known) > 0)) return;
  const double left = run.at(0, n_left);
  Verdict v{.predicted = std::abs(left - 0.5),
            .high = most,
            .scale = most,
            .fix_hint = "battery or what else can sit on either side moved over; sagged springs looked at first"};
  v.because.push_back(told("on the left wheels", left, kind::number, "%"));
  out.push_back(std::move(v));
}
}  // namespace sides

constexpr Requirement all[] = {
    {.id = "mass.axle-load",
     .title = "axle carries what stands on it",
     .kind = RequirementKind::most,
     .hazard = Hazard::harm,
     .caution = Caution::wheels_tyres,
     .quantity = &kind::mass,
     .unit = "lb",
     .source = "the axle's rating by its maker",
     .formula = "moments of car and parts about the front axle over the wheelbase; the more of driven and laden",
     .needs = needs,
     .evaluate = load::evaluate},
    {.id = "mass.ride-height",
     .title = "car stands at the height it was measured at",
     .kind = RequirementKind::band,
     .hazard = Hazard::damage,
     .caution = Caution::lift,
     .quantity = &kind::length,
     .unit = "in",
     .source = "mass.height_within; common practice: 0.5 in",
     .formula = "weight the parts moved bring to the axle / (2 x rate at the wheel); below nothing where it rises",
     .needs = needs,
     .evaluate = height::evaluate},
    {.id = "mass.sides",
     .title = "weight is even from side to side",
     .kind = RequirementKind::most,
     .hazard = Hazard::nuisance,
     .caution = Caution::wheels_tyres,
     .unit = "%",
     .source = "common practice: 3 % of the weight off the middle",
     .formula =
         "share of the weight on the left wheels, as weighed and by the parts' moments over the track, less half",
     .needs = sides::side_needs,
     .evaluate = sides::evaluate},
};

}  // namespace

std::span<const Requirement> System::requirements() { return all; }

}  // namespace sw::mass
