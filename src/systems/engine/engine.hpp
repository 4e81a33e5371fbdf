#pragma once
// The engine: what it can give, what it burns, and where the heat goes.
#include <optional>

#include "model/system.hpp"
#include "physics/engine.hpp"
#include "physics/interpolant.hpp"

namespace sw::engine {

struct Input {
  std::optional<Volume> displacement;
  std::optional<ShaftSpeed> idle_speed;
  std::optional<ShaftSpeed> idle_speed_air_conditioning;
  std::optional<ShaftSpeed> red_line;
  std::optional<Curve> torque_curve;
  std::optional<SpecificConsumption> bsfc;
  std::optional<MassFlow> idle_fuel;
  std::optional<double> usual_idle_fuel;
  std::optional<double> coolant_share;
  std::optional<double> idle_coolant_share;
  std::optional<Curve> coolant_heat;
  std::optional<double> oil_share;
  std::optional<double> bay_share;
  std::optional<Mass> metal_mass;
  std::optional<Volume> oil_volume;
  std::optional<TemperatureStep> metal_rise;
  std::optional<Temperature> highest_oil;
  std::optional<PressureDifference> motoring_pressure;
  std::optional<Time> oil_delay;
  static std::span<const FieldInfo> fields();
};

struct Model {
  double idle_rad_s = 0, idle_ac_rad_s = 0, red_line_rad_s = 0;
  std::optional<physics::Interpolant> torque;        ///< N m against rad/s
  std::optional<physics::Interpolant> coolant_heat;  ///< W against W, where it was measured
  double peak_power_w = 0, peak_speed_rad_s = 0;
  physics::WillansLine fuel{0, 1, 0};  ///< heat of the fuel; what it burns without load is given at hot idle
  double coolant_share = 0, idle_coolant_share = 0, oil_share = 0, bay_share = 0;
  double metal_j_k = 0, oil_j_k = 0;
  double metal_conductance_w_k = 0;  ///< metal to coolant with the pump turning
  double highest_oil_k = 0, oil_delay_s = 0;
  double motoring_n_m = 0;  ///< drag of the closed throttle at the crankshaft
};

struct System {
  using Input = engine::Input;
  using Model = engine::Model;
  static constexpr std::string_view key = "engine", title = "engine";
  static constexpr Station where = Station::engine_bay;
  static Model resolve(const Input& in, Resolver& r);
  static std::span<const Block> blocks();
  static std::span<const Requirement> requirements();
};

/// Heat to the coolant, W, at a shaft speed and power: by the shares of physics/engine, or by a measured curve against
/// power, which is continued beyond its ends by the share at load.
double coolant_heat_w(const Model& m, double speed_rad_s, double power_w);
/// Heat of the fuel, W, at a shaft speed and power.
double fuel_heat_w(const Model& m, double speed_rad_s, double power_w);

}  // namespace sw::engine
