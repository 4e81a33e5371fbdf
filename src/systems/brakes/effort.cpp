#include "systems/brakes/effort.hpp"

#include <algorithm>
#include <cmath>

namespace sw::brakes {
namespace {

constexpr double most_line_pa = 60e6;  ///< ten times what a foot can do: where the search for a pressure begins
constexpr int halvings = 60;

/// The argument at which a rising function reaches `wanted`, or `high` where it does not before.
template <class F>
double reach(double high, double wanted, F&& f) {
  double low = 0;
  if (!(f(high) > wanted)) return high;
  for (int i = 0; i < halvings; ++i) {
    const double mid = 0.5 * (low + high);
    (f(mid) < wanted ? low : high) = mid;
  }
  return 0.5 * (low + high);
}

}  // namespace

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
  return reach(most_line_pa, force_n, [&](double p) { return braking_force(m, p, s); });
}

double pressure_at_pedal(const Model& m, double pedal_n, double vacuum_pa) {
  const double rod = pedal_n * m.ratio.value;
  return (m.assisted ? physics::booster_output(m.booster, vacuum_pa, rod).value : rod) / m.bore_area_m2.value;
}

double pedal_at_pressure(const Model& m, double line_pa, double vacuum_pa) {
  const double out = line_pa * m.bore_area_m2.value;
  return (m.assisted ? physics::booster_push_rod(m.booster, vacuum_pa, out).value : out) / m.ratio.value;
}

physics::AdhesionUse use_at(const Model& m, double line_pa, const Stopped& s) {
  return physics::adhesion_use(s.car, axle_force(m.front, line_pa, s), axle_force(m.rear, line_pa, s));
}

Lock first_lock(const Model& m, double adhesion, const Stopped& s) {
  // An axle that has left the ground uses all there is.
  auto most = [&](double p) {
    const auto use = use_at(m, p, s);
    return use.valid ? std::max(use.front, use.rear) : HUGE_VAL;
  };
  const double p = reach(most_line_pa, adhesion, most);
  const auto use = use_at(m, p, s);
  const bool rear = use.rear > use.front;
  return {use.rate, p, rear ? use.front : use.rear, rear};
}

Order lock_order(const Model& m, const Stopped& s, double low, double high) {
  constexpr int steps = 64;
  const double weight = s.car.weight_n;
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
  return std::min(braking_force(m, p, s) / s.car.weight_n, first_lock(m, m.dry, s).rate);
}

double stop_m(double speed_m_s, double rate) {
  return lost_m_h_km * speed_m_s * 3.6 + speed_m_s * speed_m_s / (2 * rate * gravity_m_s2);
}

}  // namespace sw::brakes
