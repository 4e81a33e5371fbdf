#include <algorithm>
#include <cmath>

#include "model/outside.hpp"
#include "physics/belt.hpp"
#include "systems/belts/belts.hpp"

namespace sw::belts {
namespace {

constexpr Port slip_port{"belts.slip", &kind::number, "%", "slip at the alternator's pulley"};
constexpr Port engine_speed{"engine.speed", &kind::shaft_speed, "rpm"};

/// Speeds of everything driven. Only the alternator's pulley is let slip: it is the smallest, with the least wrap and
/// the greatest torque, and lets go first.
namespace speeds {
enum Read { r_engine, r_slip, read_count };
constexpr Port reads[] = {engine_speed, slip_port};
static_assert(std::size(reads) == read_count);
enum Write { w_alternator, w_pump, w_fan, write_count };
constexpr Port writes[] = {{"belts.alternator_speed", &kind::shaft_speed, "rpm", "alternator speed"},
                           {"belts.pump_speed", &kind::shaft_speed, "rpm", "coolant pump speed"},
                           {"belts.fan_speed", &kind::shaft_speed, "rpm", "engine-driven fan speed"}};
static_assert(std::size(writes) == write_count);
void evaluate(const void* model, View& v) {
  auto& m = *static_cast<const Model*>(model);
  const double n = v.in(r_engine);
  v.set(w_alternator, n * m.of(Drives::alternator).ratio * (1 - v.in(r_slip)));
  v.set(w_pump, n * m.of(Drives::coolant_pump).ratio);
  v.set(w_fan, n * m.of(Drives::fan).ratio);
}
}  // namespace speeds

/// What the routing alone decides: a block of its own, so that rules on it wait for no figure of another system.
namespace routing {
enum Write { w_direction, w_ratio, w_compressor, write_count };
constexpr Port writes[] = {
    {"belts.pump_direction", &kind::number, "", "pump direction: 1 with the crank, -1 against it"},
    {"belts.alternator_ratio", &kind::number, "", "alternator turns for one of the crank"},
    {"belts.compressor_ratio", &kind::number, "", "compressor turns for one of the crank, 0 where no belt drives it"}};
static_assert(std::size(writes) == write_count);
void evaluate(const void* model, View& v) {
  auto& m = *static_cast<const Model*>(model);
  v.set(w_direction, m.of(Drives::coolant_pump).direction);
  v.set(w_ratio, m.of(Drives::alternator).ratio);
  v.set(w_compressor, m.of(Drives::compressor).ratio);
}
}  // namespace routing

/// Torque against grip. Where the alternator asks for more than the belt can pull the belt slips until it does not.
namespace grip {
constexpr double slip_most = 0.95;
enum Read { r_slip, r_alternator_torque, r_alternator_speed, r_pump, r_fan, r_compressor, read_count };
constexpr Port reads[] = {slip_port,
                          {"alternator.torque", &kind::torque},
                          {"belts.alternator_speed", &kind::shaft_speed},
                          {"cooling.pump_power", &kind::power},
                          {"cooling.fan_power", &kind::power},
                          {"air_conditioning.compressor_power", &kind::power}};
static_assert(std::size(reads) == read_count);
enum Write { w_slip, w_grip, w_power, write_count };
constexpr Port writes[] = {slip_port,
                           {"belts.alternator_grip", &kind::torque, "lb-ft", "torque at which the belt lets go"},
                           {"accessories.power", &kind::power, "hp", "power of everything belt-driven"}};
static_assert(std::size(writes) == write_count);
void evaluate(const void* model, View& v) {
  auto& d = static_cast<const Model*>(model)->of(Drives::alternator);
  const double torque = v.in(r_alternator_torque), guess = v.in(r_slip);
  v.set(w_slip, std::clamp(guess + (torque - d.grip_n_m) / d.grip_n_m, 0.0, slip_most));
  v.set(w_grip, d.grip_n_m);
  // What slips turns to heat at the pulley: the crank still gives it.
  const double shaft = torque * v.in(r_alternator_speed) / std::max(0.05, 1 - guess);
  v.set(w_power, shaft + v.in(r_pump) + v.in(r_fan) + v.in(r_compressor));
}
}  // namespace grip

constexpr Block all[] = {
    {"belts.routing", {}, routing::writes, {}, {}, routing::evaluate},
    {"belts.speeds", speeds::reads, speeds::writes, {}, {}, speeds::evaluate},
    {.name = "belts.grip",
     .reads = grip::reads,
     .writes = grip::writes,
     .evaluate = grip::evaluate,
     .tear = "belts.slip",
     .tear_low = 0.0,
     .tear_high = grip::slip_most},
};

/// By the wrap of the pulley's place, where that is known.
double grip_torque(const Belt& b, const Pulley& p, const OneBelt& lies, const std::string& name, Resolver& r) {
  const auto at =
      std::find_if(lies.pulley.begin(), lies.pulley.end(), [&](auto& o) { return lies.placed && o.name == name; });
  const double wrap = at == lies.pulley.end() ? r.need(p.wrap) : at->wrap;
  // The back of a belt is flat; so is a groove of 180 degrees.
  const double groove = p.side == Side::back ? M_PI : r.need(b.groove);
  const double k = physics::belt_grip_ratio(r.need(b.friction), wrap, groove).ratio;
  const double tension = r.need(b.tension) * r.get(b.count, 1);
  const auto kind =
      b.tensioner == Tensioner::sprung ? physics::BeltTension::sprung_slack : physics::BeltTension::fixed_centres;
  return physics::belt_pull(kind, tension, k).value * 0.5 * r.need(p.diameter);
}

}  // namespace

std::span<const Block> System::blocks() { return all; }

Model System::resolve(const Input& in, Resolver& r) {
  Model m;
  m.belt = belts_of(in, r);
  for (std::size_t b = 0; b < in.belt.size(); ++b) {
    auto& [name, belt] = in.belt.entries[b];
    for (auto& [pulley_name, p] : belt.pulley) {
      const double what = r.need(p.drives);
      if (std::isnan(what)) continue;
      Driven& d = m.driven[static_cast<std::size_t>(what)];
      // Idlers drive nothing; of everything else the car has one, and its speed cannot be two.
      if (d.there && what != static_cast<double>(Drives::idler))
        r.fault(&p.drives,
                "a second pulley that drives the " + std::string(drives_names[static_cast<std::size_t>(what)]),
                "each accessory has one pulley");
      d.there = true;
      d.belt = name;
      d.ratio = r.need(belt.crank_diameter) / r.need(p.diameter);
      d.direction = p.side == Side::back ? -1 : 1;
      d.grip_n_m = grip_torque(belt, p, m.belt[b], pulley_name, r);
    }
  }
  if (!m.of(Drives::alternator).there) r.lacks("belts.belt: a pulley that drives the alternator");
  if (!m.of(Drives::coolant_pump).there) r.lacks("belts.belt: a pulley that drives the coolant pump");
  return m;
}

}  // namespace sw::belts
