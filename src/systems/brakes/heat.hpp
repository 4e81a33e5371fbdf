#pragma once
// Heat of the brakes: what braking puts into rotors and drums, what they shed, what reaches the fluid.
#include "model/outside.hpp"
#include "systems/brakes/brakes.hpp"

namespace sw::brakes {

HeatModel resolve_heat(const Heat& in, bool drum, Resolver& r);
/// A share of what a cold stop has; not known beyond the last point of a lining's curve, or where a drum would lock by
/// itself.
struct Left {
  double share;
  bool known;
};
/// Friction at a temperature of the metal.
Left hot_friction(const HeatModel& m, double metal_k);
/// Torque at one pressure: a disc's falls as friction does, a drum's by its factor.
Left hot_torque(const AxleModel& axle, double metal_k);
/// Boiling point of the fluid as it is, NaN where its grade or water is not known.
double fluid_boils_k(const Model& m);

namespace heat {
inline constexpr std::string_view block = "brakes.heat";
inline constexpr Port front_port{"brakes.front_temperature", &kind::temperature, "degC", "front rotors or drums"};
inline constexpr Port rear_port{"brakes.rear_temperature", &kind::temperature, "degC", "rear rotors or drums"};
inline constexpr Port front_fluid{"brakes.front_fluid", &kind::temperature, "degC", "fluid in the front cylinders"};
inline constexpr Port rear_fluid{"brakes.rear_fluid", &kind::temperature, "degC", "fluid in the rear cylinders"};
enum Read {
  r_front,
  r_rear,
  r_front_fluid,
  r_rear_fluid,
  r_front_force,
  r_rear_force,
  r_overrun,
  r_speed,
  r_ambient,
  read_count
};
inline constexpr Port reads[] = {front_port,
                                 rear_port,
                                 front_fluid,
                                 rear_fluid,
                                 {"brakes.front_force", &kind::force},
                                 {"brakes.rear_force", &kind::force},
                                 {"driveline.overrun_force", &kind::force},
                                 {"road.speed", &kind::speed},
                                 outside::ambient};
static_assert(std::size(reads) == read_count);
double start_metal(const void* model, const Duty& d);
double start_fluid(const void* model, const Duty& d);
inline constexpr double metal_scale_k = 5, fluid_scale_k = 2;
inline constexpr StateInfo states[] = {{front_port, start_metal, metal_scale_k, in_thermal},
                                       {rear_port, start_metal, metal_scale_k, in_thermal},
                                       {front_fluid, start_fluid, fluid_scale_k, in_thermal},
                                       {rear_fluid, start_fluid, fluid_scale_k, in_thermal}};
void evaluate(const void* model, View& v);
}  // namespace heat

std::span<const Requirement> heat_requirements();

}  // namespace sw::brakes
