#pragma once
// The gearbox as it is joined to engine and driver: converter and bell, the selector's gates, and the cable that tells
// an automatic how far the throttle is open.
#include "model/system.hpp"
#include "physics/interpolant.hpp"

namespace sw::transmission {

enum class SwitchOn : std::uint8_t { column, box };
inline constexpr std::string_view switch_on_names[] = {"column", "box"};

struct Converter {
  std::optional<Length> gap, least_gap, most_gap, end_play, ballooning;
  std::optional<ShaftSpeed> stall;
  static std::span<const FieldInfo> fields();
};

struct Bell {
  std::optional<Length> bore_run_out, bore_most, face_run_out, face_most;
  static std::span<const FieldInfo> fields();
};

/// Gates from the one the linkage is set at, one step each.
struct Selector {
  std::vector<std::string> gates;
  std::optional<Angle> shifter_step, box_step, neutral_window;
  std::optional<double> linkage;
  std::string set_at;
  std::optional<SwitchOn> neutral_switch;
  static std::span<const FieldInfo> fields();
};

struct ThrottleCable {
  std::optional<Length> radius, radius_wanted;
  std::optional<Angle> throttle, start;
  std::optional<double> before_square;
  std::optional<Curve> travel_wanted;
  std::optional<Length> travel_within;
  std::optional<GaugePressure> pressure_closed, pressure_open;
  std::optional<Torque> clutch_holds;
  std::optional<Length> bracket_arm;
  std::optional<bool> bracket_on_intake;
  std::optional<Angle> off_line;
  static std::span<const FieldInfo> fields();
};

struct Input {
  Converter converter;
  Bell bell;
  Selector selector;
  ThrottleCable throttle_cable;
  static std::span<const FieldInfo> fields();
};

struct GateModel {
  std::string name;
  double off_rad = 0;  ///< where the shifter puts the box's lever, less where the gate is
};

struct CableModel {
  double radius_m = 0, wanted_m = 0, throttle_rad = 0;  ///< `wanted` a radius, where one is told
  std::optional<double> start_rad;
  double before_square = 0;  ///< where `start` is not told: share of its way the lever stands before square
  std::optional<physics::Interpolant> curve;  ///< travel wanted against throttle angle
  double within_m = 0;
  std::string curve_path;
  std::optional<double> closed_pa, open_pa, holds_nm;
  std::vector<std::string> missing, pressure_missing;
  std::optional<double> arm_m;
  double off_line_rad = 0;
  bool on_intake = false, told = false;

  /// Of a lever of this radius, with the throttle this far open.
  double travel_m(double radius_m, double opening_rad) const;
  double travel_m(double radius_m) const { return travel_m(radius_m, throttle_rad); }
  /// What the box is made for with the throttle wide open.
  double full_travel_m() const { return curve ? curve->at(throttle_rad).value : travel_m(wanted_m); }
};

struct Model {
  std::optional<double> gap_m, stall_rad_s;
  double least_gap_m = 0, most_gap_m = 0, grows_m = 0;
  std::optional<double> bore_m, face_m;
  double bore_most_m = 0, face_most_m = 0;
  std::vector<GateModel> gates;
  std::vector<std::string> box_missing, linkage_missing;  ///< of the box's detents; of what drives them
  bool gates_told = false;
  double half_detent_rad = 0, window_rad = 0, ratio_wanted = 1;
  std::optional<std::size_t> neutral;
  std::optional<SwitchOn> neutral_switch;
  std::vector<std::string> switch_missing;
  CableModel cable;
};

struct System {
  using Input = transmission::Input;
  using Model = transmission::Model;
  static constexpr std::string_view key = "transmission", title = "transmission";
  static constexpr Station where = Station::underneath;
  static constexpr bool may_be_left_out = true;
  static Model resolve(const Input& in, Resolver& r);
  static std::span<const Block> blocks() { return {}; }
  static std::span<const Requirement> requirements();
};

}  // namespace sw::transmission
