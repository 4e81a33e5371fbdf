#include <cmath>

#include "physics/battery.hpp"
#include "systems/charging/charging.hpp"

namespace sw::charging {
namespace {

/// Usual shape of an alternator's output: share of its rated current against its own speed, rpm (common practice; to
/// be replaced by the supplier's own curve).
constexpr double usual_rpm[] = {1000, 1200, 1500, 1800, 2000, 2500, 3000, 4000, 6000};
constexpr double usual_share[] = {0, 0.10, 0.36, 0.55, 0.62, 0.74, 0.83, 0.93, 1.00};

std::optional<physics::Interpolant> output_of(const Alternator& in, Resolver& r) {
  if (in.output_curve) {
    auto f = physics::Interpolant::make(*in.output_curve);
    if (!f)
      r.fault(&in.output_curve, "a curve of more than " + std::to_string(physics::Interpolant::max_points) + " points");
    // Below its first point a curve says nothing, and just there a hot idle lies.
    else if (in.output_curve->y.front() > 0.02 * in.output_curve->y.back())
      r.fault(&in.output_curve, "the curve does not begin at 0 A",
              "add the speed from which the machine gives current, with 0 A");
    return f;
  }
  // The usual shape is an alternator's: a generator gives nothing at its idle and its full current soon after.
  if (in.machine == Machine::generator) {
    r.need(in.output_curve);
    return std::nullopt;
  }
  const double rated = r.need(in.rated_current);
  if (std::isnan(rated)) return std::nullopt;
  Curve c;
  for (std::size_t i = 0; i < std::size(usual_rpm); ++i) {
    c.x.push_back(usual_rpm[i] * M_PI / 30.0);
    c.y.push_back(usual_share[i] * rated * r.need(in.usual_shape));
  }
  return physics::Interpolant::make(c);
}

void resolve_waking(const Input& in, Model& m, Resolver& r) {
  auto& a = in.alternator;
  m.generator = a.machine == Machine::generator;
  m.excitation = a.excitation;
  m.exciter_a = r.get(a.exciter_current, 0);
  m.wake_rad_s = r.get(a.wake_speed, 0);
  const Evidence* own = r.evidence_of(&a.own_wake_speed);
  m.usual_own_wake_rad_s = r.get(a.own_wake_speed, 0);
  if (a.own_wake_speed && !(own && own->defaulted)) m.own_wake_rad_s = a.own_wake_speed->si;
  m.clamped = a.clamped;
  m.sense_lost = a.sense_lost;
  if (in.electronics_stand) m.surge_v = in.electronics_stand->si;
  m.excitation_path = r.path_of(&a.excitation);
  m.own_wake_path = r.path_of(&a.own_wake_speed);
  m.clamped_path = r.path_of(&a.clamped);
  m.surge_path = r.path_of(&in.electronics_stand);
}

}  // namespace

double open_circuit_v(const Model& m, double charge, double temperature_k) {
  return physics::battery_open_volts(charge, temperature_k, static_cast<int>(m.cells)).value;
}

double resistance_ohm(const Model& m, double charge, double temperature_k) {
  return physics::battery_resistance(m.resistance_ohm, charge, temperature_k).value;
}

Model System::resolve(const Input& in, Resolver& r) {
  Model m;
  auto& a = in.alternator;
  m.output = output_of(a, r);
  m.rise_k = r.need(a.temperature_rise);
  // The data sheet's cold and hot points both stand at full output, a full winding rise above their air.
  m.hot = {physics::usual_cold_air_k + m.rise_k, r.need(a.hot_air) + m.rise_k, r.need(a.hot_share)};
  if (a.highest_speed)
    m.highest_rad_s = a.highest_speed->si;
  else
    m.highest_path = r.path_of(&a.highest_speed);
  m.efficiency = r.need(a.efficiency);
  m.highest_k = r.need(a.highest_temperature);
  m.set_v = r.need(a.regulator_voltage);
  m.set_slope_v_k = r.need(a.regulator_slope);
  if (a.earth)
    m.earth = *a.earth;
  else
    m.earth_path = r.path_of(&a.earth);
  m.car_positive = r.positive_earth;
  m.car_earth_path = r.earth_path;
  m.capacity_c = r.need(in.battery.capacity);
  m.cells = r.nominal_v < 9 ? 3 : 6;
  m.nominal_v = r.nominal_v;
  m.battery_v = given(in.battery.voltage);
  if (in.battery.resistance)
    m.resistance_ohm = in.battery.resistance->si;
  else
    m.resistance_ohm =
        physics::battery_resistance_from_cranking(r.need(in.battery.cold_crank_current), static_cast<int>(m.cells));
  auto& s = in.starter;
  m.starter_a = r.need(s.current);
  m.starter_v = r.get(s.voltage, r.nominal_v * 10 / 12);
  m.crank_rad_s = r.need(s.crank_speed);
  m.starter_ohm = r.need(s.resistance);
  // Volts the windings alone would take leave none to turn it.
  if (m.starter_v <= m.starter_a * m.starter_ohm)
    r.fault(&s.resistance, "at its rated current it would drop more volts than the starter is fed with",
            "look at current, voltage and resistance together: 5 to 20 mohm are usual");
  m.least_crank_rad_s = r.need(s.least_crank_speed);
  m.least_crank_v = r.get(in.least_crank_voltage, 0);
  m.days_s = r.need(in.days_between_drives);
  resolve_waking(in, m, r);
  return m;
}

}  // namespace sw::charging
