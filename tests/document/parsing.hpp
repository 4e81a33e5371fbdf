#pragma once
// One text parsed, with what was said of it.
#include <gtest/gtest.h>

#include "document/document.hpp"
#include "document/syntax.hpp"

namespace sw {

inline Node parsed(const std::string& text, bool json, std::vector<std::string>* said = nullptr) {
  Diagnostics faults;
  Node root = parse_text(text, 0, json, faults);
  for (auto& d : faults.all())
    if (said) said->push_back(say(d, {"t"}));
  return root;
}

inline std::string fault_of(const std::string& text, bool json = false) {
  std::vector<std::string> said;
  Node root = parsed(text, json, &said);
  EXPECT_TRUE(root.entries.empty());
  return said.size() == 1 ? said[0] : std::to_string(said.size()) + " faults";
}

}  // namespace sw
