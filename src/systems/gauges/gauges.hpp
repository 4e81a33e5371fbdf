#pragma once
// Gauges and senders: what the driver is shown against what is true, over the range. Gauges stand in lists by what they
// show, so that scale, sender and curve are told in its own units.
#include <array>
#include <optional>
#include <string>
#include <vector>

#include "model/system.hpp"
#include "physics/gauge.hpp"

namespace sw::gauges {

using PerLength = Quantity<dim::per_length>;

inline constexpr std::string_view how_names[] = {"bimetal", "balance", "electronic"};
using How = physics::GaugeKind;
/// Where something is grounded: the battery's earthed post, or a point of the car's network.
enum class Ground : std::uint8_t { battery, block, body, dash, support };
inline constexpr std::string_view ground_names[] = {"battery", "block", "body", "dash", "support"};
enum class Programs : std::uint8_t { ohms, volts };
inline constexpr std::string_view programs_names[] = {"ohms", "volts"};
enum class Float : std::uint8_t { fuel, depth };
inline constexpr std::string_view float_names[] = {"fuel put in", "depth"};
enum class SpeedFrom : std::uint8_t { cable, pulses };
inline constexpr std::string_view speed_from_names[] = {"cable", "pulses"};
enum class SitsOn : std::uint8_t { cable_drive, output_shaft, wheel };
inline constexpr std::string_view sits_on_names[] = {"cable drive", "output shaft", "wheel"};

/// Names of the families, from the laws' own tables.
template <std::size_t N, class F>
consteval auto names_of(const F (&families)[N]) {
  std::array<std::string_view, N> names;
  for (std::size_t i = 0; i < N; ++i) names[i] = families[i].name;
  return names;
}
inline constexpr auto end_family_names = names_of(physics::end_families);
inline constexpr auto thermistor_family_names = names_of(physics::thermistor_families);
enum class Family : std::uint8_t {};

/// Another reader on the same sender: a controller, a second gauge.
struct Other {
  std::optional<Resistance> pull_up;
  std::optional<Voltage> supply;
  static std::span<const FieldInfo> fields();
};

/// A gauge with a resistive sender. Q is what it shows, S a step of it.
template <class Q, class S>
struct Dial {
  std::optional<How> how;
  std::optional<Q> low, high, usual;
  std::optional<Family> expects_family;
  std::optional<Curve> expects, input_volts;
  std::optional<Programs> programs;
  std::optional<int> table_points;
  std::optional<Voltage> supply;
  std::optional<bool> regulated;
  std::optional<Resistance> heater, pull_up;
  std::optional<Current> current_low, current_high;
  std::optional<Ground> ground;
  std::optional<Family> sender_family;
  std::optional<Curve> sender;
  std::optional<Ground> sender_ground;
  std::optional<Resistance> joint, series, parallel;
  Named<Other> other;
  std::optional<S> apart;
  std::optional<Q> lamp_meant, lamp_shown, lamp_switch;
  static std::span<const FieldInfo> fields();
};
using FuelDial = Dial<double, double>;
using TemperatureDial = Dial<Temperature, TemperatureStep>;
using PressureDial = Dial<GaugePressure, PressureDifference>;

struct Voltmeter {
  std::optional<Voltage> error;
  static std::span<const FieldInfo> fields();
};
struct Tachometer {
  std::optional<double> set, source;
  std::optional<Voltage> level, threshold, pull_up_to;
  std::optional<Resistance> source_resistance, pull_up, input;
  static std::span<const FieldInfo> fields();
};
struct Speedometer {
  std::optional<SpeedFrom> reads;
  std::optional<PerLength> head_turns, set;
  std::optional<SitsOn> sits_on;
  std::optional<double> pulses;
  std::optional<int> drive_teeth, driven_teeth;
  std::optional<double> ratio_box;
  static std::span<const FieldInfo> fields();
};
struct Listener {
  std::optional<Resistance> input;
  std::optional<Voltage> threshold;
  static std::span<const FieldInfo> fields();
};
struct SpeedSensor {
  std::optional<Resistance> resistance;
  std::optional<Voltage> open_voltage;
  std::optional<Speed> at_speed;
  Named<Listener> listener;
  static std::span<const FieldInfo> fields();
};

struct Input {
  std::optional<Float> float_by;
  Named<FuelDial> fuel;
  Named<TemperatureDial> temperature;
  Named<PressureDial> pressure;
  Named<Voltmeter> volts;
  Named<Tachometer> tachometer;
  Named<Speedometer> speedometer;
  Named<SpeedSensor> speed_sensor;
  static std::span<const FieldInfo> fields();
};

/// Share of the depth at shares of the tank's fuel: what a float that goes by depth sees.
struct TankShape {
  double at_quarter = 0.25, at_half = 0.5, at_three_quarters = 0.75;  ///< fuel at these shares of the depth
  double depth(double fuel_share) const;
};

/// A gauge with its sender ready for the laws; figures missing for it alone are named.
struct DialModel {
  std::string name, path;
  std::vector<std::string> missing;
  physics::Gauge gauge;
  Curve sender;
  physics::SenderLaw law = physics::SenderLaw::straight;
  physics::SenderNetwork network;
  double joint_ohm = 0;
  std::vector<physics::Reader> others;
  Ground ground = Ground::dash, sender_ground = Ground::block;
  bool regulated = true, by_depth = false;
  double from = 0, to = 1;  ///< true values over which it is judged
  std::optional<double> usual, apart, lamp_meant, lamp_shown, lamp_switch;
  std::string own_ohm_path;  ///< heater or pull-up: without it lifts and other readers cannot be told
  std::string joint_path;
  std::size_t table_points = 10;
  bool table_in_volts = false;

