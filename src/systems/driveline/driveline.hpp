#pragma once
// Gears, axle, tyre and converter: from road speed to engine speed, and what slip turns into heat; the propeller shaft
// with its two joints.
#include "model/system.hpp"

namespace sw::driveline {

enum class Gearbox : std::uint8_t { manual, automatic };
inline constexpr std::string_view gearbox_names[] = {"manual", "automatic"};

struct Gear {
  std::optional<double> ratio;
  static std::span<const FieldInfo> fields();
};

/// A one-piece propeller shaft. Its joints' angles as measured at the joints, or from three slopes.
struct Shaft {
  std::optional<Length> length, diameter, wall;
  std::optional<Angle> front_angle, rear_angle;
  std::optional<Angle> engine_slope, shaft_slope, pinion_slope, wedge;
  std::optional<Angle> plane_phase, yoke_phase;
  std::optional<double> of_critical;
  static std::span<const FieldInfo> fields();
};

struct Input {
  std::optional<Gearbox> gearbox;
  Named<Gear> gear;
  std::optional<double> axle;
  std::optional<Length> tyre_diameter;
  std::optional<double> efficiency;
  std::optional<double> converter_slip;
  std::optional<bool> locks_in_top;
  std::optional<bool> cooler_in_radiator;
  std::optional<ShaftSpeed> lugging_speed;
  Shaft shaft;
  static std::span<const FieldInfo> fields();
};

struct ShaftModel {
  std::optional<double> length_m, diameter_m, wall_m;
  std::string length_path, diameter_path, wall_path;
  std::optional<double> front_rad, rear_rad;                ///< as measured at the joints
  std::optional<double> engine_rad, shaft_rad, pinion_rad;  ///< slopes, down to the rear
  double plane_phase_rad = 0, yoke_phase_rad = 0, of_critical = 0.75;

  /// Angle at the front joint with the engine's nose down by `pitch_rad` and its tail lifted by `lift_m` since the
  /// slopes were read; empty where nothing tells it. What was measured at the joint itself stands as it is.
  std::optional<double> front(double pitch_rad, double lift_m) const;
  std::optional<double> rear(double lift_m) const;
};

struct Model {
  static constexpr std::size_t most_gears = 8;
  std::size_t gears = 0;
  double ratio[most_gears] = {};  ///< descending: first gear first
  double axle = 1, wheel_radius_m = 0.3, efficiency = 0.9, slip = 0;
  bool automatic = false, locks_in_top = false, cooler_in_radiator = false;
  double lugging_rad_s = 150;
  ShaftModel shaft;

  /// Engine speed over road speed in a gear, rad/m, converter locked.
  double turns(std::size_t gear) const { return ratio[gear] * axle / wheel_radius_m; }
  /// Converter slip in a gear, as a share of its output's turns.
  double slip_in(std::size_t gear) const { return !automatic || (locks_in_top && gear + 1 == gears) ? 0.0 : slip; }
  /// The same with the converter as it is: what the engine turns.
  double engine_turns(std::size_t gear) const { return turns(gear) * (1 + slip_in(gear)); }
};

struct System {
  using Input = driveline::Input;
  using Model = driveline::Model;
  static constexpr std::string_view key = "driveline", title = "driveline";
  static constexpr Station where = Station::underneath;
  static Model resolve(const Input& in, Resolver& r);
  static std::span<const Block> blocks();
  static std::span<const Requirement> requirements();
};

}  // namespace sw::driveline
