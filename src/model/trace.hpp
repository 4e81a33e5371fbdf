#pragma once
// What a run leaves behind: every port at every accepted step, and how the run ended.
#include <string>
#include <string_view>
#include <vector>

#include "model/port.hpp"

namespace sw {

enum class Outcome : std::uint8_t { not_run, done, not_converged, chatter };

/// How a solve or run ended. Usable only when `done`.
struct Summary {
  Outcome outcome = Outcome::not_run;
  std::string reason;         ///< in words, with ports, residual and advice where it did not converge
  double worst_residual = 0;  ///< in the unit the reason names
  long steps = 0, evaluations = 0, events = 0;
  bool usable() const { return outcome == Outcome::done; }
};

/// Rows in time order; row r, slot s at `values[r * width + s]`.
struct Trace {
  std::vector<double> time;  ///< s
  std::vector<double> values;
  std::size_t width = 0;
  Summary summary;

  std::size_t rows() const { return time.size(); }
  double at(std::size_t row, std::size_t slot) const { return values[row * width + slot]; }
  std::size_t highest(std::size_t slot) const;  ///< row of the greatest value
  std::size_t lowest(std::size_t slot) const;
  /// The rows before `row`.
  Trace before(std::size_t row) const;
  /// Time mean over the last `share` of the run.
  double late_mean(std::size_t slot, double share) const;
};

}  // namespace sw
