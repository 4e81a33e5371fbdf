#include <algorithm>
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

/// What is driven: the car with its payload, or laden in a duty that asks for it.
double driven_kg(const Model& m, double payload_kg, bool laden) {
  const double light = m.mass_kg + payload_kg;
  return laden && m.laden_known ? std::max(light, m.laden.mass_kg) : light;
}

/// Force and power the road asks of the wheels.
namespace resistance {
enum Read { r_speed, r_acceleration, r_grade, r_density, r_payload, r_pull, r_laden, read_count };
constexpr Port reads[] = {road_speed,       outside::acceleration, outside::grade, outside::density,
                          outside::payload, outside::pull,         outside::laden};
static_assert(std::size(reads) == read_count);
enum Write { w_force, w_power, w_drag, write_count };
constexpr Port writes[] = {{"road.force", &kind::force, "lbf", "road load"},
                           {"road.power", &kind::power, "hp", "power at the wheels"},
                           {"road.held_force", &kind::force, "lbf", "road load at steady speed"}};
static_assert(std::size(writes) == write_count);

void evaluate(const void* model, View& v) {
  auto& m = *static_cast<const Model*>(model);
  const double mass = driven_kg(m, v.in(r_payload), v.in(r_laden) > 0);
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
enum Read { r_speed, r_held, r_pull_force, r_payload, r_laden, read_count };
constexpr Port reads[] = {road_speed,
                          {"road.held_force", &kind::force},
                          {"driveline.pull_force", &kind::force},
                          outside::payload,
                          outside::laden};
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
  v.rate(s_speed, (v.in(r_pull_force)-v.in(r_held)) / (driven_kg(m, v.in(r_payload), v.in(r_laden) > 0) * rotating));
  v.rate(s_distance, v.in(r_speed));
}
}  // namespace travel

