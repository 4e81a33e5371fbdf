#pragma once
// Laying one tree over another, as an overlay over its base and a group over the part that fills it.
#include "field/field.hpp"
#include "field/tree.hpp"

namespace sw {

/// Lays `over` over `base`: tables of groups and lists merge key by key, anything else replaces, a value with its
/// evidence as a whole. `name = false` takes a group or an entry of a list out; where there is none to take out that
/// is a fault, unless `base` is known to be `incomplete` (it could not be read).
void lay_over(Node& base, Node over, std::span<const FieldInfo> fields, std::string_view path, bool incomplete,
              Diagnostics& faults);

const FieldInfo* field_of(std::span<const FieldInfo> fields, std::string_view key);

}  // namespace sw
