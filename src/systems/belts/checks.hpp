#pragma once
// What each requirement on the drive reads and how it is judged: what the pulleys' places alone tell is in
// line_requirements.cpp, what hangs on torque and speed in grip_requirements.cpp, the table in requirements.cpp.
#include "systems/belts/belts.hpp"

namespace sw::belts {

inline const Model& of(const void* model) { return *static_cast<const Model*>(model); }

constexpr double stretch = 0.004;  ///< of a belt's length, run in (common practice)
/// Of a V-belt's length, to get it over its rims without a lever (common practice).
constexpr double fitting = 0.01;

/// A span judged by its line: two pulleys of one belt, and what is between them.
struct LineSpan {
  std::size_t from, to;  ///< indices of OneBelt::pulley
  double length_m;
};
std::vector<LineSpan> line_spans(const OneBelt& b);
/// Whether the line of a belt is asked about: some pulley's depth is given.
bool lined(const OneBelt& b);
std::string between(const OneBelt& b, const LineSpan& s);
/// Which belt a place is on, put before it: `front, `.
std::string on(const OneBelt& b);

namespace line {
void evaluate(const void* model, const Evidenced& run, std::vector<Verdict>& out);
}
namespace length {
void evaluate(const void* model, const Evidenced& run, std::vector<Verdict>& out);
}
namespace turning {
void evaluate(const void* model, const Evidenced& run, std::vector<Verdict>& out);
}
namespace smallest {
void evaluate(const void* model, const Evidenced& run, std::vector<Verdict>& out);
}
namespace engagement {
void evaluate(const void* model, const Evidenced& run, std::vector<Verdict>& out);
}

/// The alternator's pulley by slip, as the car runs it.
namespace slips {
enum Need { n_torque, n_grip, n_slip, need_count };
inline constexpr Port needs[] = {
    {"alternator.torque", &kind::torque}, {"belts.alternator_grip", &kind::torque}, {"belts.slip", &kind::number}};
static_assert(std::size(needs) == need_count);
inline constexpr std::string_view chain[] = {"engine.speed",      "belts.alternator_speed", "alternator.current",
                                             "alternator.torque", "belts.alternator_grip",  "belts.slip"};
void evaluate(const void* model, const Evidenced& run, std::vector<Verdict>& out);
}  // namespace slips

/// Every pulley, with the tension going round.
namespace round_grip {
enum Need { n_engine, n_torque, n_pump, n_fan, n_compressor, need_count };
inline constexpr Port needs[] = {{"engine.speed", &kind::shaft_speed},
                                 {"alternator.torque", &kind::torque},
                                 {"cooling.pump_power", &kind::power},
                                 {"cooling.fan_power", &kind::power},
                                 {"air_conditioning.compressor_power", &kind::power}};
static_assert(std::size(needs) == need_count);
inline constexpr std::string_view chain[] = {"engine.speed", "alternator.torque"};
void evaluate(const void* model, const Evidenced& run, std::vector<Verdict>& out);
}  // namespace round_grip

namespace red_line {
inline constexpr Port needs[] = {{"engine.red_line", &kind::shaft_speed}};
void evaluate(const void* model, const Evidenced& run, std::vector<Verdict>& out);
}  // namespace red_line

}  // namespace sw::belts
