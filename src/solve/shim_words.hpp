#pragma once
// A stack of shims as a shop reads it off: "0.060 in + 0.010 in", thickest first.
#include <string>
#include <vector>

#include "quantity/print.hpp"

namespace sw {

inline std::string stack_words(const std::vector<double>& stack) {
  std::string text;
  for (double t : stack) text += (text.empty() ? "" : " + ") + print(t, kind::length, "in", 3);
  return text.empty() ? "none" : text;
}

}  // namespace sw
