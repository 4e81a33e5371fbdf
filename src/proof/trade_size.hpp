#pragma once
// Sizes a shop can buy or set: no pulley of 2.4137 in, no wire between two gauges. The rows, steps and bounds are data
// with their sources: stock/trade_sizes.toml.
#include <optional>
#include <string_view>

#include "field/field.hpp"

namespace sw {

/// The first trade size at or beyond `si` in the direction asked, SI; empty where there is none (a wire above 4/0, a
/// fuse above the largest). Wire goes by gauge, fuses by their ratings, anything else by a step of the field's own
/// unit.
std::optional<double> trade_size(const FieldInfo& f, double si, bool upward);
/// The same of a factor on a whole curve or on several figures.
double trade_factor(double factor, bool upward);

/// How far a setting may be raised over what it is, and what to mind when it is. Empty for any other.
struct SettingBound {
  std::string_view path;
  double most_share;
  std::string_view mind;
};
std::optional<SettingBound> setting_bound(std::string_view path);

}  // namespace sw
