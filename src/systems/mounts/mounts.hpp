#pragma once
// The engine in its mounts: how it stands as against where it stood when gaps, slopes and cables were measured. What
// hangs on that reads it by ports: a shim under the gearbox moves a joint's angle and a pan.
#include "model/system.hpp"

namespace sw::mounts {

struct Input {
  std::optional<Length> span, sag, raised, tail_lift, intake_raised;
  static std::span<const FieldInfo> fields();
};

struct Model {
  double span_m = 0;  ///< asked for only where something was moved
  double sag_m = 0, raised_m = 0, tail_lift_m = 0, intake_raised_m = 0;

  bool moved() const { return sag_m != 0 || raised_m != 0 || tail_lift_m != 0; }
  double front_rise_m() const { return raised_m - sag_m; }
  /// Nose down: a rigid body on two supports.
  double pitch_rad() const;
};

struct System {
  using Input = mounts::Input;
  using Model = mounts::Model;
  static constexpr std::string_view key = "mounts", title = "engine mounts";
  static constexpr Station where = Station::underneath;
  static Model resolve(const Input& in, Resolver& r);
  static std::span<const Block> blocks();
  static std::span<const Requirement> requirements();
};

}  // namespace sw::mounts
