// Stops with the engine off: what assist the store still gives with nothing to fill it.
#include <algorithm>
#include <cmath>

#include "physics/brake_stop.hpp"
#include "physics/vacuum_store.hpp"
#include "systems/brakes/checks.hpp"
#include "systems/brakes/travel.hpp"

namespace sw::brakes {
namespace {

enum Need { n_store = road::need_count, n_rear, n_rest, n_air, need_count };
std::span<const Port> needs() {
  static const std::vector<Port> all = [] {
    std::vector<Port> list(road::foot.begin(), road::foot.end());
    list.push_back({"vacuum.store_volume", &kind::volume});
    list.push_back({"vacuum.rear_volume", &kind::volume});
    list.push_back({"vacuum.rear_at_rest", &kind::volume});
    list.push_back(outside::pressure);
    return list;
  }();
  return all;
}

constexpr std::string_view idling[] = {"hot-idle"};
constexpr std::string_view chain[] = {"vacuum.manifold", "vacuum.booster"};
constexpr const char* fix =
    "a reservoir between check valve and booster, more idle vacuum or a pump that holds it, a booster of more area";

/// The store as the engine stops, and the car it has to stop.
struct Off {
  std::size_t row;
  Stopped car;
  physics::VacuumStore store;
  double rear_m3, vacuum_pa, air_pa;
  /// Rear chambers with the diaphragms that share of the way.
  double rear_at(double share) const { return store.rear_at_rest_m3 + share * (rear_m3 - store.rear_at_rest_m3); }
  double applied(double vacuum, double share) const {
    return physics::applied_vacuum_pa(store, rear_at(share), vacuum, air_pa).value;
  }
  double released(double vacuum, double share) const {
    return physics::released_vacuum_pa(store, rear_at(share), vacuum, air_pa).value;
  }
};
/// How far a stop of that rate moves the diaphragms: as the push rod's stroke, most of which is clearance; all the way
/// where what the brakes take up is not known.
double sweep(const Model& m, const Stopped& car, double rate) {
  const auto stroke = [&](double z) { return stroke_at(m, line_pressure_for(m, z * car.weight_n, car)); };
  const double share = stroke(rate) / stroke(hard_rate);
  return share < 1 ? share : 1.0;
}
Off off_at(const Evidenced& run) {
  const std::size_t row = road::weakest_row(run);
  return {row,
          road::car_at(run, row, road::laden_known(run)),
          {run.at(row, n_store), run.at(row, n_rest)},
          run.at(row, n_rear),
          run.at(row, road::n_vacuum),
          run.at(row, n_air)};
}

Verdict begin(const Off& off) {
  return {.place = off.car.laden ? "laden" : "as driven", .row = off.row, .fix_hint = fix};
}
/// Whether every port is there.
bool known(const Evidenced& run) {
  return std::none_of(run.slots, run.slots + need_count, [](auto slot) { return slot == Evidenced::absent; });
}

void first_stop(const void* model, const Evidenced& run, std::vector<Verdict>& out) {
  auto& m = of(model);
  if (!has_booster(m, out)) return;
  const Off off = off_at(run);
  Verdict v = begin(off);
  if (known(run)) {
    const double on = off.applied(off.vacuum_pa, 1.0), rate = rate_at_pedal(m, panic_n, on, off.car);
    if (locks_at(m, rate, off.car)) v.fix_hint = better_balance;
    v.predicted = stop_m(hundred_km_h_m_s, rate);
    v.high = v.scale = physics::stop_limit(physics::StopTest::cold, hundred_km_h_m_s).distance_m;
    v.because.push_back(told("vacuum as the engine stops", off.vacuum_pa, kind::vacuum, "inHg"));
    v.because.push_back(told("vacuum with the brakes hard on", on, kind::vacuum, "inHg"));
    v.because.push_back(told_rate("rate at 500 N, or at the first lock", rate));
  }
  out.push_back(std::move(v));
}

void stops_in_a_row(const void* model, const Evidenced& run, std::vector<Verdict>& out) {
  auto& m = of(model);
  if (!has_booster(m, out)) return;
  const Off off = off_at(run);
  Verdict v = begin(off);
  if (known(run)) {
    double vacuum = off.vacuum_pa, worst_rate = 0, worst_vacuum = 0;
    int stop = 0, worst_stop = 0;
    for (const double asked_m_s2 : physics::depletion_m_s2()) {
      ++stop;
      const double rate = asked_m_s2 / standard_gravity_m_s2, share = sweep(m, off.car, rate),
                   on = off.applied(vacuum, share);
      const double pedal = pedal_at_pressure(m, line_pressure_for(m, rate * off.car.weight_n, off.car), on);
      if (!v.predicted || pedal > *v.predicted)
        v.predicted = pedal, worst_stop = stop, worst_rate = rate, worst_vacuum = on;
      if (stop <= 3)
        v.because.push_back(told(words("vacuum with the brakes on, stop %.0f", stop), on, kind::vacuum, "inHg"));
      vacuum = off.released(vacuum, share);
    }
    v.high = v.scale = physics::depletion_pedal_n;
    v.because.push_back(told("hardest is stop", worst_stop, kind::number, ""));
    v.because.push_back(told_rate("its rate", worst_rate));
    v.because.push_back(told("its vacuum with the brakes on", worst_vacuum, kind::vacuum, "inHg"));
  }
  out.push_back(std::move(v));
}

std::vector<Requirement> made() {
  Requirement first{
      .id = "brakes.engine-off-stop",
      .title = "stop with the engine off",
      .kind = RequirementKind::most,
      .hazard = Hazard::harm,
      .caution = Caution::braking_loss,
      .quantity = &kind::length,
      .unit = "m",
      .source = "49 CFR 571.135 S7.7: 70 m from 100 km/h at 500 N, store filled, engine off",
      .formula =
          "air of the store pressed together by the first application, p (S - r0) / (S - r); then as the stop "
          "from 100 km/h",
      .duties = idling,
      .needs = needs(),
      .may_lack = road::n_vacuum,
      .chain = chain,
      .evaluate = first_stop};
  Requirement row = first;
  row.id = "brakes.engine-off-row";
  row.title = "stops in a row with the engine off";
  row.quantity = &kind::force;
  row.unit = "lbf";
  row.source =
      "49 CFR 571.105 Table III: 16, 12, 10, 9, 8, 7.5 and 7 ft/s2 one after the other at no more than 150 lbf";
  row.formula =
      "each stop presses the store's air together as far as its stroke goes, each release lets the "
      "rear chambers' air in; pedal force at that vacuum, the hardest of the seven";
  row.evaluate = stops_in_a_row;
  return {first, row};
}

}  // namespace

std::span<const Requirement> engine_off_requirements() {
  static const std::vector<Requirement> all = made();
  return all;
}

}  // namespace sw::brakes
