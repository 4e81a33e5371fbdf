#pragma once
// Ignition: what the coil gets in the time and at the volts there are, what it costs, and when the spark comes.
#include "model/system.hpp"

namespace sw::ignition {

struct Input {
  static std::span<const FieldInfo> fields();
};

struct Model {};

struct System {
  using Input = ignition::Input;
  using Model = ignition::Model;
  static constexpr std::string_view key = "ignition", title = "ignition";
  static constexpr bool may_be_left_out = true;
  static Model resolve(const Input& in, Resolver& r);
  static std::span<const Block> blocks();
  static std::span<const Requirement> requirements();
};

}  // namespace sw::ignition
