#include "physics/cycle.hpp"

#include <algorithm>
#include <charconv>
#include <limits>
#include <optional>

namespace sw::physics {
namespace {

constexpr double mph = 0.44704, kmh = 1 / 3.6;

std::string_view trim(std::string_view s) {
  constexpr std::string_view blank = " \t\r\"";
  const auto first = s.find_first_not_of(blank);
  return first == std::string_view::npos ? std::string_view{} : s.substr(first, s.find_last_not_of(blank) - first + 1);
}

std::vector<std::string_view> cells(std::string_view line) {
  std::vector<std::string_view> out;
  for (;;) {
    const auto comma = line.find(',');
    out.push_back(trim(line.substr(0, comma)));
    if (comma == std::string_view::npos) return out;
    line.remove_prefix(comma + 1);
  }
}

std::string_view next_line(std::string_view& text) {
  const auto end = text.find('\n');
  const std::string_view line = text.substr(0, end);
  text.remove_prefix(end == std::string_view::npos ? text.size() : end + 1);
  return line;
}

std::optional<double> number(std::string_view s) {
  double x = 0;
  const auto [end, error] = std::from_chars(s.data(), s.data() + s.size(), x);
  if (error != std::errc{} || end != s.data() + s.size()) return {};
  return x;
}

struct Columns {
  std::size_t time, speed;
  double unit;
};

std::variant<Columns, TraceFault> columns(std::string_view header) {
  constexpr std::size_t none = std::numeric_limits<std::size_t>::max();
  Columns c{none, none, 0};
  const auto names = cells(header);
  for (std::size_t i = 0; i < names.size(); ++i) {
    if (names[i] == "time_s") c.time = i;
    if (names[i] != "speed_mph" && names[i] != "speed_kmh") continue;
    if (c.speed != none) return TraceFault{1, "two speed columns: keep one of speed_mph and speed_kmh"};
    c.speed = i, c.unit = names[i] == "speed_mph" ? mph : kmh;
  }
  std::string given;
  for (auto& name : names) given += (given.empty() ? "\"" : ", \"") + std::string(name) + "\"";
  if (c.time == none) return TraceFault{1, "no heading time_s in the first line, which has " + given};
  if (c.speed == none) return TraceFault{1, "no heading speed_mph or speed_kmh in the first line, which has " + given};
  return c;
}

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

std::variant<SpeedTrace, TraceFault> read_speed_trace(std::string_view csv) {
  if (csv.starts_with("\xEF\xBB\xBF")) csv.remove_prefix(3);
  const auto found = columns(next_line(csv));
  if (const auto* fault = std::get_if<TraceFault>(&found)) return *fault;
  const Columns c = std::get<Columns>(found);
  SpeedTrace trace;
  for (std::size_t line = 2; !csv.empty(); ++line) {
    const std::string_view row = next_line(csv);
    if (trim(row).empty()) continue;
    const auto cell = cells(row);
    if (cell.size() <= std::max(c.time, c.speed)) return TraceFault{line, "fewer columns than the first line names"};
    const auto time = number(cell[c.time]), speed = number(cell[c.speed]);
    if (!time || !speed)
      return TraceFault{line, "\"" + std::string(time ? cell[c.speed] : cell[c.time]) + "\" under " +
                                  (time ? c.unit == mph ? "speed_mph" : "speed_kmh" : "time_s") + " is not a number"};
    if (*speed < 0) return TraceFault{line, "a speed below zero: " + std::string(cell[c.speed])};
    if (!trace.time_s.empty() && *time <= trace.time_s.back())
      return TraceFault{line, "time_s does not rise: " + std::string(cell[c.time]) + " after the row before it"};
    trace.time_s.push_back(*time);
    trace.speed_m_s.push_back(*speed * c.unit);
  }
  if (trace.time_s.size() < 2) return TraceFault{0, "fewer than two rows"};
  return trace;
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
