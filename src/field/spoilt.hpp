#pragma once
// What the faults found in a text leave unknown. A rule that looks at several fields is not tried on one that was given
// and could not be read: its own fault says what to mend, and a default in its place would be judged as if it were
// meant.
#include <span>
#include <string>
#include <string_view>
#include <vector>

#include "field/field.hpp"
#include "field/tree.hpp"

namespace sw {

class Spoilt {
 public:
  Spoilt() = default;
  Spoilt(std::span<const FieldInfo> fields, const Diagnostics& faults);
  /// Whether a fault stands at `path`, below it, or at something that holds it.
  bool at(std::string_view path) const;
  bool none() const { return paths_.empty(); }

 private:
  std::vector<std::string> paths_;  ///< `*` stands for an entry of any name
};

}  // namespace sw
