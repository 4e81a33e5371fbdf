#include "cli/trace_table.hpp"

#include <algorithm>
#include <cmath>
#include <map>
#include <set>

#include "cli/page.hpp"
#include "model/outside.hpp"
#include "quantity/print.hpp"

namespace sw::cli {
namespace {

constexpr int csv_digits = 8, table_digits = 4;

/// A port's values in the unit it is shown in.
class Column {
 public:
  Column(const Port& port, std::size_t slot) : port_(&port), slot_(slot), text_(unit_of(port)) {
    auto read = parse_unit_for(text_, *port.kind);
    if (auto* unit = std::get_if<Unit>(&read)) unit_ = *unit;
  }
  std::string name() const { return std::string(port_->name); }
  std::string heading() const { return text_.empty() ? name() : name() + " [" + std::string(text_) + "]"; }
  std::string at(const Trace& trace, std::size_t row, int digits) const {
    const double si = trace.at(row, slot_);
    return std::isfinite(si) ? short_number(in_unit(si, unit_, *port_->kind), digits) : std::string();
  }
  std::size_t slot() const { return slot_; }
  std::string_view unit() const { return text_; }

 private:
  const Port* port_;
  std::size_t slot_;
  std::string_view text_;
  Unit unit_;
};

bool has_values(const Graph& graph, const std::string& name) { return !graph.unavailable.contains(name); }

/// Every named port that can be computed, in the order in which the car computes them.
std::vector<Column> all_columns(const Graph& graph) {
  std::map<std::uint16_t, std::string> by_slot;
  for (auto& [name, slot] : graph.slots)
    if (slot < graph.ports.size() && name != outside::time.name && has_values(graph, name)) by_slot[slot] = name;
  std::vector<Column> columns;
  for (auto& [slot, name] : by_slot) columns.emplace_back(graph.ports[slot], slot);
  return columns;
}

unsigned alive_bit(Method m) {
  return m == Method::crank ? in_crank : m == Method::pull ? in_pull : m == Method::rest ? in_rest : in_thermal;
}

bool always_zero(const Trace& trace, std::size_t slot) {
  for (std::size_t row = 0; row < trace.rows(); ++row)
    if (trace.at(row, slot) != 0) return false;
  return true;
}

std::vector<Column> key_columns(const Car& car, const Trace& trace, Method method) {
  const Graph& graph = car.graph();
  std::vector<std::size_t> slots;
  auto take = [&](int slot) {
    if (slot < 0 || static_cast<std::size_t>(slot) >= graph.ports.size()) return;
    const auto at = static_cast<std::size_t>(slot);
    if (std::find(slots.begin(), slots.end(), at) == slots.end() && !always_zero(trace, at)) slots.push_back(at);
  };
  take(graph.slot(outside::speed.name));
  for (auto& s : graph.states)
    if (s.info->alive & alive_bit(method)) take(s.value);
  for (auto& s : graph.switches) take(s.value);
  for (auto& system : car.systems())
    for (auto& requirement : system.requirements)
      for (auto& port : requirement.needs)
        if (!port.name.starts_with("duty.") && !graph.unavailable.contains(port.name)) take(graph.slot(port.name));
  std::vector<Column> columns;
  for (auto slot : slots)
    if (!graph.ports[slot].name.empty()) columns.emplace_back(graph.ports[slot], slot);
  return columns;
}

/// The row next to each of `count` instants spread evenly over the run.
std::vector<std::size_t> instants(const Trace& trace, std::size_t count) {
  std::vector<std::size_t> rows;
  for (std::size_t i = 0; i < count; ++i) {
    const double t = trace.time.back() * static_cast<double>(i) / static_cast<double>(count - 1);
    auto at = std::lower_bound(trace.time.begin(), trace.time.end(), t - 1e-9);
    if (at == trace.time.end()) --at;
    if (at != trace.time.begin() && *at - t > t - *(at - 1)) --at;
    const auto row = static_cast<std::size_t>(at - trace.time.begin());
    if (rows.empty() || rows.back() != row) rows.push_back(row);
  }
  return rows;
}

std::string_view time_unit(double longest) {
  return longest > 3 * 86400 ? "day" : longest > 3 * 3600 ? "h" : longest > 180 ? "min" : "s";
}

/// What moves, a row a port; what stands still, in one line.
class Table {
 public:
  Table(const Car& car, const Trace& trace, const Course& course, Page& page) : trace_(trace), page_(page) {
    for (auto& c : key_columns(car, trace, course.duty->method.value_or(Method::thermal)))
      (moves(c) ? moving_ : steady_).push_back(c);
    for (auto& c : moving_) label_ = std::max(label_, seen(c.heading()) + 1);
    label_ = std::min(label_, std::max(12, page.look().width - 4 * cell));
  }

