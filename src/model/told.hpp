#pragma once
// A computed figure as a line of a because-list.
#include <string>

#include "model/finding.hpp"

namespace sw {

inline Because told(std::string what, double si, const Kind& kind, std::string_view unit) {
  return {.what = std::move(what), .value = si, .kind = &kind, .unit = unit};
}

inline Because inches(std::string what, double m) { return told(std::move(what), m, kind::length, "in"); }

}  // namespace sw
