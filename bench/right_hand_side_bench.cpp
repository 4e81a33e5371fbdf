// The own integrator against a general-purpose solver (CVODE) on the same right-hand side: cost and difference, over
// the thermal duties of demo/sound.toml.
#include <cstdio>
#include <numeric>

#include "clock.hpp"
#include "cvode_run.hpp"
#include "duty/duties.hpp"

namespace sw::bench {
namespace {

constexpr const char* duties[] = {"hot-idle", "parade",     "commute", "cruise",
                                  "grade",    "night-rain", "warm-up", "hot-soak"};
constexpr int timed_runs = 7;
constexpr Tolerance fine{1e-6, 1e-4};   ///< what one would choose for a careful run: a ten-thousandth of a scale
constexpr Tolerance exact{1e-8, 1e-6};  ///< the reference
constexpr Tolerance alike{0, 2e-3};     ///< at which CVODE comes about as near the reference as the own integrator

constexpr double unsteadiness_m_s = 0.5;

struct Case {
  const Car& car;
  const Course& course;
  const Trace* before;
};

/// A run begun as run_duty begins it.
Rhs started(const Case& c, const Course& course) {
  Rhs rhs(c.car.graph(), course);
  rhs.start();
  if (c.before) rhs.start_from(&c.before->values[(c.before->rows() - 1) * c.before->width]);
  return rhs;
}

double one_evaluation_s(const Case& c, const Trace& trace) {
  Course course = c.course;
  Rhs rhs = started(c, course);
  std::vector<double> y(rhs.size()), rates(rhs.size());
  rhs.get(y.data());
  // States of the whole run, so that the warm starts inside are those of real steps.
  constexpr int times = 20;
  const double all = median_time(timed_runs, [&] {
    for (int n = 0; n < times; ++n)
      for (std::size_t row = 0; row < trace.rows(); ++row) {
        for (std::size_t i = 0; i < y.size(); ++i) y[i] = trace.at(row, rhs.state(i).value);
        rhs(trace.time[row], y.data(), rates.data());
      }
  });
  return all / (times * static_cast<double>(trace.rows()));
}

struct Cost {
  double simulated_per_s;
  long steps, evaluations, events;
};

Cost cvode_cost(const Case& c, Tolerance tolerance) {
  Cost cost{};
  const double time = median_time(timed_runs, [&] {
    Course course = c.course;
    Rhs rhs = started(c, course);
    CvodeRun run(rhs, course, tolerance);
    run.run({}, [](std::size_t) {});
    cost = {0, run.steps(), rhs.evaluations(), run.events()};
  });
  cost.simulated_per_s = c.course.duration / time;
  return cost;
}

/// Largest and 99th percentile (by time) of the differences of all ports of one kind.
struct Difference {
  double most = 0, at = 0, p99 = 0;
  std::string_view port;
};

class Comparison {
 public:
  Comparison(const Graph& graph, const Kind& kind) : graph_(graph), kind_(&kind) {}
  void add(const Trace& a, const Trace& b, std::size_t row, double weight) {
    double worst = 0;
    for (std::size_t s = 0; s < graph_.ports.size(); ++s) {
      if (graph_.ports[s].kind != kind_ || graph_.ports[s].name.empty()) continue;
      const double d = std::abs(a.at(row, s) - b.at(row, s));
      worst = std::max(worst, d);
      if (d > result_.most) result_ = {d, a.time[row], 0, graph_.ports[s].name};
    }
    all_.emplace_back(worst, weight);
  }
  Difference result() {
    std::sort(all_.begin(), all_.end());
    const double whole = std::accumulate(all_.begin(), all_.end(), 0.0, [](double s, auto& a) { return s + a.second; });
    double sum = 0;
    for (auto& [d, weight] : all_)
      if ((sum += weight) >= 0.99 * whole) {
        result_.p99 = d;
        break;
      }
    return result_;
  }

