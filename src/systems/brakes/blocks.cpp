// What the brakes are asked for at each instant: the road load's negative part, shared out by pressure.
#include <algorithm>

#include "systems/brakes/checks.hpp"
#include "systems/brakes/heat.hpp"

namespace sw::brakes {
namespace {

/// The speeds of a duty are prescribed: what they ask of the wheels below nothing the brakes give.
namespace effort {
enum Read { r_force, r_radius, read_count };
constexpr Port reads[] = {{"road.force", &kind::force}, radius_port};
static_assert(std::size(reads) == read_count);
enum Write { w_force, w_front, w_rear, w_front_torque, w_rear_torque, w_line, w_rear_line, write_count };
constexpr Port writes[] = {{"brakes.force", &kind::force, "lbf", "braking force asked of the brakes"},
                           {"brakes.front_force", &kind::force, "lbf", "braking force of the front axle"},
                           {"brakes.rear_force", &kind::force, "lbf", "braking force of the rear axle"},
                           {"brakes.front_torque", &kind::torque, "lb-ft", "braking torque of the front axle"},
                           {"brakes.rear_torque", &kind::torque, "lb-ft", "braking torque of the rear axle"},
                           line_port,
                           {"brakes.rear_pressure", &kind::gauge_pressure, "psi", "pressure at the rear cylinders"}};
static_assert(std::size(writes) == write_count);

void evaluate(const void* model, View& v) {
  auto& m = *static_cast<const Model*>(model);
  const Stopped s{.balance = {}, .weight_n = 0, .wheel_radius_m = v.in(r_radius)};
  const double force = std::max(0.0, -v.in(r_force));
  const double line = line_pressure_for(m, force, s);
  const double front = axle_force(m.front, line, s), rear = axle_force(m.rear, line, s);
  v.set(w_force, force);
  v.set(w_front, front);
  v.set(w_rear, rear);
  v.set(w_front_torque, front * s.wheel_radius_m);
  v.set(w_rear_torque, rear * s.wheel_radius_m);
  v.set(w_line, line);
  v.set(w_rear_line, cylinder_pressure(m.rear, line, false));
}
}  // namespace effort

/// What the foot gives for it, with the vacuum there is.
namespace pedal {
enum Read { r_line, r_vacuum, read_count };
constexpr Port reads[] = {line_port, vacuum_port};
static_assert(std::size(reads) == read_count);
constexpr Port writes[] = {pedal_port};
void evaluate(const void* model, View& v) {
  auto& m = *static_cast<const Model*>(model);
  v.set(0, v.in(r_line) > 0 ? pedal_at_pressure(m, v.in(r_line), v.in(r_vacuum)) : 0.0);
}
}  // namespace pedal

/// What stands behind each wheel, told to whoever fits a wheel over it.
namespace kinds {
enum Write { w_front, w_rear, write_count };
constexpr Port writes[] = {{"brakes.front_disc", &kind::number, "", "whether the front has discs"},
                           {"brakes.rear_disc", &kind::number, "", "whether the rear has discs"}};
static_assert(std::size(writes) == write_count);
void evaluate(const void* model, View& v) {
  auto& m = *static_cast<const Model*>(model);
  v.set(w_front, m.front.drum ? 0 : 1);
  v.set(w_rear, m.rear.drum ? 0 : 1);
}
}  // namespace kinds

constexpr Block all[] = {
    {"brakes.effort", effort::reads, effort::writes, {}, {}, effort::evaluate},
    {"brakes.pedal", pedal::reads, pedal::writes, {}, {}, pedal::evaluate},
    {"brakes.kinds", {}, kinds::writes, {}, {}, kinds::evaluate},
    {heat::block, heat::reads, {}, heat::states, {}, heat::evaluate},
};

}  // namespace

std::span<const Block> System::blocks() { return all; }

}  // namespace sw::brakes