/// How the car stands on its axles: figures that do not move, told to whoever brakes or corners.
namespace balance {
enum Write {
  w_mass,
  w_share,
  w_height,
  w_wheelbase,
  w_laden,
  w_laden_mass,
  w_laden_share,
  w_laden_height,
  w_weighed,
  w_weighed_share,
  w_sides,
  w_left,
  write_count
};
constexpr Port writes[] = {{"vehicle.mass", &kind::mass, "lb", "weight as driven"},
                           {"vehicle.front_share", &kind::number, "%", "share of it on the front axle"},
                           {"vehicle.centre_height", &kind::length, "in", "height of the centre of mass"},
                           {"vehicle.wheelbase", &kind::length, "in", "wheelbase"},
                           {"vehicle.laden", &kind::number, "", "whether its laden figures are known"},
                           {"vehicle.laden_mass", &kind::mass, "lb", "weight laden"},
                           {"vehicle.laden_front_share", &kind::number, "%", "share of it on the front axle, laden"},
                           {"vehicle.laden_centre_height", &kind::length, "in", "height of the centre of mass, laden"},
                           {"vehicle.weighed_mass", &kind::mass, "lb", "weight before the parts were moved"},
                           {"vehicle.weighed_front_share", &kind::number, "%", "share of it on the front axle"},
                           {"vehicle.sides_known", &kind::number, "", "whether each wheel was weighed"},
                           {"vehicle.left_share", &kind::number, "%", "share of the weight on the left wheels"}};
static_assert(std::size(writes) == write_count);

void evaluate(const void* model, View& v) {
  auto& m = *static_cast<const Model*>(model);
  v.set(w_mass, m.light.mass_kg);
  v.set(w_share, m.light.front_share);
  v.set(w_height, m.light.height_m);
  v.set(w_wheelbase, m.wheelbase_m);
  v.set(w_laden, m.laden_known ? 1 : 0);
  v.set(w_laden_mass, m.laden.mass_kg);
  v.set(w_laden_share, m.laden.front_share);
  v.set(w_laden_height, m.laden.height_m);
  v.set(w_weighed, m.weighed.mass_kg);
  v.set(w_weighed_share, m.weighed.front_share);
  v.set(w_sides, m.sides_known ? 1 : 0);
  v.set(w_left, m.left_share);
}

constexpr std::string_view block = "vehicle.balance";

bool any(const Corners& c) { return c.front_left || c.front_right || c.rear_left || c.rear_right; }

/// Weight and front's share as weighed: of the whole car, or of its four wheels.
void weigh(const Input& in, Model& m, Resolver& r) {
  const Corners& c = in.corner;
  m.wheelbase_m = r.need(in.wheelbase, block);
  const double height = r.need(in.centre_height, block);
  if (!any(c)) {
    m.weighed = {r.need(in.weight), r.need(in.front_share, block), height};
    return;
  }
  const auto beside = [&](const void* member, const char* what) {
    r.fault(member, std::string(what) + " stands beside the wheels it would come from", "one of the two");
  };
  if (in.weight) beside(&in.weight, "the weight");
  if (in.front_share) beside(&in.front_share, "the front's share");
  const double left = r.need(c.front_left), right = r.need(c.front_right);
  const double rear_left = r.need(c.rear_left), rear_right = r.need(c.rear_right);
  const double all = left + right + rear_left + rear_right;
  m.weighed = {all, (left + right) / all, height};
  m.sides_known = true;
  m.left_share = (left + rear_left) / all;
}

/// One part in or out, of the car as driven and of the car laden.
void move(const Part& in, double track_m, Model& m, Resolver& r) {
  const double way = in.moved == Moved::out ? -1 : 1, mass = way * r.need(in.mass);
  const double behind = r.need(in.behind, block), height = r.get(in.height, 0), side = r.get(in.side, 0);
  const double on_left = mass * (0.5 - (side != 0 ? side / track_m : 0));
  if (m.sides_known) m.left_share = (m.left_share * m.light.mass_kg + on_left) / (m.light.mass_kg + mass);
  m.light = with_part(m.light, m.wheelbase_m, mass, behind, height);
  m.laden = with_part(m.laden, m.wheelbase_m, mass, behind, height);
}

bool stands(const Balance& b) { return b.mass_kg > 0 && b.front_share > 0 && b.front_share < 1; }

void resolve(const Input& in, Model& m, Resolver& r) {
  weigh(in, m, r);
  m.light = m.laden = m.weighed;
  m.laden_known = in.laden_weight.has_value();
  if (m.laden_known) {
    m.laden = {in.laden_weight->si, r.need(in.laden_front_share, block),
               r.get(in.laden_centre_height, m.weighed.height_m)};
    if (m.laden.mass_kg < m.weighed.mass_kg)
      r.fault(&in.laden_weight, "less than the weight as driven", "it is the whole car's, with all it carries");
  }
  double track = 0;
  for (auto& [name, part] : in.part)
    if (m.sides_known && r.get(part.side, 0) != 0 && track == 0) track = r.need(in.track, block);
  for (auto& [name, part] : in.part) move(part, track, m, r);
  m.mass_kg = m.light.mass_kg;
  const bool told = std::isfinite(m.light.front_share) && std::isfinite(m.light.mass_kg);
  if (told && !in.part.empty() && !stands(m.light))
    r.fault_at("vehicle.part", "the parts moved leave an axle, or the whole car, no weight",
               "mass of each, and how far it sits behind the front axle");
}
}  // namespace balance

constexpr Block all[] = {
    {"vehicle.motion", motion::reads, motion::writes, {}, {}, motion::evaluate},
    {"vehicle.resistance", resistance::reads, resistance::writes, {}, {}, resistance::evaluate},
    {"vehicle.travel", travel::reads, {}, travel::states, {}, travel::evaluate},
    {"vehicle.balance", {}, balance::writes, {}, {}, balance::evaluate},
};

}  // namespace

Balance with_part(const Balance& b, double wheelbase_m, double mass_kg, double behind_m, double height_m) {
  const double all = b.mass_kg + mass_kg;
  const double rear = (1 - b.front_share) * b.mass_kg + mass_kg * behind_m / wheelbase_m;
  return {all, 1 - rear / all, (b.mass_kg * b.height_m + mass_kg * height_m) / all};
}

std::span<const Block> System::blocks() { return all; }

Model System::resolve(const Input& in, Resolver& r) {
  Model m;
  r.nominal_v = r.need(in.system_voltage) == 0.0 ? 6.0 : 12.0;
  r.earth_path = r.path_of(&in.earth);
  if (in.earth) r.positive_earth = *in.earth == Earth::positive;
  m.drag_area_m2 = r.need(in.drag_area);
  m.rolling = r.need(in.rolling);
  balance::resolve(in, m, r);
  return m;
}

}  // namespace sw::vehicle
