#include <algorithm>
#include <cmath>

#include "systems/driveline/driveline.hpp"

namespace sw::driveline {
namespace {

ShaftModel shaft_of(const Shaft& in, Resolver& r) {
  ShaftModel s{.length_m = given(in.length),
               .diameter_m = given(in.diameter),
               .wall_m = given(in.wall),
               .length_path = r.path_of(&in.length),
               .diameter_path = r.path_of(&in.diameter),
               .wall_path = r.path_of(&in.wall),
               .front_rad = given(in.front_angle),
               .rear_rad = given(in.rear_angle),
               .engine_rad = given(in.engine_slope),
               .shaft_rad = given(in.shaft_slope),
               .pinion_rad = given(in.pinion_slope),
               .plane_phase_rad = r.get(in.plane_phase, 0),
               .yoke_phase_rad = r.get(in.yoke_phase, 0),
               .of_critical = r.get(in.of_critical, 0.75)};
  if (s.pinion_rad) *s.pinion_rad += r.get(in.wedge, 0);
  if (s.front_rad && s.engine_rad)
    r.fault(&in.front_angle, "the front joint's angle stands beside the slopes it would come from",
            "one of the two: `front_angle`, or `engine_slope` with `shaft_slope`");
  if (s.rear_rad && s.pinion_rad)
    r.fault(&in.rear_angle, "the rear joint's angle stands beside the slopes it would come from",
            "one of the two: `rear_angle`, or `pinion_slope` with `shaft_slope`");
  return s;
}

/// The front end lifted turns the shaft's slope.
double turned_by(double lift_m, const std::optional<double>& length_m) {
  return length_m ? std::atan(lift_m / *length_m) : 0;
}

}  // namespace

Model System::resolve(const Input& in, Resolver& r) {
  Model m;
  m.automatic = r.need(in.gearbox) == 1.0;
  for (auto& [name, gear] : in.gear) {
    if (m.gears == Model::most_gears) {
      r.fault(&gear.ratio, "at most " + std::to_string(Model::most_gears) + " gears can be reckoned with; \"" + name +
                               "\" is one too many");
      break;
    }
    m.ratio[m.gears++] = r.need(gear.ratio);
  }
  if (in.gear.empty()) r.lacks("driveline.gear: at least one gear");
  std::sort(m.ratio, m.ratio + m.gears, std::greater<>());
  m.axle = r.need(in.axle);
  m.wheel_radius_m = 0.5 * r.need(in.tyre_diameter);
  m.efficiency = r.need(in.efficiency);
  m.slip = m.automatic ? r.need(in.converter_slip) : 0.0;
  m.locks_in_top = r.get(in.locks_in_top, 0) > 0;
  m.cooler_in_radiator = r.get(in.cooler_in_radiator, 0) > 0;
  m.lugging_rad_s = r.need(in.lugging_speed);
  m.shaft = shaft_of(in.shaft, r);
  return m;
}

std::optional<double> ShaftModel::front(double pitch_rad, double lift_m) const {
  if (front_rad) return front_rad;
  if (!engine_rad || !shaft_rad) return std::nullopt;
  return std::abs(*engine_rad - pitch_rad - *shaft_rad - turned_by(lift_m, length_m));
}

std::optional<double> ShaftModel::rear(double lift_m) const {
  if (rear_rad) return rear_rad;
  if (!pinion_rad || !shaft_rad) return std::nullopt;
  return std::abs(*pinion_rad - *shaft_rad - turned_by(lift_m, length_m));
}

}  // namespace sw::driveline
