#include "plot.hpp"

#include <algorithm>
#include <cmath>
#include <fstream>

namespace sw::validation {
namespace {

const char* look_of(Style s) {
  switch (s) {
    case Style::measured_line:
      return "lines lw 1.6 lc rgb '#000000'";
    case Style::measured_marks:
      return "points pt 7 ps 0.55 lc rgb '#000000'";
    case Style::computed_line:
      return "lines lw 2.4 dt (8,4) lc rgb '#1f5fbf'";
    case Style::computed_marks:
      return "points pt 6 ps 0.8 lw 1.3 lc rgb '#1f5fbf'";
    case Style::computed_bars:
      return "yerrorbars pt 6 ps 0.8 lw 1.3 lc rgb '#1f5fbf'";
    case Style::other_line:
      return "lines lw 2.0 dt (2,3) lc rgb '#b0501a'";
    case Style::other_marks:
      return "points pt 2 ps 0.6 lw 1.1 lc rgb '#b0501a'";
    case Style::guide:
      break;
  }
  return "lines lw 1.0 lc rgb '#888888'";
}

bool is_line(Style s) { return s == Style::measured_line || s == Style::computed_line || s == Style::other_line; }

void write_row(const Series& s, std::size_t i, std::ostream& out) {
  out << s.x[i] << ',' << s.y[i];
  if (!s.half.empty()) out << ',' << s.half[i];
  out << '\n';
}

/// Blocks of x,y parted by two empty lines, as gnuplot indexes them.
void write_data(const Plot& plot, const std::filesystem::path& file) {
  std::ofstream out(file);
  for (auto& s : plot.series) {
    const std::size_t step = is_line(s.style) ? s.x.size() / most_points + 1 : 1;
    for (std::size_t i = 0; i < s.x.size(); i += step)
      if (std::isfinite(s.x[i]) && std::isfinite(s.y[i])) write_row(s, i, out);
    out << "\n\n";
  }
}

}  // namespace

void write_plot(const Plot& plot, const std::filesystem::path& folder, const std::filesystem::path& drawing) {
  std::filesystem::create_directories(folder);
  const auto data = folder / (plot.name + ".csv");
  write_data(plot, data);
  std::ofstream out(folder / (plot.name + ".gp"));
  out << "set terminal svg size 820,460 font 'sans-serif,13' background '#ffffff'\n"
      << "set output '" << drawing.generic_string() << "'\n"
      << "set datafile separator ','\nset grid lc rgb '#dddddd'\nset key outside bottom center horizontal\n"
      << "set title \"" << plot.title << "\"\nset xlabel \"" << plot.across << "\"\nset ylabel \"" << plot.up << "\"\n"
      << plot.settings << "plot ";
  for (std::size_t i = 0; i < plot.series.size(); ++i)
    out << (i ? ", \\\n  " : "") << '\'' << data.generic_string() << "' index " << i
        << (plot.series[i].half.empty() ? " using 1:2 with " : " using 1:2:3 with ") << look_of(plot.series[i].style)
        << " title \"" << plot.series[i].title << '"';
  out << '\n';
}

}  // namespace sw::validation
