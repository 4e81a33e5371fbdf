#pragma once
// Shelf files: `[alternator.high-idle-140]` holds the figures of one part under its category and name, and beside them
// what the shop wants to know of it.
#include <array>
#include <vector>

#include "field/field.hpp"
#include "field/tree.hpp"

namespace sw {

/// Keys of a part that are not figures of the car.
inline constexpr std::array<std::string_view, 5> shop_keys = {"price", "lead_time", "labour", "title", "note"};

struct Shelves {
  std::vector<Node> files;  ///< searched in this order
  bool incomplete = false;  ///< one could not be read: a part that is not found may stand there
};

/// Says of a part's tree and all below it what part it is.
void mark_part(Node& node, const std::string& part);

/// Puts the figures of a part under every group that names one (`part = "…"`); what stands in the group itself wins,
/// with a warning at its place unless it is `chosen`.
void place_parts(Node& table, std::span<const FieldInfo> fields, const Shelves& shelves, Diagnostics& faults);

}  // namespace sw
