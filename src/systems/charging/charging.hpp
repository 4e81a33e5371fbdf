#pragma once
// Alternator, battery and starter: what the network can be fed with, and what it does to them.
#include <optional>

#include "model/system.hpp"
#include "physics/alternator.hpp"
#include "physics/interpolant.hpp"

namespace sw::charging {

enum class Machine : std::uint8_t { alternator, generator };
inline constexpr std::string_view machine_names[] = {"alternator", "generator"};
enum class Earth : std::uint8_t { negative, positive, isolated };
inline constexpr std::string_view earth_names[] = {"negative", "positive", "isolated"};
enum class Excitation : std::uint8_t { terminal, own };
inline constexpr std::string_view excitation_names[] = {"exciter terminal", "wakes itself"};
enum class SenseLost : std::uint8_t { own_stud, full_field };
inline constexpr std::string_view sense_lost_names[] = {"holds its own stud", "full field"};

struct Alternator {
  std::optional<Machine> machine;
  std::optional<Earth> earth;
  std::optional<Current> rated_current;
  std::optional<Curve> output_curve;
  std::optional<double> usual_shape;
  std::optional<double> hot_share;
  std::optional<Temperature> hot_air;
  std::optional<ShaftSpeed> highest_speed;
  std::optional<double> efficiency;
  std::optional<TemperatureStep> temperature_rise;
  std::optional<Temperature> highest_temperature;
  std::optional<Voltage> regulator_voltage;
  std::optional<VoltagePerTemperature> regulator_slope;
  std::optional<Excitation> excitation;
  std::optional<Current> exciter_current;
  std::optional<ShaftSpeed> wake_speed, own_wake_speed;
  std::optional<bool> clamped;
  std::optional<SenseLost> sense_lost;
  static std::span<const FieldInfo> fields();
};

struct Battery {
  std::optional<Voltage> voltage;
  std::optional<Charge> capacity;
  std::optional<Current> cold_crank_current;
  std::optional<Resistance> resistance;
  static std::span<const FieldInfo> fields();
};

struct Starter {
  std::optional<Current> current;
  std::optional<Voltage> voltage;
  std::optional<ShaftSpeed> crank_speed;
  std::optional<Resistance> resistance;
  std::optional<ShaftSpeed> least_crank_speed;
  static std::span<const FieldInfo> fields();
};

struct Input {
  Alternator alternator;
  Battery battery;
  Starter starter;
  std::optional<Voltage> least_crank_voltage;
  std::optional<Time> days_between_drives;
  std::optional<Voltage> electronics_stand;
  static std::span<const FieldInfo> fields();
};

struct Model {
  std::optional<physics::Interpolant> output;  ///< cold, A against rad/s
  physics::HotLine hot = physics::usual_hot_line;
  double rise_k = physics::usual_winding_rise_k;
  std::optional<double> highest_rad_s;
  std::string highest_path;
  std::optional<bool> car_positive;  ///< the car has positive earth
  std::string car_earth_path;
  double efficiency = 0.55, highest_k = 0;
  double set_v = 14.2, set_slope_v_k = -0.01;
  Earth earth = Earth::negative;
  std::string earth_path;
  double capacity_c = 0, resistance_ohm = 0;  ///< resistance at 25 degC, full
  double cells = 6, nominal_v = 12;
  std::optional<double> battery_v;  ///< stamped on the battery
  double starter_a = 0, starter_v = 0, crank_rad_s = 0, starter_ohm = 0, least_crank_rad_s = 0;
  double least_crank_v = 0;  ///< 0: by temperature
  double days_s = 0;
  bool generator = false;
  std::optional<Excitation> excitation;
  double exciter_a = 0, wake_rad_s = 0;
  std::optional<double> own_wake_rad_s;
  double usual_own_wake_rad_s = 0;
  std::optional<bool> clamped;
  std::optional<double> surge_v;  ///< that the electronics stand
  std::optional<SenseLost> sense_lost;
  std::string excitation_path, own_wake_path, clamped_path, surge_path;
};

struct System {
  using Input = charging::Input;
  using Model = charging::Model;
  static constexpr std::string_view key = "charging", title = "charging and starting";
  static constexpr Station where = Station::electrics;
  static Model resolve(const Input& in, Resolver& r);
  static std::span<const Block> blocks();
  static std::span<const Requirement> requirements();
};

/// Open-circuit volts at a state of charge (share) and a temperature.
double open_circuit_v(const Model& m, double charge, double temperature_k);
/// Internal resistance at a state of charge and a temperature, ohm.
double resistance_ohm(const Model& m, double charge, double temperature_k);

}  // namespace sw::charging
