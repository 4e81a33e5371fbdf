#pragma once
// Solids that move, and the envelopes they move in: what is left between two of them wherever engine, axle and wheel
// may stand. Points by tape from one origin, right-handed axes as of the steering shaft: x to the rear, y to the
// driver's right, z up; taken with the car's weight on its wheels, wheels straight, engine at rest.
#include "model/point.hpp"
#include "model/system.hpp"
#include "physics/swept_distance.hpp"
#include "systems/clearance/between.hpp"
#include "systems/clearance/moved.hpp"

namespace sw::clearance {

enum class Shape : std::uint8_t { rod, block };
inline constexpr std::string_view shape_names[] = {"rod", "block"};
/// What a body goes with.
enum class Rides : std::uint8_t { chassis, engine, axle, steered };
inline constexpr std::string_view rides_names[] = {"the chassis", "the engine", "the axle", "the steered wheel"};

struct Body {
  std::optional<Shape> shape;
  std::optional<Rides> goes_with;
  std::string travel;
  std::optional<Length> diameter;
  Named<Point> point;
  static std::span<const FieldInfo> fields();
};

/// How an axle, or one wheel of an independent suspension, goes up and down and is steered.
struct Travel {
  std::optional<Length> bump, droop;
  Point hub, pivot_front, pivot_rear, pin_low, pin_high;
  std::optional<Angle> lock_left, lock_right;
  static std::span<const FieldInfo> fields();
};

/// The engine's roll in its mounts.
struct Roll {
  Point front, rear;
  std::optional<Angle> left, right;
  static std::span<const FieldInfo> fields();
};

struct Envelope {
  std::string first, second;
  std::optional<Between> between;
  std::optional<Length> wanted;
  static std::span<const FieldInfo> fields();
};

/// One thing that moves: for the search, and to tell where it stands.
struct Moves {
  enum class As : std::uint8_t { roll, lift, swing, lock };
  physics::Setting setting;
  As as = As::roll;
  std::string travel;   ///< whose
  physics::Vec3 hub{};  ///< of a swing: whose height is told
};

struct EnvelopeModel {
  std::string place;
  std::vector<std::string> missing;
  Between between = Between::moving;
  double wanted_m = 0;
  physics::Carried first, second;
  bool first_on_engine = false, second_on_engine = false;
  std::vector<Moves> moves;    ///< the settings of both
  physics::Vec3 front_mounts;  ///< the engine sinks and pitches there

  bool of_engine() const { return first_on_engine || second_on_engine; }
  /// Over all poses. Asked again with the same figures it is not searched again.
  physics::SweptDistance least(const EngineMoved& moved) const;
  double at_rest_m(const EngineMoved& moved) const;
};

struct Input;
std::vector<EnvelopeModel> envelopes_of(const Input& in, Resolver& r);

/// Of what moves, and of a wire beside what is hot, which is another hazard.
namespace envelope {
template <Concern concern>
void evaluate(const void* model, const Evidenced& run, std::vector<Verdict>& out);
}  // namespace envelope

}  // namespace sw::clearance
