#include <algorithm>
#include <cmath>

#include "physics/fuel_blend.hpp"
#include "quantity/customary.hpp"
#include "systems/engine/engine.hpp"

namespace sw::engine {
namespace {

constexpr double iron_j_kg_k = 460.0;  ///< cast iron (common practice)
constexpr double oil_j_l_k = 1750.0;   ///< a litre of hot oil (common practice)
/// Fuel of an engine without load, kg/s for each m3 of displacement at idle: 0.6 lb/h a litre (common practice).
constexpr double idle_fuel_kg_s_m3 = 0.6 * pound_kg / 3600.0 * 1000.0;
constexpr double greatest_mean_pa = 40e5;    ///< beyond any engine of a road car, blown ones too (common practice)
constexpr double metal_rise_at = 1.0 / 3.0;  ///< share of full power at which `metal_rise` is meant

void find_peak(Model& m) {
  if (!m.torque) return;
  constexpr int pieces = 200;
  for (int i = 0; i <= pieces; ++i) {
    const double w = m.torque->first() + (m.torque->last() - m.torque->first()) * i / pieces;
    if (const double p = m.torque->at(w).value * w; p > m.peak_power_w) {
      m.peak_power_w = p;
      m.peak_speed_rad_s = w;
    }
  }
}

/// Heat to the coolant at a share of full power, for the conductance that `metal_rise` stands for.
double coolant_heat_at(const Model& m, double power_w) { return coolant_heat_w(m, 0.6 * m.peak_speed_rad_s, power_w); }

/// Whether the strongest point of the torque curve asks for more pressure than any engine has.
bool too_strong(const Input& in, double displacement_m3) {
  if (!in.torque_curve || in.torque_curve->y.empty() || !(displacement_m3 > 0)) return false;
  const double most = *std::max_element(in.torque_curve->y.begin(), in.torque_curve->y.end());
  return physics::mean_effective_pressure_pa(most, displacement_m3) > greatest_mean_pa;
}

/// A curve's interpolant; what cannot be laid through its points is said.
std::optional<physics::Interpolant> through(const std::optional<Curve>& member, Resolver& r) {
  if (!member) return std::nullopt;
  auto f = physics::Interpolant::make(*member);
  if (!f) r.fault(&member, "a curve of more than " + std::to_string(physics::Interpolant::max_points) + " points");
  return f;
}

/// Heat and work can at most be the fuel's: looked at at idle and at full power, where work takes its greatest share.
bool adds_up(const Model& m) {
  const auto at = [&](double speed_rad_s, double power_w) {
    const double fuel = fuel_heat_w(m, speed_rad_s, power_w);
    return !(power_w + coolant_heat_w(m, speed_rad_s, power_w) + (m.oil_share + m.bay_share) * fuel > fuel);
  };
  return at(m.idle_rad_s, 0) && at(m.peak_speed_rad_s, m.peak_power_w);
}

}  // namespace

double fuel_heat_w(const Model& m, double speed_rad_s, double power_w) {
  return physics::willans_heat(m.fuel, power_w, speed_rad_s).heat_w;
}

double coolant_heat_w(const Model& m, double speed_rad_s, double power_w) {
  const double at_load = m.coolant_share * m.fuel.heat_per_power;
  if (!m.coolant_heat)
    return physics::coolant_heat(m.fuel, {m.idle_coolant_share, m.coolant_share}, power_w, speed_rad_s).heat_w;
  const double inside = std::clamp(power_w, m.coolant_heat->first(), m.coolant_heat->last());
  return std::max(0.0, m.coolant_heat->at(inside).value + at_load * (power_w - inside));
}

Model System::resolve(const Input& in, Resolver& r) {
  Model m;
  m.idle_rad_s = r.need(in.idle_speed);
  m.idle_ac_rad_s = r.get(in.idle_speed_air_conditioning, m.idle_rad_s);
  m.red_line_rad_s = r.need(in.red_line);
  m.oil_delay_s = r.need(in.oil_delay);
  r.need(in.torque_curve);
  m.torque = through(in.torque_curve, r);
  m.coolant_heat = through(in.coolant_heat, r);
  find_peak(m);
  if (m.torque && m.torque->last() < 0.999 * m.red_line_rad_s)
    r.fault(&in.torque_curve, "the curve ends below the red line", "add points up to it");
  const double displacement = r.need(in.displacement);
  if (too_strong(in, displacement))
    r.fault(&in.displacement, "far more torque than an engine of this size can give",
            "are both in the unit they were meant in, in3 or cc, lb-ft or N m?");
  const double idle = r.get(in.idle_fuel, displacement * idle_fuel_kg_s_m3 * r.need(in.usual_idle_fuel)) *
                      physics::gasoline_heating_value_j_kg;
  // The line passes through the stated consumption at full power: what is left there above the no-load part.
  const double full = r.need(in.bsfc) * m.peak_power_w * physics::gasoline_heating_value_j_kg;
  m.fuel = physics::willans_line(idle, m.idle_rad_s, full, m.peak_power_w, m.peak_speed_rad_s);
  m.coolant_share = r.need(in.coolant_share);
  m.idle_coolant_share = r.need(in.idle_coolant_share);
  m.oil_share = r.need(in.oil_share);
  m.bay_share = r.need(in.bay_share);
  if (!adds_up(m))
    r.fault(&in.bsfc, "shaft power and the shares to coolant, oil and engine bay come to more than the fuel's heat",
            "look at bsfc, idle_fuel and the shares", {&in.idle_fuel, &in.coolant_heat});
  m.metal_j_k = r.need(in.metal_mass) * iron_j_kg_k;
  m.oil_j_k = r.need(in.oil_volume) * 1000.0 * oil_j_l_k;
  m.metal_conductance_w_k = coolant_heat_at(m, metal_rise_at * m.peak_power_w) / r.need(in.metal_rise);
  m.highest_oil_k = r.need(in.highest_oil);
  m.motoring_n_m = physics::mean_pressure_torque_n_m(r.need(in.motoring_pressure), displacement);
  return m;
}

}  // namespace sw::engine
