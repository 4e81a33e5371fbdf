#pragma once
// The ports the duty itself writes: what road, weather and driver ask of the car at each instant.
#include <span>

#include "model/port.hpp"

namespace sw::outside {

inline constexpr Port time{"duty.time", &kind::time, "s", "time into the duty"};
inline constexpr Port speed{"duty.speed", &kind::speed, "mph", "road speed asked for"};
inline constexpr Port acceleration{"duty.acceleration", &kind::acceleration, "m/s2", "acceleration asked for"};
inline constexpr Port pull{"duty.pull", &kind::number, "", "full throttle"};
inline constexpr Port grade{"duty.grade", &kind::number, "%", "grade"};
inline constexpr Port ambient{"duty.ambient", &kind::temperature, "degC", "air temperature"};
inline constexpr Port pressure{"duty.pressure", &kind::absolute_pressure, "kPa", "air pressure"};
inline constexpr Port density{"duty.density", &kind::density, "kg/m3", "air density"};
inline constexpr Port sun{"duty.sun", &kind::irradiance, "W/m2", "sun"};
inline constexpr Port payload{"duty.payload", &kind::mass, "lb", "payload"};
inline constexpr Port laden{"duty.laden", &kind::number, "", "driven laden"};
inline constexpr Port running{"duty.running", &kind::number, "", "engine running"};
inline constexpr Port cranking{"duty.cranking", &kind::number, "", "engine cranked"};
inline constexpr Port air_conditioning{"duty.air_conditioning", &kind::number, "", "air conditioning asked for"};
inline constexpr Port conditions{"duty.conditions", &kind::number, "",
                                 "conditions, one bit each in the order of their names"};
inline constexpr Port lateral{"duty.lateral", &kind::acceleration, "m/s2", "acceleration to the side"};
inline constexpr Port fuel_level{"duty.fuel_level", &kind::number, "%", "fuel in the tank at the start"};

inline constexpr Port all[] = {time,    speed,      acceleration, pull,    grade,    ambient,          pressure,
                               density, sun,        payload,      running, cranking, air_conditioning, conditions,
                               lateral, fuel_level, laden};

}  // namespace sw::outside
