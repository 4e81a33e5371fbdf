#include <algorithm>
#include <cmath>

#include "systems/cooling/cooling.hpp"

namespace sw::cooling {
namespace {

constexpr double usual_loss = 8.2;  ///< Pa/(m/s)2 of a usual core with condenser and grille (common practice)

/// Loss coefficient of the curve's points by least squares in dp = k v^2.
double fit_loss(const Curve& c) {
  double top = 0, bottom = 0;
  for (std::size_t i = 0; i < c.x.size(); ++i) {
    top += c.y[i] * c.x[i] * c.x[i];
    bottom += std::pow(c.x[i], 4);
  }
  return top / bottom;
}

physics::FanCurve curve_of(const Curve& c, double face_m2) {
  std::vector<double> face;
  for (double flow : c.x) face.push_back(flow / face_m2);
  return physics::fan_curve(face, c.y);
}

/// The face speed of each fan that came with a curve: that of all of them together on this core, shared by free flow.
void install(Model& m) {
  std::optional<physics::FanCurve> all;
  for (auto& f : m.fan)
    if (f.curve) all = all ? physics::side_by_side(*all, *f.curve) : *f.curve;
  if (!all) return;
  const auto together = physics::fan_on_core(*all, m.loss);
  for (auto& f : m.fan) {
    if (!f.curve) continue;
    const double share = std::sqrt(all->slope / f.curve->slope);
    f.face_m_s = f.turned_share * share * together.face_m_s;
    f.free_ratio = together.free_ratio;
  }
}

void resolve_fans(const Input& in, Model& m, Resolver& r) {
  for (auto& [name, f] : in.fan) {
    if (m.fans == Model::most_fans) {
      r.fault(&f.flow, "at most " + std::to_string(Model::most_fans) + " fans can be reckoned with; \"" + name +
                           "\" is one too many");
      break;
    }
    FanModel fan{.name = name,
                 .electric = f.drive != Drive::engine,
                 .with_ac = r.get(f.with_air_conditioning, 0) > 0,
                 .reversed = f.blows == Blows::against_travel};
    const double share = fan.reversed ? r.need(f.reversed_share) : 1.0;
    if (f.curve) {
      fan.curve = curve_of(*f.curve, m.face_m2);
      if (!fan.curve->valid && !std::isnan(m.face_m2))
        r.fault(&f.curve, "the pressure does not fall as the flow grows", "rows from shut off to free flow");
    } else {
      fan.face_m_s = share * r.need(f.flow) / m.face_m2;
      fan.free_ratio = r.need(f.free_flow_ratio);
    }
    fan.turned_share = share;
    if (fan.electric) {
      fan.rated_v = r.get(f.at_voltage, r.usual_rated_v());
      fan.rated_a = r.need(f.current);
      fan.on_k = r.need(f.on);
      fan.off_k = r.need(f.off);
      if (fan.off_k >= fan.on_k)
        r.fault(&f.off, "the fan is switched off no lower than it is switched on",
                "off belongs some 3 to 6 K below on");
    } else {
      fan.rated_rad_s = r.need(f.at_speed);
      fan.power_w = r.need(f.power);
    }
    m.fan[m.fans++] = fan;
  }
  install(m);
  std::stable_sort(m.fan, m.fan + m.fans, [](const FanModel& a, const FanModel& b) {
    return a.electric != b.electric ? a.electric : a.on_k < b.on_k;
  });
  m.electric = static_cast<std::size_t>(std::count_if(m.fan, m.fan + m.fans, [](auto& f) { return f.electric; }));
}

void resolve_cap(const Cap& in, Model& m, Resolver& r) {
  if (in.pressure)
    m.cap_pa = in.pressure->si;
  else
    m.cap_path = r.path_of(&in.pressure);
  if (in.weakest_part)
    m.weakest_pa = in.weakest_part->si;
  else
    m.weakest_path = r.path_of(&in.weakest_part);
  if (in.expansion_tank) m.tank_m3 = in.expansion_tank->si;
}

}  // namespace

physics::CoolantTable::State coolant_at(const Model& m, double temperature_k) {
  return m.coolant->at(std::clamp(temperature_k, m.coolant->freezing_k(), physics::coolant_hottest_k));
}

double boiling_k(const Model& m, double air_pressure_pa) {
  return physics::boiling_temperature(physics::Fluid::ethylene_glycol, m.glycol_mass,
                                      air_pressure_pa + m.cap_pa.value_or(0.0))
      .value;
}

Model System::resolve(const Input& in, Resolver& r) {
  Model m;
  auto& c = in.radiator;
  m.face_m2 = r.need(c.core_width) * r.need(c.core_height);
  m.conductance_w_k = r.need(c.conductance) * (1 - r.get(c.blocked_share, 0));
  m.conductance_m_s = r.need(c.conductance_speed);
  m.exponent = r.need(c.conductance_exponent);
  m.loss = c.airflow_loss ? fit_loss(*c.airflow_loss) : usual_loss * r.need(c.usual_loss);
  if (!(m.loss > 0))
    r.fault(&c.airflow_loss, "an airflow loss of nothing", "give the pressures the core loses", {&c.usual_loss});
  m.radiator_m3 = r.need(c.volume);
  m.engine_m3 = r.need(in.coolant) - m.radiator_m3;
  if (m.engine_m3 < 0.2 * m.radiator_m3)
    r.fault(&c.volume, "the radiator holds nearly all the coolant or more than there is",
            "`cooling.coolant` is the whole system's");
  m.glycol_mass = physics::mass_fraction_of(physics::Glycol::ethylene, r.need(in.glycol));
  m.usual_v = r.usual_rated_v();
  m.coolant = physics::CoolantTable::make(physics::Fluid::ethylene_glycol, m.glycol_mass);
  if (!m.coolant && in.glycol)
    r.fault(&in.glycol, "the fluid tables end at 60 % by mass", "more than that cools worse and freezes sooner");
  auto& p = in.pump;
  m.pump_rad_s = r.need(p.at_speed);
  m.pump_m3_rad = r.need(p.flow) / m.pump_rad_s;
  m.pump_w = r.need(p.power);
  m.rotation = p.rotation;
  if (!p.rotation) m.rotation_path = r.path_of(&p.rotation);
  m.reversed_share = r.need(p.reversed_share);
  m.needed_m3_s = r.get(p.needed_at_idle, 0);
  m.opens_k = r.need(in.thermostat.opens);
  m.open_k = r.get(in.thermostat.fully_open, m.opens_k + r.need(in.thermostat.travel));
  if (m.open_k < m.opens_k + 1) r.fault(&in.thermostat.fully_open, "fully open less than 1 K above opening");
  m.lag_s = r.need(in.thermostat.lag);
  m.isolated = in.radiator.isolated.value_or(false);
  resolve_cap(in.cap, m, r);
  resolve_fans(in, m, r);
  m.cover = r.need(in.shroud_cover);
  m.ram_share = r.need(in.ram_share);
  m.recirculation_k = r.need(in.recirculation);
  m.highest_k = r.need(in.highest_coolant);
  if (in.bay_temperature) m.bay_k = in.bay_temperature->si;
  return m;
}

}  // namespace sw::cooling
