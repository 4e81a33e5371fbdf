#pragma once
// Gauges and senders: what the driver is shown against what is true, over the range.
#include "model/system.hpp"

namespace sw::gauges {

struct Input {
  static std::span<const FieldInfo> fields();
};

struct Model {};

struct System {
  using Input = gauges::Input;
  using Model = gauges::Model;
  static constexpr std::string_view key = "gauges", title = "gauges and senders";
  static constexpr bool may_be_left_out = true;
  static Model resolve(const Input& in, Resolver& r);
  static std::span<const Block> blocks();
  static std::span<const Requirement> requirements();
};

}  // namespace sw::gauges
