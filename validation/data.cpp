#include "data.hpp"

#include <algorithm>
#include <charconv>
#include <cmath>
#include <fstream>
#include <limits>
#include <stdexcept>

namespace sw::validation {
namespace {

constexpr double none = std::numeric_limits<double>::quiet_NaN();

std::string trim(const std::string& s) {
  const auto first = s.find_first_not_of(" \t\r");
  return first == std::string::npos ? "" : s.substr(first, s.find_last_not_of(" \t\r") - first + 1);
}

std::vector<std::string> cells_of(const std::string& line) {
  std::vector<std::string> cells(1);
  bool quoted = false;
  for (char c : line) {
    if (c == '"')
      quoted = !quoted;
    else if (c == ',' && !quoted)
      cells.emplace_back();
    else
      cells.back() += c;
  }
  for (auto& cell : cells) cell = trim(cell);
  return cells;
}

std::string lower(std::string_view text) {
  std::string out(text);
  std::transform(out.begin(), out.end(), out.begin(), [](unsigned char c) { return std::tolower(c); });
  return out;
}

double number_of(std::string_view s) {
  double x = none;
  const auto [end, error] = std::from_chars(s.data(), s.data() + s.size(), x);
  return error == std::errc{} && end == s.data() + s.size() ? x : none;
}

/// Seconds of a plain number or of a clock, 06:54:43.501.
double seconds_of(const std::string& s) {
  if (s.size() < 8 || s[2] != ':' || s[5] != ':') return number_of(s);
  const std::string_view v = s;
  return 3600 * number_of(v.substr(0, 2)) + 60 * number_of(v.substr(3, 2)) + number_of(v.substr(6));
}

}  // namespace

Table::Table(const std::filesystem::path& file) {
  std::ifstream in(file, std::ios::binary);
  std::string line;
  if (!std::getline(in, line)) throw std::runtime_error("cannot read " + file.filename().string());
  names_ = cells_of(line);
  while (std::getline(in, line))
    if (!trim(line).empty()) cells_.push_back(cells_of(line));
}

bool Table::has(std::string_view word) const {
  return std::any_of(names_.begin(), names_.end(),
                     [&](auto& n) { return lower(n).find(lower(word)) != std::string::npos; });
}

std::size_t Table::column(std::string_view word) const {
  for (std::size_t i = 0; i < names_.size(); ++i)
    if (lower(names_[i]).find(lower(word)) != std::string::npos) return i;
  throw std::runtime_error("no column named " + std::string(word));
}

const std::string& Table::text(std::size_t row, std::size_t column) const {
  static const std::string empty;
  return column < cells_[row].size() ? cells_[row][column] : empty;
}

double Table::number(std::size_t row, std::size_t column) const { return number_of(text(row, column)); }

std::vector<double> Table::numbers(std::string_view word) const {
  const std::size_t c = column(word);
  std::vector<double> out;
  for (std::size_t r = 0; r < rows(); ++r) out.push_back(number(r, c));
  return out;
}

Log read_log(const std::filesystem::path& file) {
  const Table t(file);
  const std::size_t time = t.column(t.has("run_tin") ? "run_tin" : "time");
  const std::size_t columns[] = {t.column("rpm"), t.column("vehicle"), t.column("coolant"),
                                 t.column(t.has("intake_air") ? "intake_air" : "intake air"),
                                 t.column(t.has("intake_manifold") ? "intake_manifold" : "intake manifold")};
  Log log;
  std::vector<double>* const into[] = {&log.engine_rpm, &log.speed_kmh, &log.coolant_c, &log.intake_c,
                                       &log.manifold_kpa};
  for (std::size_t r = 0; r < t.rows(); ++r) {
    const bool whole =
        std::none_of(std::begin(columns), std::end(columns), [&](std::size_t c) { return std::isnan(t.number(r, c)); });
    if (!whole || std::isnan(seconds_of(t.text(r, time)))) continue;
    log.time_s.push_back(seconds_of(t.text(r, time)));
    for (std::size_t i = 0; i < std::size(into); ++i) into[i]->push_back(t.number(r, columns[i]));
    if (t.has("voltage")) log.volts.push_back(t.number(r, t.column("voltage")));
    if (t.has("engine_load")) log.load.push_back(t.number(r, t.column("engine_load")));
  }
  if (log.time_s.empty()) throw std::runtime_error("no rows in " + file.filename().string());
  const double first = log.time_s.front();
  for (double& x : log.time_s) x -= first;
  return log;
}

Curve speed_trace(const Log& log, double window_s) {
  Curve c;
  for (double t = 0; t <= std::floor(log.time_s.back()); ++t) {
    double sum = 0;
    const auto from = std::lower_bound(log.time_s.begin(), log.time_s.end(), t - window_s / 2),
               to = std::upper_bound(log.time_s.begin(), log.time_s.end(), t + window_s / 2);
    for (auto it = from; it != to; ++it) sum += log.speed_kmh[static_cast<std::size_t>(it - log.time_s.begin())];
    c.x.push_back(t);
    c.y.push_back(to > from ? sum / static_cast<double>(to - from) / 3.6 : c.y.empty() ? 0.0 : c.y.back());
  }
  return c;
}

std::filesystem::path file_with(const std::filesystem::path& folder, std::string_view word) {
  std::vector<std::filesystem::path> found;
  if (std::filesystem::is_directory(folder))
    for (auto& entry : std::filesystem::directory_iterator(folder))
      if (entry.path().extension() == ".csv" && entry.path().filename().string().find(word) != std::string::npos)
        found.push_back(entry.path());
  if (found.size() != 1)
    throw std::runtime_error(std::to_string(found.size()) + " files with \"" + std::string(word) + "\" in " +
                             folder.filename().string());
  return found.front();
}

}  // namespace sw::validation
