// Is the spark's timing added up once and not twice, and does the rotor still meet its terminal?
#include <algorithm>
#include <cmath>

#include "model/told.hpp"
#include "systems/ignition/checks.hpp"

namespace sw::ignition::advance {
namespace {

/// What stands in the distributor besides what sets the timing.
struct Added {
  double mechanical = 0, vacuum = 0;
};

double mechanical_at_most(const TimingModel& t, double red_rad_s) {
  const double end = std::isnan(red_rad_s) ? t.mechanical->last() : std::min(red_rad_s, t.mechanical->last());
  double most = 0;
  for (int i = 0; i <= 50; ++i)
    most = std::max(most, t.mechanical->at(t.mechanical->first() + (end - t.mechanical->first()) * i / 50).value);
  return most;
}

/// Notes what lacks; a controller's car must say that its distributor was made harmless.
Added added(const TimingModel& t, double red_rad_s, std::vector<std::string>& missing) {
  Added a;
  if (!t.distributor) return a;
  const bool controller = t.by == TimedBy::controller;
  if (controller && !t.locked) missing.push_back(t.locked_path);
  if (!t.locked.value_or(false)) {
    if (t.mechanical)
      a.mechanical = mechanical_at_most(t, red_rad_s);
    else if (controller ? t.locked.has_value() : true)
      missing.push_back(t.mechanical_path);
  }
  if (controller && !t.plugged && t.vacuum) missing.push_back(t.canister_path);
  if (!t.plugged.value_or(false)) a.vacuum = t.vacuum.value_or(0);
  return a;
}

void judge(const TimingModel& t, const char* place, double own, const Added& add, double limit,
           std::vector<Verdict>& out) {
  const bool controller = t.by == TimedBy::controller;
  Verdict v{.place = place,
            .predicted = own + add.mechanical + add.vacuum,
            .high = limit,
            .scale = limit,
            .fix_hint = controller ? "lock the distributor, plug the canister and phase the rotor at the controller's "
                                     "reference; or let the controller have the fuel alone"
                                   : "base timing or the weights' stop set back; a canister that gives less"};
  v.because.push_back(told(controller ? "the controller's table" : "base timing", own, kind::angle, "deg"));
  if (add.mechanical > 0) v.because.push_back(told("weights of the distributor", add.mechanical, kind::angle, "deg"));
  if (add.vacuum > 0) v.because.push_back(told("vacuum canister", add.vacuum, kind::angle, "deg"));
  if (controller && add.mechanical + add.vacuum > 0)
    v.because.push_back(told("the table alone, as its maker meant it", own, kind::angle, "deg"));
  out.push_back(std::move(v));
}

}  // namespace

void total(const void* model, const Evidenced& run, std::vector<Verdict>& out) {
  auto& t = of(model).timing;
  if (!t.described) return;
  if (!t.by) return out.push_back({.missing = {t.by_path}});
  const bool controller = *t.by == TimedBy::controller;
  std::vector<std::string> missing;
  if (controller ? !t.full : !t.base) missing.push_back(controller ? t.full_path : t.base_path);
  if (!t.most) missing.push_back(t.most_path);
  const Added add = added(t, run.at(0, 0), missing);
  if (!missing.empty()) return out.push_back({.missing = missing});
  judge(t, "full load", controller ? *t.full : *t.base, {add.mechanical, 0}, *t.most, out);
  judge(t, "light load", controller ? *t.light : *t.base, add, t.most_light, out);
}

void rotor(const void* model, const Evidenced&, std::vector<Verdict>& out) {
  auto& t = of(model).timing;
  if (t.by != TimedBy::controller || !t.distributor) return;
  Verdict v{.high = t.reach,
            .scale = t.reach,
            .fix_hint =
                "turn rotor or cap so that the tip meets its terminal in the middle between the table's least and "
                "most; see it through a hole in an old cap by timing light"};
  if (!t.phase) v.missing.push_back(t.phase_path);
  if (!t.least) v.missing.push_back(t.least_path);
  if (!t.full) v.missing.push_back(t.full_path);
  if (v.missing.empty()) {
    const double most = std::max(*t.full, *t.light);
    // The distributor turns at half the crankshaft's speed.
    v.predicted = 0.5 * std::max(std::abs(most - *t.phase), std::abs(*t.phase - *t.least));
    v.because.push_back(told("least advance of the table", *t.least, kind::angle, "deg"));
    v.because.push_back(told("most advance of the table", most, kind::angle, "deg"));
    v.because.push_back(told("rotor meets its terminal at", *t.phase, kind::angle, "deg"));
  }
  out.push_back(std::move(v));
}

}  // namespace sw::ignition::advance
