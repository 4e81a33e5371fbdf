#include <cmath>
#include <numbers>

#include "systems/brakes/heat.hpp"
#include "systems/brakes/reach.hpp"

namespace sw::brakes {
namespace {

constexpr std::string_view effort_block = "brakes.effort", pedal_block = "brakes.pedal", kinds_block = "brakes.kinds";

/// A figure that stands in for one rule alone, or its path.
template <class T>
Known known(const std::optional<T>& member, const Resolver& r) {
  if (member) return {field_detail::to_number(*member), {}};
  return {.path = r.path_of(&member)};
}
/// The same where a block cannot run without it either.
template <class T>
Known known_for(std::string_view block, const std::optional<T>& member, Resolver& r) {
  r.need(member, block);
  return known(member, r);
}

double disc_area(double diameter_m) { return std::numbers::pi / 4 * diameter_m * diameter_m; }

constexpr double degree = std::numbers::pi / 180;
/// Shoes of a drum whose factor is stated and whose shape nobody measured (common practice).
constexpr physics::Shoe usual_shoe{.pivot = 0.8, .lever = 1.6, .start = 25 * degree, .end = 130 * degree};

/// The drum's own shoes, else usual ones, at the friction that gives the factor stated. Shoes nobody named are taken
/// for duo-servo, which loses most when friction falls.
ShoesModel stated_shoes(const Axle& in, double factor) {
  constexpr double most_friction = 0.9;
  ShoesModel s{.kind = static_cast<physics::DrumKind>(in.shoes.value_or(Shoes::duo_servo)), .shoe = usual_shoe};
  if (auto& o = in.shape; o && o->pivot && o->lever && o->start && o->end && in.radius)
    s.shoe = {o->pivot->si / in.radius->si, o->lever->si / in.radius->si, o->start->si, o->end->si};
  s.friction = reach(most_friction, factor, [&](double f) {
    const auto c = physics::drum_factor(s.kind, s.shoe, f);
    return c.valid ? c.value : HUGE_VAL;
  });
  return s;
}

/// Brake factor of a drum: stated, or of its shoes' shape.
double drum_factor_of(const Axle& in, ShoesModel& shoes, Resolver& r) {
  if (in.factor || !in.shape) {
    const double factor = r.need(in.factor, effort_block);
    if (in.factor) shoes = stated_shoes(in, factor);
    return factor;
  }
  const double kind = r.need(in.shoes, effort_block), radius = r.need(in.radius, effort_block);
  const physics::Shoe shoe{.pivot = r.need(in.shape->pivot, effort_block) / radius,
                           .lever = r.need(in.shape->lever, effort_block) / radius,
                           .start = r.need(in.shape->start, effort_block),
                           .end = r.need(in.shape->end, effort_block)};
  shoes = {std::isnan(kind) ? physics::DrumKind::leading_trailing : static_cast<physics::DrumKind>(kind), shoe,
           r.need(in.friction, effort_block)};
  const auto c = physics::drum_factor(shoes.kind, shoes.shoe, shoes.friction);
  if (!c.valid && !std::isnan(c.value))
    r.fault(&in.shape->pivot, "shoes of this shape lock by themselves at that friction",
            "measure pivot, lever and the ends of the lining again, or state `factor`");
  return c.value;
}

AxleModel axle_of(const Axle& in, Resolver& r) {
  AxleModel a;
  a.make = known_for(effort_block, in.make, r);
  r.need(in.make, kinds_block);
  a.drum = in.make == Make::drum;
  a.opposed = !a.drum && r.get(in.opposed, 0) > 0;
  const double count = r.get(in.pistons, 1);
  a.area_m2 = known_for(effort_block, in.piston, r);
  a.area_m2.value = count * disc_area(a.area_m2.value);
  a.radius_m = known_for(effort_block, in.radius, r);
  const double drag = a.drum ? drum_factor_of(in, a.shoes, r) : in.make ? 2 * r.need(in.friction, effort_block) : 1.0;
  a.torque_m3 = 2 * drag * a.area_m2.value * a.radius_m.value;
  a.usual_shoes = a.drum && in.factor && !in.shape;
  a.touch_pa = r.get(in.touch_pressure, 0);
  // Two pistons move in a drum, one a shoe; both sides of a fixed caliper.
  a.moving = a.drum || a.opposed ? 4 : 2;
  a.clearance_m = known(in.clearance, r);
  a.give_m = known(in.give, r);
  a.line_give_m3 = known(in.line_give, r);
  a.fluid_m3 = known(in.fluid, r);
  a.retreat_m = known(in.retreat, r);
  a.wear_m = known(in.wear, r);
  a.reservoir_m3 = known(in.reservoir, r);
  a.above_m = known(in.reservoir_above, r);
  a.residual_pa = known(in.residual, r);
  a.cups = known(in.cups, r);
  a.hose_slack_m = known(in.hose_slack, r);
  a.heat = resolve_heat(in.heat, a.drum, r);
  return a;
}

void add_valve(const std::string& name, const Valve& in, Model& m, Resolver& r) {
  AxleModel& axle = r.get(in.front, 0) > 0 ? m.front : m.rear;
  if (axle.valves == AxleModel::most_valves) {
    r.fault(&in.knee, "at most " + std::to_string(AxleModel::most_valves) + " valves can stand in one line; \"" + name +
                          "\" is one too many");
    return;
  }
  physics::BrakeValve v{.knee_pa = r.need(in.knee, effort_block)};
  if (in.acts == Acts::holds_off) {
    v.kind = physics::BrakeValveKind::holds_off;
    v.full_pa = r.need(in.full, effort_block);
    if (v.full_pa <= v.knee_pa) r.fault(&in.full, "lets all through before it opens", "it lies above `knee`");
  } else {
    v.slope = r.need(in.slope, effort_block);
    if (v.slope < 1) ++axle.reducing;
  }
  axle.light[axle.valves] = axle.laden[axle.valves] = v;
  if (in.laden_knee) axle.laden[axle.valves].knee_pa = in.laden_knee->si;
  axle.opens_alone[axle.valves] = r.get(in.opens_alone, 0) > 0;
  ++axle.valves;
}

void resolve_booster(const Booster& in, Model& m, Resolver& r) {
  m.fitted = known_for(pedal_block, in.fitted, r);
  m.assisted = m.fitted.value > 0;
  if (!m.assisted) return;
  if (in.area && in.diameter)
    r.fault(&in.diameter, "a diameter beside the diaphragms' area, which tells it already", "take one of the two out");
  m.booster.area_m2 = in.area || !in.diameter ? r.need(in.area, pedal_block)
                                              : r.get(in.diaphragms, 1) * disc_area(r.need(in.diameter, pedal_block));
  m.booster.gain = r.need(in.gain, pedal_block);
  m.booster.spring_n = r.need(in.spring, pedal_block);
  m.booster.efficiency = r.need(in.efficiency, pedal_block);
}

void resolve_master(const Master& in, Model& m, Resolver& r) {
  m.bore_area_m2 = known_for(pedal_block, in.bore, r);
  m.bore_area_m2.value = disc_area(m.bore_area_m2.value);
  m.stroke_m = known(in.stroke, r);
  m.front_chamber_m = known(in.front_chamber, r);
  if (in.front_chamber && in.stroke && in.front_chamber->si >= in.stroke->si)
    r.fault(&in.front_chamber, "one chamber's stroke is the whole stroke or more", "`stroke` is that of both together");
  m.take_up_m = known(in.take_up, r);
  m.port_travel_m = known(in.port_travel, r);
  m.hot_rise_k = r.get(in.hot_rise, m.hot_rise_k);
}

void resolve_rest(const Input& in, Model& m, Resolver& r) {
  m.ratio = known_for(pedal_block, in.pedal.ratio, r);
  m.pedal_m = known(in.pedal.travel, r);
  m.rod_length_m = known(in.pedal.rod_length, r);
  m.rod_offset_m = known(in.pedal.rod_offset, r);
  if (in.pedal.rod_length && in.pedal.rod_offset && in.pedal.rod_offset->si >= in.pedal.rod_length->si)
    r.fault(&in.pedal.rod_offset, "the rod is shorter than its offset", "both are measured at the pedal's worst place");
  m.rod_gap_m = known(in.booster.rod_gap, r);
  m.lamp_by = known(in.lamp.by, r);
  m.lamp_travel_m = known(in.lamp.travel, r);
  m.lamp_force_n = known(in.lamp.force, r);
  m.lamp_pa = known(in.lamp.pressure, r);
  m.parking_by = known(in.parking.by, r);
  m.parking_leverage = known(in.parking.leverage, r);
  m.parking_factor = known(in.parking.factor, r);
  m.parking_radius_m = in.parking.radius ? known(in.parking.radius, r) : m.rear.radius_m;
  m.grade = known(in.fill.grade, r);
  m.before = known(in.fill.before, r);
  m.cleaned = r.get(in.fill.cleaned, 0) > 0;
  m.water = known(in.fill.water, r);
  m.warning = known(in.difference_warning, r);
  m.hose_pa = known(in.hose_rating, r);
  m.tube_pa = known(in.tube_rating, r);
  m.dry = r.get(in.dry_adhesion, m.dry);
  m.wet = r.get(in.wet_adhesion, m.wet);
}

}  // namespace

Model System::resolve(const Input& in, Resolver& r) {
  Model m;
  m.split = known(in.split, r);
  m.front = axle_of(in.front, r);
  m.rear = axle_of(in.rear, r);
  for (auto& [name, valve] : in.valve) add_valve(name, valve, m, r);
  resolve_booster(in.booster, m, r);
  resolve_master(in.master, m, r);
  resolve_rest(in, m, r);
  return m;
}

}  // namespace sw::brakes
