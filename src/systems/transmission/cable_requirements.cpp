// The throttle-valve cable: its travel, what the clutches then hold, and how it lies.
#include <algorithm>
#include <cmath>
#include <numbers>

#include "model/told.hpp"
#include "systems/transmission/judging.hpp"

namespace sw::transmission {
namespace {

constexpr double degree = std::numbers::pi / 180;
constexpr double most_off_rad = 3 * degree, most_apart_rad = 2 * degree;
const Model& of(const void* model) { return *static_cast<const Model*>(model); }

constexpr std::string_view fix =
    "a lever or bracket of the right radius and start; the cable set with the throttle wide open, "
    "line pressure read before the road";

constexpr std::string_view no_reach = "the throttle's linkage does not reach: see there";
/// Whether the pedal's linkage, where it is told, opens the throttle at all.
bool reaches(const Evidenced& run, int need) { return run.lacks(need) || run.at(0, need) > 0; }

/// How far the throttle goes: to its stop, or as far as the pedal's linkage takes it where that is told.
double opened_rad(const CableModel& c, const Evidenced& run, int need) {
  return run.lacks(need) ? c.throttle_rad : std::min(c.throttle_rad, run.at(0, need));
}

}  // namespace

void judge_cable_travel(const void* model, const Evidenced& run, std::vector<Verdict>& out) {
  auto& c = of(model).cable;
  if (!c.told) return;
  constexpr double least_share = 0.97, most_share = 1.05;
  Verdict v{.fix_hint = std::string(fix)};
  v.missing = c.missing;
  if (!v.missing.empty()) return out.push_back(std::move(v));
  if (!reaches(run, cable::n_reaches)) {
    v.reason = no_reach;
    return out.push_back(std::move(v));
  }
  const double wanted = c.full_travel_m(), opened = opened_rad(c, run, cable::n_opened);
  v.predicted = c.travel_m(c.radius_m, opened);
  v.low = least_share * wanted;
  v.high = most_share * wanted;
  v.scale = wanted;
  v.because.push_back(told("travel the box is made for", wanted, kind::length, "in"));
  v.because.push_back(told("of it", *v.predicted / wanted, kind::number, "%"));
  if (!run.lacks(cable::n_opened))
    v.because.push_back(told("throttle as the pedal opens it", run.at(0, cable::n_opened), kind::angle, "deg"));
  out.push_back(std::move(v));
  if (!c.curve) return;
  const OnTheWay worst = worst_on_the_way(c, c.radius_m);
  Verdict w{.place = "on the way",
            .predicted = worst.travel_m,
            .low = worst.wanted_m - c.within_m,
            .high = worst.wanted_m + c.within_m,
            .scale = wanted,
            .fix_hint = std::string(fix)};
  w.because.push_back(told("throttle there", worst.opening_rad, kind::angle, "deg"));
  w.because.push_back(told("travel wanted there", worst.wanted_m, kind::length, "in"));
  out.push_back(std::move(w));
}

/// The gearbox and the pedal's linkage are told of one throttle: two angles for it are one too many.
void judge_one_throttle(const void* model, const Evidenced& run, std::vector<Verdict>& out) {
  auto& c = of(model).cable;
  if (run.lacks(0) || c.throttle_rad <= 0) return;
  const double by_linkage = run.at(0, 0);
  Verdict v{.predicted = std::abs(c.throttle_rad - by_linkage),
            .high = most_apart_rad,
            .scale = most_apart_rad,
            .fix_hint = "measured once, from stop to stop at the throttle's shaft, and told alike in both places"};
  v.because.push_back(told("throttle opens by, told for the gearbox", c.throttle_rad, kind::angle, "deg"));
  v.because.push_back(told("throttle opens by, told for its linkage", by_linkage, kind::angle, "deg"));
  out.push_back(std::move(v));
}

/// Line pressure goes with travel, what a clutch holds with line pressure.
void judge_clutch_hold(const void* model, const Evidenced& run, std::vector<Verdict>& out) {
  auto& c = of(model).cable;
  if (!c.told || (!c.holds_nm && c.pressure_missing.empty())) return;
  Verdict v{.row = run.trace->highest(run.slot(cable::n_torque)),
            .fix_hint =
                "the cable's lever and setting first: more line pressure; a clutch pack of more plates, or a box "
                "for the torque"};
  v.missing = c.missing;
  v.missing.insert(v.missing.end(), c.pressure_missing.begin(), c.pressure_missing.end());
  if (v.missing.empty() && !reaches(run, cable::n_pedal_reaches)) {
    v.reason = no_reach;
  } else if (v.missing.empty()) {
    const double pulled = c.travel_m(c.radius_m, opened_rad(c, run, cable::n_pedal_opens));
    const double share = std::clamp(pulled / c.full_travel_m(), 0.0, 1.0);
    const double pressure = *c.closed_pa + share * (*c.open_pa - *c.closed_pa);
    v.predicted = *c.holds_nm * pressure / *c.open_pa;
    v.low = run.at(v.row, cable::n_torque);
    v.scale = std::max(*v.low, 1.0);
    v.because.push_back(told("travel, of what the box is made for", share, kind::number, "%"));
    v.because.push_back(told("line pressure at full throttle", pressure, kind::gauge_pressure, "psi"));
  }
  out.push_back(std::move(v));
}

void judge_cable_line(const void* model, const Evidenced& run, std::vector<Verdict>& out) {
  auto& c = of(model).cable;
  if (!c.arm_m) return;
  const double raised = run.at(0, 0), by_spacer = c.on_intake ? 0 : std::atan(std::abs(raised) / *c.arm_m);
  Verdict v{
      .predicted = c.off_line_rad + by_spacer,
      .high = most_off_rad,
      .scale = most_off_rad,
      .fix_hint = "the bracket raised with the throttle body, then the cable set anew with the throttle wide open"};
  v.because.push_back(told("intake raised", raised, kind::length, "in"));
  v.because.push_back(told("travel lost to the slope", *c.arm_m * (1 / std::cos(by_spacer) - 1), kind::length, "in"));
  out.push_back(std::move(v));
}

OnTheWay worst_on_the_way(const CableModel& c, double radius) {
  constexpr int steps = 60;
  OnTheWay worst;
  for (int i = 0; i <= steps; ++i) {
    const double opening = c.throttle_rad * i / steps;
    const OnTheWay at{opening, c.travel_m(radius, opening), c.curve->at(opening).value};
    if (at.off_m() >= worst.off_m()) worst = at;
  }
  return worst;
}

}  // namespace sw::transmission
