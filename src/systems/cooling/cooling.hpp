#pragma once
// Radiator, pump, thermostat, cap, fans, and the air under the bonnet.
#include <optional>

#include "model/system.hpp"
#include "physics/fan.hpp"
#include "physics/fluid.hpp"

namespace sw::cooling {

enum class Rotation : std::uint8_t { with_crank, against_crank, either };
inline constexpr std::string_view rotation_names[] = {"with crank", "against crank", "either"};
enum class Drive : std::uint8_t { electric, engine };
inline constexpr std::string_view drive_names[] = {"electric", "engine"};
enum class Blows : std::uint8_t { with_travel, against_travel };
inline constexpr std::string_view blows_names[] = {"with travel", "against travel"};

struct Radiator {
  std::optional<Length> core_width, core_height;
  std::optional<ThermalConductance> conductance;
  std::optional<Speed> conductance_speed;
  std::optional<double> conductance_exponent;
  std::optional<double> blocked_share;
  std::optional<Curve> airflow_loss;
  std::optional<double> usual_loss;
  std::optional<Volume> volume;
  std::optional<bool> isolated;
  static std::span<const FieldInfo> fields();
};

struct Pump {
  std::optional<VolumeFlow> flow;
  std::optional<ShaftSpeed> at_speed;
  std::optional<Power> power;
  std::optional<Rotation> rotation;
  std::optional<double> reversed_share;
  std::optional<VolumeFlow> needed_at_idle;
  static std::span<const FieldInfo> fields();
};

struct Thermostat {
  std::optional<Temperature> opens, fully_open;
  std::optional<TemperatureStep> travel;
  std::optional<Time> lag;
  static std::span<const FieldInfo> fields();
};

struct Fan {
  std::optional<Drive> drive;
  std::optional<VolumeFlow> flow;
  std::optional<Curve> curve;
  std::optional<Voltage> at_voltage;
  std::optional<Current> current;
  std::optional<ShaftSpeed> at_speed;
  std::optional<Power> power;
  std::optional<double> free_flow_ratio;
  std::optional<Temperature> on, off;
  std::optional<bool> with_air_conditioning;
  std::optional<Blows> blows;
  std::optional<double> reversed_share;
  static std::span<const FieldInfo> fields();
};

struct Cap {
  std::optional<GaugePressure> pressure;
  std::optional<GaugePressure> weakest_part;
  std::optional<Volume> expansion_tank;
  static std::span<const FieldInfo> fields();
};

struct Input {
  Radiator radiator;
  Pump pump;
  Thermostat thermostat;
  Cap cap;
  Named<Fan> fan;
  std::optional<Volume> coolant;
  std::optional<double> glycol;
  std::optional<double> shroud_cover;
  std::optional<double> ram_share;
  std::optional<TemperatureStep> recirculation;
  std::optional<Temperature> highest_coolant;
  std::optional<Temperature> bay_temperature;
  static std::span<const FieldInfo> fields();
};

/// One fan, figures per m/s of face speed.
struct FanModel {
  std::string name;
  bool electric = true, with_ac = false, reversed = false;
  double face_m_s = 0;  ///< face speed it gives installed, at rated volts or speed
  std::optional<physics::FanCurve> curve;
  double turned_share = 1;   ///< of its flow with the blades as they are; less where they blow backwards
  double free_ratio = 1.35;  ///< free flow over installed flow
  double rated_v = 0, rated_a = 0, rated_rad_s = 0, power_w = 0;
  double on_k = 0, off_k = 0;
};

struct Model {
  static constexpr std::size_t most_fans = 4;
  double face_m2 = 0, conductance_w_k = 0, conductance_m_s = 5, exponent = 0.45, loss = 8;  ///< loss: Pa/(m/s)2
  double radiator_m3 = 0, engine_m3 = 0;
  std::optional<physics::CoolantTable> coolant;
  double glycol_mass = 0;
  double pump_m3_rad = 0, pump_w = 0, pump_rad_s = 1, reversed_share = 0.25, needed_m3_s = 0;
  std::optional<Rotation> rotation;
  std::string rotation_path;
  double opens_k = 0, open_k = 0, lag_s = 0;
  std::optional<double> cap_pa, weakest_pa;
  std::string cap_path, weakest_path;
  bool isolated = false;  ///< the core touches no metal of the support
  std::optional<double> tank_m3;
  std::size_t fans = 0;
  FanModel fan[most_fans];  ///< electric ones first, by rising switch-on temperature
  std::size_t electric = 0;
  double cover = 1, ram_share = 0.18, recirculation_k = 0, highest_k = 0;
  std::optional<double> bay_k;
  double usual_v = 13.5;  ///< rated volts where no fan states them
};

struct System {
  using Input = cooling::Input;
  using Model = cooling::Model;
  static constexpr std::string_view key = "cooling", title = "cooling";
  static constexpr Station where = Station::front;
  static Model resolve(const Input& in, Resolver& r);
  static std::span<const Block> blocks();
  static std::span<const Requirement> requirements();
};

/// Air through the core. Speeds are face speeds, positive with travel.
struct AirAsk {
  double road_m_s, fan_volts, fan_rad_s;
  std::size_t level;  ///< electric stages on
};
struct AirFlow {
  double face_m_s, swept;
};
AirFlow air_through_core(const Model& m, const AirAsk& ask);

/// The coolant's figures at a temperature, held at the ends of the table: beyond them it has boiled or frozen, which
/// the findings tell, and a run must not be lost for it.
physics::CoolantTable::State coolant_at(const Model& m, double temperature_k);

/// Boiling temperature of the coolant under the cap at an air pressure, K.
double boiling_k(const Model& m, double air_pressure_pa);

}  // namespace sw::cooling
