#include <algorithm>
#include <cmath>
#include <limits>
#include <numbers>

#include "physics/fuel_blend.hpp"
#include "physics/gasoline.hpp"
#include "physics/radiation.hpp"
#include "quantity/print.hpp"
#include "systems/fuel/ports.hpp"

namespace sw::fuel {
namespace {

const Model& of(const void* model) { return *static_cast<const Model*>(model); }

/// What the engine burns, as a flow of this fuel at the tank's temperature.
namespace demand {
enum Read { r_fuel, r_tank, read_count };
constexpr Port reads[] = {{"engine.fuel_flow", &kind::mass_flow}, tank_k_port};
static_assert(std::size(reads) == read_count);
constexpr Port writes[] = {demand_port};
void evaluate(const void* model, View& v) {
  auto& m = of(model);
  v.set(0, v.in(r_fuel)*physics::blend_mass_ratio(m.ethanol) / density_kg_m3(m, v.in(r_tank)));
}
}  // namespace demand

/// The lines: pressures and flows from tank to rail and back, solved together.
namespace lines {
enum Read { r_demand, r_volts, r_tank, r_mass, r_running, r_pressure, r_level, r_manifold, r_idle, read_count };
constexpr Port reads[] = {demand_port,         volts_port,       tank_k_port,
                          mass_port,           outside::running, outside::pressure,
                          outside::fuel_level, manifold_port,    {"vacuum.idle", &kind::vacuum}};
static_assert(std::size(reads) == read_count);
enum Write { w_rail, w_pump, w_flow, w_return, w_back, w_drop, w_inlet, w_vacuum, write_count };
constexpr Port writes[] = {rail_port, pump_port,      pump_flow_port, return_flow_port,
                           back_port, feed_drop_port, inlet_port,     vacuum_port};
static_assert(std::size(writes) == write_count);

struct Work {
  pipes::Network network;
  pipes::Solution solution;
};
std::shared_ptr<void> scratch(const void* model) {
  auto w = std::make_shared<Work>();
  w->network = of(model).network;
  return w;
}

/// Air space that grows as fuel leaves and lets nothing in: Boyle's law, vapour making good its share.
double vacuum(const Model& m, double air_pa, double start_m3, double now_m3) {
  if (m.vent != Vent::none) return 0;
  const double space = std::max(m.tank_m3 - start_m3, 0.02 * m.tank_m3), drawn = std::max(start_m3 - now_m3, 0.0);
  return air_pa * drawn / (space + drawn) * (1 - m.vapour_share);
}

void evaluate(const void* model, View& v) {
  auto& m = of(model);
  auto& work = v.scratch<Work>();
  const double fuel = v.in(r_mass) / density_kg_m3(m, v.in(r_tank)), air = v.in(r_pressure);
  const bool running = v.in(r_running) > 0;
  const double sucked = vacuum(m, air, v.in(r_level)*m.tank_m3, fuel);
  v.set(w_vacuum, sucked);
  set_network(m, {v.in(r_tank), fuel, v.in(r_demand), v.in(r_volts), sucked, v.in(r_manifold), running}, work.network);
  if (!running) {  // at rest the check valve keeps what the regulator held at the idle before
    const double kept = m.check_valve && !m.carburettor ? held_pa(m, v.in(r_idle)) : 0.0;
    for (int w : {w_flow, w_return, w_back, w_drop}) v.set(w, 0);
    v.set(w_rail, kept), v.set(w_pump, kept);
    v.set(w_inlet, air + *work.network.nodes[m.n_tank].given_pa);
    return;
  }
  const auto& summary = pipes::solve(work.network, work.solution);
  const double bad = summary.usable() ? 0.0 : std::numeric_limits<double>::quiet_NaN();
  auto& s = work.solution;
  v.set(w_rail, s.pressure_pa[m.n_rail] + bad);
  v.set(w_pump, s.pressure_pa[m.n_out] + bad);
  v.set(w_flow, s.flow_m3_s[m.e_pump] + bad);
  const bool sends_back = m.e_regulator && !m.carburettor;
  v.set(w_return, (sends_back ? s.flow_m3_s[*m.e_regulator] : 0.0) + bad);
  v.set(w_back, (sends_back ? s.pressure_pa[m.n_back] : 0.0) + bad);
  v.set(w_drop, s.pressure_pa[m.n_out] - s.pressure_pa[m.n_rail] + bad);
  v.set(w_inlet, air + s.pressure_pa[m.n_in] + bad);
}

std::string trouble(const void* model, const void* work) {
  auto& summary = static_cast<const Work*>(work)->solution.summary;
  if (summary.usable()) return {};
  auto& m = of(model);
  const auto at = summary.worst_node;
  const char* where = at == m.n_rail  ? "the rail"
                      : at == m.n_out ? "the pump's outlet"
                      : at == m.n_in  ? "the pump's inlet"
                                      : "a line";
  return "the fuel lines have no solution: " + std::string(summary.reason) + "; " +
         print(summary.worst_residual_m3_s, kind::volume_flow, "L/h", 3) + " are left over at " + where;
}

/// An electric pump's curve, shifted by its volts, is good for so much of them.
ValidRange volts_range(const void* model) {
  auto& m = of(model);
  return m.engine_driven ? ValidRange{-1e9, 1e9}
                         : ValidRange{physics::least_volts_share * m.rated_v, physics::most_volts_share * m.rated_v};
}
constexpr Validity validity[] = {{volts_port.name, {}, "the pump's figures", volts_range, outside::running.name}};
}  // namespace lines

/// Heat: into the feed on its way, into the rail, and with what returns into the tank.
namespace heat {
/// Film on a line or tank wall in slow air; wall of a line; what a shield or sleeve lets through; emissivity of soot
/// and paint (common practice). A pipe of the exhaust is 50 mm thick.
constexpr double film_w_m2k = 10, wall_m = 0.9e-3, shield_lets = 1.0 / 6, emissivity = 0.8, exhaust_radius_m = 0.025;
constexpr double tank_w_k = 12,
                 tank_wind_w_k_m_s = 0.6;  ///< tank to the air, standing and for each m/s (common practice)
constexpr double least_flow_m3_s = 1e-8;
constexpr double least_mass_share = 0.02;  ///< of the tank: less has no temperature of its own here

enum Read {
  r_tank,
  r_mass,
  r_rail,
  r_demand,
  r_flow,
  r_return,
  r_volts,
  r_running,
  r_ambient,
  r_bay,
  r_road,
  read_count
};
constexpr Port reads[] = {tank_k_port,      mass_port,        rail_k_port, demand_port,
                          pump_flow_port,   return_flow_port, volts_port,  outside::running,
                          outside::ambient, bay_port,         road_port};
static_assert(std::size(reads) == read_count);
enum Write { w_rise, write_count };
constexpr Port writes[] = {feed_rise_port};
static_assert(std::size(writes) == write_count);

double start_tank(const void* model, const Duty& d) {
  return d.ambient->si + (d.start == StartFrom::cold ? 0.0 : of(model).start_rise_k);
}
double start_mass(const void* model, const Duty& d) {
  auto& m = of(model);
  return *d.fuel_level * m.tank_m3 * density_kg_m3(m, start_tank(model, d));
}
double start_rail(const void* model, const Duty& d) { return start_tank(model, d); }
enum StateIndex { s_tank, s_mass, s_rail, state_count };
constexpr StateInfo states[] = {
    {tank_k_port, start_tank, 0.5}, {mass_port, start_mass, 0.1}, {rail_k_port, start_rail, 0.5}};
static_assert(std::size(states) == state_count);

/// Radiation onto a run beside the exhaust, W.
double radiated_w(const Model& m, const RunModel& run, double own_k) {
  if (run.beside_m <= 0 || (!run.view && !run.exhaust_m)) return 0;
  const double radius = run.pipe.bore_m / 2 + wall_m;
  const double view =
      run.view ? *run.view : physics::parallel_cylinders_view(radius, exhaust_radius_m, std::max(*run.exhaust_m, 1e-3));
  return physics::radiant_heat_w_m2(view, emissivity, m.exhaust_k, own_k).value * (run.shielded ? shield_lets : 1.0) *
         2 * std::numbers::pi * radius * run.beside_m;
}

/// Temperature at the end of the feed: run by run towards what air and radiation would bring it to.
double after_feed_k(const Model& m, double from_k, double capacity_w_k, double bay_k, double ambient_k, bool hot) {
  double t = from_k;
  for (auto& run : m.runs) {
    if (run.list != "feed") continue;
    const double surface = 2 * std::numbers::pi * (run.pipe.bore_m / 2 + wall_m) * run.pipe.length_m;
    const double film = film_w_m2k * std::max(surface, 1e-4), air = run.in_bay ? bay_k : ambient_k;
    const double end = air + (hot ? radiated_w(m, run, t) : 0.0) / film;
    t = end + (t - end) * std::exp(-film / capacity_w_k);
  }
  return t;
}

void evaluate(const void* model, View& v) {
  auto& m = of(model);
  const bool running = v.in(r_running) > 0;
  const auto liquid = physics::gasoline(v.in(r_tank));
  const double heat_m3 = density_kg_m3(m, v.in(r_tank)) * liquid.specific_heat_j_kg_k;
  const double pump_w = running ? m.pump_a * std::abs(v.in(r_volts)) : 0.0;
  const double pumped = std::max(v.in(r_flow), least_flow_m3_s) * heat_m3;
  const double behind_pump = v.in(r_tank) + (running ? pump_w / pumped : 0.0);
  const double along = std::max(returns_from_rail(m) ? v.in(r_flow) : v.in(r_demand), least_flow_m3_s) * heat_m3;
  const double arrives = after_feed_k(m, behind_pump, along, v.in(r_bay), v.in(r_ambient), running);
  v.set(w_rise, running ? arrives - behind_pump : 0.0);
  const double through = running ? along : 0.0;
  v.rate(s_rail, (through * (arrives - v.in(r_rail)) + m.rail_w_k * (v.in(r_bay)-v.in(r_rail))) / m.rail_j_k);
  const double back_k = returns_from_rail(m) ? v.in(r_rail) : behind_pump;
  const double returned = std::max(v.in(r_return), 0.0) * heat_m3;
  const double mass = std::max(v.in(r_mass), least_mass_share * m.tank_m3 * physics::gasoline_15c_kg_m3);
  const double air_w = (tank_w_k + tank_wind_w_k_m_s * v.in(r_road)) * (v.in(r_ambient)-v.in(r_tank));
  v.rate(s_tank, (returned * (back_k - v.in(r_tank)) + air_w + (running ? m.road_w : 0.0)) /
                     (mass * liquid.specific_heat_j_kg_k));
  const double burnt = v.in(r_demand)*density_kg_m3(m, v.in(r_tank));
  v.rate(s_mass, v.in(r_mass) > 0 ? -burnt : 0.0);
}
}  // namespace heat

/// The tank at rest, for whoever reads its level: fuel at quarters of its depth, and what the pick-up leaves.
namespace shape {
constexpr Port writes[] = {
    {"fuel.tank_volume", &kind::volume, "gal", "tank"},
    {"fuel.share_at_quarter", &kind::number, "%", "fuel at a quarter of the tank's depth"},
    {"fuel.share_at_half", &kind::number, "%", "fuel at half the tank's depth"},
    {"fuel.share_at_three_quarters", &kind::number, "%", "fuel at three quarters of the tank's depth"},
    {"fuel.out_of_reach", &kind::volume, "gal", "fuel below the pick-up's mouth"},
};
void evaluate(const void* model, View& v) {
  auto& m = of(model);
  v.set(0, m.tank_m3);
  for (int quarter = 1; quarter < 4; ++quarter) v.set(quarter, share_below(m, 0.25 * quarter));
  v.set(4, std::min(m.tank_m3, volume_m3(m, m.pick_height_m)));
}
}  // namespace shape

constexpr Block all[] = {
    {"fuel.shape", {}, shape::writes, {}, {}, shape::evaluate},
    {"fuel.demand", demand::reads, demand::writes, {}, {}, demand::evaluate},
    {.name = "fuel.lines",
     .reads = lines::reads,
     .writes = lines::writes,
     .evaluate = lines::evaluate,
     .scratch = lines::scratch,
     .validity = lines::validity,
     .trouble = lines::trouble},
    {"fuel.heat", heat::reads, heat::writes, heat::states, {}, heat::evaluate},
};

}  // namespace

std::span<const Block> System::blocks() { return all; }

}  // namespace sw::fuel
