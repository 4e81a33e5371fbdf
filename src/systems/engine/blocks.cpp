#include <algorithm>
#include <cmath>

#include "model/outside.hpp"
#include "physics/atmosphere.hpp"
#include "physics/fuel_blend.hpp"
#include "systems/engine/engine.hpp"

namespace sw::engine {
namespace {

constexpr Port speed_port{"engine.speed", &kind::shaft_speed, "rpm", "engine speed"};
constexpr Port metal_port{"engine.metal_temperature", &kind::temperature, "degC", "hottest coolant-side metal"};
constexpr Port oil_port{"engine.oil_temperature", &kind::temperature, "degC", "oil"};

/// Figures that do not change.
namespace ratings {
enum Write { w_red, w_idle, w_peak, w_oil_delay, write_count };
constexpr Port writes[] = {{"engine.red_line", &kind::shaft_speed, "rpm", "red line"},
                           {"engine.plain_idle_speed", &kind::shaft_speed, "rpm", "idle speed, compressor off"},
                           {"engine.peak_power", &kind::power, "hp", "greatest power, air as rated"},
                           {"engine.oil_delay", &kind::time, "s", "cranking until the oil has pressure"}};
static_assert(std::size(writes) == write_count);
void evaluate(const void* model, View& v) {
  auto& m = *static_cast<const Model*>(model);
  v.set(w_red, m.red_line_rad_s);
  v.set(w_idle, m.idle_rad_s);
  v.set(w_peak, m.peak_power_w);
  v.set(w_oil_delay, m.oil_delay_s);
}
}  // namespace ratings

/// Engine speed: what the wheels ask, never below idle while it runs; nothing while cranked or off.
namespace turning {
enum Read { r_running, r_asked, r_ac, read_count };
constexpr Port reads[] = {
    outside::running, {"driveline.input_speed", &kind::shaft_speed}, {"air_conditioning.on", &kind::number}};
static_assert(std::size(reads) == read_count);
enum Write { w_speed, w_idle, w_drag, write_count };
constexpr Port writes[] = {
    speed_port,
    {"engine.idle_speed", &kind::shaft_speed, "rpm", "idle speed it keeps now"},
    {"engine.overrun_torque", &kind::torque, "lb-ft", "torque that drags it round, throttle closed"}};
static_assert(std::size(writes) == write_count);
/// The wheels drag the engine only where they turn it faster than it idles; so far above, all its drag is theirs.
constexpr double dragged_from = 0.25;  ///< of the idle speed (common practice)
void evaluate(const void* model, View& v) {
  auto& m = *static_cast<const Model*>(model);
  const double idle = v.in(r_ac) > 0 ? m.idle_ac_rad_s : m.idle_rad_s;
  const bool running = v.in(r_running) > 0;
  v.set(w_speed, running ? std::max(idle, v.in(r_asked)) : 0.0);
  v.set(w_idle, idle);
  v.set(w_drag, running ? m.motoring_n_m * std::clamp((v.in(r_asked) / idle - 1) / dragged_from, 0.0, 1.0) : 0.0);
}
}  // namespace turning

/// What full throttle gives at this speed and in this air.
namespace full {
constexpr double below_first = 0.5;  ///< of its first point's speed: so far down the curve is held (common practice)
enum Read { r_speed, r_density, r_pull, read_count };
constexpr Port reads[] = {speed_port, outside::density, outside::pull};
static_assert(std::size(reads) == read_count);
enum Write { w_torque, w_power, write_count };
constexpr Port writes[] = {{"engine.full_torque", &kind::torque, "lb-ft", "full-throttle torque"},
                           {"engine.full_power", &kind::power, "hp", "full-throttle power"}};
static_assert(std::size(writes) == write_count);
constexpr double lifts_over = 0.01;  ///< of the red line: from there on the driver holds it, so high above it he is off
/// 1 up to the red line, 0 a hundredth above it.
double foot(const Model& m, double speed_rad_s) {
  return std::clamp(1 - (speed_rad_s / m.red_line_rad_s - 1) / lifts_over, 0.0, 1.0);
}
/// Only a pull lives on the curve, and the curve reaches the red line; where that is in doubt its end is held so far.
ValidRange curve_range(const void* model) {
  auto& m = *static_cast<const Model*>(model);
  if (!m.torque) return {0, 1e9};
  return {below_first * m.torque->first(), (1 + 1.5 * lifts_over) * std::max(m.torque->last(), m.red_line_rad_s)};
}
constexpr Validity validity[] = {{speed_port.name, {}, "the torque curve's figures", curve_range, outside::pull.name}};

void evaluate(const void* model, View& v) {
  auto& m = *static_cast<const Model*>(model);
  const double torque = m.torque ? foot(m, v.in(r_speed)) * m.torque->at(v.in(r_speed)).value * v.in(r_density) /
                                       physics::reference_air_density_kg_m3
                                 : 0.0;
  v.set(w_torque, torque);
  v.set(w_power, torque * v.in(r_speed));
}
}  // namespace full

/// Power given, fuel burnt, and the shares of its heat.
namespace work {
enum Read { r_running, r_speed, r_drive, r_accessories, r_pull, r_full, read_count };
constexpr Port reads[] = {outside::running,
                          speed_port,
                          {"driveline.power", &kind::power},
                          {"accessories.power", &kind::power},
                          outside::pull,
                          {"engine.full_power", &kind::power}};
static_assert(std::size(reads) == read_count);
enum Write { w_power, w_fuel, w_coolant, w_oil, w_bay, w_flow, write_count };
constexpr Port writes[] = {{"engine.power", &kind::power, "hp", "engine power"},
                           {"engine.fuel_heat", &kind::power, "kW", "heat of the fuel burnt"},
                           {"engine.coolant_heat", &kind::power, "kW", "heat to the coolant's side"},
                           {"engine.oil_heat", &kind::power, "kW", "friction heat to the oil"},
                           {"engine.bay_heat", &kind::power, "kW", "heat to the engine bay"},
                           {"engine.fuel_flow", &kind::mass_flow, "lb/h", "gasoline burnt"}};
static_assert(std::size(writes) == write_count);
void evaluate(const void* model, View& v) {
  auto& m = *static_cast<const Model*>(model);
  const bool running = v.in(r_running) > 0;
  const double asked = v.in(r_drive) + v.in(r_accessories);
  const double power = !running ? 0.0 : v.in(r_pull) > 0 ? v.in(r_full) : asked;
  const double fuel = running ? fuel_heat_w(m, v.in(r_speed), power) : 0.0;
  v.set(w_power, power);
  v.set(w_fuel, fuel);
  v.set(w_coolant, running ? coolant_heat_w(m, v.in(r_speed), power) : 0.0);
  v.set(w_oil, m.oil_share * fuel);
  v.set(w_bay, m.bay_share * fuel);
  v.set(w_flow, fuel / physics::gasoline_heating_value_j_kg);
}
}  // namespace work

/// Metal and oil: what stands between combustion and coolant.
namespace heat {
constexpr double still_share =
    0.15;  ///< conductance metal to coolant with the pump still, over that with it turning (common practice)
constexpr double oil_metal_w_k = 150.0,
                 oil_metal_still_w_k = 40.0;  ///< oil to block, pumped round and standing (common practice)
constexpr double sump_still_w_k = 15.0,
                 sump_wind_w_k_m_s = 2.5;  ///< sump to the air, standing and for each m/s (common practice)
constexpr double surface_w_k = 6.0;        ///< block and heads to the bay's air (common practice)

enum Read { r_running, r_coolant_heat, r_oil_heat, r_coolant, r_metal, r_oil, r_ambient, r_speed, r_bay, read_count };
constexpr Port reads[] = {outside::running,
                          {"engine.coolant_heat", &kind::power},
                          {"engine.oil_heat", &kind::power},
                          {"cooling.engine_temperature", &kind::temperature},
                          metal_port,
                          oil_port,
                          outside::ambient,
                          {"road.speed", &kind::speed},
                          {"bay.temperature", &kind::temperature}};
static_assert(std::size(reads) == read_count);
enum Write { w_to_coolant, w_surface, write_count };
constexpr Port writes[] = {{"engine.heat_to_coolant", &kind::power, "kW", "heat into the coolant"},
                           {"engine.surface_heat", &kind::power, "kW", "heat from the engine's surface to the bay"}};
static_assert(std::size(writes) == write_count);

constexpr double warm_metal_k = 368.15, warm_oil_k = 363.15;  ///< of a car that comes in warm (common practice)
double start_metal(const void*, const Duty& d) { return d.start == StartFrom::cold ? d.ambient->si : warm_metal_k; }
double start_oil(const void*, const Duty& d) { return d.start == StartFrom::cold ? d.ambient->si : warm_oil_k; }
enum StateIndex { s_metal, s_oil, state_count };
constexpr StateInfo states[] = {{metal_port, start_metal, 1.0}, {oil_port, start_oil, 1.0}};
static_assert(std::size(states) == state_count);

void evaluate(const void* model, View& v) {
  auto& m = *static_cast<const Model*>(model);
  const double conductance = m.metal_conductance_w_k * (v.in(r_running) > 0 ? 1.0 : still_share);
  const double to_coolant = conductance * (v.in(r_metal)-v.in(r_coolant));
  const double to_oil = (v.in(r_running) > 0 ? oil_metal_w_k : oil_metal_still_w_k) * (v.in(r_metal)-v.in(r_oil));
  const double to_air = (sump_still_w_k + sump_wind_w_k_m_s * v.in(r_speed)) * (v.in(r_oil)-v.in(r_ambient));
  const double to_bay = surface_w_k * (v.in(r_metal)-v.in(r_bay));
  v.set(w_to_coolant, to_coolant);
  v.set(w_surface, to_bay);
  v.rate(s_metal, (v.in(r_coolant_heat)-to_coolant - to_oil - to_bay) / m.metal_j_k);
  v.rate(s_oil, (v.in(r_oil_heat) + to_oil - to_air) / m.oil_j_k);
}
}  // namespace heat

constexpr Block all[] = {
    {"engine.ratings", {}, ratings::writes, {}, {}, ratings::evaluate},
    {"engine.turning", turning::reads, turning::writes, {}, {}, turning::evaluate},
    {.name = "engine.full",
     .reads = full::reads,
     .writes = full::writes,
     .evaluate = full::evaluate,
     .validity = full::validity},
    {"engine.work", work::reads, work::writes, {}, {}, work::evaluate},
    {"engine.heat", heat::reads, heat::writes, heat::states, {}, heat::evaluate},
};

}  // namespace

std::span<const Block> System::blocks() { return all; }

}  // namespace sw::engine
