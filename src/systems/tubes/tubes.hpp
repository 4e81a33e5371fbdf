#pragma once
// Lines and brackets the shop makes: hard tubes from points to bends, their ends and clips, what they run beside, the
// sticks they are cut from, hoses, and brackets bent from sheet.
#include "model/point.hpp"
#include "model/system.hpp"
#include "physics/segment_distance.hpp"
#include "physics/tube_bend.hpp"

namespace sw::tubes {

enum class Material : std::uint8_t { steel, nickel_copper, stainless, hard_stainless, aluminium };
inline constexpr std::string_view material_names[] = {"steel", "nickel-copper", "annealed stainless", "hard stainless",
                                                      "aluminium"};
/// Stretch to the break where nobody said it, in the order of `Material` (common practice).
inline constexpr double usual_elongations[] = {0.30, 0.40, 0.45, 0.35, 0.20};
static_assert(std::size(usual_elongations) == std::size(material_names));
/// Of a flare, of the seat it is drawn against and of the nut that does it.
enum class Form : std::uint8_t { single_37, double_45, bubble };
inline constexpr std::string_view form_names[] = {"37 deg", "45 deg double", "bubble"};
enum class Carries : std::uint8_t { brake_fluid, fuel, fuel_vapour, vacuum, oil, transmission_fluid, coolant };
inline constexpr std::string_view carries_names[] = {"brake fluid",        "fuel",   "fuel vapour", "vacuum", "oil",
                                                     "transmission fluid", "coolant"};
enum class Sheet : std::uint8_t { steel, stainless, soft_aluminium, hard_aluminium };
inline constexpr std::string_view sheet_names[] = {"mild steel", "annealed stainless", "soft aluminium",
                                                   "hard aluminium"};

struct End {
  std::optional<Form> flare, seat, nut;
  std::optional<Length> flared_to;
  std::optional<int> attempts;
  std::optional<Torque> nut_torque;
  std::optional<Length> thread, ring_radius, straight, takes;
  static std::span<const FieldInfo> fields();
};

/// An end or a corner of the centre line; of a corner its row of the bend card too.
struct Corner {
  std::optional<Length> x, y, z, mark;
  std::optional<Angle> setting, turn;
  static std::span<const FieldInfo> fields();
};

struct Tube {
  std::optional<Material> material;
  std::optional<Length> outside, wall, bend_radius;
  std::optional<double> elongation;
  std::optional<PressureDifference> yield, tensile;
  std::optional<Carries> carries;
  std::optional<GaugePressure> pressure;
  std::string die;
  Named<Corner> point;
  std::vector<std::string> beside;
  std::optional<int> clips;
  std::optional<Length> unsupported, cut_length;
  std::string stick;
  End start, end;
  static std::span<const FieldInfo> fields();
};

struct Die {
  std::optional<Length> radius, straight;
  std::optional<Angle> bent_to, came_to;
  static std::span<const FieldInfo> fields();
};

struct Hot {
  Point from, to;
  std::optional<Length> radius, wanted;
  std::optional<bool> shielded;
  static std::span<const FieldInfo> fields();
};

struct Stock {
  std::optional<Material> material;
  std::optional<Length> outside, wall, length;
  std::optional<int> count;
  static std::span<const FieldInfo> fields();
};

/// Where a hose's ends stand: at ride, at full droop, with the engine rolled.
struct Position {
  std::optional<Length> path;
  static std::span<const FieldInfo> fields();
};

struct Hose {
  std::optional<Carries> carries;
  std::optional<Length> length, bend_radius, least_radius;
  Named<Position> position;
  static std::span<const FieldInfo> fields();
};

struct Flange {
  std::optional<Length> length;
  std::optional<Angle> angle;
  static std::span<const FieldInfo> fields();
};

struct Hole {
  std::string flange;
  std::optional<Length> along, diameter;
  static std::span<const FieldInfo> fields();
};

struct Bracket {
  std::optional<Sheet> material;
  std::optional<Length> thickness, radius, deduction;
  Named<Flange> flange;
  Named<Hole> hole;
  std::optional<Length> flat_length;
  static std::span<const FieldInfo> fields();
};

struct Input {
  Named<Tube> tube;
  Named<Die> die;
  Named<Hot> hot;
  Named<Stock> stock;
  std::optional<Length> kerf;
  Named<Hose> hose;
  Named<Bracket> bracket;
  std::optional<double> usual_elongation;
  static std::span<const FieldInfo> fields();
};

struct EndModel {
  std::string place;
  std::optional<Form> flare, seat, nut;
  std::string flare_path, seat_path, nut_path, flared_path, attempts_path, torque_path, thread_path, ring_path;
  std::optional<double> flared_m, torque_nm, thread_m, ring_m;
  std::optional<int> attempts;
  double straight_m = 0, takes_m = 0;
};

struct CornerModel {
  std::string name, path;
  std::optional<double> mark_m, setting_rad, turn_rad;
};

/// What a bend keeps when the die lets go, and how that is known.
struct Springback {
  double kept = 1;
  std::string how;
  std::vector<std::string> missing;
};

/// The tube as a bender makes it: from points, or the paths that are missing.
struct Shape {
  physics::TubeBends bends;
  physics::TubeCut cut;                    ///< on the radius that is left when the die lets go
  std::vector<physics::Vec3> centre_line;  ///< arcs in chords; no farther from the arc than 1/1000 of the radius
  double radius_m = 0;
  std::vector<std::string> missing;
  bool drawn = false;  ///< points were given
  bool good() const { return drawn && missing.empty() && bends.good(); }
};

struct TubeModel {
  std::string place, path;
  std::optional<Material> material;
  std::optional<double> outside_m, wall_m, bend_m, yield_pa, tensile_pa, pressure_pa, unsupported_m, cut_m;
  std::optional<double> elongation;  ///< by its data sheet, else the usual one of its material
  bool usual_stretch = false;
  std::string material_path, outside_path, wall_path, bend_path, yield_path, tensile_path, pressure_path, carries_path,
      cut_path, points_path;
  std::optional<Carries> carries;
  std::optional<int> clips;
  double grip_m = 0;  ///< straight the die holds between two bends
  Springback springback;
  std::vector<CornerModel> corners;
  std::vector<std::string> beside;
  std::string stick;
  Shape shape;
  EndModel ends[2];

