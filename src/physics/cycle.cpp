#include "physics/cycle.hpp"

#include <algorithm>
#include <charconv>
#include <cmath>
#include <limits>
#include <optional>
#include <span>

namespace sw::physics {
namespace {

constexpr std::size_t most_told = 10;

std::string_view trim(std::string_view s, std::string_view blank = " \t\r\"") {
  const auto first = s.find_first_not_of(blank);
  return first == std::string_view::npos ? std::string_view{} : s.substr(first, s.find_last_not_of(blank) - first + 1);
}

std::vector<std::string_view> cells(std::string_view line, char apart) {
  std::vector<std::string_view> out;
  for (;;) {
    const auto end = line.find(apart);
    out.push_back(trim(line.substr(0, end)));
    if (end == std::string_view::npos) return out;
    line.remove_prefix(end + 1);
  }
}

std::string_view next_line(std::string_view& text) {
  const auto end = text.find('\n');
  const std::string_view line = text.substr(0, end);
  text.remove_prefix(end == std::string_view::npos ? text.size() : end + 1);
  return line;
}

std::optional<double> number(std::string_view s, bool decimal_comma) {
  std::string plain(s);
  if (const auto comma = plain.find(','); decimal_comma && comma != std::string::npos) plain[comma] = '.';
  double x = 0;
  const auto [end, error] = std::from_chars(plain.data(), plain.data() + plain.size(), x);
  if (error != std::errc{} || end != plain.data() + plain.size() || !std::isfinite(x)) return {};
  return x;
}

std::string lower(std::string_view text) {
  std::string out(text);
  for (char& c : out)
    if (c >= 'A' && c <= 'Z') c = static_cast<char>(c - 'A' + 'a');
  return out;
}

/// The factor of `Speed (km/h)` where its name is `name` and its unit among `units`.
std::optional<double> factor_of(std::string_view heading, std::string_view name, std::span<const HeadingUnit> units) {
  const std::string small = lower(heading);
  if (!small.starts_with(name)) return {};
  const std::string_view rest = std::string_view(small).substr(name.size());
  if (!rest.empty() && std::string_view(" ([_").find(rest[0]) == std::string_view::npos) return {};
  for (auto& u : units)
    if (trim(rest, " ()[]_") == u.name) return u.factor;
  return {};
}

struct Columns {
  std::size_t time, speed;
  double time_unit, unit;
  char apart;
  std::string time_name, speed_name;
};

/// A heading that speaks of `what` without being one we know, for the hint.
std::string rename(const std::vector<std::string_view>& names, std::string_view what, std::string_view to) {
  for (auto& n : names)
    if (lower(n).find(what) != std::string::npos) return "; rename \"" + std::string(n) + "\" to " + std::string(to);
  return "; name the column " + std::string(to);
}

std::variant<Columns, TraceFaults> columns(std::string_view header) {
  constexpr std::size_t none = std::numeric_limits<std::size_t>::max();
  const char apart = header.find(';') != std::string_view::npos    ? ';'
                     : header.find('\t') != std::string_view::npos ? '\t'
                                                                   : ',';
  Columns c{none, none, 1, 1, apart, {}, {}};
  const auto names = cells(header, apart);
  std::string given;
  for (std::size_t i = 0; i < names.size(); ++i) {
    given += (given.empty() ? "\"" : ", \"") + std::string(names[i]) + "\"";
    if (const auto f = factor_of(names[i], "time", trace_time_units); f && c.time == none)
      c.time = i, c.time_unit = *f, c.time_name = names[i];
    const auto f = factor_of(names[i], "speed", trace_speed_units);
    if (!f) continue;
    if (c.speed != none)
      return TraceFaults{{1, "two speed columns: keep one of " + c.speed_name + " and " + std::string(names[i])}};
    c.speed = i, c.unit = *f, c.speed_name = names[i];
  }
  TraceFaults faults;
  if (c.time == none)
    faults.push_back({1, "no heading time_s in the first line, which has " + given + rename(names, "time", "time_s")});
  if (c.speed == none)
    faults.push_back({1, "no heading speed_mph or speed_kmh in the first line, which has " + given +
                             rename(names, "speed", "speed_mph or speed_kmh, by its unit")});
  if (!faults.empty()) return faults;
  return c;
}

/// Rows into a trace; what is wrong with each is kept, so that all is told at once.
class Rows {
 public:
  explicit Rows(Columns c) : c_(std::move(c)) {}

  void row(std::size_t line, std::string_view text) {
    const auto cell = cells(text, c_.apart);
    if (cell.size() <= std::max(c_.time, c_.speed)) return fault(line, "fewer columns than the first line names");
    const auto time = read(line, cell[c_.time], c_.time_name), speed = read(line, cell[c_.speed], c_.speed_name);
    if (!time || !speed) return;
    put(line, *time * c_.time_unit, *speed * c_.unit, cell);
  }

