#pragma once
// The closed table of unit names. Every other unit is an expression over these (unit.hpp).
#include <optional>
#include <span>
#include <string_view>

#include "quantity/unit.hpp"

namespace sw {

struct NamedUnit {
  std::string_view name;
  Unit unit;
  std::string_view prefixes = {};  ///< those of u m c k M the unit is written with
};

std::span<const NamedUnit> named_units();
/// The unit of that name, with or without a prefix; none where the table has no such name.
std::optional<Unit> find_unit(std::string_view name);
/// The known unit a mistyped name was probably meant to be: same letters in another case, a usual other spelling, or
/// the nearest by edit distance (at most a third of its length); empty where nothing is near.
std::string_view nearest_unit(std::string_view name);

}  // namespace sw
