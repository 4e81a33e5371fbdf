#pragma once
// The car itself: its first fields (system voltage, earth), its mass, how it stands on its axles, and what the road
// asks of it.
#include "model/system.hpp"

namespace sw::vehicle {

enum class Volts : std::uint8_t { six, twelve };
inline constexpr std::string_view volts_names[] = {"6 V", "12 V"};
enum class Earth : std::uint8_t { negative, positive };
inline constexpr std::string_view earth_names[] = {"negative", "positive"};

/// What each wheel carries, car level, as driven: another way to say its weight and front's share.
struct Corners {
  std::optional<Mass> front_left, front_right, rear_left, rear_right;
  static std::span<const FieldInfo> fields();
};

enum class Moved : std::uint8_t { in, out };
inline constexpr std::string_view moved_names[] = {"in", "out"};

/// A part put in or taken out since the car was weighed.
struct Part {
  std::optional<Moved> moved;
  std::optional<Mass> mass;
  std::optional<Length> behind, side, height;
  static std::span<const FieldInfo> fields();
};

struct Input {
  std::string title;
  std::optional<Volts> system_voltage;
  std::optional<Earth> earth;
  std::optional<Mass> weight;
  std::optional<Area> drag_area;
  std::optional<double> rolling;
  std::optional<Length> wheelbase;
  std::optional<double> front_share;
  std::optional<Length> centre_height;
  std::optional<Mass> laden_weight;
  std::optional<double> laden_front_share;
  std::optional<Length> laden_centre_height;
  Corners corner;
  std::optional<Length> track;
  Named<Part> part;
  static std::span<const FieldInfo> fields();
};

/// What stands on its axles: as driven, or laden.
struct Balance {
  double mass_kg = 0, front_share = 0, height_m = 0;
};

/// The same with a part more (or, of a mass below nothing, less): moments about front axle and road.
Balance with_part(const Balance& b, double wheelbase_m, double mass_kg, double behind_m, double height_m);

struct Model {
  double mass_kg = 0, drag_area_m2 = 0, rolling = 0;
  double wheelbase_m = 0;
  bool laden_known = false;
  Balance weighed, light, laden;  ///< before and after the parts moved; laden as light where nobody gave it
  bool sides_known = false;
  double left_share = 0.5;  ///< of the weight as driven; only where the wheels were weighed
};

struct System {
  using Input = vehicle::Input;
  using Model = vehicle::Model;
  static constexpr std::string_view key = "vehicle", title = "car and road load";
  static constexpr Station where = Station::standing;
  static Model resolve(const Input& in, Resolver& r);
  static std::span<const Block> blocks();
  static std::span<const Requirement> requirements() { return {}; }
};

}  // namespace sw::vehicle
