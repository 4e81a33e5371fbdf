#pragma once
// What parts moved in or out do to axles, springs and sides. The car itself owns its weight (vehicle.weight, the wheels
// weighed, the parts): whoever brakes, climbs or corners reads that by the same ports as this.
#include "model/system.hpp"

namespace sw::mass {

struct Axle {
  std::optional<Mass> rating;
  std::optional<SpringRate> wheel_rate;
  static std::span<const FieldInfo> fields();
};

struct Input {
  Axle front, rear;
  std::optional<Length> height_within;
  static std::span<const FieldInfo> fields();
};

struct AxleModel {
  std::optional<double> rating_kg, wheel_rate_n_m;
  std::string rating_path;
};

struct Model {
  AxleModel front, rear;
  double within_m = 0;
  bool axles_told() const { return front.rating_kg || front.wheel_rate_n_m || rear.rating_kg || rear.wheel_rate_n_m; }
};

struct System {
  using Input = mass::Input;
  using Model = mass::Model;
  static constexpr std::string_view key = "mass", title = "mass and axles";
  static constexpr Station where = Station::standing;
  static constexpr bool may_be_left_out = true;
  static Model resolve(const Input& in, Resolver& r);
  static std::span<const Block> blocks() { return {}; }
  static std::span<const Requirement> requirements();
};

}  // namespace sw::mass
