#pragma once
// What the wiring's block reads, shared with its requirements: those solve the network again at the row that decides.
#include "model/outside.hpp"
#include "systems/wiring/wiring.hpp"

namespace sw::wiring::network {

enum Read { r_conditions, r_ac, r_available, r_set, r_emf, r_resistance, r_starter, r_fan_a, r_fan_v, read_count };
inline constexpr Port reads[] = {outside::conditions,
                                 {"air_conditioning.on", &kind::number},
                                 {"alternator.available", &kind::current},
                                 {"regulator.voltage", &kind::voltage},
                                 {"battery.emf", &kind::voltage},
                                 {"battery.resistance", &kind::resistance},
                                 {"starter.asked", &kind::current},
                                 {"fans.asked", &kind::current},
                                 {"fans.rated_voltage", &kind::voltage}};
static_assert(std::size(reads) == read_count);

/// `value(i)` gives the value of read i.
template <class Value>
Feed feed_from(Value value) {
  unsigned conditions = static_cast<unsigned>(value(r_conditions));
  // The driver may ask for air conditioning in a car that has none.
  if (!(value(r_ac) > 0)) conditions &= ~bit(Condition::air_conditioning);
  return {.alternator_a = value(r_available),
          .set_v = value(r_set),
          .emf_v = value(r_emf),
          .battery_ohm = value(r_resistance),
          .starter_a = value(r_starter),
          .fan_a = value(r_fan_a),
          .fan_v = value(r_fan_v),
          .state = state_of(conditions)};
}

}  // namespace sw::wiring::network
