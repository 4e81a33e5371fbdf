#pragma once
// Shared by the tests of sums.
#include <gtest/gtest.h>

#include <string>
#include <vector>

#include "sum/run.hpp"

namespace sw {

/// `key: problem`, one fault a line.
inline std::string faults_of(const SumResult& r) {
  std::string text;
  for (auto& d : r.faults.all()) text += d.path + ": " + d.problem + "\n";
  return text;
}

inline bool has(const std::string& text, std::string_view part) { return text.find(part) != std::string::npos; }

/// `base` and some more words.
inline std::vector<std::string> with(std::vector<std::string> base, const std::vector<std::string>& more) {
  base.insert(base.end(), more.begin(), more.end());
  return base;
}

/// The number of an output; fails where there is none.
inline double number_of(const SumResult& r, std::string_view key) {
  const SumValue* v = r.output(key);
  EXPECT_NE(v, nullptr) << key << "\n" << r.to_text();
  return v && !v->numbers.empty() ? v->numbers[0] : 0;
}

}  // namespace sw
