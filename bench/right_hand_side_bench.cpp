// The own integrator against a general-purpose solver (CVODE) on the same right-hand side: cost and difference, over
// the thermal duties of demo/sound.toml.
#include <cstdio>
#include <numeric>

#include "clock.hpp"
#include "cvode_run.hpp"
#include "duty/duties.hpp"

namespace sw::bench {
namespace {

constexpr const char* duties[] = {"hot-idle", "parade", "commute", "cruise", "grade", "night-rain", "warm-up", "hot-soak"};
constexpr int timed_runs = 7;
constexpr Tolerance fine{1e-6, 1e-4};  ///< the reference: a ten-thousandth of a scale
constexpr Tolerance alike{0, 0.02};    ///< the error of a step the own integrator is held to

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

struct Cost { double simulated_per_s; long steps, evaluations, events; };

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
  void add(double t, double weight, const Trace& own, std::size_t row, const std::vector<double>& other) {
    double worst = 0;
    for (std::size_t s = 0; s < graph_.ports.size(); ++s) {
      if (graph_.ports[s].kind != kind_ || graph_.ports[s].name.empty()) continue;
      const double d = std::abs(own.at(row, s) - other[s]);
      worst = std::max(worst, d);
      if (d > result_.most) result_ = {d, t, 0, graph_.ports[s].name};
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

/// Compares at the own steps' ends, so that only the reference is interpolated, at its own order. Instants with two
/// rows, where ports jump (switch, corner), are left out.
std::pair<Difference, Difference> differences(const Case& c, const Trace& own) {
  std::vector<double> times, weight;
  std::vector<std::size_t> rows;
  for (std::size_t r = 1; r + 1 < own.rows(); ++r) {
    if (own.time[r] - own.time[r - 1] < 1e-6 || own.time[r + 1] - own.time[r] < 1e-6) continue;
    times.push_back(own.time[r]);
    rows.push_back(r);
    weight.push_back(own.time[r] - own.time[r - 1]);
  }
  Course course = c.course;
  Rhs rhs = started(c, course);
  Comparison kelvin(c.car.graph(), kind::temperature), volts(c.car.graph(), kind::voltage);
  CvodeRun run(rhs, course, fine);
  run.run(times, [&](std::size_t i) {
    kelvin.add(times[i], weight[i], own, rows[i], rhs.values());
    volts.add(times[i], weight[i], own, rows[i], rhs.values());
  });
  return {kelvin.result(), volts.result()};
}

struct Line { std::string costs, differences; };

Line measure(const char* key, const Case& c) {
  Trace own;
  const double time = median_time(timed_runs, [&] { own = run_duty(c.car, c.course, c.before); });
  if (!own.summary.usable()) throw std::runtime_error(std::string(key) + ": " + own.summary.reason);
  const Cost like = cvode_cost(c, alike), exact = cvode_cost(c, fine);
  const auto [kelvin, volts] = differences(c, own);
  char line[400];
  std::snprintf(line, sizeof line, "| %s | %zu | %.0f | %.0f | %ld | %ld | %.0f | %ld | %ld | %.0f | %ld | %ld |\n", key,
                Rhs(c.car.graph(), c.course).size(), 1e9 * one_evaluation_s(c, own), 1e-3 * c.course.duration / time, own.summary.steps,
                own.summary.evaluations, 1e-3 * like.simulated_per_s, like.steps, like.evaluations, 1e-3 * exact.simulated_per_s,
                exact.steps, exact.evaluations);
  Line out{line, {}};
  std::snprintf(line, sizeof line, "| %s | %ld | %ld | %.3f | %.3f | %s, %.0f s | %.4f | %.4f | %s, %.0f s |\n", key, own.summary.events,
                exact.events, kelvin.p99, kelvin.most, std::string(kelvin.port).c_str(), kelvin.at, volts.p99, volts.most,
                std::string(volts.port).c_str(), volts.at);
  out.differences = line;
  return out;
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
  }
  std::printf("Simulated thousands of seconds a second of one core (ks/s), steps and evaluations of the right-hand side.\n"
              "CVODE alike: error of a step as the own; CVODE fine: rtol 1e-6, atol 1e-4 of each state's scale.\n\n"
              "| duty | states | ns an evaluation | own ks/s | steps | evaluations | CVODE alike ks/s | steps | evaluations | CVODE fine ks/s | steps | evaluations |\n"
              "|---|---|---|---|---|---|---|---|---|---|---|---|\n%s\n"
              "Own against CVODE fine, over all temperature and voltage ports: 99th percentile by time, greatest, and where.\n\n"
              "| duty | events | of CVODE | K, 99 %% | K, greatest | where | V, 99 %% | V, greatest | where |\n"
              "|---|---|---|---|---|---|---|---|---|\n%s",
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