  std::variant<SpeedTrace, TraceFaults> take() {
    if (faults_.empty() && trace_.time_s.size() < 2) faults_.push_back({0, "fewer than two rows"});
    if (faults_.empty()) return std::move(trace_);
    if (more_ > 0) faults_.push_back({0, "and " + std::to_string(more_) + " more"});
    return std::move(faults_);
  }

 private:
  void fault(std::size_t line, std::string problem) {
    if (faults_.size() < most_told)
      faults_.push_back({line, std::move(problem)});
    else
      ++more_;
  }

  std::optional<double> read(std::size_t line, std::string_view cell, const std::string& name) {
    const auto x = number(cell, c_.apart != ',');
    if (!x) fault(line, "\"" + std::string(cell) + "\" under " + name + " is not a number");
    return x;
  }

  void put(std::size_t line, double time, double speed, const std::vector<std::string_view>& cell) {
    const std::string written(cell[c_.speed]);
    if (speed < 0) return fault(line, "a speed below zero: " + written);
    if (speed > fastest_row_m_s)
      return fault(line, "faster than 200 mph: " + written + " under " + c_.speed_name + "; is that its unit?");
    if (!trace_.time_s.empty()) {
      const double step = time - trace_.time_s.back();
      if (step <= 0)
        return fault(line, c_.time_name + " does not rise: " + std::string(cell[c_.time]) + " after the row before it");
      const double rate = std::abs(speed - trace_.speed_m_s.back()) / step;
      if (rate > steepest_row_m_s2)
        fault(line, "from " + speed_text_ + " in line " + std::to_string(line_) + " to " + written + " in line " +
                        std::to_string(line) + " is a jump no car makes: " + std::to_string(std::lround(rate)) +
                        " m/s2, above 12");
    }
    trace_.time_s.push_back(time);
    trace_.speed_m_s.push_back(speed);
    speed_text_ = written, line_ = line;
  }

  Columns c_;
  SpeedTrace trace_;
  TraceFaults faults_;
  std::size_t more_ = 0, line_ = 0;
  std::string speed_text_;
};

/// The part of a trace between two times, its ends put in on the straight line.
SpeedTrace cut(const SpeedTrace& t, const Span& span) {
  SpeedTrace out;
  const auto put = [&](double time, double speed) { out.time_s.push_back(time), out.speed_m_s.push_back(speed); };
  put(span.first, trace_speed(t, span.first));
  for (std::size_t i = 0; i < t.time_s.size(); ++i)
    if (t.time_s[i] > span.first && t.time_s[i] < span.second) put(t.time_s[i], t.speed_m_s[i]);
  put(span.second, trace_speed(t, span.second));
  return out;
}

void add(TraceFigures& f, const SpeedTrace& t) {
  for (std::size_t i = 0; i < t.time_s.size(); ++i) {
    f.top_speed_m_s = std::max(f.top_speed_m_s, t.speed_m_s[i]);
    if (i == 0) continue;
    const double step = t.time_s[i] - t.time_s[i - 1], rise = t.speed_m_s[i] - t.speed_m_s[i - 1];
    f.duration_s += step;
    f.distance_m += 0.5 * step * (t.speed_m_s[i] + t.speed_m_s[i - 1]);
    f.greatest_acceleration_m_s2 = std::max(f.greatest_acceleration_m_s2, rise / step);
    if (t.speed_m_s[i] == 0) f.idle_s += step;
  }
}

}  // namespace

std::variant<SpeedTrace, TraceFaults> read_speed_trace(std::string_view csv) {
  if (csv.starts_with("\xEF\xBB\xBF")) csv.remove_prefix(3);
  auto found = columns(next_line(csv));
  if (auto* faults = std::get_if<TraceFaults>(&found)) return std::move(*faults);
  Rows rows(std::get<Columns>(std::move(found)));
  for (std::size_t line = 2; !csv.empty(); ++line) {
    const std::string_view row = next_line(csv);
    if (!trim(row).empty()) rows.row(line, row);
  }
  return rows.take();
}

double trace_speed(const SpeedTrace& t, double time_s) {
  const auto next = std::upper_bound(t.time_s.begin(), t.time_s.end(), time_s);
  if (next == t.time_s.begin()) return t.speed_m_s.front();
  if (next == t.time_s.end()) return t.speed_m_s.back();
  const std::size_t i = static_cast<std::size_t>(next - t.time_s.begin());
  const double share = (time_s - t.time_s[i - 1]) / (t.time_s[i] - t.time_s[i - 1]);
  return t.speed_m_s[i - 1] + share * (t.speed_m_s[i] - t.speed_m_s[i - 1]);
}

bool span_fits(const SpeedTrace& t, const Span& span) {
  return span.first < span.second && span.first >= t.time_s.front() && span.second <= t.time_s.back();
}

TraceFigures trace_figures(const SpeedTrace& trace, const std::vector<Span>& spans) {
  TraceFigures f;
  if (spans.empty()) add(f, trace);
  for (const Span& s : spans) add(f, cut(trace, s));
  f.mean_speed_m_s = f.duration_s > 0 ? f.distance_m / f.duration_s : 0;
  return f;
}

}  // namespace sw::physics
