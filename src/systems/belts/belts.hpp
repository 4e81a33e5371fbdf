#pragma once
// The belt drive as far as speeds, directions, torque and slip go: each belt with its crank pulley and the pulleys of
// what it drives.
#include "model/system.hpp"

namespace sw::belts {

enum class Section : std::uint8_t { v, ribbed };
inline constexpr std::string_view section_names[] = {"v", "ribbed"};
enum class Drives : std::uint8_t { alternator, coolant_pump, fan, compressor, steering, idler };
inline constexpr std::string_view drives_names[] = {"alternator", "coolant pump", "fan",
                                                    "compressor", "steering",     "idler"};
inline constexpr std::size_t drives_count = 6;
enum class Side : std::uint8_t { face, back };
inline constexpr std::string_view side_names[] = {"face", "back"};
enum class Tensioner : std::uint8_t { fixed, sprung };
inline constexpr std::string_view tensioner_names[] = {"fixed", "sprung"};

struct Pulley {
  std::optional<Drives> drives;
  std::optional<Length> diameter;
  std::optional<Angle> wrap;
  std::optional<Side> side;
  static std::span<const FieldInfo> fields();
};

struct Belt {
  std::optional<Section> section;
  std::optional<int> count;
  std::optional<Length> crank_diameter;
  std::optional<Force> tension;
  std::optional<Tensioner> tensioner;
  std::optional<double> friction;
  std::optional<Angle> groove;
  Named<Pulley> pulley;
  static std::span<const FieldInfo> fields();
};

struct Input {
  Named<Belt> belt;
  static std::span<const FieldInfo> fields();
};

/// One driven accessory.
struct Driven {
  bool there = false;
  double ratio = 0;      ///< its turns for one of the crank
  double direction = 0;  ///< +1 with the crank, −1 against it
  double grip_n_m = 0;   ///< torque at which the belt lets go on its pulley
  std::string belt;
};

struct Model {
  Driven driven[drives_count];
  const Driven& of(Drives d) const { return driven[static_cast<std::size_t>(d)]; }
};

struct System {
  using Input = belts::Input;
  using Model = belts::Model;
  static constexpr std::string_view key = "belts", title = "belt drive";
  static Model resolve(const Input& in, Resolver& r);
  static std::span<const Block> blocks();
  static std::span<const Requirement> requirements();
};

}  // namespace sw::belts