  void write() {
    const int room = (page_.look().width - label_ - 2 * cell) / cell;
    const auto rows = instants(trace_, static_cast<std::size_t>(std::clamp(room, 2, 12)));
    const std::string_view unit = time_unit(trace_.time.back());
    std::string head = pad("time [" + std::string(unit) + "]", label_);
    for (auto row : rows) head += pad_left(print_time(trace_.time[row], unit), cell);
    page_.line(faint(head + pad_left("lowest", cell) + pad_left("highest", cell)));
    for (auto& c : moving_) {
      std::string line = pad(label(c), label_);
      for (auto row : rows) line += fitted(c, row);
      page_.line(line + fitted(c, trace_.lowest(c.slot())) + fitted(c, trace_.highest(c.slot())));
    }
    std::string text;
    for (auto& c : steady_)
      text += (text.empty() ? "Steady: " : " · ") + together(c.name() + " " + c.at(trace_, 0, table_digits) +
                                                             (c.unit().empty() ? "" : " ") + std::string(c.unit()));
    page_.space();
    if (!text.empty()) page_.text(text, 0, 2);
  }

 private:
  static constexpr int cell = 8;
  static std::string print_time(double s, std::string_view unit) {
    const std::string text = print(s, kind::time, unit, 3);
    return text.substr(0, text.find(' '));
  }
  bool moves(const Column& c) const {
    const double low = trace_.at(trace_.lowest(c.slot()), c.slot()),
                 high = trace_.at(trace_.highest(c.slot()), c.slot());
    return high - low > 1e-6 * std::max(std::abs(low), std::abs(high));
  }
  /// As many digits as the cell holds.
  std::string fitted(const Column& c, std::size_t row) const {
    std::string text;
    for (int digits = table_digits; digits > 0; --digits)
      if (text = c.at(trace_, row, digits); seen(text) < cell) break;
    return pad_left(text, cell);
  }
  /// The heading; where it is too long its front goes on a line of its own, and what is still too long loses letters
  /// of its name, never its unit.
  std::string label(const Column& c) {
    const std::string whole = c.heading(), name = c.name();
    if (seen(whole) < label_) return whole;
    const std::size_t dot = name.rfind('.');
    std::string last = dot == std::string::npos ? name : "  " + name.substr(dot + 1);
    if (dot != std::string::npos) page_.text(name.substr(0, dot + 1));
    const std::string unit = c.unit().empty() ? "" : " [" + std::string(c.unit()) + "]";
    const auto room = static_cast<std::size_t>(std::max(label_ - 1 - seen(unit), 1));
    if (last.size() > room) last = last.substr(0, room - 1) + ".";
    return last + unit;
  }

  const Trace& trace_;
  Page& page_;
  std::vector<Column> moving_, steady_;
  int label_ = 12;  // at least what the time needs
};

}  // namespace

std::string trace_csv(const Graph& graph, const Trace& trace) {
  const auto columns = all_columns(graph);
  std::string out = "time [s]";
  for (auto& c : columns) out += "," + c.heading();
  out += '\n';
  for (std::size_t row = 0; row < trace.rows(); ++row) {
    out += short_number(trace.time[row], csv_digits);
    for (auto& c : columns) out += "," + c.at(trace, row, csv_digits);
    out += '\n';
  }
  return out;
}

std::string trace_page(const Car& car, const Trace& trace, const Course& course, const Look& look) {
  const Graph& graph = car.graph();
  Page page(look);
  page.text(strong(clean(course.key)) + "  " + clean(course.duty->title));
  page.space();
  if (trace.rows() > 0) Table(car, trace, course, page).write();
  page.space();
  const Summary& s = trace.summary;
  page.text((s.usable() ? "Ran " : "Came to ") +
            print(trace.rows() > 0 ? trace.time.back() : 0.0, kind::time, time_unit(course.duration), 3) + " of " +
            print(course.duration, kind::time, time_unit(course.duration), 3) + " in " + std::to_string(trace.rows()) +
            " rows, " + std::to_string(s.evaluations) + " evaluations of the car, " + std::to_string(s.events) +
            " switchings.");
  std::set<std::string> missing;
  for (auto& [port, paths] : graph.unavailable) missing.insert(paths.begin(), paths.end());
  if (!missing.empty()) {
    std::string text = std::to_string(graph.unavailable.size()) + " ports cannot be computed. Missing: ";
    for (auto& path : missing) text += (path == *missing.begin() ? "" : ", ") + touch(clean(path));
    page.text(text, 0, 2);
  }
  return page.take();
}

}  // namespace sw::cli
