#include "systems/brakes/heat.hpp"

#include <algorithm>
#include <cmath>

#include "quantity/customary.hpp"

namespace sw::brakes {
namespace {

constexpr double water_boils_k = 100 + zero_celsius_k;
constexpr double disc_highest_k = 450 + zero_celsius_k,
                 drum_highest_k = 320 + zero_celsius_k;  ///< organic linings (common practice)
/// Usual organic lining (common practice): friction steady up to the first, then straight down to the second.
constexpr double fades_from_k = 250 + zero_celsius_k, fades_to_k = 550 + zero_celsius_k, faded = 0.5;
constexpr double cylinder_s = 120;  ///< in which cylinder and fluid follow the metal (common practice)
/// Metal of a car that comes in warm: 49 CFR 571.135 S7.13 begins its snubs between 55 and 65 degC.
constexpr double warm_k = 65 + zero_celsius_k;
constexpr double wheels_an_axle = 2;

}  // namespace

HeatModel resolve_heat(const Heat& in, bool drum, Resolver& r) {
  HeatModel m;
  m.cooling = {.standing_w_k = r.need(in.standing, heat::block),
               .moving_w_k = r.need(in.moving, heat::block),
               .radiating_m2 = r.get(in.surface, 0)};
  m.capacity_j_k = r.need(in.mass, heat::block) * r.need(in.specific_heat, heat::block);
  m.usual_highest = !in.highest;
  m.highest_k = r.get(in.highest, drum ? drum_highest_k : disc_highest_k);
  m.fluid_share = r.need(in.fluid_share, heat::block);
  if (in.fade) {
    m.fade = physics::Interpolant::make(*in.fade);
    if (!m.fade)
      r.fault(&in.fade, "a curve of more than " + std::to_string(physics::Interpolant::max_points) + " points");
  }
  return m;
}

Left hot_friction(const HeatModel& m, double metal_k) {
  if (m.fade) {
    const auto at = m.fade->at(metal_k);
    return {at.value, at.inside || metal_k < m.fade->first()};
  }
  return {1 - (1 - faded) * std::clamp((metal_k - fades_from_k) / (fades_to_k - fades_from_k), 0.0, 1.0), true};
}

Left hot_torque(const AxleModel& axle, double metal_k) {
  const Left left = hot_friction(axle.heat, metal_k);
  if (!axle.drum) return left;
  const auto factor = [&](double friction) { return physics::drum_factor(axle.shoes.kind, axle.shoes.shoe, friction); };
  const auto hot = factor(left.share * axle.shoes.friction), cold = factor(axle.shoes.friction);
  return {hot.value / cold.value, left.known && hot.valid && cold.valid};
}

double fluid_boils_k(const Model& m) {
  if (!m.grade.given() || !m.water.given()) return std::nan("");
  const auto points = physics::least_boiling(static_cast<physics::BrakeFluid>(m.grade.value));
  // Silicone takes up no water: what is in it lies loose at the lowest point and boils by itself.
  if (m.grade.value == static_cast<double>(Fluid::dot_5)) return m.water.value > 0 ? water_boils_k : points.dry_k;
  return physics::boiling_at_water_k(points, m.water.value).value;
}

namespace heat {

double start_metal(const void*, const Duty& d) {
  return d.start == StartFrom::cold ? d.ambient->si : std::max(warm_k, d.ambient->si);
}
double start_fluid(const void* model, const Duty& d) {
  const double share = static_cast<const Model*>(model)->front.heat.fluid_share;
  return d.ambient->si + share * (start_metal(model, d) - d.ambient->si);
}

void evaluate(const void* model, View& v) {
  auto& m = *static_cast<const Model*>(model);
  const double air = v.in(r_ambient), speed = v.in(r_speed), force = v.in(r_front_force) + v.in(r_rear_force);
  // The dragged engine takes its part first.
  const double left = force > 0 ? std::max(0.0, 1 - v.in(r_overrun) / force) : 0.0;
  const auto look = [&](const HeatModel& axle, Read metal, Read fluid, Read axle_force) {
    const double power = v.in(axle_force)*left * speed / wheels_an_axle;
    const double shed = physics::rotor_shed_w(axle.cooling, speed, v.in(metal), air).value;
    v.rate(metal, (power - shed) / axle.capacity_j_k);
    v.rate(fluid, (air + axle.fluid_share * (v.in(metal)-air) - v.in(fluid)) / cylinder_s);
  };
  look(m.front.heat, r_front, r_front_fluid, r_front_force);
  look(m.rear.heat, r_rear, r_rear_fluid, r_rear_force);
}

}  // namespace heat
}  // namespace sw::brakes
