#pragma once
// A duty: a thing the car will be asked to do, as data. The same field table reads the shipped ones of
// stock/duties.toml and a workshop's own beside its build.
#include <string>
#include <vector>

#include "field/field.hpp"

namespace sw {

/// Which states are alive and how time is stepped.
enum class Method : std::uint8_t {
  thermal,  ///< all thermal and electrical states, linearly implicit steps of seconds
  crank,    ///< battery only, tenths of a second
  pull,     ///< thermal states and the car's own speed, tenths of a second
  rest,     ///< battery only, steps of hours
};
inline constexpr std::string_view method_names[] = {"thermal", "crank", "pull", "rest"};

enum class EngineState : std::uint8_t { running, cranking, off };
inline constexpr std::string_view engine_state_names[] = {"running", "cranking", "off"};

enum class StartFrom : std::uint8_t { cold, warm };
inline constexpr std::string_view start_names[] = {"cold", "warm"};

struct Duty {
  std::string title;
  std::optional<Method> method;
  std::optional<EngineState> engine;
  std::optional<Time> duration;
  std::optional<Temperature> ambient;
  std::optional<Length> altitude;
  std::optional<Irradiance> sun;
  std::optional<Speed> speed;        ///< held; or
  std::optional<Curve> speed_trace;  ///< against time; or
  std::string trace_file;            ///< a recorded trace, CSV beside the build
  std::optional<double> grade;       ///< rise over level run
  std::optional<Mass> payload;
  std::optional<bool> laden;  ///< at the laden weight, where the build tells it
  std::optional<bool> air_conditioning;
  std::vector<std::string> conditions;  ///< which loads are on: night, rain, heat, brake, start
  std::optional<StartFrom> start;       ///< from ambient, or warmed through
  std::string after;                    ///< start where this duty ends
  std::optional<double> charge;         ///< battery state of charge at the start
  std::optional<Acceleration> lateral;  ///< held throughout, either way round
  std::optional<double> fuel_level;     ///< of the tank, as a share, at the start
  static std::span<const FieldInfo> fields();
};

/// Conditions a load can name: `always` burns with the key out, `key` with the key on, `running` with the engine
/// turning by itself, `air-conditioning` while that is asked for, `accessory` with the key at accessory or run but not
/// while starting; the others as the duty says.
inline constexpr std::string_view condition_names[] = {
    "always", "key", "running", "air-conditioning", "night", "rain", "heat", "brake", "start", "accessory"};
enum class Condition : unsigned { always, key, running, air_conditioning, night, rain, heat, brake, start, accessory };
/// Names read into bits, and what was wrong with those that are none.
struct ConditionBits {
  struct Problem {
    std::string what, hint;
  };
  unsigned bits = 0;
  std::vector<Problem> problems;
};
ConditionBits conditions_of(const std::vector<std::string>& names);
constexpr unsigned bit(Condition c) { return 1u << static_cast<unsigned>(c); }

}  // namespace sw
