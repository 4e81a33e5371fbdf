#pragma once
// Wheels and tyres: what goes over the brake, what touches the body, what the tyre carries.
#include "model/system.hpp"

namespace sw::wheels {

struct Input {
  std::optional<Length> rim_width;
  static std::span<const FieldInfo> fields();
};

struct Model {};

struct System {
  using Input = wheels::Input;
  using Model = wheels::Model;
  static constexpr std::string_view key = "wheels", title = "wheels and tyres";
  static constexpr bool may_be_left_out = true;
  static Model resolve(const Input& in, Resolver& r);
  static std::span<const Block> blocks();
  static std::span<const Requirement> requirements();
};

}  // namespace sw::wheels
