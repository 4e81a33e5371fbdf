#pragma once
// Air conditioning as far as the rest of the car feels it: compressor power, heat in front of the radiator, idle drop.
// Nothing here invites work on the refrigerant circuit; that is licensed work.
#include "model/system.hpp"

namespace sw::air_conditioning {

struct Input {
  std::optional<bool> fitted;
  std::optional<Power> condenser_heat_idle;
  std::optional<Power> condenser_heat_road;
  std::optional<Power> compressor_power_idle;
  std::optional<Power> compressor_power_road;
  static std::span<const FieldInfo> fields();
};

struct Model {
  bool fitted = false;
  bool said = false;        ///< somebody said whether it is; else the default stands
  std::string fitted_path;  ///< of the figure that says it
  double heat_idle_w = 0, heat_road_w = 0, power_idle_w = 0, power_road_w = 0;
};

struct System {
  using Input = air_conditioning::Input;
  using Model = air_conditioning::Model;
  static constexpr std::string_view key = "air_conditioning", title = "air conditioning";
  static Model resolve(const Input& in, Resolver& r);
  static std::span<const Block> blocks();
  static std::span<const Requirement> requirements();
};

}  // namespace sw::air_conditioning
