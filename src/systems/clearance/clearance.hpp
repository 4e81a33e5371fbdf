#pragma once
// Clearance and fit-up: gaps that close when the engine rolls, the axle moves or the mounts sag, heat across them,
// solids and the envelopes they move in, stacks of pieces in a space, and panels that shims bring back.
#include "model/system.hpp"
#include "physics/tolerance_stack.hpp"
#include "systems/clearance/envelope.hpp"

namespace sw::clearance {

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
  std::optional<Length> space, roll, shims, wanted, most;
  std::optional<bool> on_intake;
  static std::span<const FieldInfo> fields();
};

/// Shims or spacers on hand for stacks.
inline constexpr int usual_shims_on_hand = 4;  ///< of a kind, where nobody counted
struct Shim {
  std::optional<Length> thickness;
  std::optional<int> count;
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
  Named<Body> body;
  Named<Travel> travel;
  Roll roll;
  Named<Envelope> envelope;
  Named<Stack> stack;
  Named<Shim> shim;
  Named<Panel> panel;
  static std::span<const FieldInfo> fields();
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

/// One measured length of a stack and the half-width of its band.
struct Dimension {
  std::string name;
  double size_m = 0, half_m = 0;
};

struct StackModel {
  std::string place;
  std::vector<std::string> missing;
  std::vector<Dimension> pieces;
  Dimension space, roll, shims;
  double wanted_m = 0;
  std::optional<double> most_m;
  bool on_intake = false;
  std::string shims_path, most_path;

  double height_m() const;
  /// With the shims there are.
  double left_m(const EngineMoved& moved) const;
  /// Those that have a doubt.
  std::vector<Dimension> doubtful() const;
  /// Few dimensions are judged by the worst case, many by the root of the sum of squares.
  bool by_worst_case() const;
  physics::ToleranceStack band() const;  ///< of the doubtful, in their order
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
  std::vector<EnvelopeModel> envelopes;
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
