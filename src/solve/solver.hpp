#pragma once
// What can be solved for instead of guessed: one entry a key (solvers.cpp), one file a solver beside it. A solver looks
// for the settings at which the car meets the requirement itself, by the same functions that judge it, and hands back
// what to change; it edits nothing.
#include <optional>
#include <string>
#include <vector>

#include "duty/duties.hpp"
#include "model/caution.hpp"
#include "model/finding.hpp"

namespace sw {

/// One figure to set: the field's path, and its value in SI; of a curve its rows, of a text its words. Kind and unit
/// are the field table's.
struct Setting {
  std::string path;
  double value = 0;
  std::optional<Curve> curve = std::nullopt;
  std::optional<std::string> words = std::nullopt;
};

struct Solution {
  std::string says;                  ///< what was found, in one sentence with its figures
  std::vector<Setting> settings;     ///< to be spliced into the build with evidence `solved`; empty: nothing to change
  std::vector<Because> because;      ///< figures it rests on, and what it comes to
  std::vector<std::string> missing;  ///< paths without which nothing can be solved
  std::string trouble;               ///< why there is no solution, and what would give one; empty where there is
  Caution caution = Caution::none;   ///< of this solution, where the solver's own is not it
  bool solved() const { return missing.empty() && trouble.empty(); }
};

struct Solver {
  std::string_view key, title;
  std::string_view judged_by;  ///< ids of the requirements whose findings tell whether it is met, a space between
  Caution caution = Caution::none;
  std::string_view formula, source;
  Solution (*solve)(const Build& build, const DutySet& set) = nullptr;
  /// Paths the build lacks for it, where that can be told without solving; null: by solving.
  std::vector<std::string> (*needs)(const Build& build) = nullptr;
};

/// In the order they are listed to the user.
std::span<const Solver> solvers();

}  // namespace sw
