#pragma once
// Runs a sum from `key=value` words, the same for terminal, API and tests.
#include <string>
#include <vector>

#include "sum/sum.hpp"

namespace sw {

/// One argument as shown: numbers in `unit`, or a text. A list keeps its rows by `columns`.
struct SumValue {
  std::string key, label;
  std::string unit = "-";       ///< `-` for a pure number or a text
  std::vector<double> numbers;  ///< one, or those of a list
  std::string text;             ///< of a choice, yes or no, text; or of a wire gauge
  bool is_list = false;
  int columns = 1;
  bool assumed = false;  ///< an input nobody gave: its default
};

struct SumResult {
  std::string sum;
  std::vector<SumValue> inputs, outputs;  ///< inputs as given, then defaults; outputs that have a value
  bool valid = true;
  std::vector<std::string> outside, notes;
  std::string range, source, caution;
  Diagnostics faults;  ///< all of them; outputs are empty where there is one

  /// 0; 2 bad input; 3 outside the law's range (the value is shown, marked).
  int exit_code() const;
  /// One line an output with its unit, then range, source, caution; or the faults, one a line.
  std::string to_text() const;
  std::string to_json() const;
  const SumValue* output(std::string_view key) const;
};

/// `args`: `key=value` words in any order. `units`: `key=unit` words, each chooses an output's unit.
SumResult run_sum(std::string_view name, const std::vector<std::string>& args,
                  const std::vector<std::string>& units = {});
/// One line a sum: name and title.
std::string list_sums();
/// Arguments, outputs, range, source of one sum in words.
std::string describe_sum(const Sum& s);

}  // namespace sw
