#include <algorithm>

#include "model/outside.hpp"
#include "physics/refrigerant.hpp"
#include "systems/air_conditioning/air_conditioning.hpp"

namespace sw::air_conditioning {
namespace {

constexpr Port on_port{"air_conditioning.on", &kind::number, "", "air conditioning on"};

namespace request {
enum Read { r_asked, read_count };
constexpr Port reads[] = {outside::air_conditioning};
static_assert(std::size(reads) == read_count);
enum Write { w_on, write_count };
constexpr Port writes[] = {on_port};
static_assert(std::size(writes) == write_count);
void evaluate(const void* model, View& v) {
  v.set(w_on, static_cast<const Model*>(model)->fitted && v.in(r_asked) > 0 ? 1.0 : 0.0);
}
}  // namespace request

namespace load {
constexpr double blend_m_s = 15.0;  ///< road figures hold from here up; between, a straight line (common practice)
enum Read { r_on, r_speed, read_count };
constexpr Port reads[] = {on_port, {"road.speed", &kind::speed}};
static_assert(std::size(reads) == read_count);
enum Write { w_heat, w_power, write_count };
constexpr Port writes[] = {
    {"air_conditioning.condenser_heat", &kind::power, "kW", "condenser heat before the radiator"},
    {"air_conditioning.compressor_power", &kind::power, "kW", "compressor power"}};
static_assert(std::size(writes) == write_count);
void evaluate(const void* model, View& v) {
  auto& m = *static_cast<const Model*>(model);
  const double road = std::clamp(v.in(r_speed) / blend_m_s, 0.0, 1.0), on = v.in(r_on);
  v.set(w_heat, on * (m.heat_idle_w + road * (m.heat_road_w - m.heat_idle_w)));
  v.set(w_power, on * (m.power_idle_w + road * (m.power_road_w - m.power_idle_w)));
}
}  // namespace load

/// How hot the condenser must be to give its heat to the air there is, and the pressure that goes with it.
namespace high_side {
constexpr double least_rate_w_k =
    5.0;  ///< air always creeps through (common practice), as it does through the radiator
enum Read { r_on, r_heat, r_rate, r_face, r_air_in, r_air_out, r_ambient, r_outside, read_count };
constexpr Port reads[] = {on_port,
                          {"air_conditioning.condenser_heat", &kind::power},
                          {"air.capacity_rate", &kind::thermal_conductance},
                          {"air.face_speed", &kind::speed},
                          {"radiator.air_in", &kind::temperature},
                          {"radiator.air_out", &kind::temperature},
                          outside::ambient,
                          outside::pressure};
static_assert(std::size(reads) == read_count);
enum Write { w_air, w_condensing, w_pressure, write_count };
constexpr Port writes[] = {{"air_conditioning.air_in", &kind::temperature, "degC", "air before the condenser"},
                           {"air_conditioning.condensing", &kind::temperature, "degC", "condensing temperature"},
                           {"air_conditioning.high_side", &kind::gauge_pressure, "psi", "pressure of the high side"}};
static_assert(std::size(writes) == write_count);
void evaluate(const void* model, View& v) {
  auto& m = *static_cast<const Model*>(model);
  const double through = std::max(v.in(r_rate), least_rate_w_k), air = through * m.air_share,
               outside_pa = v.in(r_outside);
  // Air driven out against the travel comes to the condenser from the radiator; else the radiator's own air, less what
  // the condenser has put into it.
  const double before = v.in(r_face) < 0 ? v.in(r_air_out) : v.in(r_air_in)-v.in(r_heat) / through;
  double hot = v.in(r_on) > 0 ? physics::condensing_k(before, v.in(r_heat), m.effectiveness, air).value : before;
  // No higher than where the high pressure switch takes the clutch off: from there on it only comes and goes.
  hot = std::min(hot, physics::r134a_saturation_k(m.cut_out_pa + outside_pa).value);
  v.set(w_air, before);
  v.set(w_condensing, hot);
  v.set(w_pressure, physics::r134a_saturation_pa(hot).value - outside_pa);
}
}  // namespace high_side

constexpr Block all[] = {
    {"air_conditioning.request", request::reads, request::writes, {}, {}, request::evaluate},
    {"air_conditioning.load", load::reads, load::writes, {}, {}, load::evaluate},
    {"air_conditioning.high_side", high_side::reads, high_side::writes, {}, {}, high_side::evaluate},
};

}  // namespace

std::span<const Block> System::blocks() { return all; }

}  // namespace sw::air_conditioning
