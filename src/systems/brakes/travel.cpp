#include "systems/brakes/travel.hpp"

#include <algorithm>
#include <cmath>

#include "systems/brakes/reach.hpp"

namespace sw::brakes {
namespace {

constexpr double uptake_known_to_pa = 14e6;  ///< where the law of what brakes take up ends, and hoses with it

bool diagonal(const Model& m) { return m.split.value == static_cast<double>(Split::diagonal); }

}  // namespace

physics::Uptake uptake_of(const AxleModel& axle) {
  return {axle.moving,       axle.area_m2.value,      axle.clearance_m.value,
          axle.give_m.value, axle.line_give_m3.value, judged_pa};
}

double taken_m3(const AxleModel& axle, double line_pa, bool laden) {
  return physics::brake_uptake(uptake_of(axle), cylinder_pressure(axle, line_pa, laden)).value;
}

double stroke_at(const Model& m, double line_pa) {
  return m.take_up_m.value +
         (taken_m3(m.front, line_pa, false) + taken_m3(m.rear, line_pa, false)) / m.bore_area_m2.value;
}

double pressure_at_stroke(const Model& m, double stroke_m) {
  if (stroke_m <= stroke_at(m, 0)) return 0;
  return reach(uptake_known_to_pa, stroke_m, [&](double p) { return stroke_at(m, p); });
}

Chambers chambers(const Model& m) { return {m.front_chamber_m.value, m.stroke_m.value - m.front_chamber_m.value}; }

Chambers chambers_at(const Model& m, double line_pa, bool laden) {
  const double front = taken_m3(m.front, line_pa, laden) / m.bore_area_m2.value,
               rear = taken_m3(m.rear, line_pa, laden) / m.bore_area_m2.value;
  if (diagonal(m)) return {0.5 * (front + rear), 0.5 * (front + rear)};
  return {front, rear};
}

Model without(const Model& m, Lost lost) {
  Model left = m;
  if (diagonal(m)) return left;
  AxleModel& axle = lost == Lost::first ? left.rear : left.front;
  std::size_t kept = 0;
  for (std::size_t i = 0; i < axle.valves; ++i) {
    if (axle.opens_alone[i]) continue;
    axle.light[kept] = axle.light[i];
    axle.laden[kept++] = axle.laden[i];
  }
  axle.valves = kept;
  return left;
}

double force_left(const Model& m, Lost lost, double line_pa, const Stopped& s) {
  if (diagonal(m)) return 0.5 * braking_force(m, line_pa, s);
  return axle_force(lost == Lost::first ? m.rear : m.front, line_pa, s);
}

std::optional<double> pressure_left_for(const Model& m, Lost lost, double force_n, const Stopped& s) {
  auto left = [&](double p) { return force_left(m, lost, p, s); };
  if (!(left(uptake_known_to_pa) > force_n)) return std::nullopt;
  return reach(uptake_known_to_pa, force_n, left);
}

double stroke_left_at(const Model& m, Lost lost, double line_pa, bool laden) {
  const Chambers whole = chambers(m), used = chambers_at(m, line_pa, laden);
  return m.take_up_m.value + (lost == Lost::first ? whole.first_m + used.second_m : whole.second_m + used.first_m);
}

double lock_left(const Model& m, Lost lost, const Stopped& s) {
  // A diagonal has half the whole car's force at a pressure, and shifts half the load: it locks as a car half as high.
  if (diagonal(m)) {
    Stopped half = s;
    half.balance.cg_height_m *= 0.5;
    return 0.5 * first_lock(m, m.dry, half).rate;
  }
  // An axle that brakes by itself: where it never locks the road is no limit.
  const auto lock = lost == Lost::first ? physics::rear_lock_rate(s.balance, 0, m.dry)
                                        : physics::front_lock_rate(s.balance, 1, m.dry);
  return lock ? lock->value : HUGE_VAL;
}

}  // namespace sw::brakes
