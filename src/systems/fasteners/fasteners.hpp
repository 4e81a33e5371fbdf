#pragma once
// Bolted joints by name: thread, grade, state of the threads, what they are screwed into, torque, and what they hold.
#include "model/system.hpp"
#include "physics/bolt.hpp"
#include "quantity/customary.hpp"

namespace sw::fasteners {

using physics::BoltGrade;
inline constexpr std::string_view grade_names[] = {"2", "5", "8", "8.8", "10.9", "12.9"};
enum class Threads : std::uint8_t { as_they_come, dry_black, zinc, oiled, cadmium, anti_seize };
inline constexpr std::string_view threads_names[] = {"as they come", "dry, black", "zinc plated",
                                                     "oiled",        "cadmium",    "anti-seize"};
/// In the order of `Threads`; `threads` names them and their source.
inline constexpr double nut_factors[] = {0.20, 0.30, 0.20, 0.18, 0.16, 0.12};
static_assert(std::size(nut_factors) == std::size(threads_names));
enum class Into : std::uint8_t { nut, steel, iron, aluminium };
inline constexpr std::string_view into_names[] = {"nut", "steel", "iron", "aluminium"};
/// What is tapped, as usual: its least tensile strength, and the thread the trade wants engaged, in diameters. In the
/// order of `Into`; a nut is as strong as the bolt it is made for and has no round figure.
struct Tapped {
  double tensile_pa, diameters;
};
inline constexpr Tapped tapped[] = {{0, 0}, {60 * ksi_pa, 1}, {31 * ksi_pa, 1.5}, {27 * ksi_pa, 2}};
static_assert(std::size(tapped) == std::size(into_names));

struct Joint {
  std::string thread, hole;
  std::optional<BoltGrade> grade;
  std::optional<Threads> threads;
  std::optional<double> nut_factor, scatter;
  std::optional<Into> into;
  std::optional<PressureDifference> strength;
  std::optional<Length> engaged, shims;
  std::optional<Torque> torque;
  std::optional<double> share;
  std::optional<int> count;
  std::optional<Force> clamp, load;
  std::optional<bool> to_yield, used_before;
  static std::span<const FieldInfo> fields();
};

struct Input {
  Named<Joint> joint;
  static std::span<const FieldInfo> fields();
};

struct JointModel {
  std::string name;
  std::optional<physics::Thread> thread, hole;
  std::optional<physics::BoltStrength> strength;
  bool grade_known = false, outside = false;  ///< outside: its standard has no bolt of that size
  std::optional<double> factor;               ///< torque over preload and diameter as taken
  double scatter = 1;                         ///< by what that is off
  std::optional<double> torque_nm, engaged_m, clamp_n, load_n;
  double tapped_pa = 0, tapped_diameters = 0, share = 0;
  int count = 1;
  std::optional<bool> to_yield, used_before;
  std::string used_path, torque_path, scatter_path;
  std::vector<std::string> bolt_missing;     ///< thread and grade
  std::vector<std::string> factor_missing;   ///< state of the threads
  std::vector<std::string> engaged_missing;  ///< what it is screwed into, and how far
  std::vector<std::string> yield_missing;    ///< of one used before: whether its kind is stretched

  bool told() const { return thread && strength; }
  double proof_n() const { return strength->proof_pa * physics::stress_area_m2(*thread).value; }
  /// Whether a torque tells its clamp: by an angle into yield none does.
  bool by_torque() const { return !to_yield.value_or(false); }
  /// What keeps the clamp of a torque from being known, the torque itself left out.
  std::vector<std::string> clamp_missing() const;
  /// Whether the hole, where it was gauged for itself, has the bolt's thread; only where the bolt's is known.
  bool fits_hole() const;
  /// Whether less thread is engaged than is wanted; of a whole nut never.
  bool short_of_thread() const { return engaged_m && *engaged_m < wanted_m(); }
  /// Length of thread wanted: the bolt breaks before it strips, and no less than the trade has it.
  double wanted_m() const;
  /// Pull at which the thread strips; empty where nobody told how much of it is engaged: in a whole nut of its grade.
  std::optional<double> strips_n() const;
  /// What a torque leaves in the bolt.
  double preload_n(double torque_nm) const { return torque_nm / (*factor * scatter * thread->diameter_m); }
};

struct Model {
  std::vector<JointModel> joints;
};

struct System {
  using Input = fasteners::Input;
  using Model = fasteners::Model;
  static constexpr std::string_view key = "fasteners", title = "fasteners";
  static constexpr Station where = Station::underneath;
  static constexpr bool may_be_left_out = true;
  static Model resolve(const Input& in, Resolver& r);
  static std::span<const Block> blocks() { return {}; }
  static std::span<const Requirement> requirements();
};

}  // namespace sw::fasteners
