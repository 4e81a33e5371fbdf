#include "systems/brakes/effort.hpp"

#include <algorithm>
#include <cmath>

#include "physics/brake_hydraulic.hpp"
#include "physics/brake_stop.hpp"
#include "systems/brakes/reach.hpp"

namespace sw::brakes {
namespace {

constexpr double search_to_pa = 60e6;  ///< ten times what a foot can do

}  // namespace

Stopped stopped(double mass_kg, double front_share, double height_m, double wheelbase_m, double wheel_radius_m,
                bool laden) {
  return {
      {wheelbase_m, (1 - front_share) * wheelbase_m, height_m}, mass_kg * standard_gravity_m_s2, wheel_radius_m, laden};
}

double cylinder_pressure(const AxleModel& axle, double line_pa, bool laden) {
  return physics::brake_valves({laden ? axle.laden : axle.light, axle.valves}, line_pa).value;
}

double axle_force(const AxleModel& axle, double line_pa, const Stopped& s) {
  const double p = cylinder_pressure(axle, line_pa, s.laden) - axle.touch_pa;
  return std::max(0.0, p) * axle.torque_m3 / s.wheel_radius_m;
}

double braking_force(const Model& m, double line_pa, const Stopped& s) {
  return axle_force(m.front, line_pa, s) + axle_force(m.rear, line_pa, s);
}

double line_pressure_for(const Model& m, double force_n, const Stopped& s) {
  if (force_n <= 0) return 0;
  return reach(search_to_pa, force_n, [&](double p) { return braking_force(m, p, s); });
}

double assist_at(const Model& m, double vacuum_pa) {
  return physics::booster_assist_n(vacuum_pa, m.booster.area_m2, m.booster.efficiency).value - m.booster.spring_n;
}

double pressure_at_pedal(const Model& m, double pedal_n, double vacuum_pa) {
  const double rod = pedal_n * m.ratio.value;
  if (!m.assisted) return rod / m.bore_area_m2.value;
  const double out = physics::booster_output(rod, m.booster.gain, assist_at(m, vacuum_pa)).force_n;
  return std::max(0.0, out) / m.bore_area_m2.value;
}

double pedal_at_pressure(const Model& m, double line_pa, double vacuum_pa) {
  const double out = line_pa * m.bore_area_m2.value;
  if (!m.assisted) return out / m.ratio.value;
  return physics::booster_input(out, m.booster.gain, assist_at(m, vacuum_pa)).force_n / m.ratio.value;
}

Use use_at(const Model& m, double line_pa, const Stopped& s) {
  const double front = axle_force(m.front, line_pa, s), all = front + axle_force(m.rear, line_pa, s);
  const double rate = all / s.weight_n;
  const auto use = physics::adhesion_use(s.balance, all > 0 ? front / all : 1.0, rate);
  return {rate, use.front, use.rear, use.valid};
}

Lock first_lock(const Model& m, double adhesion, const Stopped& s) {
  // An axle that has left the ground uses all there is.
  auto most = [&](double p) {
    const auto use = use_at(m, p, s);
    return use.valid ? std::max(use.front, use.rear) : HUGE_VAL;
  };
  const double p = reach(search_to_pa, adhesion, most);
  const auto use = use_at(m, p, s);
  const bool rear = use.rear > use.front;
  return {use.rate, p, rear ? use.front : use.rear, rear};
}

Order lock_order(const Model& m, const Stopped& s, double low, double high) {
  constexpr int steps = 64;
  const double weight = s.weight_n;
  const double from = line_pressure_for(m, low * weight, s), to = line_pressure_for(m, high * weight, s);
  Order order{HUGE_VAL, low, from};
  auto look = [&](double p) {
    const auto use = use_at(m, p, s);
    const double ahead = use.front - use.rear;
    if (ahead < order.least) order = {ahead, use.rate, p};
  };
  for (int i = 0; i <= steps; ++i) look(from + (to - from) * i / steps);
  // The least stands where a valve begins to act, which the steps miss.
  for (auto* axle : {&m.front, &m.rear})
    for (std::size_t i = 0; i < axle->valves; ++i) {
      const double knee = (s.laden ? axle->laden : axle->light)[i].knee_pa;
      if (knee > from && knee < to) look(knee);
    }
  return order;
}

double rate_at_pedal(const Model& m, double pedal_n, double vacuum_pa, const Stopped& s) {
  const double p = pressure_at_pedal(m, pedal_n, vacuum_pa);
  return std::min(braking_force(m, p, s) / s.weight_n, first_lock(m, m.dry, s).rate);
}

double stop_m(double speed_m_s, double rate) {
  return physics::stop_distance_m(speed_m_s, rate * standard_gravity_m_s2, physics::allowed_response_s).value;
}

}  // namespace sw::brakes
