#include <algorithm>
#include <cmath>

#include "model/outside.hpp"
#include "systems/driveline/driveline.hpp"

namespace sw::driveline {
namespace {

constexpr Port gear_port{"driveline.gear", &kind::number, "", "gear"};

/// Which gear: up when the next one would not lug (the band rises with the grade, 100 rpm for each per cent, common
/// practice), down when the present one does; in a full-throttle pull at the red line.
namespace shift {
constexpr double rpm = M_PI / 30.0;
constexpr double grade_band_rad_s = 10000.0 * rpm;  ///< by a whole unit of grade: 100 rpm for each per cent
constexpr double hysteresis = 0.85;                 ///< down-shift speed over up-shift speed (common practice)
constexpr double shift_at = 0.97;                   ///< of the red line, in a pull (common practice)
enum Read { r_speed, r_grade, r_pull, r_red, read_count };
constexpr Port reads[] = {
    {"road.speed", &kind::speed}, outside::grade, outside::pull, {"engine.red_line", &kind::shaft_speed}};
static_assert(std::size(reads) == read_count);

struct Wish {
  double up, down;
};  ///< positive: wants to move, as a share of the speed it is judged by

Wish wish(const Model& m, const View& v, std::size_t gear) {
  const double band = m.lugging_rad_s + grade_band_rad_s * std::max(0.0, v.in(r_grade));
  const bool pull = v.in(r_pull) > 0;
  Wish w{-1, -1};
  if (gear + 1 < m.gears)
    w.up = pull ? v.in(r_speed)*m.engine_turns(gear) / (shift_at * v.in(r_red)) - 1
                : v.in(r_speed)*m.engine_turns(gear + 1) / band - 1;
  if (gear > 0 && !pull) w.down = 1 - v.in(r_speed)*m.engine_turns(gear) / (hysteresis * band);
  return w;
}

double start(const void* model, const Duty& d) {
  auto& m = *static_cast<const Model*>(model);
  const double speed = d.speed ? d.speed->si : 0.0;
  if (d.method == Method::pull) return 0;
  std::size_t g = 0;
  while (g + 1 < m.gears &&
         speed * m.engine_turns(g + 1) > m.lugging_rad_s + grade_band_rad_s * std::max(0.0, *d.grade))
    ++g;
  return static_cast<double>(g);
}
double next(const void* model, const View& v, double now) {
  const Wish w = wish(*static_cast<const Model*>(model), v, static_cast<std::size_t>(now));
  return w.up > 0 ? now + 1 : w.down > 0 ? now - 1 : now;
}
double guard(const void* model, const View& v, double now) {
  const Wish w = wish(*static_cast<const Model*>(model), v, static_cast<std::size_t>(now));
  return std::max(w.up, w.down);
}
constexpr SwitchInfo switches[] = {{gear_port, start, next, guard}};

void evaluate(const void*, View&) {}
}  // namespace shift

/// Speed of the engine the wheels ask for, and the power they ask of it.
namespace gearing {
enum Read { r_speed, r_power, r_gear, read_count };
constexpr Port reads[] = {{"road.speed", &kind::speed}, {"road.power", &kind::power}, gear_port};
static_assert(std::size(reads) == read_count);
enum Write { w_input, w_power, w_cooler, write_count };
constexpr Port writes[] = {{"driveline.input_speed", &kind::shaft_speed, "rpm", "engine speed the road asks for"},
                           {"driveline.power", &kind::power, "hp", "power into the gearbox"},
                           {"driveline.cooler_heat", &kind::power, "kW", "gearbox heat to the coolant"}};
static_assert(std::size(writes) == write_count);

void evaluate(const void* model, View& v) {
  auto& m = *static_cast<const Model*>(model);
  const auto gear = static_cast<std::size_t>(v.in(r_gear));
  const double slip = m.slip_in(gear);
  v.set(w_input, v.in(r_speed)*m.engine_turns(gear));
  // Driving power goes through the losses; on the overrun the engine takes nothing from the fuel.
  const double into = std::max(0.0, v.in(r_power)) / m.efficiency * (1 + slip);
  v.set(w_power, into);
  const double heat = into * (1 - 1 / (1 + slip)) + (m.automatic ? 0.5 * into * (1 - m.efficiency) : 0.0);
  v.set(w_cooler, m.cooler_in_radiator ? heat : 0.0);
}
}  // namespace gearing

/// Force at the wheels at full throttle.
namespace thrust {
enum Read { r_torque, r_gear, read_count };
constexpr Port reads[] = {{"engine.full_torque", &kind::torque}, gear_port};
static_assert(std::size(reads) == read_count);
enum Write { w_force, write_count };
constexpr Port writes[] = {{"driveline.pull_force", &kind::force, "lbf", "greatest force at the wheels"}};
static_assert(std::size(writes) == write_count);

void evaluate(const void* model, View& v) {
  auto& m = *static_cast<const Model*>(model);
  v.set(w_force, v.in(r_torque)*m.turns(static_cast<std::size_t>(v.in(r_gear))) * m.efficiency);
}
}  // namespace thrust

/// What the dragged engine holds the car back with, clutch in and throttle closed; losses help.
namespace overrun {
enum Read { r_torque, r_gear, r_force, read_count };
constexpr Port reads[] = {{"engine.overrun_torque", &kind::torque}, gear_port, {"road.force", &kind::force}};
static_assert(std::size(reads) == read_count);
constexpr Port writes[] = {{"driveline.overrun_force", &kind::force, "lbf", "braking force of the dragged engine"}};

void evaluate(const void* model, View& v) {
  auto& m = *static_cast<const Model*>(model);
  const double force = v.in(r_torque)*m.turns(static_cast<std::size_t>(v.in(r_gear))) / m.efficiency;
  v.set(0, std::clamp(-v.in(r_force), 0.0, force));
}
}  // namespace overrun

/// What stands between wheel and road, for whoever turns or stops it.
namespace wheel {
constexpr Port writes[] = {{"driveline.wheel_radius", &kind::length, "in", "rolling radius"},
                           {"driveline.axle", &kind::number, "", "axle ratio"}};
void evaluate(const void* model, View& v) {
  auto& m = *static_cast<const Model*>(model);
  v.set(0, m.wheel_radius_m);
  v.set(1, m.axle);
}
}  // namespace wheel

constexpr Block all[] = {
    {"driveline.shift", shift::reads, {}, {}, shift::switches, shift::evaluate},
    {"driveline.gearing", gearing::reads, gearing::writes, {}, {}, gearing::evaluate},
    {"driveline.thrust", thrust::reads, thrust::writes, {}, {}, thrust::evaluate},
    {"driveline.overrun", overrun::reads, overrun::writes, {}, {}, overrun::evaluate},
    {"driveline.wheel", {}, wheel::writes, {}, {}, wheel::evaluate},
};

}  // namespace

std::span<const Block> System::blocks() { return all; }

}  // namespace sw::driveline
