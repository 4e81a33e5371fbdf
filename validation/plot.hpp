#pragma once
// A plot as data and a gnuplot script; `./run validate` has gnuplot draw it. Measured and computed differ in more than
// colour: what was measured is black, what was computed blue with dashes or open marks.
#include <filesystem>
#include <string>
#include <vector>

namespace sw::validation {

enum class Style {
  measured_line,
  measured_marks,
  computed_line,
  computed_marks,
  computed_bars,
  other_line,
  other_marks,
  guide
};

struct Series {
  std::string title;
  Style style;
  std::vector<double> x, y;
  std::vector<double> half = {};  ///< of bars: how far they reach up and down
};

struct Plot {
  std::string name;               ///< of the file
  std::string title, across, up;  ///< the axes with their units
  std::vector<Series> series;
  std::string settings;  ///< further lines for gnuplot
};

/// Lines longer than this are thinned evenly before they are drawn.
inline constexpr std::size_t most_points = 700;

/// Writes NAME.csv and NAME.gp into `folder`; the script draws `drawing`.
void write_plot(const Plot& plot, const std::filesystem::path& folder, const std::filesystem::path& drawing);

}  // namespace sw::validation
