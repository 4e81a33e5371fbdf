#include <algorithm>
#include <cmath>

#include "physics/atmosphere.hpp"
#include "physics/bay.hpp"
#include "physics/exchanger.hpp"
#include "physics/fan.hpp"
#include "physics/thermostat.hpp"
#include "systems/cooling/fan_control.hpp"

namespace sw::cooling {
namespace {

constexpr Port radiator_port{"cooling.radiator_temperature", &kind::temperature, "degC",
                             "coolant leaving the radiator"};
constexpr Port wax_port{"cooling.wax_temperature", &kind::temperature, "degC", "thermostat wax"};
constexpr Port bay_port{"bay.temperature", &kind::temperature, "degC", "air under the bonnet"};

const Model& of(const void* model) { return *static_cast<const Model*>(model); }
double cold_or(const Duty& d, double warm_k) { return d.start == StartFrom::cold ? d.ambient->si : warm_k; }

/// Coolant flow: affinity law, so flow goes with pump speed (loop loss goes with its square).
namespace flow {
constexpr double leak = 0.002;  ///< jiggle pin of a closed thermostat (common practice)
enum Read { r_speed, r_direction, r_wax, r_coolant, read_count };
constexpr Port reads[] = {
    {"belts.pump_speed", &kind::shaft_speed}, {"belts.pump_direction", &kind::number}, wax_port, engine_port};
static_assert(std::size(reads) == read_count);
enum Write { w_flow, w_open, w_capacity, w_power, write_count };
constexpr Port writes[] = {
    {"cooling.flow", &kind::volume_flow, "gal/min", "coolant flow, thermostat open"},
    {"cooling.opening", &kind::number, "%", "thermostat opening"},
    {"cooling.capacity_rate", &kind::thermal_conductance, "kW/K", "coolant heat flow per degree"},
    {"cooling.pump_power", &kind::power, "hp", "pump power"}};
static_assert(std::size(writes) == write_count);

bool turns_right(const Model& m, double direction) {
  if (!m.rotation || m.rotation == Rotation::either) return true;
  return (*m.rotation == Rotation::with_crank) == (direction > 0);
}
void evaluate(const void* model, View& v) {
  auto& m = of(model);
  const double share = turns_right(m, v.in(r_direction)) ? 1.0 : m.reversed_share;
  const double full = m.pump_m3_rad * v.in(r_speed)*share;
  const double opening = std::max(leak, physics::thermostat_opening(v.in(r_wax), m.opens_k, m.open_k).value);
  const auto c = coolant_at(m, v.in(r_coolant));
  v.set(w_flow, full);
  v.set(w_open, opening);
  v.set(w_capacity, full * opening * c.density_kg_m3 * c.specific_heat_j_kg_k);
  v.set(w_power, physics::affinity_power(m.pump_w, v.in(r_speed) / m.pump_rad_s).value);
}
}  // namespace flow

/// Air through the core.
namespace air {
enum Read { r_road, r_density, r_volts, r_fan_speed, r_level, read_count };
constexpr Port reads[] = {{"road.speed", &kind::speed},
                          outside::density,
                          {"fans.voltage", &kind::voltage},
                          {"belts.fan_speed", &kind::shaft_speed},
                          level_port};
static_assert(std::size(reads) == read_count);
enum Write { w_face, w_swept, w_flow, w_capacity, w_power, write_count };
constexpr Port writes[] = {{"air.face_speed", &kind::speed, "m/s", "air speed at the core"},
                           {"air.swept", &kind::number, "%", "share of the core swept"},
                           {"air.flow", &kind::volume_flow, "cfm", "air through the core"},
                           {"air.capacity_rate", &kind::thermal_conductance, "kW/K", "air heat flow per degree"},
                           {"cooling.fan_power", &kind::power, "hp", "power of an engine-driven fan"}};
static_assert(std::size(writes) == write_count);
void evaluate(const void* model, View& v) {
  auto& m = of(model);
  const auto flow =
      air_through_core(m, {v.in(r_road), v.in(r_volts), v.in(r_fan_speed), static_cast<std::size_t>(v.in(r_level))});
  double power = 0;
  for (std::size_t i = m.electric; i < m.fans; ++i)
    power += physics::affinity_power(m.fan[i].power_w, v.in(r_fan_speed) / m.fan[i].rated_rad_s).value;
  v.set(w_face, flow.face_m_s);
  v.set(w_swept, flow.swept);
  v.set(w_flow, flow.face_m_s * m.face_m2);
  v.set(w_capacity, std::abs(flow.face_m_s) * m.face_m2 * v.in(r_density)*physics::air_specific_heat_j_kg_k);
  v.set(w_power, power);
}
}  // namespace air

/// Heat from coolant to air.
namespace core {
constexpr double return_fades_m_s = 6.0;  ///< road speed by which hot air no longer comes round (common practice)
constexpr double least_rate_w_k = 5.0;    ///< air always creeps through (common practice)
constexpr double most_ntu = 100;          ///< beyond which nothing is left to exchange
constexpr Validity validity[] = {
    {"air.face_speed", {-physics::fastest_face_m_s, physics::fastest_face_m_s}, "the figures of the core"}};
enum Read { r_coolant, r_rate, r_air_rate, r_face, r_swept, r_condenser, r_ambient, r_road, r_bay, read_count };
constexpr Port reads[] = {engine_port,
                          {"cooling.capacity_rate", &kind::thermal_conductance},
                          {"air.capacity_rate", &kind::thermal_conductance},
                          {"air.face_speed", &kind::speed},
                          {"air.swept", &kind::number},
                          {"air_conditioning.condenser_heat", &kind::power},
                          outside::ambient,
                          {"road.speed", &kind::speed},
                          bay_port};
static_assert(std::size(reads) == read_count);
enum Write { w_heat, w_air_in, w_air_out, write_count };
constexpr Port writes[] = {{"radiator.heat", &kind::power, "kW", "heat from the radiator"},
                           {"radiator.air_in", &kind::temperature, "degC", "air at the core"},
                           {"radiator.air_out", &kind::temperature, "degC", "air behind the core"}};
static_assert(std::size(writes) == write_count);
void evaluate(const void* model, View& v) {
  auto& m = of(model);
  const double air = std::max(v.in(r_air_rate), least_rate_w_k), coolant = std::max(v.in(r_rate), 1e-6);
  // Air that creeps through counts as the slowest the law knows.
  const double face = std::max(std::abs(v.in(r_face)), physics::slowest_face_m_s);
  const double ua =
      physics::core_conductance(m.conductance_w_k, m.conductance_m_s, m.exponent, face).value * v.in(r_swept);
  const double least = std::min(air, coolant), most = std::max(air, coolant);
  const double effect =
      physics::effectiveness(physics::Arrangement::crossflow_unmixed, std::min(ua / least, most_ntu), least / most)
          .value;
  // Against the travel the core breathes the bay's air, else the outside's with what comes round and the condenser's
  // heat.
  const double fade = std::max(0.0, 1 - v.in(r_road) / return_fades_m_s);
  const double air_in =
      v.in(r_face) < 0 ? v.in(r_bay) : v.in(r_ambient) + m.recirculation_k * fade + v.in(r_condenser) / air;
  const double heat = effect * least * (v.in(r_coolant)-air_in);
  v.set(w_heat, heat);
  v.set(w_air_in, air_in);
  v.set(w_air_out, air_in + heat / air);
}
}  // namespace core

/// The loop's states: coolant at the engine and leaving the radiator, the wax, and the air under the bonnet.
namespace loop {
constexpr double bay_j_k = 12000;  ///< air, sheet and ancillaries that follow the bay's air (common practice)
constexpr double pinned_s = 120;   ///< lag towards a measured bay temperature: some of the bay's own (common practice)
constexpr double measured_in_k = 313.15;  ///< air of the day the measured bay temperature is asked for (40 degC)
constexpr double pin_fades_m_s = 6.0;     ///< road speed from which the computed one holds again (common practice)
constexpr double still_radiator_w_k = 8;  ///< radiator to the air with everything still (common practice)

enum Read {
  r_engine,
  r_radiator,
  r_wax,
  r_bay,
  r_rate,
  r_into,
  r_heat,
  r_cooler,
  r_air_out,
  r_air_rate,
  r_face,
  r_bay_heat,
  r_surface,
  r_ambient,
  r_road,
  r_sun,
  r_running,
  read_count
};
constexpr Port reads[] = {engine_port,
                          radiator_port,
                          wax_port,
                          bay_port,
                          {"cooling.capacity_rate", &kind::thermal_conductance},
                          {"engine.heat_to_coolant", &kind::power},
                          {"radiator.heat", &kind::power},
                          {"driveline.cooler_heat", &kind::power},
                          {"radiator.air_out", &kind::temperature},
                          {"air.capacity_rate", &kind::thermal_conductance},
                          {"air.face_speed", &kind::speed},
                          {"engine.bay_heat", &kind::power},
                          {"engine.surface_heat", &kind::power},
                          outside::ambient,
                          {"road.speed", &kind::speed},
                          outside::sun,
                          outside::running};
static_assert(std::size(reads) == read_count);

double start_engine(const void* model, const Duty& d) { return cold_or(d, of(model).opens_k + 3); }
double start_radiator(const void* model, const Duty& d) {
  return cold_or(d, 0.5 * (of(model).opens_k + d.ambient->si));
}
double start_wax(const void* model, const Duty& d) { return cold_or(d, of(model).opens_k + 3); }
double start_bay(const void*, const Duty& d) { return cold_or(d, d.ambient->si + 20); }
enum StateIndex { s_engine, s_radiator, s_wax, s_bay, state_count };
constexpr StateInfo states[] = {{engine_port, start_engine, 1.0},
                                {radiator_port, start_radiator, 2.0},
                                {wax_port, start_wax, 1.0},
                                {bay_port, start_bay, 2.0}};
static_assert(std::size(states) == state_count);

ValidRange coolant_range(const void* model) {
  auto& m = of(model);
  return m.coolant ? ValidRange{m.coolant->freezing_k(), physics::coolant_hottest_k} : ValidRange{0, 1e4};
}
constexpr Validity validity[] = {{engine_port.name, {}, "the coolant's figures", coolant_range}};

double bay_rate(const Model& m, const View& v) {
  // Air driven out against the travel does not come through the bay heated.
  const physics::BayHeat in{.outside_k = v.in(r_ambient),
                            .road_m_s = v.in(r_road),
                            .core_air_w_k = v.in(r_face) > 0 ? v.in(r_air_rate) : 0.0,
                            .core_out_k = v.in(r_air_out),
                            .engine_w = v.in(r_surface) + v.in(r_bay_heat),
                            .sun_w_m2 = v.in(r_sun)};
  const double computed = physics::bay_balance(in, v.in(r_bay)).heat_w / bay_j_k;
  if (!m.bay_k || v.in(r_running) <= 0) return computed;
  // Measured standing on a hot day: its rise over that day's air holds on any day, and fades as the car moves.
  const double standing = std::max(0.0, 1 - v.in(r_road) / pin_fades_m_s);
  const double pinned = (v.in(r_ambient) + *m.bay_k - measured_in_k - v.in(r_bay)) / pinned_s;
  return standing * pinned + (1 - standing) * computed;
}

void evaluate(const void* model, View& v) {
  auto& m = of(model);
  const auto c = coolant_at(m, v.in(r_engine));
  const double heat_m3 = c.density_kg_m3 * c.specific_heat_j_kg_k;
  const double moved = v.in(r_rate) * (v.in(r_engine)-v.in(r_radiator));
  const double still = still_radiator_w_k * (v.in(r_radiator)-v.in(r_ambient));
  v.rate(s_engine, (v.in(r_into)-moved) / (m.engine_m3 * heat_m3));
  v.rate(s_radiator, (moved - v.in(r_heat)-still + v.in(r_cooler)) / (m.radiator_m3 * heat_m3));
  v.rate(s_wax, (v.in(r_engine)-v.in(r_wax)) / m.lag_s);
  v.rate(s_bay, bay_rate(m, v));
}
}  // namespace loop

constexpr Block all[] = {
    {"cooling.control", control::reads, control::writes, {}, control::switches, control::evaluate},
    {"cooling.flow", flow::reads, flow::writes, {}, {}, flow::evaluate},
    {"cooling.air", air::reads, air::writes, {}, {}, air::evaluate},
    {.name = "cooling.core",
     .reads = core::reads,
     .writes = core::writes,
     .evaluate = core::evaluate,
     .validity = core::validity},
    {.name = "cooling.loop",
     .reads = loop::reads,
     .states = loop::states,
     .evaluate = loop::evaluate,
     .validity = loop::validity},
};

}  // namespace

std::span<const Block> System::blocks() { return all; }

}  // namespace sw::cooling