  /// What has to be cut off the stick: finished length and what the flares take. Empty where it is not drawn.
  std::optional<double> to_cut_m() const {
    return shape.good() ? std::optional(shape.cut.cut_m + ends[0].takes_m + ends[1].takes_m) : std::nullopt;
  }
};

struct HotModel {
  std::string place;
  physics::Vec3 from, to;
  double radius_m = 0;
  std::optional<double> wanted_m;
  bool shielded = false;
  std::vector<std::string> missing;
};

struct StockModel {
  std::string name;
  Material material = Material::steel;
  double outside_m = 0, wall_m = 0, length_m = 0;
  int count = 1;
  std::vector<std::string> missing;
};

struct HoseModel {
  std::string place;
  std::optional<Carries> carries;
  std::optional<double> length_m, bend_m, least_m, longest_m;
  std::string carries_path, length_path, bend_path, least_path, longest_at;
  std::vector<std::string> missing;
};

struct HoleModel {
  std::string place, name, flange_path;
  std::optional<std::size_t> flange;
  double along_m = 0, radius_m = 0;
  std::vector<std::string> missing;
};

struct BracketModel {
  std::string place, path;
  Sheet material = Sheet::steel;
  double thickness_m = 0, radius_m = 0, k = 0;
  std::vector<std::string> flanges;
  std::vector<double> flanges_m, angles_rad;
  std::vector<HoleModel> holes;
  std::vector<std::string> missing;
  std::optional<double> flat_m;
};

struct Model {
  std::vector<TubeModel> tubes;
  std::vector<HotModel> hot;
  std::vector<StockModel> stock;
  double kerf_m = 0;
  std::vector<HoseModel> hoses;
  std::vector<BracketModel> brackets;
};

struct System {
  using Input = tubes::Input;
  using Model = tubes::Model;
  static constexpr std::string_view key = "tubes", title = "tubes, hoses and brackets";
  static constexpr Station where = Station::underneath;
  static constexpr bool may_be_left_out = true;
  static Model resolve(const Input& in, Resolver& r);
  static std::span<const Block> blocks() { return {}; }
  static std::span<const Requirement> requirements();
};

}  // namespace sw::tubes
