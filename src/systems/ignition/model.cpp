#include <cmath>
#include <numbers>

#include "physics/engine.hpp"
#include "systems/ignition/ignition.hpp"

namespace sw::ignition {
namespace {

constexpr std::string_view coil_block = "ignition.coil", signal_block = "ignition.signal";
/// Lasting heat coils stand, by what they serve (common practice).
constexpr double usual_coil_w[] = {40, 20, 12};
constexpr double points_stand_a = 5;  ///< contact points (common practice: 4 to 5 A, above it they burn)
constexpr double rested_v = 12.6;     ///< a rested battery of a 12 V car

std::optional<physics::Interpolant> curve_of(const std::optional<Curve>& in, Resolver& r) {
  if (!in) return std::nullopt;
  auto f = physics::Interpolant::make(*in);
  if (!f) r.fault(&in, "a curve of more than " + std::to_string(physics::Interpolant::max_points) + " points");
  return f;
}

void resolve_coil(const Input& in, Model& m, Resolver& r) {
  const Coil& c = in.coil;
  const auto need = [&](auto& member) { return r.need(member, coil_block); };
  m.coil = {.inductance_h = need(c.inductance), .coil_ohm = need(c.resistance), .ballast_ohm = r.get(c.ballast, 0)};
  m.bypassed = r.get(c.ballast_bypassed, 0) > 0;
  m.transfer = need(c.transfer);
  m.kick_v = r.need(c.kick, signal_block);
  const auto serves = c.one_for.value_or(Serves::engine);
  m.coil_w = c.most_heat ? c.most_heat->si : need(c.usual_heat) * usual_coil_w[static_cast<std::size_t>(serves)];
  const double cylinders = need(in.cylinders);
  r.need(in.cylinders, signal_block);
  if (!in.cylinders) return;
  m.cylinders = static_cast<int>(cylinders);
  // Two that fire together have a spark in every turn.
  m.sparks = serves == Serves::engine ? m.cylinders : serves == Serves::pair ? 2 : 1;
  if (serves == Serves::pair && m.cylinders % 2 != 0)
    r.fault(&in.coil.one_for, "cylinders in pairs, and an odd number of them", "\"one cylinder\" or \"all cylinders\"");
}

void resolve_dwell(const Switching& s, Model& m, Resolver& r) {
  m.dwell_by_volts = curve_of(s.dwell_curve, r);
  m.dwell_rad = given(s.dwell_angle);
  m.dwell_s = given(s.dwell_time);
  m.least_off_s = r.need(s.least_off, coil_block);
  if (!s.by) return;
  if (*s.by == By::points || (*s.by == By::module && m.dwell_rad)) {
    const double angle = r.need(s.dwell_angle, coil_block);
    if (m.cylinders > 0 && physics::dwell_share(angle, m.cylinders) >= 1)
      r.fault(&s.dwell_angle, "the dwell is as long as the turn from spark to spark",
              "in degrees of the distributor, less than 360 over the cylinders");
  } else if (!m.dwell_by_volts) {
    r.need(s.dwell_time, coil_block);
  }
}

void resolve_switching(const Switching& s, Model& m, Resolver& r) {
  r.need(s.by, coil_block);
  m.by = s.by;
  resolve_dwell(s, m, r);
  m.coil.drop_v = r.need(s.drop, coil_block);
  m.coil.limit_a = s.by == By::points ? 1e9 : r.get(s.current_limit, 1e9);
  m.most_a = given(s.most_current);
  if (!m.most_a && s.by == By::points) m.most_a = points_stand_a;
  m.most_w = given(s.most_heat);
  m.least_v = given(s.least_voltage);
  m.standing = s.by == By::points ? std::optional(Standing::stays_on) : s.standing;
  m.most_a_path = r.path_of(&s.most_current);
  m.least_v_path = r.path_of(&s.least_voltage);
  m.standing_path = r.path_of(&s.standing);
}

void resolve_timing(const Input& in, Model& m, Resolver& r) {
  const Timing& t = in.timing;
  auto& out = m.timing;
  out.by = t.by;
  out.distributor = in.coil.one_for.value_or(Serves::engine) == Serves::engine;
  out.base = given(t.base);
  out.full = given(t.table_full);
  out.light = t.table_light ? given(t.table_light) : out.full;
  out.least = given(t.table_least);
  out.most = given(t.most);
  out.vacuum = given(t.vacuum);
  out.phase = given(t.rotor_phase);
  out.mechanical = curve_of(t.mechanical, r);
  out.locked = t.locked;
  if (t.canister) out.plugged = *t.canister == Canister::plugged;
  out.most_light = r.get(t.most_light, 0);
  out.reach = r.get(t.rotor_reach, 0);
  out.described = t.by || out.base || out.full || out.mechanical || out.vacuum || out.most;
  out.by_path = r.path_of(&t.by);
  out.base_path = r.path_of(&t.base);
  out.full_path = r.path_of(&t.table_full);
  out.least_path = r.path_of(&t.table_least);
  out.most_path = r.path_of(&t.most);
  out.mechanical_path = r.path_of(&t.mechanical);
  out.locked_path = r.path_of(&t.locked);
  out.canister_path = r.path_of(&t.canister);
  out.phase_path = r.path_of(&t.rotor_phase);
}

void resolve_pick_up(const PickUp& p, PickUpModel& out, Resolver& r) {
  out.from = p.from;
  out.leads = p.leads;
  out.ground = p.ground;
  out.threshold_v = given(p.threshold);
  out.input_ohm = given(p.input_resistance);
  out.stands_v = given(p.stands);
  out.beside_m = given(p.beside);
  out.apart_m = given(p.apart);
  out.height_m = r.get(p.height, 0);
  out.edge_v = r.get(p.edge, 0);
  out.edge_s = r.get(p.edge_time, 0);
  out.screened = r.get(p.screened, 0) > 0;
  out.described = p.from || p.threshold || p.beside || p.apart;
  out.threshold_path = r.path_of(&p.threshold);
  out.input_path = r.path_of(&p.input_resistance);
  out.stands_path = r.path_of(&p.stands);
  out.beside_path = r.path_of(&p.beside);
  out.apart_path = r.path_of(&p.apart);
  out.leads_path = r.path_of(&p.leads);
}

}  // namespace

Dwell dwell_at(const Model& m, double speed, double volts) {
  Dwell d{.period_s = physics::spark_period_s(speed, m.sparks).value};
  const bool by_angle = m.by == By::points || (m.by == By::module && m.dwell_rad);
  if (by_angle) {
    // A module's angle is kept at every speed like that of points; a coil of its own each is fed as seldom as it
    // sparks.
    d.closed_s = d.period_s * physics::dwell_share(*m.dwell_rad, m.cylinders);
  } else {
    const double asked = m.dwell_by_volts ? m.dwell_by_volts->at(volts).value : m.dwell_s.value_or(0);
    d.closed_s = std::max(0.0, std::min(asked, d.period_s - m.least_off_s));
  }
  return d;
}

physics::CoilCircuit circuit(const Model& m, bool cranking) {
  physics::CoilCircuit c = m.coil;
  if (cranking && m.bypassed) c.ballast_ohm = 0;
  return c;
}

Model System::resolve(const Input& in, Resolver& r) {
  Model m;
  resolve_coil(in, m, r);
  resolve_switching(in.switching, m, r);
  resolve_timing(in, m, r);
  resolve_pick_up(in.pick_up, m.pick_up, r);
  m.needed_j = r.need(in.needed_energy, coil_block);
  m.battery_v = rested_v * r.nominal_v / 12;
  m.signal_v = in.tachometer == Counts::output ? r.nominal_v : m.kick_v;
  return m;
}

}  // namespace sw::ignition
