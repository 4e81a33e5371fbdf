#include "model/duty.hpp"

#include <algorithm>
#include <array>

#include "physics/cycle.hpp"

namespace sw {
namespace {

/// A text put together at compile time, for a field table keeps views.
struct Sentence {
  std::array<char, 512> letters{};
  std::size_t length = 0;
  consteval void add(std::string_view more) {
    for (char c : more) letters[length++] = c;
  }
  template <std::size_t N>
  consteval void add_units(const physics::HeadingUnit (&units)[N]) {
    bool first = true;
    for (auto& u : units) {
      if (u.name.empty()) continue;
      add(first ? "" : ", ");
      add(u.name);
      first = false;
    }
  }
  constexpr std::string_view view() const { return {letters.data(), length}; }
};

/// From the reader's own table of units.
consteval Sentence trace_sentence() {
  Sentence s;
  s.add("A recorded speed trace beside the build: CSV with a column time (");
  s.add_units(physics::trace_time_units);
  s.add("; without a unit s) and a column speed (");
  s.add_units(physics::trace_speed_units);
  s.add(
      "), the unit after an underscore or in brackets, as in time_s or Speed (km/h). Other columns are passed over; "
      "cells are parted by commas, semicolons or tabs.");
  return s;
}
constexpr Sentence trace_words = trace_sentence();

constexpr FieldInfo table[] = {
    text<&Duty::title>("title", "title").says("What the car is asked to do, in a few words."),
    choice<&Duty::method>("method", "method", method_names)
        .or_else(0, Source::chosen)
        .says("Which states are alive and how time is stepped: thermal, crank, pull or rest."),
    choice<&Duty::engine>("engine", "engine", engine_state_names)
        .or_else(0, Source::chosen)
        .says("Whether the engine runs, is cranked or stands."),
    quantity<&Duty::duration>("duration", "duration", kind::time).in("min").above(0, 6e5).says("How long it lasts."),
    quantity<&Duty::ambient>("ambient", "air temperature", kind::temperature)
        .in("degC")
        .from(-50, 60)
        .or_else(25, Source::chosen)
        .spread({})
        .says("Temperature of the air the car stands or drives in."),
    quantity<&Duty::altitude>("altitude", "altitude", kind::length)
        .in("ft")
        .from(-1500, 15000)
        .or_else(0, Source::chosen)
        .spread({})
        .says("Height above sea level (geometric)."),
    quantity<&Duty::sun>("sun", "sun", kind::irradiance)
        .in("W/m2")
        .from(0, 1400)
        .or_else(0, Source::chosen)
        .spread({})
        .says("Sun on bonnet and roof."),
    quantity<&Duty::speed>("speed", "road speed", kind::speed)
        .in("mph")
        .from(0, 200)
        .spread({})
        .says("Speed held throughout."),
    curve<&Duty::speed_trace>("speed_trace", "speed trace", kind::time, kind::speed)
        .in("s", "mph")
        .from(0, 200)
        .spread({})
        .says("Speed against time, in place of one speed."),
    text<&Duty::trace_file>("trace_file", "recorded trace").says(trace_words.view()),
    number<&Duty::grade>("grade", "grade")
        .from(-0.3, 0.3)
        .or_else(0, Source::chosen)
        .spread({})
        .says("Rise over level run."),
    quantity<&Duty::payload>("payload", "payload", kind::mass)
        .in("lb")
        .from(0, 10000)
        .or_else(0, Source::chosen)
        .spread({})
        .says("People and luggage beyond the driver."),
    yes_no<&Duty::laden>("laden", "laden")
        .or_else(0, Source::chosen)
        .says("Driven with all the car is meant to carry, where its laden weight is told: at the greater of that and "
              "the weight with `payload`."),
    yes_no<&Duty::air_conditioning>("air_conditioning", "air conditioning asked for")
        .or_else(0, Source::chosen)
        .says("Whether the driver has it on (where it is fitted)."),
    names<&Duty::conditions>("conditions", "conditions").says("What else is on: night, rain, heat, brake, start."),
    choice<&Duty::start>("start", "start", start_names)
        .or_else(1, Source::chosen)
        .says("From ambient temperature all through, or warmed through."),
    text<&Duty::after>("after", "after").says("The duty whose end this one starts from."),
    number<&Duty::charge>("charge", "battery charge at the start")
        .from(0, 1)
        .or_else(0.9, Source::chosen)
        .spread({})
        .says("State of charge, as a share."),
    quantity<&Duty::lateral>("lateral", "lateral acceleration", kind::acceleration)
        .in("m/s2")
        .from(0, 15)
        .or_else(0, Source::chosen)
        .spread({})
        .says("Acceleration to the side, held throughout; it is looked at to both sides."),
    number<&Duty::fuel_level>("fuel_level", "fuel in the tank")
        .from(0, 1)
        .or_else(0.5, Source::chosen)
        .spread({})
        .says("How full the tank is at the start, as a share."),
};
static_assert(std::size(table) == member_count<Duty>());

}  // namespace

ConditionBits conditions_of(const std::vector<std::string>& names) {
  ConditionBits out;
  for (auto& name : names) {
    auto it = std::find(std::begin(condition_names), std::end(condition_names), name);
    if (it != std::end(condition_names)) {
      out.bits |= 1u << (it - std::begin(condition_names));
      continue;
    }
    std::string all;
    for (auto known : condition_names) all += (all.empty() ? "" : ", ") + std::string(known);
    const auto near = nearest(name, {std::begin(condition_names), std::end(condition_names)});
    out.problems.push_back(
        {"\"" + name + "\" is none of " + all, near.empty() ? "" : "did you mean \"" + std::string(near) + "\"?"});
  }
  return out;
}

std::span<const FieldInfo> Duty::fields() { return table; }

}  // namespace sw
