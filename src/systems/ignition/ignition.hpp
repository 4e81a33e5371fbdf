#pragma once
// Ignition: what the coil gets in the time and at the volts there are, what it costs, when the spark comes, and what it
// puts into the wires beside it.
#include "model/system.hpp"
#include "physics/coil.hpp"
#include "physics/coupled.hpp"
#include "physics/interpolant.hpp"

namespace sw::ignition {

enum class Serves : std::uint8_t { engine, pair, cylinder };
inline constexpr std::string_view serves_names[] = {"all cylinders", "a pair", "one cylinder"};
enum class By : std::uint8_t { points, module, controller };
inline constexpr std::string_view by_names[] = {"points", "module", "controller"};
enum class Standing : std::uint8_t { cuts_off, stays_on };
inline constexpr std::string_view standing_names[] = {"cuts off", "stays on"};
enum class TimedBy : std::uint8_t { distributor, controller };
inline constexpr std::string_view timed_by_names[] = {"distributor", "controller"};
enum class Canister : std::uint8_t { connected, plugged };
inline constexpr std::string_view canister_names[] = {"connected", "plugged"};
enum class Pulses : std::uint8_t { coil_negative, magnetic, switched };
inline constexpr std::string_view pulses_names[] = {"coil negative", "magnetic pick-up", "switched pick-up"};
enum class Leads : std::uint8_t { solid_core, suppression };
inline constexpr std::string_view leads_names[] = {"solid core", "suppression"};
enum class Ground : std::uint8_t { block, body };
inline constexpr std::string_view ground_names[] = {"block", "body"};
enum class Counts : std::uint8_t { coil_negative, output };
inline constexpr std::string_view counts_names[] = {"coil negative", "controller's output"};

struct Coil {
  std::optional<Inductance> inductance;
  std::optional<Resistance> resistance, ballast;
  std::optional<bool> ballast_bypassed;
  std::optional<Serves> one_for;
  std::optional<double> transfer;
  std::optional<Power> most_heat;
  std::optional<double> usual_heat;
  std::optional<Voltage> kick;
  static std::span<const FieldInfo> fields();
};

/// What switches the coil.
struct Switching {
  std::optional<By> by;
  std::optional<Angle> dwell_angle;
  std::optional<Time> dwell_time;
  std::optional<Curve> dwell_curve;
  std::optional<Time> least_off;
  std::optional<Voltage> drop;
  std::optional<Current> current_limit, most_current;
  std::optional<Power> most_heat;
  std::optional<Voltage> least_voltage;
  std::optional<Standing> standing;
  static std::span<const FieldInfo> fields();
};

/// When the spark comes, in degrees of the crankshaft before top dead centre.
struct Timing {
  std::optional<TimedBy> by;
  std::optional<Angle> base;
  std::optional<Curve> mechanical;
  std::optional<bool> locked;
  std::optional<Angle> vacuum;
  std::optional<Canister> canister;
  std::optional<Angle> table_full, table_light, table_least;
  std::optional<Angle> most, most_light;
  std::optional<Angle> rotor_phase, rotor_reach;
  static std::span<const FieldInfo> fields();
};

/// The wire by which a controller hears the engine turn.
struct PickUp {
  std::optional<Pulses> from;
  std::optional<Voltage> threshold;
  std::optional<Resistance> input_resistance;
  std::optional<Voltage> stands;
  std::optional<Length> beside, apart, height;
  std::optional<Leads> leads;
  std::optional<bool> screened;
  std::optional<Voltage> edge;
  std::optional<Time> edge_time;
  std::optional<Ground> ground;
  static std::span<const FieldInfo> fields();
};

struct Input {
  std::optional<int> cylinders;
  std::optional<Quantity<dim::energy>> needed_energy;
  std::optional<Counts> tachometer;
  Coil coil;
  Switching switching;
  Timing timing;
  PickUp pick_up;
  static std::span<const FieldInfo> fields();
};

struct TimingModel {
  std::optional<TimedBy> by;
  bool described = false, distributor = true;  ///< a cap and rotor share out the sparks of one coil
  std::optional<double> base, full, light, least, most, vacuum, phase;
  std::optional<physics::Interpolant> mechanical;
  std::optional<bool> locked, plugged;
  double most_light = 0, reach = 0;
  std::string by_path, base_path, full_path, least_path, most_path, mechanical_path, locked_path, canister_path,
      phase_path;
};

struct PickUpModel {
  bool described = false;
  std::optional<Pulses> from;
  std::optional<Leads> leads;
  std::optional<Ground> ground;
  std::optional<double> threshold_v, input_ohm, stands_v, beside_m, apart_m;
  double height_m = 0, edge_v = 0, edge_s = 0;
  bool screened = false;
  std::string threshold_path, input_path, stands_path, beside_path, apart_path, leads_path;
};

struct Model {
  std::optional<By> by;
  physics::CoilCircuit coil{1, 1};
  bool bypassed = false;
  int cylinders = 0, sparks = 0;  ///< of one coil in two turns of the crankshaft
  double transfer = 0, needed_j = 0, coil_w = 0;
  std::optional<double> dwell_rad, dwell_s;
  std::optional<physics::Interpolant> dwell_by_volts;
  double least_off_s = 0;
  std::optional<double> most_a, most_w, least_v;
  std::optional<Standing> standing;
  std::string most_a_path, least_v_path, standing_path;
  double kick_v = 0, signal_v = 0, battery_v = 12.6;
  TimingModel timing;
  PickUpModel pick_up;
};

struct System {
  using Input = ignition::Input;
  using Model = ignition::Model;
  static constexpr std::string_view key = "ignition", title = "ignition";
  static constexpr Station where = Station::engine_bay;
  static constexpr bool may_be_left_out = true;
  static Model resolve(const Input& in, Resolver& r);
  static std::span<const Block> blocks();
  static std::span<const Requirement> requirements();
};

/// How long the switch is closed for a spark, and from spark to spark of one coil.
struct Dwell {
  double closed_s = 0, period_s = 0;
};
Dwell dwell_at(const Model& m, double engine_speed_rad_s, double volts);
/// The coil's circuit; the ballast is out where cranking bypasses it.
physics::CoilCircuit circuit(const Model& m, bool cranking);

}  // namespace sw::ignition
