#pragma once
// The belt drive: each belt with its crank pulley and the pulleys of what it drives. Ratios, directions, grip and slip
// come of the pulleys alone; where their places are given too, the path, wraps, length, line and tensions.
#include "model/system.hpp"
#include "physics/belt_path.hpp"

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
enum class Rotation : std::uint8_t { with_crank, against_crank };
inline constexpr std::string_view rotation_names[] = {"with crank", "against crank"};
enum class Thread : std::uint8_t { iron, aluminium };
inline constexpr std::string_view thread_names[] = {"iron", "aluminium"};
enum class Adjusts : std::uint8_t { slide, pivot, arm };
inline constexpr std::string_view adjusts_names[] = {"slide", "pivot", "arm"};
enum class Turns : std::uint8_t { clockwise, anticlockwise };
inline constexpr std::string_view turns_names[] = {"clockwise", "anticlockwise"};

struct Pulley {
  std::optional<Drives> drives;
  std::optional<Length> diameter;
  std::optional<Angle> wrap;
  std::optional<Side> side;
  std::optional<int> order;
  std::string shaft_of;
  std::optional<Length> x, y;
  std::optional<Length> depth;
  std::optional<Rotation> rotation;
  std::optional<ShaftSpeed> highest_speed;
  std::optional<Torque> torque;
  std::optional<Length> shim, shim_room;
  std::optional<Length> bolt, engagement;
  std::optional<Thread> thread;
  static std::span<const FieldInfo> fields();
};

struct Adjuster {
  std::string pulley;
  std::optional<Adjusts> kind;
  std::optional<Angle> direction;
  std::optional<Length> pivot_x, pivot_y, arm;
  std::optional<Length> loosen, tighten;
  std::optional<Angle> window;
  std::optional<double> take_up;
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
  std::optional<int> ribs;
  std::optional<Quantity<dim::mass_per_length>> mass;
  std::optional<Length> length, path, line_difference;
  std::optional<Length> least_diameter;
  std::optional<Adjuster> adjuster;
  Named<Pulley> pulley;
  static std::span<const FieldInfo> fields();
};

struct ShimOnHand {
  std::optional<Length> thickness;
  std::optional<int> count;
  static std::span<const FieldInfo> fields();
};

struct Input {
  std::optional<Turns> crank_turns;
  Named<Belt> belt;
  Named<ShimOnHand> shim;
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

/// A figure that may be missing, with its path.
struct Asked {
  std::optional<double> value;
  std::string path;
};

/// A pulley on its belt; the crank's comes first.
struct OnBelt {
  std::string name;
  unsigned drives = 0;  ///< bits of Drives: two things on one shaft share a pulley
  bool back = false;
  double radius_m = 0, wrap = 0, x_m = 0, y_m = 0;
  Asked depth_m, torque_n_m;  ///< depth as it stands, shims included
  std::optional<double> rotation, highest_rad_s;
  double shim_m = 0;
  std::optional<double> room_m;        ///< thickest stack its bracket allows, bolts and slots
  std::optional<double> engagement_m;  ///< with its shims as they are
  double least_engagement_m = 0;
  std::string path;  ///< of its table
  bool is(Drives d) const { return (drives >> static_cast<unsigned>(d) & 1) != 0; }
};

struct AdjusterModel {
  std::size_t pulley = 0;  ///< index on the belt; 0: none named
  Adjusts kind = Adjusts::slide;
  /// Length of the path at its loose and tight ends less that where it stands, the arm's from mid window; m.
  double let_on_m = 0, take_up_m = 0;
  std::vector<std::string> missing;
};

struct OneBelt {
  std::string name, path_of_table;
  bool ribbed = false, sprung = false;
  double groove = 0, friction = 0, tension_n = 0, mass_kg_m = 0;  ///< of all its strands side by side
  bool placed = false;                                            ///< the path is known
  std::vector<std::string> missing;                               ///< of its geometry, where some of it is given
  physics::BeltPath path;
  std::vector<OnBelt> pulley;    ///< in the order given
  std::vector<std::size_t> run;  ///< the same as the belt runs, from the crank
  Asked length_m;
  std::optional<double> path_m;  ///< on the line the belt's length is told on
  double least_radius_m = 0;     ///< 0: not known
  std::optional<AdjusterModel> adjuster;
  double line_limit() const;
  /// Free length after pulley i of the run.
  double span_m(std::size_t i) const;
};

struct Model {
  Driven driven[drives_count];
  std::vector<OneBelt> belt;
  const Driven& of(Drives d) const { return driven[static_cast<std::size_t>(d)]; }
};

/// The belts as they lie, of the figures given (drive.cpp).
std::vector<OneBelt> belts_of(const Input& in, Resolver& r);

struct System {
  using Input = belts::Input;
  using Model = belts::Model;
  static constexpr std::string_view key = "belts", title = "belt drive";
  static constexpr Station where = Station::front;
  static Model resolve(const Input& in, Resolver& r);
  static std::span<const Block> blocks();
  static std::span<const Requirement> requirements();
};

}  // namespace sw::belts
