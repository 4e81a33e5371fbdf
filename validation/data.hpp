#pragma once
// Measured data as text files bring them: comma-separated tables, and logs of an engine controller in several manners.
#include <filesystem>
#include <string>
#include <string_view>
#include <vector>

#include "field/curve.hpp"

namespace sw::validation {

/// A table with a line of headings. A cell that is no number reads as NaN.
class Table {
 public:
  explicit Table(const std::filesystem::path& file);
  std::size_t rows() const { return cells_.size(); }
  /// The column whose heading has `word` in it, in any case; throws where there is none.
  std::size_t column(std::string_view word) const;
  bool has(std::string_view word) const;
  const std::string& text(std::size_t row, std::size_t column) const;
  double number(std::size_t row, std::size_t column) const;
  std::vector<double> numbers(std::string_view word) const;

 private:
  std::vector<std::string> names_;
  std::vector<std::vector<std::string>> cells_;
};

/// A logger's rows, all of the same length; volts and load (of the engine, %) are empty where it has none.
struct Log {
  std::vector<double> time_s, engine_rpm, speed_kmh, coolant_c, intake_c, manifold_kpa, volts, load;
};
Log read_log(const std::filesystem::path& file);

/// Speed of a log as a duty takes it, m/s against s: a mean over `window_s` around each whole second. Loggers write
/// whole km/h several times a second; taken as they stand, each step would be a jolt.
Curve speed_trace(const Log& log, double window_s = 3);

/// The one file of a folder whose name has `word` in it; throws where there is none or more than one.
std::filesystem::path file_with(const std::filesystem::path& folder, std::string_view word);

}  // namespace sw::validation