  bool usable() const { return missing.empty(); }
  double span() const { return gauge.high - gauge.low; }
};
/// How the car meets it at one instant.
struct Instant {
  double lift_v = 0;
  std::optional<double> supply_v;  ///< of a gauge without a regulator
  TankShape tank;
};
/// What is shown of a true value.
physics::Slope shown(const DialModel& m, double value, const Instant& at = {});
double sender_ohm_at(const DialModel& m, double value, const TankShape& tank);
physics::GaugeCircuit circuit_of(const DialModel& m, const Instant& at);
/// The worst of shown less true over the range, and where.
struct Worst {
  double error = 0, value = 0, shown = 0;
};
Worst worst_error(const DialModel& m, const Instant& at = {});
inline constexpr int steps_of_range = 40;
inline double value_at(const DialModel& m, int step) { return m.from + (m.to - m.from) * step / steps_of_range; }

struct TachometerModel {
  std::string name, set_path, source_path;
  std::optional<double> set, source, level_v, threshold_v;
  std::vector<std::string> level_missing;
  double at_input_v = 0;
};
struct SpeedometerModel {
  std::string name;
  std::vector<std::string> missing;
  SpeedFrom reads = SpeedFrom::pulses;
  SitsOn sits_on = SitsOn::cable_drive;
  double set_per_m = 0, pulses = 1, drive_over_driven = 1, ratio_box = 1, driven_teeth = 0;
};
struct SensorModel {
  std::string name;
  std::vector<std::string> missing;
  physics::CoilSensor sensor{};
  struct Input {
    std::string name;
    double ohm, threshold_v;
  };
  std::vector<Input> inputs;
};
struct VoltmeterModel {
  std::string name;
  double error_v = 0;
};

struct Model {
  std::vector<DialModel> fuel, temperature, pressure;
  std::vector<VoltmeterModel> volts;
  std::vector<TachometerModel> tachometers;
  std::vector<SpeedometerModel> speedometers;
  std::vector<SensorModel> sensors;
};

struct System {
  using Input = gauges::Input;
  using Model = gauges::Model;
  static constexpr std::string_view key = "gauges", title = "gauges and senders";
  static constexpr Station where = Station::seat;
  static constexpr bool may_be_left_out = true;
  static Model resolve(const Input& in, Resolver& r);
  static std::span<const Block> blocks();
  static std::span<const Requirement> requirements();
};

}  // namespace sw::gauges
