#include <algorithm>
#include <cmath>

#include "physics/fuel_blend.hpp"
#include "physics/gasoline.hpp"
#include "quantity/customary.hpp"
#include "systems/fuel/fuel.hpp"

namespace sw::fuel {
namespace {

/// Roughness of drawn tube and of hose lining (White, Fluid Mechanics, table 6.1: drawn tubing; hose: common practice).
constexpr double tube_rough_m = 1.5e-6, hose_rough_m = 5e-6;
constexpr double most_fed_share = 0.97;  ///< of its free flow: more a pump is not asked for, it is starved then
constexpr std::string_view lines_block = "fuel.lines";

YesNo yes_no_of(const std::optional<bool>& member, const Resolver& r) {
  return {member, member ? std::string() : r.path_of(&member)};
}

void resolve_tank(const Input& in, Model& m, Resolver& r) {
  auto& t = in.tank;
  m.tank_m3 = r.need(t.volume);
  m.width_m = r.get(t.width, NAN);
  m.length_m = r.get(t.length, NAN);
  m.volume_at_depth = t.strapping;
  if (t.strapping) {
    for (std::size_t i = 1; i < t.strapping->y.size(); ++i)
      if (!(t.strapping->y[i] > t.strapping->y[i - 1]))
        r.fault(&t.strapping, "the fuel does not grow with the depth", "rows from empty to full");
    m.height_m = t.strapping->x.back();
  } else {
    m.height_m = m.tank_m3 / (r.need(t.width, lines_block) * r.need(t.length, lines_block));
  }
  m.vent = t.vent;
  if (!t.vent) m.vent_path = r.path_of(&t.vent);
  m.vapour_share = r.need(t.vapour_share);
  m.start_rise_k = r.need(t.start_rise);
  m.road_w = r.need(t.road_heat);
  m.bonded = yes_no_of(t.bonded, r);
  m.rollover = yes_no_of(t.rollover_valve, r);
  auto& p = in.pick_up;
  m.side_m = given(p.from_side);
  if (!m.side_m) m.side_path = r.path_of(&p.from_side);
  m.front_m = given(p.from_front);
  m.pick_height_m = r.need(p.height);
  m.cell_width_m = r.get(p.cell_width, 0);
  m.cell_length_m = r.get(p.cell_length, 0);
  m.reserve_m3 = r.need(p.reserve);
  m.fed_by_return = r.get(p.fed_by_return, 0) > 0;
  if (m.side_m && *m.side_m > m.width_m)
    r.fault(&p.from_side, "the pick-up lies outside the tank", "measured inside, to the nearer wall", {&t.width});
  // A tank told by its strapping alone has no walls to tilt the fuel between: the pick-up waits for them.
  if (std::isnan(m.width_m) && m.cell_width_m <= 0) {
    m.side_m.reset();
    m.side_path = r.path_of(&in.tank.width);
  }
  if (std::isnan(m.length_m) && m.cell_length_m <= 0) m.front_m.reset();
}

void resolve_pump(const Input& in, Model& m, Resolver& r) {
  auto& p = in.pump;
  m.in_tank = p.place != PumpPlace::outside;
  m.engine_driven = p.drive == Drive::engine;
  m.pump_height_m = r.need(p.height);
  if (p.curve && p.flow)
    r.fault(&p.flow, "a flow beside a curve, which tells it already", "take one of the two out", {&p.curve});
  if (p.curve) {
    m.pump = physics::PumpCurve::make(*p.curve);
    if (!m.pump) r.fault(&p.curve, "the flow does not fall as the pressure grows", "rows from free flow upwards");
  } else {
    m.pump = physics::PumpCurve::make(r.need(p.flow, lines_block), r.need(p.at_pressure, lines_block),
                                      r.need(p.free_flow_ratio));
  }
  m.rated_v = r.get(p.at_voltage, r.usual_rated_v());
  m.pump_a = m.engine_driven ? 0.0 : r.need(p.current);
  m.relief_pa = given(p.relief);
  if (!m.relief_pa) m.relief_path = r.path_of(&p.relief);
  m.needed_pa = r.need(p.needed_margin);
  m.check_valve = r.need(p.check_valve) > 0;
  m.prime_s = r.need(p.prime);
}

RunModel run_of(const std::string& list, const std::string& name, const Run& run, Resolver& r) {
  RunModel out{.name = name, .list = list};
  out.hose = run.kind == RunKind::hose;
  out.in_bay = run.zone == Zone::engine_bay;
  out.shielded = r.get(run.shielded, 0) > 0;
  out.before_regulator = r.get(run.before_regulator, 0) > 0;
  out.pipe = {r.need(run.bore, lines_block), r.need(run.length, lines_block), out.hose ? hose_rough_m : tube_rough_m,
              r.need(run.losses)};
  out.beside_m = r.need(run.beside_exhaust);
  out.view = run.view;
  out.exhaust_m = given(run.exhaust_distance);
  out.exhaust_path = r.path_of(&run.exhaust_distance);
  out.rating_pa = given(run.rating);
  out.rating_path = r.path_of(&run.rating);
  out.age_s = given(run.age);
  out.age_path = r.path_of(&run.age);
  return out;
}

/// Ends that meet, in the order of the flow.
class Ends {
 public:
  Ends(Model& m, const Resolver& r) : m_(m), r_(r) {}
  void meet(const std::string& name, const std::optional<End>& inlet) {
    if (!before_.empty()) {
      Joint j{.place = before_ + " to " + name, .first = last_, .second = inlet, .missing = {}};
      if (!last_) j.missing.push_back(last_path_);
      if (!inlet) j.missing.push_back(r_.path_of(&inlet));
      m_.joints.push_back(std::move(j));
    }
  }
  void leave(const std::string& name, const std::optional<End>& outlet) {
    before_ = name;
    last_ = outlet;
    last_path_ = outlet ? "" : r_.path_of(&outlet);
  }
  void runs(const Named<Run>& list) {
    for (auto& [name, run] : list) {
      meet(name, run.start);
      leave(name, run.end);
    }
  }
  void stop() { before_.clear(); }

