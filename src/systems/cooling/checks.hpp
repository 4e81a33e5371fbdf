#pragma once
// What each requirement of cooling reads and how it is judged. The table of them is requirements.cpp; the evaluations
// stand in heat_requirements.cpp (what a run shows) and parts_requirements.cpp (what fits what).
#include "model/outside.hpp"
#include "systems/cooling/cooling.hpp"

namespace sw::cooling {

inline constexpr Port coolant_port{"cooling.engine_temperature", &kind::temperature};
/// `format` with two figures in it.
std::string words(const char* format, double a, double b);

namespace temperature {
enum Need { n_coolant, n_ambient, n_pressure, need_count };
inline constexpr Port needs[] = {coolant_port, outside::ambient, outside::pressure};
static_assert(std::size(needs) == need_count);
inline constexpr std::string_view chain[] = {"alternator.available",
                                             "load.current",
                                             "bus.voltage",
                                             "fans.voltage",
                                             "air.flow",
                                             "air_conditioning.condenser_heat",
                                             "radiator.air_in",
                                             "cooling.flow",
                                             "driveline.cooler_heat",
                                             "engine.heat_to_coolant",
                                             "cooling.engine_temperature"};
void evaluate(const void* model, const Evidenced& run, std::vector<Verdict>& out);
}  // namespace temperature

namespace boil {
enum Need { n_metal, n_pressure, n_running, n_coolant, need_count };
inline constexpr Port needs[] = {
    {"engine.metal_temperature", &kind::temperature}, outside::pressure, outside::running, coolant_port};
static_assert(std::size(needs) == need_count);
inline constexpr std::string_view chain[] = {"cooling.engine_temperature", "engine.metal_temperature"};
void evaluate(const void* model, const Evidenced& run, std::vector<Verdict>& out);
}  // namespace boil

namespace freezing {
inline constexpr std::string_view duties[] = {"*cranking", "*off"};
inline constexpr Port needs[] = {coolant_port, outside::ambient};
void evaluate(const void* model, const Evidenced& run, std::vector<Verdict>& out);
}  // namespace freezing

namespace cap {
void evaluate(const void* model, const Evidenced& run, std::vector<Verdict>& out);
}  // namespace cap

namespace rotation {
inline constexpr Port needs[] = {{"belts.pump_direction", &kind::number}};
void evaluate(const void* model, const Evidenced& run, std::vector<Verdict>& out);
}  // namespace rotation

namespace direction {
void evaluate(const void* model, const Evidenced& run, std::vector<Verdict>& out);
}  // namespace direction

namespace rise {
enum Need { n_into, n_flow, need_count };
inline constexpr Port needs[] = {{"engine.heat_to_coolant", &kind::power}, {"cooling.flow", &kind::volume_flow}};
static_assert(std::size(needs) == need_count);
inline constexpr std::string_view chain[] = {"belts.pump_speed", "cooling.flow", "engine.heat_to_coolant"};
void evaluate(const void* model, const Evidenced& run, std::vector<Verdict>& out);
}  // namespace rise

namespace need {
inline constexpr Port needs[] = {{"cooling.flow", &kind::volume_flow}};
inline constexpr std::string_view chain[] = {"engine.speed", "belts.pump_speed", "cooling.flow"};
void evaluate(const void* model, const Evidenced& run, std::vector<Verdict>& out);
}  // namespace need

namespace warm_up {
inline constexpr Port needs[] = {coolant_port};
inline constexpr std::string_view duties[] = {"warm-up"};
inline constexpr std::string_view chain[] = {"cooling.opening", "engine.heat_to_coolant", "cooling.engine_temperature"};
void evaluate(const void* model, const Evidenced& run, std::vector<Verdict>& out);
}  // namespace warm_up

namespace cycling {
inline constexpr Port needs[] = {{"fans.level", &kind::number}};
inline constexpr std::string_view chain[] = {"fans.level", "cooling.engine_temperature"};
void evaluate(const void* model, const Evidenced& run, std::vector<Verdict>& out);
}  // namespace cycling

/// Volts between the metal the core touches and the block, through the coolant.
namespace potential {
inline constexpr double most_v = 0.10;  ///< common practice; 0.25 V is taken as an alarm
enum Need { n_support, n_body, n_block, need_count };
inline constexpr Port needs[] = {
    {"ground.support", &kind::voltage}, {"ground.body", &kind::voltage}, {"ground.block", &kind::voltage}};
static_assert(std::size(needs) == need_count);
inline constexpr std::string_view chain[] = {"fans.current", "ground.support", "ground.block"};
void evaluate(const void* model, const Evidenced& run, std::vector<Verdict>& out);
}  // namespace potential

namespace expansion {
inline constexpr Port needs[] = {coolant_port};
void evaluate(const void* model, const Evidenced& run, std::vector<Verdict>& out);
}  // namespace expansion

namespace set_points {
inline constexpr Port needs[] = {coolant_port};
void evaluate(const void* model, const Evidenced& run, std::vector<Verdict>& out);
}  // namespace set_points

}  // namespace sw::cooling
