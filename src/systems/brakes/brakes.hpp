#pragma once
// The brakes: pedal, booster, master cylinder, valves, discs and drums, and what they do to the road.
#include "model/system.hpp"

namespace sw::brakes {

struct Input {
  std::optional<double> pedal_ratio;
  static std::span<const FieldInfo> fields();
};

struct Model {};

struct System {
  using Input = brakes::Input;
  using Model = brakes::Model;
  static constexpr std::string_view key = "brakes", title = "brakes";
  static constexpr bool may_be_left_out = true;
  static Model resolve(const Input& in, Resolver& r);
  static std::span<const Block> blocks();
  static std::span<const Requirement> requirements();
};

}  // namespace sw::brakes