 private:
  Model& m_;
  const Resolver& r_;
  std::string before_, last_path_;
  std::optional<End> last_;
};

void resolve_ends(const Input& in, Model& m, const Resolver& r) {
  Ends ends(m, r);
  ends.runs(in.suction);
  if (!in.suction.empty()) ends.meet("pump", in.pump.inlet);
  ends.leave("pump", in.pump.outlet);
  ends.runs(in.feed);
  ends.meet("rail", in.rail.inlet);
  ends.stop();
  if (m.carburettor) return;
  if (returns_from_rail(m)) {
    ends.leave("rail", in.rail.outlet);
    ends.meet("regulator", in.regulator.inlet);
  }
  if (in.back.empty()) return;
  ends.leave("regulator", in.regulator.outlet);
  ends.runs(in.back);
}

void resolve_regulator(const Input& in, Model& m, Resolver& r) {
  auto& g = in.regulator;
  m.regulator = g.place.value_or(RegulatorPlace::rail);
  m.set_pa = given(g.pressure);
  if (m.regulator != RegulatorPlace::none) r.need(g.pressure, lines_block);
  m.set_path = r.path_of(&g.pressure);
  m.least_drop_pa = r.need(g.least_drop);
  m.least_at_m3_s = r.need(g.at_flow);
  m.regulator_referenced = g.vacuum_referenced;
  m.follows = returns_from_rail(m) && r.need(g.vacuum_referenced, lines_block) > 0;
  m.calibration_referenced = in.calibration.vacuum_referenced;
  if (m.regulator == RegulatorPlace::rail && m.carburettor)
    r.fault(&g.place, "a carburettor with the regulator of an injection rail", "in line, or none", {&in.delivery});
  if (!m.carburettor && (m.regulator == RegulatorPlace::in_line || m.regulator == RegulatorPlace::none))
    r.fault(&g.place, "injection with no regulator that sends fuel back", "rail, filter or pump", {&in.delivery});
}

void resolve_injection(const Input& in, Model& m, Resolver& r) {
  auto& j = in.injectors;
  m.injectors = given(j.count);
  m.injector_kg_s = given(j.flow);
  m.injector_pa = r.need(j.at_pressure);
  m.told_pa = given(in.calibration.pressure);
  m.told_kg_s = given(in.calibration.injector_flow);
  m.trim = r.need(in.calibration.trim);
  if (!j.count) m.injector_missing.push_back(r.path_of(&j.count));
  if (!j.flow) m.injector_missing.push_back(r.path_of(&j.flow));
  if (!j.flow) m.calibration_missing.push_back(r.path_of(&j.flow));
  if (!in.calibration.vacuum_referenced) m.calibration_missing.push_back(r.path_of(&in.calibration.vacuum_referenced));
  if (!m.told_pa) m.calibration_missing.push_back(r.path_of(&in.calibration.pressure));
  if (in.carburettor.least && in.carburettor.most && in.carburettor.least->si >= in.carburettor.most->si)
    r.fault(&in.carburettor.least, "the least pressure lies over the greatest", "`least` lies below `most`");
  m.carburettor_least_pa = r.need(in.carburettor.least);
  m.carburettor_most_pa = r.need(in.carburettor.most);
}

void resolve_filters(const Input& in, Model& m, Resolver& r, pipes::Line& before, pipes::Line& feed) {
  for (auto& [name, f] : in.filter) {
    const bool early = f.place == FilterPlace::before_pump;
    (early ? before : feed).filters_pa_s_m3 += r.need(f.drop) / r.need(f.at_flow);
    m.filters.push_back({name, early, given(f.micron), f.micron ? "" : r.path_of(&f.micron)});
  }
}

/// Nodes and elements: the tank's fuel at the pump's height, its air where the return ends, and what lies between.
void build_network(const Input& in, Model& m, Resolver& r) {
  pipes::Line before, near, far, back;
  // A regulator at a filter takes the filter's loss before it, one at the pump none.
  resolve_filters(in, m, r, before, m.regulator == RegulatorPlace::filter ? near : far);
  const bool split = m.regulator == RegulatorPlace::filter || m.regulator == RegulatorPlace::pump;
  for (auto& run : m.runs) {
    pipes::Line& line = run.list == "suction"           ? before
                        : run.list == "return"          ? back
                        : split && run.before_regulator ? near
                                                        : far;
    line.pieces.push_back(run.pipe);
  }
  auto& n = m.network;
  m.n_tank = n.add_node({0.0});
  m.n_air = n.add_node({0.0});
  const auto loses = [](const pipes::Line& l) { return !l.pieces.empty() || l.filters_pa_s_m3 > 0; };
  m.n_in = m.n_tank;
  if (loses(before)) n.add(m.n_tank, m.n_in = n.add_node(), before);
  m.n_out = n.add_node();
  if (m.pump) m.e_pump = n.add(m.n_in, m.n_out, pipes::PumpElement{*m.pump, 1, m.relief_pa});
  pipes::NodeIndex middle = m.n_out;
  if (split && loses(near)) n.add(m.n_out, middle = n.add_node(), near);
  m.n_rail = n.add_node();
  const pipes::Valve valve{m.set_pa.value_or(0), r.need(in.regulator.rise), m.least_drop_pa, m.least_at_m3_s};
  pipes::NodeIndex last = m.n_rail;
  if (m.regulator == RegulatorPlace::in_line) last = n.add_node();
  if (!loses(far)) {
    r.lacks("fuel.feed: a run from the pump to the engine");
    return;
  }
  n.add(middle, last, far);
  if (m.regulator == RegulatorPlace::in_line) m.e_regulator = n.add(last, m.n_rail, pipes::Reducer{valve});
  if (m.carburettor) return;
  const pipes::NodeIndex held = returns_from_rail(m) ? m.n_rail : middle;
  m.n_back = loses(back) ? n.add_node() : m.n_air;
  m.e_regulator = n.add(held, m.n_back, pipes::Relief{valve});
  if (loses(back))
    n.add(m.n_back, m.n_air, back);
  else if (returns_from_rail(m))
    r.lacks("fuel.return: a run from the regulator to the tank");
}

/// Along straight lines, held at the ends; `from` rises.
double between(const std::vector<double>& from, const std::vector<double>& to, double x) {
  if (x <= from.front()) return to.front();
  for (std::size_t i = 1; i < from.size(); ++i)
    if (x <= from[i]) return to[i - 1] + (to[i] - to[i - 1]) * (x - from[i - 1]) / (from[i] - from[i - 1]);
  return to.back();
}

}  // namespace

double depth_m(const Model& m, double volume_m3) {
  if (!m.volume_at_depth) return m.height_m * std::clamp(volume_m3 / m.tank_m3, 0.0, 1.0);
  return between(m.volume_at_depth->y, m.volume_at_depth->x, volume_m3);
}

double volume_m3(const Model& m, double depth_m) {
  if (!m.volume_at_depth) return m.tank_m3 * std::clamp(depth_m / m.height_m, 0.0, 1.0);
  return between(m.volume_at_depth->x, m.volume_at_depth->y, depth_m);
}

double share_below(const Model& m, double depth_share) { return volume_m3(m, depth_share * m.height_m) / m.tank_m3; }

double density_kg_m3(const Model& m, double temperature_k) {
  return physics::blend_density_kg_m3(m.ethanol, physics::gasoline(temperature_k).density_kg_m3, temperature_k);
}

physics::Slope vapour_pa(const Model& m, double temperature_k) {
  auto v = physics::fuel_vapour_pressure_pa(m.reid_pa, m.ethanol, temperature_k);
  return {m.vapour_ratio * v.value, m.vapour_ratio * v.slope, v.valid};
}

double set_network(const Model& m, const LinesAsk& ask, pipes::Network& n) {
  const double density = density_kg_m3(m, ask.tank_k);
  n.fluid = {density, physics::gasoline(ask.tank_k).viscosity_pa_s};
  const double head = density * standard_gravity_m_s2 * (depth_m(m, ask.fuel_m3) - m.pump_height_m);
  n.nodes[m.n_tank].given_pa = head - ask.vacuum_pa;
  n.nodes[m.n_air].given_pa = -ask.vacuum_pa;
  if (m.follows) std::get<pipes::Relief>(n.elements[*m.e_regulator].law).set_pa = held_pa(m, ask.manifold_vacuum_pa);
  const double share = !ask.running ? 0.0 : m.engine_driven ? 1.0 : ask.volts / m.rated_v;
  std::get<pipes::PumpElement>(n.elements[m.e_pump].law).volts_share = share;
  n.nodes[m.n_rail].drawn_m3_s = std::min(ask.demand_m3_s, most_fed_share * m.pump->free_m3_s() * std::max(share, 0.0));
  return share;
}

Model System::resolve(const Input& in, Resolver& r) {
  Model m;
  m.carburettor = in.delivery == Delivery::carburettor;
  resolve_tank(in, m, r);
  resolve_pump(in, m, r);
  resolve_regulator(in, m, r);
  for (auto& [name, run] : in.suction) m.runs.push_back(run_of("suction", name, run, r));
  for (auto& [name, run] : in.feed) m.runs.push_back(run_of("feed", name, run, r));
  for (auto& [name, run] : in.back) m.runs.push_back(run_of("return", name, run, r));
  build_network(in, m, r);
  resolve_ends(in, m, r);
  resolve_injection(in, m, r);
  m.rail_w_k = r.need(in.rail.conductance);
  m.rail_j_k = r.need(in.rail.heat_capacity);
  m.ethanol = r.need(in.ethanol);
  m.reid_pa = r.need(in.reid_pressure);
  m.vapour_ratio = r.need(in.usual_vapour);
  m.exhaust_k = r.need(in.exhaust_surface);
  m.range_m = given(in.range_wanted);
  m.stops_with_engine = yes_no_of(in.cut_off.engine_stopped, r);
  m.stops_on_impact = yes_no_of(in.cut_off.impact, r);
  return m;
}

}  // namespace sw::fuel
