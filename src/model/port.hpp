#pragma once
// A port: a named quantity that one system computes and others read. Ports are the only way from one system to another.
#include <span>
#include <string_view>

#include "quantity/kind.hpp"

namespace sw {

struct Port {
  std::string_view name;  ///< `bus.voltage`
  const Kind* kind = &kind::number;
  std::string_view unit;  ///< in which it is shown; default: the kind's first
  std::string_view says;  ///< in words, as it stands in a because-list: "voltage at the fans"
};
constexpr std::string_view unit_of(const Port& p) {
  return p.unit.empty() && !p.kind->units.empty() ? p.kind->units[0] : p.unit;
}

}  // namespace sw
