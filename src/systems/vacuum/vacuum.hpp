#pragma once
// Manifold vacuum and what lives on it: the booster's store with its check valve, a pump, crankcase breathing.
#include "model/system.hpp"
#include "physics/interpolant.hpp"
#include "physics/vacuum_store.hpp"

namespace sw::vacuum {

/// What holds vacuum for the booster.
struct Store {
  std::optional<Volume> booster_volume, rear_volume, rear_at_rest, reservoir;
  std::optional<Time> fill_time;
  std::optional<VacuumPressure> leak;
  static std::span<const FieldInfo> fields();
};

/// An electric pump at the store.
struct Pump {
  std::optional<VacuumPressure> cut_in, cut_out;
  std::optional<Time> fill_time;
  std::optional<Current> current;
  static std::span<const FieldInfo> fields();
};

struct Breathing {
  std::optional<Curve> valve_flow;
  std::optional<VolumeFlow> blow_by, idle_air, throttle_leak;
  std::optional<Length> hole;
  std::optional<Area> baffle_inlet;
  std::optional<Length> droplet;
  static std::span<const FieldInfo> fields();
};

struct Input {
  std::optional<VacuumPressure> idle, idle_air_conditioning;
  std::optional<VacuumPressure> usual_idle;
  std::optional<Angle> cam_duration;
  Store store;
  std::optional<Pump> pump;
  Breathing breathing;
  static std::span<const FieldInfo> fields();
};

/// A pump's dead end over where it stops (common practice), at the sea's level; it sets the time constant of the last
/// pull. A pump reaches a share of the air there is, so up a mountain its dead end falls with the air.
inline constexpr double dead_end = 1.15;

struct PumpModel {
  double cut_in_pa = 0, cut_out_pa = 0, time_constant_s = 1, current_a = 0;
};

/// The store as the air's balance wants it.
struct StoreModel : physics::VacuumStore {
  double rear_m3 = 0;  ///< rear chambers, brakes hard on
};

struct Model {
  double idle_pa = 0;                ///< below the air at the sea's level
  std::optional<double> idle_ac_pa;  ///< with the compressor on, where somebody measured it
  std::optional<StoreModel> store;   ///< where its volumes are told
  double fill_s = 1, leak_pa_s = 0;
  std::optional<PumpModel> pump;
  std::optional<physics::Interpolant> valve_flow;
  std::optional<double> blow_by_m3_s, idle_air_m3_s;
  double throttle_leak_m3_s = 0;
  std::optional<double> hole_m, baffle_m2;
  double droplet_m = 0;
  std::string idle_air_path, valve_path, hole_path;
};

struct System {
  using Input = vacuum::Input;
  using Model = vacuum::Model;
  static constexpr std::string_view key = "vacuum", title = "vacuum and breathing";
  static constexpr Station where = Station::engine_bay;
  static Model resolve(const Input& in, Resolver& r);
  static std::span<const Block> blocks();
  static std::span<const Requirement> requirements();
};

}  // namespace sw::vacuum
