#pragma once
// Wheels and tyres: what goes over the brake, what touches the body, what the tyre carries, how old it is.
#include "model/system.hpp"

namespace sw::wheels {

enum class Speed : std::uint8_t { p, q, r, s, t, u, h, v, w, y };
inline constexpr std::string_view speed_names[] = {"P", "Q", "R", "S", "T", "U", "H", "V", "W", "Y"};

/// One axle's wheels.
struct Axle {
  std::optional<Length> barrel_radius, caliper_radius, spoke_gap;
  std::optional<Length> lip_gap, lock_gap, hub_outward, lip_inward, wheel_outward;
  static std::span<const FieldInfo> fields();
};

struct Tyre {
  std::string size;
  std::optional<Mass> load;
  std::optional<Speed> speed;
  std::optional<Time> age;
  static std::span<const FieldInfo> fields();
};

struct Input {
  Axle front, rear;
  Tyre tyre;
  static std::span<const FieldInfo> fields();
};

struct AxleModel {
  std::optional<double> barrel_m, caliper_m, spoke_m;
  std::string barrel_path, caliper_path;
  std::optional<double> lip_m, lock_m;  ///< gaps to the body as the car stood before
  double hub_m = 0, inward_m = 0, wheel_m = 0;
};

struct Model {
  AxleModel front, rear;
  std::optional<double> free_m;  ///< diameter by the size text
  std::optional<double> load_kg, top_m_s, age_s;
  std::string speed_name, load_path, speed_path, age_path;
};

struct System {
  using Input = wheels::Input;
  using Model = wheels::Model;
  static constexpr std::string_view key = "wheels", title = "wheels and tyres";
  static constexpr Station where = Station::standing;
  static constexpr bool may_be_left_out = true;
  static Model resolve(const Input& in, Resolver& r);
  static std::span<const Block> blocks();
  static std::span<const Requirement> requirements();
};

}  // namespace sw::wheels
