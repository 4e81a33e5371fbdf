#pragma once
// The throttle linkage from pedal to throttle lever: levers, bell-cranks, rods and cables by their geometry, the
// springs that close it, and what an engine that moves in its mounts does to whatever comes from the body.
#include "model/system.hpp"
#include "systems/throttle/link.hpp"

namespace sw::throttle {

enum class By : std::uint8_t { rod, cable };
inline constexpr std::string_view by_names[] = {"rod", "cable"};
enum class SitsOn : std::uint8_t { throttle, pedal };
inline constexpr std::string_view sits_on_names[] = {"throttle", "pedal"};

struct Pedal {
  std::optional<Angle> turns;
  std::optional<Length> pad;
  static std::span<const FieldInfo> fields();
};

/// From the lever before it (the pedal's or a bell-crank's second arm) to the next one.
struct Link {
  std::optional<By> by;
  std::optional<bool> to_engine, pushes, pins_opposite;
  std::optional<Length> arm, driven_arm, apart, rod, slack, roll;
  std::optional<Angle> start, driven_start, slope;
  static std::span<const FieldInfo> fields();
};

struct Spring {
  std::optional<SitsOn> on;
  std::optional<Force> force, force_open;
  std::optional<Length> arm, arm_open;
  static std::span<const FieldInfo> fields();
};

struct Input {
  Pedal pedal;
  Named<Link> link;
  std::optional<Angle> opens;
  std::optional<Torque> friction;
  std::optional<Length> ahead;
  Named<Spring> spring;
  static std::span<const FieldInfo> fields();
};

/// What the engine does to the links that come from the body.
struct EngineMoved {
  double lift_m = 0;
  double roll = 0;  ///< of the roll told for each link, -1 to 1
};

struct LinkModel {
  std::string name;
  LinkGeometry shape;
  bool to_engine = false;
  double roll_m = 0, slope_rad = 0;
  /// Where the engine takes its far end: nowhere unless it leads from body to engine.
  MovedApart apart(const EngineMoved& moved) const;
};

struct SpringModel {
  std::string name;
  SitsOn on{};
  double force_n = 0, force_open_n = 0, arm_m = 0, arm_open_m = 0;
  /// About its own lever, on the closed stop and wide open; below nothing where it has swung past the centre.
  double closed_nm() const { return force_n * arm_m; }
  double open_nm() const { return force_open_n * arm_open_m; }
};

struct Model {
  std::vector<LinkModel> links;  ///< from the pedal on
  double turns_rad = 0, opens_rad = 0, ahead_m = 0;
  std::vector<std::string> missing;  ///< of the geometry
  std::vector<SpringModel> springs;
  std::optional<double> friction_nm, pad_m;
  std::string friction_path;
  std::vector<std::string> spring_missing;
  bool springs_told = false;

  bool told() const { return missing.empty() && !links.empty(); }
  /// Whether a spring at the pedal can close the throttle: a rod pushes, a cable does not.
  bool all_rods() const;
  /// How far the linkage would turn the throttle from its closed stop, stops left out; below nothing while it is slack.
  /// Empty where a link does not reach.
  std::optional<double> opening_rad(double pedal_rad, const EngineMoved& moved = {}) const;
  /// d opening / d pedal. Empty where the linkage does not reach.
  std::optional<double> ratio(double pedal_rad, const EngineMoved& moved = {}) const;
  /// The pedal's turn at which the throttle has opened that far, or the pedal's own where it never does.
  double pedal_at_rad(double opening_rad, const EngineMoved& moved = {}) const;
  /// The same on the open stop.
  double pedal_at_open_rad(const EngineMoved& moved = {}) const { return pedal_at_rad(opens_rad, moved); }
  /// Where slack is taken up and the throttle leaves its closed stop.
  double off_stop_rad() const { return pedal_at_rad(0); }
  /// Just before that: where its ratio wide open is looked at.
  double wide_open_rad() const { return 0.98 * pedal_at_open_rad(); }
  /// The furthest the throttle opens, both stops kept. Empty where the linkage does not reach with the pedal released.
  std::optional<double> opened_rad(const EngineMoved& moved = {}) const;
};

struct System {
  using Input = throttle::Input;
  using Model = throttle::Model;
  static constexpr std::string_view key = "throttle", title = "throttle linkage";
  static constexpr Station where = Station::engine_bay;
  static constexpr bool may_be_left_out = true;
  static Model resolve(const Input& in, Resolver& r);
  static std::span<const Block> blocks();
  static std::span<const Requirement> requirements();
};

}  // namespace sw::throttle
