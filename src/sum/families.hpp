#pragma once
// The families of sums, one function a file.
#include "sum/sum.hpp"

namespace sw {

std::span<const Sum> fluid_sums();  ///< properties, boiling, vapour pressure, atmosphere
std::span<const Sum> flow_sums();   ///< friction, losses and flow in pipes
std::span<const Sum> heat_sums();   ///< convection, mean difference, coolant
std::span<const Sum> exchanger_sums();
std::span<const Sum> wire_sums();     ///< resistance, ampacity, drop, choice of size
std::span<const Sum> circuit_sums();  ///< divider, bridge, bus, battery, alternator, fuse
std::span<const Sum> sender_sums();   ///< network, match, thermistors
std::span<const Sum> belt_sums();
std::span<const Sum> gear_sums();        ///< tyre, gearing, speedometer
std::span<const Sum> engine_sums();      ///< air, power, heat, vacuum
std::span<const Sum> fuel_sums();        ///< fuel, injectors, ignition
std::span<const Sum> road_sums();        ///< road load, drive cycle
std::span<const Sum> joint_sums();       ///< universal joints
std::span<const Sum> linkage_sums();     ///< four bars, slider and crank
std::span<const Sum> tube_sums();        ///< bends, stress, fittings
std::span<const Sum> bolt_sums();        ///< thread, strength, torque
std::span<const Sum> tank_sums();        ///< volume at a depth
std::span<const Sum> estimate_sums();    ///< times from three points
std::span<const Sum> brake_sums();       ///< stop, balance, adhesion, heat
std::span<const Sum> brake_part_sums();  ///< pedal, booster, fluid, disc, drum

}  // namespace sw
