#pragma once
// Ports of the loop, and the block of the fans' controller, which blocks.cpp puts in its table.
#include "model/outside.hpp"
#include "systems/cooling/cooling.hpp"

namespace sw::cooling {

inline constexpr Port engine_port{"cooling.engine_temperature", &kind::temperature, "degC", "coolant at the engine"};
inline constexpr Port level_port{"fans.level", &kind::number, "", "fan stages on"};

/// The controller: stages on and off by coolant temperature, and what they ask of the network.
namespace control {
enum Read { r_coolant, r_ac, r_conditions, r_level, read_count };
inline constexpr Port reads[] = {engine_port, {"air_conditioning.on", &kind::number}, outside::conditions, level_port};
static_assert(std::size(reads) == read_count);
enum Write { w_asked, w_volts, w_fitted, write_count };
inline constexpr Port writes[] = {{"fans.asked", &kind::current, "A", "fan current at rated volts"},
                                  {"fans.rated_voltage", &kind::voltage, "V", "rated volts of the fans"},
                                  {"fans.fitted", &kind::current, "A", "current of all electric fans at rated volts"}};
static_assert(std::size(writes) == write_count);

double start(const void* model, const Duty& d);
double next(const void* model, const View& v, double now);
double guard(const void* model, const View& v, double now);
inline constexpr SwitchInfo switches[] = {{level_port, start, next, guard}};
void evaluate(const void* model, View& v);
}  // namespace control

}  // namespace sw::cooling
