#pragma once
// What each requirement of charging and starting reads and how it is judged. The table of them is requirements.cpp;
// the evaluations stand in supply_requirements.cpp and starting_requirements.cpp.
#include "model/outside.hpp"
#include "systems/charging/charging.hpp"

namespace sw::charging {

/// Volts that may be lost in a 12 V car: in the charge lead, on the machine's way back to the battery, in both starter
/// cables while cranking (common practice).
inline constexpr double lead_drop_v = 0.3, ground_drop_v = 0.1, loop_drop_v = 1.0;

/// Current the alternator can give, over what everything asks for.
namespace balance {
enum Need { n_available, n_load, n_speed, n_ratio, need_count };
inline constexpr Port needs[] = {{"alternator.available", &kind::current},
                                 {"load.current", &kind::current},
                                 {"engine.speed", &kind::shaft_speed},
                                 {"belts.alternator_ratio", &kind::number}};
static_assert(std::size(needs) == need_count);
inline constexpr std::string_view chain[] = {"engine.speed",         "belts.alternator_speed", "alternator.temperature",
                                             "alternator.available", "fans.current",           "load.current",
                                             "bus.voltage",          "battery.current"};
void evaluate(const void* model, const Evidenced& run, std::vector<Verdict>& out);
}  // namespace balance

/// Bus voltage against what the regulator means it to be, less the drop a charge lead may have.
namespace bus {
enum Need { n_bus, n_set, need_count };
inline constexpr Port needs[] = {{"bus.voltage", &kind::voltage}, {"regulator.voltage", &kind::voltage}};
static_assert(std::size(needs) == need_count);
inline constexpr std::string_view chain[] = {"alternator.available", "load.current",     "regulator.voltage",
                                             "alternator.voltage",   "charge.lead_drop", "ground.drop",
                                             "bus.voltage"};
void evaluate(const void* model, const Evidenced& run, std::vector<Verdict>& out);
}  // namespace bus

/// Volts lost on the alternator's way back to the battery, and in the charge lead.
namespace drops {
inline constexpr Port ground_needs[] = {{"ground.drop", &kind::voltage}};
inline constexpr std::string_view ground_chain[] = {"alternator.current", "ground.drop"};
void ground(const void* model, const Evidenced& run, std::vector<Verdict>& out);
inline constexpr Port lead_needs[] = {{"charge.lead_drop", &kind::voltage}};
inline constexpr std::string_view lead_chain[] = {"alternator.current", "charge.lead_drop"};
void lead(const void* model, const Evidenced& run, std::vector<Verdict>& out);
}  // namespace drops

/// What a battery and the lamps stand for long: 2.48 V a cell.
namespace over {
inline constexpr Port needs[] = {{"battery.voltage", &kind::voltage}};
inline constexpr std::string_view chain[] = {"regulator.voltage", "alternator.voltage", "battery.voltage"};
void evaluate(const void* model, const Evidenced& run, std::vector<Verdict>& out);
}  // namespace over

namespace rotor {
enum Need { n_red, n_ratio, need_count };
inline constexpr Port needs[] = {{"engine.red_line", &kind::shaft_speed}, {"belts.alternator_ratio", &kind::number}};
static_assert(std::size(needs) == need_count);
inline constexpr std::string_view chain[] = {"engine.red_line", "belts.alternator_ratio"};
void evaluate(const void* model, const Evidenced& run, std::vector<Verdict>& out);
}  // namespace rotor

namespace winding {
enum Need { n_winding, n_ambient, need_count };
inline constexpr Port needs[] = {{"alternator.temperature", &kind::temperature}, outside::ambient};
static_assert(std::size(needs) == need_count);
inline constexpr std::string_view chain[] = {"bay.temperature", "alternator.current", "alternator.temperature"};
void evaluate(const void* model, const Evidenced& run, std::vector<Verdict>& out);
}  // namespace winding

namespace recharge {
inline constexpr Port needs[] = {{"battery.charge", &kind::number}};
inline constexpr std::string_view chain[] = {"alternator.available", "load.current", "battery.current",
                                             "battery.charge"};
inline constexpr std::string_view duties[] = {"commute", "night-rain"};
void evaluate(const void* model, const Evidenced& run, std::vector<Verdict>& out);
}  // namespace recharge

/// Share of its charge at which a battery still starts the car (common practice).
inline constexpr double starts_from = 0.5;

namespace cranking {
inline constexpr std::string_view chain[] = {"engine.oil_temperature", "battery.emf",     "battery.resistance",
                                             "starter.current",        "battery.voltage", "starter.voltage"};
inline constexpr Port volts_needs[] = {{"battery.voltage", &kind::voltage}, outside::ambient};
void volts(const void* model, const Evidenced& run, std::vector<Verdict>& out);
enum Need { n_starter_v, n_starter_a, need_count };
inline constexpr Port speed_needs[] = {{"starter.voltage", &kind::voltage}, {"starter.current", &kind::current}};
static_assert(std::size(speed_needs) == need_count);
void speed(const void* model, const Evidenced& run, std::vector<Verdict>& out);
enum LoopNeed { n_battery_v, n_at_starter, loop_need_count };
inline constexpr Port loop_needs[] = {{"battery.voltage", &kind::voltage}, {"starter.voltage", &kind::voltage}};
static_assert(std::size(loop_needs) == loop_need_count);
void loop(const void* model, const Evidenced& run, std::vector<Verdict>& out);
}  // namespace cranking

namespace standing {
inline constexpr Port needs[] = {{"load.current", &kind::current}, {"battery.charge", &kind::number}};
inline constexpr std::string_view chain[] = {"load.current", "battery.charge"};
void evaluate(const void* model, const Evidenced& run, std::vector<Verdict>& out);
}  // namespace standing

/// What is left in the battery when a drive ends.
namespace left {
inline constexpr Port needs[] = {{"battery.charge", &kind::number}};
inline constexpr std::string_view chain[] = {"alternator.available", "load.current", "battery.current",
                                             "battery.charge"};
void evaluate(const void* model, const Evidenced& run, std::vector<Verdict>& out);
}  // namespace left

namespace polarity {
void evaluate(const void* model, const Evidenced& run, std::vector<Verdict>& out);
}  // namespace polarity

/// Battery and car of one voltage.
namespace rated {
void evaluate(const void* model, const Evidenced& run, std::vector<Verdict>& out);
}  // namespace rated

/// Engine speed from which the machine charges, against the idle.
namespace wakes {
enum Need { n_exciter, n_ratio, n_idle, need_count };
inline constexpr Port needs[] = {{"exciter.current", &kind::current},
                                 {"belts.alternator_ratio", &kind::number},
                                 {"engine.plain_idle_speed", &kind::shaft_speed}};
static_assert(std::size(needs) == need_count);
inline constexpr std::string_view chain[] = {"exciter.current", "belts.alternator_ratio", "engine.plain_idle_speed"};
/// Speed of its own from which it charges with so much exciter current; slope none: below the current it asks for,
/// nobody states more than residual magnetism gives.
double wake_rad_s(const Model& m, double exciter_a);
void evaluate(const void* model, const Evidenced& run, std::vector<Verdict>& out);
}  // namespace wakes

/// The machine cut off from its battery while it charges, and a sense wire that comes off.
namespace cut_off {
/// ISO 16750-2, 4.6.4 (load dump, 12 V systems): peaks of 79 to 101 V where nothing clamps it, 35 V where the machine
/// does (both read in copies of its tables in instrument makers' manuals), for 40 to 400 ms.
inline constexpr double unclamped_least_v = 79, unclamped_most_v = 101, clamped_v = 35;
void surge(const void* model, const Evidenced& run, std::vector<Verdict>& out);
void sense(const void* model, const Evidenced& run, std::vector<Verdict>& out);
}  // namespace cut_off

}  // namespace sw::charging
