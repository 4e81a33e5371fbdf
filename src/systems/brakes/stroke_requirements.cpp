// Where the stroke goes: at 900 psi, after a night below the brakes, and what a covered port shuts in.
#include <algorithm>
#include <cmath>

#include "systems/brakes/checks.hpp"
#include "systems/brakes/travel.hpp"

namespace sw::brakes {
namespace {

constexpr double most_stroke_share = 0.65;       ///< common practice: 60 to 65 %
constexpr double least_height_m = 1.5 * inch_m;  ///< pad over the floor (common practice)
constexpr double most_growth_m = 0.3 * inch_m;   ///< second press over first (common practice)
constexpr double most_shut_in_pa = 2 * psi_pa;   ///< what a disc may keep without dragging (common practice)

bool uptake_given(const Model& m, Verdict& v) {
  return all_given({&m.bore_area_m2, &m.take_up_m, &m.front.make, &m.rear.make, &m.front.area_m2, &m.rear.area_m2,
                    &m.front.clearance_m, &m.rear.clearance_m, &m.front.give_m, &m.rear.give_m, &m.front.line_give_m3,
                    &m.rear.line_give_m3},
                   v);
}

void tell_uptake(const Model& m, Verdict& v) {
  v.because.push_back(told("fluid the front takes", taken_m3(m.front, judged_pa, false), kind::volume, "in3"));
  v.because.push_back(told("fluid the rear takes", taken_m3(m.rear, judged_pa, false), kind::volume, "in3"));
  v.because.push_back(told("stroke of the push rod", stroke_at(m, judged_pa), kind::length, "in"));
}

constexpr const char* shorter =
    "a larger master bore (then the pedal force again), less knock-back and run-out, shoes "
    "adjusted, hoses that swell less";

}  // namespace

void master_stroke(const void* model, const Evidenced&, std::vector<Verdict>& out) {
  auto& m = of(model);
  Verdict v{.fix_hint = shorter};
  if (uptake_given(m, v) && all_given({&m.stroke_m}, v)) {
    v.predicted = stroke_at(m, judged_pa) / m.stroke_m.value;
    v.high = most_stroke_share;
    v.scale = most_stroke_share;
    tell_uptake(m, v);
  }
  out.push_back(std::move(v));
}

void chamber_stroke(const void* model, const Evidenced&, std::vector<Verdict>& out) {
  auto& m = of(model);
  if (m.split.given() && !m.two_circuits()) return;
  Verdict unknown{};
  const bool all = uptake_given(m, unknown);
  if (!all_given({&m.split, &m.stroke_m, &m.front_chamber_m}, unknown) || !all)
    return out.push_back(std::move(unknown));
  const Chambers have = chambers(m), used = chambers_at(m, judged_pa);
  const bool diagonal = m.split.value == static_cast<double>(Split::diagonal);
  auto look = [&](const char* place, double use, double stroke) {
    out.push_back({.place = place,
                   .predicted = use,
                   .high = stroke,
                   .scale = stroke,
                   .fix_hint = "a master cylinder whose chambers are made for these brakes, or a larger bore"});
  };
  look(diagonal ? "one diagonal" : "front", used.first_m, have.first_m);
  look(diagonal ? "other diagonal" : "rear", used.second_m, have.second_m);
}

void pedal_height(const void* model, const Evidenced&, std::vector<Verdict>& out) {
  auto& m = of(model);
  Verdict v{.fix_hint = shorter};
  if (uptake_given(m, v) && all_given({&m.ratio, &m.pedal_m}, v)) {
    const double travel = stroke_at(m, judged_pa) * m.ratio.value;
    v.predicted = m.pedal_m.value - travel;
    v.low = least_height_m;
    v.scale = m.pedal_m.value;
    tell_uptake(m, v);
    v.because.push_back(told("travel of the pad", travel, kind::length, "in"));
  }
  out.push_back(std::move(v));
}

void drain_back(const void* model, const Evidenced&, std::vector<Verdict>& out) {
  auto& m = of(model);
  each_axle(m, [&](const char* place, const AxleModel& a) {
    Verdict v{.place = place,
              .fix_hint =
                  "a 2 psi residual valve by the master (and no 10 psi one left in), or a remote reservoir over "
                  "the calipers"};
    if (!all_given({&a.make}, v) ||
        (!a.drum && !all_given({&a.above_m, &a.residual_pa, &a.area_m2, &a.retreat_m, &m.bore_area_m2, &m.ratio}, v)))
      return out.push_back(std::move(v));
    // The cups of a drum hold to their bore or let air in: that is what residual-drum asks.
    if (a.drum) return;
    const double head = -physics::fluid_head(a.above_m.value).value;
    const bool creeps = head > a.residual_pa.value;
    const double growth = a.moving * a.area_m2.value * a.retreat_m.value / m.bore_area_m2.value * m.ratio.value;
    v.predicted = creeps ? growth : 0.0;
    v.high = most_growth_m;
    v.scale = most_growth_m;
    v.because.push_back(told("head that pulls the pistons back", head, kind::gauge_pressure, "psi"));
    v.because.push_back(told("residual pressure against it", a.residual_pa.value, kind::gauge_pressure, "psi"));
    out.push_back(std::move(v));
  });
}

void trapped_pressure(const void* model, const Evidenced&, std::vector<Verdict>& out) {
  auto& m = of(model);
  if (!has_booster(m, out)) return;
  each_axle(m, [&](const char* place, const AxleModel& a) {
    Verdict v{.place = place,
              .fix_hint =
                  "rod gap first: measure rod and socket with one straight-edge; try again after every booster, "
                  "master, gasket or spacer"};
    const bool rod = all_given({&m.rod_gap_m, &m.port_travel_m}, v);
    const bool covered = -m.rod_gap_m.value > m.port_travel_m.value;
    // With the port open nothing is shut in, whatever the circuit holds.
    if (!rod || (covered && !all_given({&a.fluid_m3, &a.area_m2, &a.give_m, &a.line_give_m3}, v)))
      return out.push_back(std::move(v));
    v.predicted = covered ? physics::trapped_pressure(a.fluid_m3.value, m.hot_rise_k,
                                                      physics::brake_uptake(uptake_of(a), 0).slope)
                                .value
                          : 0.0;
    v.high = most_shut_in_pa;
    v.scale = most_shut_in_pa;
    v.because.push_back(told("rod presses the piston by", -m.rod_gap_m.value, kind::length, "in"));
    v.because.push_back(told("the port stays covered from", m.port_travel_m.value, kind::length, "in"));
    out.push_back(std::move(v));
  });
}

}  // namespace sw::brakes
