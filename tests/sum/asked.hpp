#pragma once
// A sum asked in a test: its output in a unit, or its exit code.
#include <gtest/gtest.h>

#include <cmath>

#include "sum/run.hpp"

namespace sw {

using Words = std::vector<std::string>;

/// The one number of an output, or a failure that shows the faults.
inline double asked(std::string_view sum, const Words& args, const std::string& output, const std::string& unit = {}) {
  const SumResult r = run_sum(sum, args, unit.empty() ? Words{} : Words{output + "=" + unit});
  const SumValue* v = r.output(output);
  EXPECT_TRUE(v && v->numbers.size() == 1) << r.to_text();
  return v && v->numbers.size() == 1 ? v->numbers[0] : NAN;
}
inline bool gives(std::string_view sum, const Words& args, std::string_view output) {
  return run_sum(sum, args).output(output) != nullptr;
}
inline int code(std::string_view sum, const Words& args) { return run_sum(sum, args).exit_code(); }

}  // namespace sw
