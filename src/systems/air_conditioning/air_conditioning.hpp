#pragma once
// Air conditioning as far as the rest of the car feels it: compressor power, heat in front of the radiator, idle drop,
// how hot the condenser runs and what a heater valve in the wrong hose costs. Nothing here invites work on the
// refrigerant circuit; that is licensed work.
#include "model/system.hpp"

namespace sw::air_conditioning {

enum class Refrigerant : std::uint8_t { r134a, other };
inline constexpr std::string_view refrigerant_names[] = {"R134a", "another"};
enum class Valve : std::uint8_t { supply, in_return, none };
inline constexpr std::string_view valve_names[] = {"supply hose", "return hose", "none"};

struct Condenser {
  std::optional<double> effectiveness, air_share;
  std::optional<Refrigerant> refrigerant;
  std::optional<GaugePressure> cut_out, most_idle;
  static std::span<const FieldInfo> fields();
};

/// Heater and evaporator in one box.
struct Heater {
  std::optional<Valve> valve;
  std::optional<Power> leak;
  std::optional<MassFlow> air;
  std::optional<Power> cooling;
  static std::span<const FieldInfo> fields();
};

struct Input {
  std::optional<bool> fitted;
  std::optional<Power> condenser_heat_idle;
  std::optional<Power> condenser_heat_road;
  std::optional<Power> compressor_power_idle;
  std::optional<Power> compressor_power_road;
  Condenser condenser;
  Heater heater;
  static std::span<const FieldInfo> fields();
};

struct Model {
  bool fitted = false;
  bool said = false;        ///< somebody said whether it is; else the default stands
  std::string fitted_path;  ///< of the figure that says it
  double heat_idle_w = 0, heat_road_w = 0, power_idle_w = 0, power_road_w = 0;
  double effectiveness = 0.65, air_share = 1, cut_out_pa = 0, most_idle_pa = 0;  ///< pressures by gauge
  bool known = true;  ///< the refrigerant whose pressures are known
  std::optional<Valve> valve;
  std::optional<double> leak_w, vent_kg_s, cooling_w;
  std::string valve_path, leak_path, vent_path;
};

struct System {
  using Input = air_conditioning::Input;
  using Model = air_conditioning::Model;
  static constexpr std::string_view key = "air_conditioning", title = "air conditioning";
  static constexpr Station where = Station::front;
  static Model resolve(const Input& in, Resolver& r);
  static std::span<const Block> blocks();
  static std::span<const Requirement> requirements();
};

}  // namespace sw::air_conditioning
