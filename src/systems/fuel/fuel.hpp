#pragma once
// Fuel from the tank to the engine: pump, filters, lines, regulator, vapour, slosh.
#include "model/system.hpp"

namespace sw::fuel {

struct Input {
  std::optional<Volume> tank;
  static std::span<const FieldInfo> fields();
};

struct Model {};

struct System {
  using Input = fuel::Input;
  using Model = fuel::Model;
  static constexpr std::string_view key = "fuel", title = "fuel";
  static constexpr bool may_be_left_out = true;
  static Model resolve(const Input& in, Resolver& r);
  static std::span<const Block> blocks();
  static std::span<const Requirement> requirements();
};

}  // namespace sw::fuel
