#pragma once
// One leaf as it stands in a text: the bare value, or the table { value =, from =, plus_minus = } around it.
#include <optional>

#include "field/evidence.hpp"
#include "field/field.hpp"
#include "field/tree.hpp"

namespace sw {

struct Given {
  const Node* value = nullptr;
  Source source = Source::stated;
  const Node* plus_minus = nullptr;
  std::string part;
  bool sound = true;  ///< the table around the value has no fault; else the leaf stays empty
};

/// What reading one leaf needs to know beside its node.
struct Site {
  const FieldInfo& field;
  std::string_view path;
  Diagnostics& faults;
};

/// Takes the table around a value apart; every fault of it is reported. Empty where no value can be made of it.
std::optional<Given> take_apart(const Node& node, const Site& site, Source usual);
/// The user's own plus-minus in SI (of a curve: a share), or empty with the fault reported.
std::optional<double> read_plus_minus(const Node& node, const Site& site, double si);

}  // namespace sw
