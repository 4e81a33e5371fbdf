#pragma once
// The steering shaft from column to box: its joints' angles and phases in space, what holds it, how far its sliding
// part is engaged, and how far it can give way in a crash.
#include "model/point.hpp"
#include "model/system.hpp"
#include "physics/joint.hpp"

namespace sw::steering {

/// A joint, by its place or by the angle it works at; the yoke's phase on the shaft before it.
struct Joint {
  std::optional<Length> x, y, z;
  std::optional<Angle> angle, plane, phase;
  static std::span<const FieldInfo> fields();
};

/// The part of the shaft that slides.
struct Slide {
  std::optional<Length> engaged, lost, least;
  static std::span<const FieldInfo> fields();
};

struct Input {
  Point column, box;
  Named<Joint> joint;
  std::optional<int> bearings;
  Slide slide;
  std::optional<Length> collapse;
  static std::span<const FieldInfo> fields();
};

struct Model {
  std::vector<std::string> joints;  ///< from the column down
  physics::JointChain chain;        ///< empty where something is missing
  std::vector<std::string> missing;
  std::vector<std::string> phase_paths;     ///< of the joints from the second on, in the order of the chain's phases
  std::vector<std::string> planes_missing;  ///< of joints told by angles: what their phases go by
  std::optional<int> bearings;
  std::string bearings_path;
  std::optional<double> engaged_m, collapse_m;
  double lost_m = 0, least_m = 0;

  bool told() const { return missing.empty() && !chain.shafts.empty(); }
};

struct System {
  using Input = steering::Input;
  using Model = steering::Model;
  static constexpr std::string_view key = "steering", title = "steering shaft";
  static constexpr Station where = Station::underneath;
  static constexpr bool may_be_left_out = true;
  static Model resolve(const Input& in, Resolver& r);
  static std::span<const Block> blocks() { return {}; }
  static std::span<const Requirement> requirements();
};

}  // namespace sw::steering
