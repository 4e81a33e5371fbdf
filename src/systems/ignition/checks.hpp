#pragma once
// What each requirement of the ignition reads and how it is judged. The table of them is requirements.cpp; the
// evaluations stand in coil_requirements.cpp, timing_requirements.cpp and pick_up_requirements.cpp.
#include "model/outside.hpp"
#include "systems/ignition/ignition.hpp"

namespace sw::ignition {

inline const Model& of(const void* model) { return *static_cast<const Model*>(model); }
inline constexpr std::string_view every_running[] = {"*running"};
inline constexpr std::string_view every_cranking[] = {"*cranking"};
inline constexpr std::string_view every_turning[] = {"*running", "*cranking"};

/// Energy of the spark against what it needs.
namespace spark {
enum Need { n_spark, n_speed, n_volts, need_count };
inline constexpr Port running_needs[] = {{"ignition.spark_energy", &kind::energy},
                                         {"engine.speed", &kind::shaft_speed},
                                         {"ignition.voltage", &kind::voltage}};
inline constexpr Port cranking_needs[] = {{"ignition.spark_energy", &kind::energy},
                                          {"starter.engine_speed", &kind::shaft_speed},
                                          {"ignition.voltage", &kind::voltage}};
static_assert(std::size(running_needs) == need_count && std::size(cranking_needs) == need_count);
inline constexpr std::string_view running_chain[] = {"bus.voltage", "ignition.voltage", "engine.speed",
                                                     "ignition.dwell", "ignition.coil_current"};
inline constexpr std::string_view cranking_chain[] = {"starter.current",  "battery.voltage",
                                                      "ignition.voltage", "starter.engine_speed",
                                                      "ignition.dwell",   "ignition.coil_current"};
void running(const void* model, const Evidenced& run, std::vector<Verdict>& out);
void cranking(const void* model, const Evidenced& run, std::vector<Verdict>& out);
enum RedNeed { n_red, n_red_volts, red_need_count };
inline constexpr std::string_view red_duties[] = {"full-throttle"};
inline constexpr Port red_needs[] = {{"engine.red_line", &kind::shaft_speed}, {"ignition.voltage", &kind::voltage}};
static_assert(std::size(red_needs) == red_need_count);
inline constexpr std::string_view red_chain[] = {"engine.red_line", "ignition.voltage"};
void red_line(const void* model, const Evidenced& run, std::vector<Verdict>& out);
}  // namespace spark

/// Volts at which a module or controller still works.
namespace supply {
inline constexpr Port needs[] = {{"ignition.voltage", &kind::voltage}};
inline constexpr std::string_view chain[] = {"bus.voltage", "ignition.voltage"};
void evaluate(const void* model, const Evidenced& run, std::vector<Verdict>& out);
}  // namespace supply

/// Current through the switch, and heat of coil and switch.
namespace burden {
inline constexpr Port current_needs[] = {{"ignition.coil_current", &kind::current}};
inline constexpr std::string_view chain[] = {"ignition.voltage", "engine.speed", "ignition.dwell",
                                             "ignition.coil_current"};
void current(const void* model, const Evidenced& run, std::vector<Verdict>& out);
inline constexpr Port coil_needs[] = {{"ignition.coil_heat", &kind::power}};
void coil(const void* model, const Evidenced& run, std::vector<Verdict>& out);
inline constexpr Port switch_needs[] = {{"ignition.switch_heat", &kind::power}};
void in_switch(const void* model, const Evidenced& run, std::vector<Verdict>& out);
void standing(const void* model, const Evidenced& run, std::vector<Verdict>& out);
}  // namespace burden

/// All that moves the spark, added up.
namespace advance {
inline constexpr Port needs[] = {{"engine.red_line", &kind::shaft_speed}};
void total(const void* model, const Evidenced& run, std::vector<Verdict>& out);
void rotor(const void* model, const Evidenced& run, std::vector<Verdict>& out);
}  // namespace advance

/// The controller's speed signal.
namespace hearing {
void noise(const void* model, const Evidenced& run, std::vector<Verdict>& out);
void kick(const void* model, const Evidenced& run, std::vector<Verdict>& out);
void ground(const void* model, const Evidenced& run, std::vector<Verdict>& out);
}  // namespace hearing

}  // namespace sw::ignition
