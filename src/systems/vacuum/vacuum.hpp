#pragma once
// Manifold vacuum and what lives on it: booster, valves, crankcase breathing.
#include "model/system.hpp"

namespace sw::vacuum {

struct Input {
  std::optional<VacuumPressure> idle;
  static std::span<const FieldInfo> fields();
};

struct Model {
  double idle_pa = 0;
};

struct System {
  using Input = vacuum::Input;
  using Model = vacuum::Model;
  static constexpr std::string_view key = "vacuum", title = "vacuum and breathing";
  static Model resolve(const Input& in, Resolver& r);
  static std::span<const Block> blocks();
  static std::span<const Requirement> requirements();
};

}  // namespace sw::vacuum