 private:
  const Graph& graph_;
  const Kind* kind_;
  Difference result_;
  std::vector<std::pair<double, double>> all_;  ///< worst of one instant, and how long it stands for
};

/// Where to compare: at the own steps' ends, so that only the reference is interpolated, at its own order. Instants
/// with two rows, where ports jump (switch, corner), are left out.
struct Grid {
  std::vector<double> time, weight;
  std::vector<std::size_t> rows;
};
Grid grid_of(const Trace& own) {
  Grid g;
  for (std::size_t r = 1; r + 1 < own.rows(); ++r) {
    if (own.time[r] - own.time[r - 1] < 1e-6 || own.time[r + 1] - own.time[r] < 1e-6) continue;
    g.time.push_back(own.time[r]);
    g.weight.push_back(own.time[r] - own.time[r - 1]);
    g.rows.push_back(r);
  }
  return g;
}

/// All ports of a CVODE run at the grid's times.
Trace cvode_trace(const Case& c, Tolerance tolerance, const Grid& grid) {
  Course course = c.course;
  Rhs rhs = started(c, course);
  Trace trace;
  trace.width = rhs.values().size();
  CvodeRun(rhs, course, tolerance).run(grid.time, [&](std::size_t i) {
    trace.time.push_back(grid.time[i]);
    trace.values.insert(trace.values.end(), rhs.values().begin(), rhs.values().end());
  });
  return trace;
}

Trace at_rows(const Trace& own, const Grid& grid) {
  Trace t;
  t.width = own.width;
  t.time = grid.time;
  for (auto r : grid.rows)
    t.values.insert(t.values.end(), own.values.begin() + static_cast<long>(r * own.width),
                    own.values.begin() + static_cast<long>((r + 1) * own.width));
  return t;
}

Difference difference(const Graph& graph, const Kind& kind, const Trace& a, const Trace& b, const Grid& grid) {
  Comparison compare(graph, kind);
  for (std::size_t r = 0; r < a.rows(); ++r) compare.add(a, b, r, grid.weight[r]);
  return compare.result();
}

struct Line {
  std::string costs, differences;
};

Line measure(const char* key, const Case& c) {
  Trace own;
  const double time = median_time(timed_runs, [&] { own = run_duty(c.car, c.course, c.before); });
  if (!own.summary.usable()) throw std::runtime_error(std::string(key) + ": " + own.summary.reason);
  const Cost like = cvode_cost(c, alike), careful = cvode_cost(c, fine);
  const Grid grid = grid_of(own);
  const Trace reference = cvode_trace(c, exact, grid), rows = at_rows(own, grid);
  auto& graph = c.car.graph();
  const Difference kelvin = difference(graph, kind::temperature, rows, reference, grid),
                   volts = difference(graph, kind::voltage, rows, reference, grid),
                   other = difference(graph, kind::temperature, cvode_trace(c, alike, grid), reference, grid),
                   third = difference(graph, kind::temperature, cvode_trace(c, fine, grid), reference, grid);
  char line[400];
  std::snprintf(line, sizeof line, "| %s | %zu | %.0f | %.0f | %ld | %ld | %.0f | %ld | %ld | %.0f | %ld | %ld |\n",
                key, Rhs(c.car.graph(), c.course).size(), 1e9 * one_evaluation_s(c, own),
                1e-3 * c.course.duration / time, own.summary.steps, own.summary.evaluations,
                1e-3 * like.simulated_per_s, like.steps, like.evaluations, 1e-3 * careful.simulated_per_s,
                careful.steps, careful.evaluations);
  Line out{line, {}};
  std::snprintf(
      line, sizeof line,
      "| %s | %ld | %ld | %.3f | %.3f | %s, %.0f s | %.4f | %.4f | %s, %.0f s | %.3f | %.3f | %.3f | %.3f |\n", key,
      own.summary.events, careful.events, kelvin.p99, kelvin.most, std::string(kelvin.port).c_str(), kelvin.at,
      volts.p99, volts.most, std::string(volts.port).c_str(), volts.at, other.p99, other.most, third.p99, third.most);
  out.differences = line;
  return out;
}

/// A trace as a recorder leaves it: the commute at one row a second, with a driver's unsteadiness (a fixed sequence).
Course recorded(const Course& from) {
  Course c = from;
  c.time.clear();
  c.speed.clear();
  unsigned noise = 1;
  std::size_t hint = 0;
  for (double t = 0; t <= c.duration; t += 1) {
    noise = noise * 1664525u + 1013904223u;
    const double speed = from.motion(t, hint).speed;
    c.time.push_back(t);
    c.speed.push_back(speed > 1 ? speed + unsteadiness_m_s * (noise / 4294967296.0 - 0.5) : speed);
  }
  return c;
}

int run() {
  const std::filesystem::path file = std::filesystem::path(STREETWRIGHT_SOURCE_DIR) / "demo/sound.toml";
  const Opened opened = open(file, from_disk());
  if (opened.faults.any_fault()) throw std::runtime_error("the demo has faults");
  const Car car(opened.build);
  const auto set = duties_of(opened.build, from_disk());
  const std::vector<Trace> traces = run_duties(car, *set);
  std::string costs, differences;
  for (auto key : duties) {
    auto find = [&](std::string_view name) {
      std::size_t i = 0;
      while (set->courses[i].key != name) ++i;
      return i;
    };
    const std::size_t i = find(key);
    auto& after = set->courses[i].duty->after;
    const Line line = measure(key, {car, set->courses[i], after.empty() ? nullptr : &traces[find(after)]});
    costs += line.costs;
    differences += line.differences;
    if (key != std::string_view("commute")) continue;
    const Course course = recorded(set->courses[i]);
    const Line more = measure("commute, 1 Hz", {car, course, nullptr});
    costs += more.costs;
    differences += more.differences;
  }
  std::printf(
      "Simulated thousands of seconds a second of one core (ks/s), steps and evaluations of the right-hand side.\n"
      "CVODE alike: atol 2e-3 of each scale, by which it comes about as near the reference as the own; CVODE fine: "
      "rtol 1e-6, atol 1e-4 of each state's scale.\n\n"
      "| duty | states | ns an evaluation | own ks/s | steps | evaluations | CVODE alike ks/s | steps | evaluations | "
      "CVODE fine ks/s | steps | evaluations |\n"
      "|---|---|---|---|---|---|---|---|---|---|---|---|\n%s\n"
      "Against CVODE exact (rtol 1e-8, atol 1e-6 of each scale), over all temperature and voltage ports: 99th "
      "percentile by time, greatest, and where.\n\n"
      "| duty | events | of CVODE | K, 99 %% | K, greatest | where | V, 99 %% | V, greatest | where | K of CVODE "
      "alike, 99 %% | greatest | K of CVODE fine, 99 %% | greatest |\n"
      "|---|---|---|---|---|---|---|---|---|---|---|---|---|\n%s",
      costs.c_str(), differences.c_str());
  return 0;
}

}  // namespace
}  // namespace sw::bench

int main() {
  try {
    return sw::bench::run();
  } catch (const std::exception& e) {
    std::fprintf(stderr, "right_hand_side_bench: %s\n", e.what());
    return 1;
  }
}
