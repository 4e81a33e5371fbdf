#pragma once
// What each requirement of the fuel system reads and how it is judged. The table is requirements.cpp; the evaluations
// stand in pressure_requirements.cpp, tank_requirements.cpp (vapour too) and parts_requirements.cpp.
#include "systems/fuel/ports.hpp"

namespace sw::fuel {

namespace rail {
enum Need { n_rail, n_manifold, need_count };
inline constexpr Port needs[] = {rail_port, manifold_port};
static_assert(std::size(needs) == need_count);
inline constexpr std::string_view chain[] = {"bus.voltage",    "fuel_pump.voltage",    "fuel.demand",
                                             "fuel.pump_flow", "fuel.return_pressure", "fuel.rail_pressure"};
void evaluate(const void* model, const Evidenced& run, std::vector<Verdict>& out);
}  // namespace rail

/// Pump against engine, the rail held at its set pressure.
namespace flow {
enum Need { n_demand, n_volts, n_tank, n_mass, n_vacuum, n_manifold, need_count };
inline constexpr Port needs[] = {demand_port, volts_port, tank_k_port, mass_port, vacuum_port, manifold_port};
static_assert(std::size(needs) == need_count);
inline constexpr std::string_view duties[] = {"full-throttle"};
inline constexpr std::string_view chain[] = {"engine.power", "fuel.demand", "bus.voltage", "fuel_pump.voltage"};
void evaluate(const void* model, const Evidenced& run, std::vector<Verdict>& out);
}  // namespace flow

/// The lowest pressure the regulator can hold with what its return loses.
namespace lowest {
enum Need { n_back, n_return, n_manifold, need_count };
inline constexpr Port needs[] = {back_port, return_flow_port, manifold_port};
static_assert(std::size(needs) == need_count);
inline constexpr std::string_view chain[] = {"vacuum.manifold", "fuel_pump.voltage", "fuel.pump_flow",
                                             "fuel.return_flow", "fuel.return_pressure"};
void evaluate(const void* model, const Evidenced& run, std::vector<Verdict>& out);
}  // namespace lowest

namespace drop {
inline constexpr Port needs[] = {feed_drop_port, pump_flow_port};
inline constexpr std::string_view chain[] = {"fuel.pump_flow", "fuel.feed_drop"};
void evaluate(const void* model, const Evidenced& run, std::vector<Verdict>& out);
}  // namespace drop

namespace velocity {
enum Need { n_flow, n_return, n_demand, need_count };
inline constexpr Port needs[] = {pump_flow_port, return_flow_port, demand_port};
static_assert(std::size(needs) == need_count);
inline constexpr std::string_view duties[] = {"full-throttle", "hot-idle"};
inline constexpr std::string_view chain[] = {"fuel.pump_flow", "fuel.return_flow"};
void evaluate(const void* model, const Evidenced& run, std::vector<Verdict>& out);
}  // namespace velocity

namespace inlet {
enum Need { n_inlet, n_tank, n_pressure, need_count };
inline constexpr Port needs[] = {inlet_port, tank_k_port, outside::pressure};
static_assert(std::size(needs) == need_count);
inline constexpr std::string_view chain[] = {"fuel.tank_temperature", "fuel.pump_flow", "fuel.tank_vacuum",
                                             "fuel.pump_inlet"};
void evaluate(const void* model, const Evidenced& run, std::vector<Verdict>& out);
}  // namespace inlet

namespace rail_vapour {
enum Need { n_rail, n_temperature, n_pressure, need_count };
inline constexpr Port needs[] = {rail_port, rail_k_port, outside::pressure};
static_assert(std::size(needs) == need_count);
inline constexpr std::string_view chain[] = {"bay.temperature", "fuel.feed_rise", "fuel.rail_temperature",
                                             "fuel.rail_pressure"};
void evaluate(const void* model, const Evidenced& run, std::vector<Verdict>& out);
}  // namespace rail_vapour

namespace rise {
inline constexpr Port needs[] = {feed_rise_port, demand_port, pump_flow_port};
inline constexpr std::string_view chain[] = {"bay.temperature", "fuel.demand", "fuel.pump_flow", "fuel.feed_rise"};
void evaluate(const void* model, const Evidenced& run, std::vector<Verdict>& out);
}  // namespace rise

namespace tank_heat {
enum Need { n_tank, n_ambient, need_count };
inline constexpr Port needs[] = {tank_k_port, outside::ambient};
static_assert(std::size(needs) == need_count);
inline constexpr std::string_view chain[] = {"fuel.return_flow", "fuel.rail_temperature", "fuel.tank_temperature"};
void evaluate(const void* model, const Evidenced& run, std::vector<Verdict>& out);
}  // namespace tank_heat

namespace pick_up {
enum Need { n_mass, n_tank, n_lateral, n_acceleration, n_flow, n_demand, need_count };
inline constexpr Port needs[] = {mass_port,      tank_k_port, outside::lateral, outside::acceleration,
                                 pump_flow_port, demand_port};
static_assert(std::size(needs) == need_count);
inline constexpr std::string_view duties[] = {"cornering", "panic-stop"};
inline constexpr std::string_view chain[] = {"fuel.tank_mass"};
void evaluate(const void* model, const Evidenced& run, std::vector<Verdict>& out);
}  // namespace pick_up

namespace range {
enum Need { n_demand, n_speed, n_tank, need_count };
inline constexpr Port needs[] = {demand_port, road_port, tank_k_port};
static_assert(std::size(needs) == need_count);
inline constexpr std::string_view duties[] = {"cruise"};
inline constexpr std::string_view chain[] = {"engine.power", "fuel.demand"};
void evaluate(const void* model, const Evidenced& run, std::vector<Verdict>& out);
}  // namespace range

namespace vent {
inline constexpr Port needs[] = {vacuum_port};
inline constexpr std::string_view duties[] = {"cruise", "grade", "parade"};
inline constexpr std::string_view chain[] = {"fuel.demand", "fuel.tank_vacuum"};
void evaluate(const void* model, const Evidenced& run, std::vector<Verdict>& out);
}  // namespace vent

namespace injector {
enum Need { n_demand, n_rail, n_tank, n_manifold, need_count };
inline constexpr Port needs[] = {demand_port, rail_port, tank_k_port, manifold_port};
static_assert(std::size(needs) == need_count);
inline constexpr std::string_view duties[] = {"full-throttle"};
inline constexpr std::string_view chain[] = {"fuel.demand", "fuel.rail_pressure"};
void evaluate(const void* model, const Evidenced& run, std::vector<Verdict>& out);
}  // namespace injector

namespace told {
enum Need { n_rail, n_manifold, need_count };
inline constexpr Port needs[] = {rail_port, manifold_port};
static_assert(std::size(needs) == need_count);
inline constexpr std::string_view duties[] = {"hot-idle", "cruise"};
inline constexpr std::string_view chain[] = {"fuel.rail_pressure"};
void evaluate(const void* model, const Evidenced& run, std::vector<Verdict>& out);
}  // namespace told

/// What the wiring tells of the pump, V, below 0 where it tells nothing.
namespace cut_off {
enum Need { n_stalled, n_hit, need_count };
inline constexpr Port needs[] = {{"fuel_pump.stalled", &kind::voltage}, {"fuel_pump.hit", &kind::voltage}};
static_assert(std::size(needs) == need_count);
}  // namespace cut_off

/// From the key at start to fuel at the injectors.
namespace start {
enum Need { n_cranked, n_primed, n_oil, n_starter, need_count };
inline constexpr Port needs[] = {{"fuel_pump.cranked", &kind::voltage},
                                 {"fuel_pump.primed", &kind::voltage},
                                 {"engine.oil_delay", &kind::time},
                                 {"starter.current", &kind::current}};
static_assert(std::size(needs) == need_count);
inline constexpr std::string_view duties[] = {"*cranking"};
inline constexpr std::string_view chain[] = {"starter.current"};
void evaluate(const void* model, const Evidenced& run, std::vector<Verdict>& out);
}  // namespace start

using Evaluate = void(const void* model, const Evidenced& run, std::vector<Verdict>& out);
Evaluate judge_rating, judge_stuck, judge_age, judge_ends, judge_distance, judge_cut_off, judge_tank_safety,
    judge_filters, judge_reference;

}  // namespace sw::fuel
