#pragma once
// Clearance and fit-up: gaps that close when the engine rolls, the axle moves or the mounts sag, heat across them,
// stacks of pieces in a space, and panels that shims bring back.
#include "model/system.hpp"

namespace sw::clearance {

/// What a gap keeps apart: it says how much is wanted where nobody else does.
enum class Between : std::uint8_t { moving, steering_link, wire_and_hot, standing };
inline constexpr std::string_view between_names[] = {"moving parts", "steering link at ride", "wire and hot part",
                                                     "standing parts"};
/// Where the engine's part lies as against the other: how the gap goes with the engine's height.
enum class Engine : std::uint8_t { apart, above, below };
inline constexpr std::string_view engine_names[] = {"not the engine's", "above", "below"};

struct Gap {
  std::optional<Between> between;
  std::optional<Length> gap, wanted;
  std::optional<Engine> engine;
  std::optional<Length> ahead, roll, bump, droop, lock;
  std::optional<bool> sleeved;
  std::optional<Temperature> comes_to, stands;
  static std::span<const FieldInfo> fields();
};

struct Piece {
  std::optional<Length> size;
  static std::span<const FieldInfo> fields();
};

struct Stack {
  Named<Piece> piece;
  std::optional<Length> space, roll, wanted;
  std::optional<bool> on_intake;
  static std::span<const FieldInfo> fields();
};

/// A panel's gap that opens or closes because something it hangs on was moved.
struct Panel {
  std::optional<Length> moved, moved_at, seen_at, shim, within;
  std::optional<int> shims;
  static std::span<const FieldInfo> fields();
};

struct Input {
  Named<Gap> gap;
  Named<Stack> stack;
  Named<Panel> panel;
  static std::span<const FieldInfo> fields();
};

/// How the engine stands as against where it was when the gaps were measured, by the mounts' ports.
struct EngineMoved {
  double front_rise_m = 0, pitch_rad = 0, intake_raised_m = 0;
  /// How far it rises `ahead_m` in front of the front mounts.
  double rise_m(double ahead_m) const;
};

struct GapModel {
  std::string place;
  std::vector<std::string> missing;
  Between between = Between::moving;
  Engine engine = Engine::apart;
  double gap_m = 0, wanted_m = 0, ahead_m = 0, roll_m = 0, bump_m = 0, droop_m = 0, lock_m = 0;
  std::optional<double> comes_to_k, stands_k;
  std::string comes_to_path, stands_path;

  /// What is left with everything against it at once; bump and droop exclude each other.
  double least_m(const EngineMoved& moved) const;
};

struct StackModel {
  std::string place;
  std::vector<std::string> missing;
  std::vector<std::pair<std::string, double>> pieces;
  double space_m = 0, roll_m = 0, wanted_m = 0;
  bool on_intake = false;

  double height_m() const;
  double left_m(const EngineMoved& moved) const;
};

struct PanelModel {
  std::string place;
  std::vector<std::string> missing;
  double moved_m = 0, lever = 1, shim_m = 0, within_m = 0;
  int shims = 0;

  /// How much the gap has opened at the end that is seen.
  double opened_m() const { return (moved_m - shims * shim_m) * lever; }
};

struct Model {
  std::vector<GapModel> gaps;
  std::vector<StackModel> stacks;
  std::vector<PanelModel> panels;
};

struct System {
  using Input = clearance::Input;
  using Model = clearance::Model;
  static constexpr std::string_view key = "clearance", title = "clearance and fit-up";
  static constexpr Station where = Station::engine_bay;
  static constexpr bool may_be_left_out = true;
  static Model resolve(const Input& in, Resolver& r);
  static std::span<const Block> blocks() { return {}; }
  static std::span<const Requirement> requirements();
};

}  // namespace sw::clearance
