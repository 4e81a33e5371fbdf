#include <cmath>

#include "model/outside.hpp"
#include "physics/road_load.hpp"
#include "systems/vehicle/vehicle.hpp"

namespace sw::vehicle {
namespace {

constexpr Port road_speed{"road.speed", &kind::speed, "mph", "road speed"};
constexpr Port pull_speed{"vehicle.pull_speed", &kind::speed, "mph", "speed reached"};

/// Road speed: what the duty asks, or in a full-throttle pull what the car has reached.
namespace motion {
enum Read { r_asked, r_pull, r_reached, read_count };
constexpr Port reads[] = {outside::speed, outside::pull, pull_speed};
static_assert(std::size(reads) == read_count);
enum Write { w_speed, write_count };
constexpr Port writes[] = {road_speed};
static_assert(std::size(writes) == write_count);

void evaluate(const void*, View& v) { v.set(w_speed, v.in(r_pull) > 0 ? v.in(r_reached) : v.in(r_asked)); }
}  // namespace motion

/// Force and power the road asks of the wheels.
namespace resistance {
enum Read { r_speed, r_acceleration, r_grade, r_density, r_payload, r_pull, read_count };
constexpr Port reads[] = {road_speed,       outside::acceleration, outside::grade,
                          outside::density, outside::payload,      outside::pull};
static_assert(std::size(reads) == read_count);
enum Write { w_force, w_power, w_drag, write_count };
constexpr Port writes[] = {{"road.force", &kind::force, "lbf", "road load"},
                           {"road.power", &kind::power, "hp", "power at the wheels"},
                           {"road.held_force", &kind::force, "lbf", "road load at steady speed"}};
static_assert(std::size(writes) == write_count);

void evaluate(const void* model, View& v) {
  auto& m = *static_cast<const Model*>(model);
  const double mass = m.mass_kg + v.in(r_payload);
  const double held = physics::road_load({.mass_kg = mass,
                                          .rolling = m.rolling,
                                          .drag_area_m2 = m.drag_area_m2,
                                          .grade = v.in(r_grade),
                                          .density_kg_m3 = v.in(r_density)},
                                         v.in(r_speed))
                          .force_n;
  const double force = v.in(r_pull) > 0 ? held : held + mass * v.in(r_acceleration);
  v.set(w_force, force);
  v.set(w_power, force * v.in(r_speed));
  v.set(w_drag, held);
}
}  // namespace resistance

/// A full-throttle pull and the distance run.
namespace travel {
enum Read { r_speed, r_held, r_pull_force, r_payload, read_count };
constexpr Port reads[] = {
    road_speed, {"road.held_force", &kind::force}, {"driveline.pull_force", &kind::force}, outside::payload};
static_assert(std::size(reads) == read_count);
constexpr double rotating =
    1.05;  ///< wheels, shafts and engine add about 5 % of the mass in the gears used (common practice)

double start_speed(const void*, const Duty& d) { return d.speed ? d.speed->si : 0.0; }
double start_distance(const void*, const Duty&) { return 0.0; }
enum StateIndex { s_speed, s_distance, state_count };
constexpr StateInfo states[] = {
    {pull_speed, start_speed, 0.5, in_pull},
    {{"vehicle.distance", &kind::length, "mile", "distance"}, start_distance, 100.0, in_thermal | in_pull}};
static_assert(std::size(states) == state_count);

void evaluate(const void* model, View& v) {
  auto& m = *static_cast<const Model*>(model);
  v.rate(s_speed, (v.in(r_pull_force)-v.in(r_held)) / ((m.mass_kg + v.in(r_payload)) * rotating));
  v.rate(s_distance, v.in(r_speed));
}
}  // namespace travel

constexpr Block all[] = {
    {"vehicle.motion", motion::reads, motion::writes, {}, {}, motion::evaluate},
    {"vehicle.resistance", resistance::reads, resistance::writes, {}, {}, resistance::evaluate},
    {"vehicle.travel", travel::reads, {}, travel::states, {}, travel::evaluate},
};

}  // namespace

std::span<const Block> System::blocks() { return all; }

Model System::resolve(const Input& in, Resolver& r) {
  Model m;
  r.nominal_v = r.need(in.system_voltage) == 0.0 ? 6.0 : 12.0;
  r.earth_path = r.path_of(&in.earth);
  if (in.earth) r.positive_earth = *in.earth == Earth::positive;
  m.mass_kg = r.need(in.weight);
  m.drag_area_m2 = r.need(in.drag_area);
  m.rolling = r.need(in.rolling);
  return m;
}

}  // namespace sw::vehicle
