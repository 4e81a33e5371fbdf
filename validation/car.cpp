#include "car.hpp"

#include <algorithm>
#include <cmath>
#include <limits>
#include <stdexcept>

#include "proof/doubt.hpp"

namespace sw::validation {

Build generic_car(std::string_view name) {
  const auto file =
      std::filesystem::path(STREETWRIGHT_SOURCE_DIR) / "validation" / "cars" / (std::string(name) + ".toml");
  Opened opened = open(file, from_disk());
  for (auto& fault : opened.faults.all())
    if (fault.severity == Severity::fault)
      throw std::runtime_error(std::string(name) + ": " + fault.path + ": " + fault.problem);
  return std::move(opened.build);
}

Duty plain_duty(const std::string& key, double ambient_c) {
  Duty d = *shipped_duties().find(key);
  d.ambient = Temperature{ambient_c + 273.15};
  d.sun = Irradiance{0};
  d.air_conditioning = false;
  d.conditions.clear();
  d.speed_trace.reset();
  d.payload = Mass{0};
  return d;
}

std::vector<double> Run::port(std::string_view name) const {
  const auto& missing = car->graph().unavailable;
  if (auto it = missing.find(name); it != missing.end())
    throw std::runtime_error("port " + std::string(name) + " waits for " +
                             (it->second.empty() ? std::string("nothing told") : *it->second.begin()));
  const int slot = car->graph().slot(name);
  if (slot < 0) throw std::runtime_error("no port " + std::string(name));
  std::vector<double> out;
  for (std::size_t r = 0; r < trace.rows(); ++r) out.push_back(trace.at(r, static_cast<std::size_t>(slot)));
  return out;
}

Run run(const Build& build, const Duty& duty) {
  Run out;
  out.car = std::make_unique<Car>(build);
  for (auto& fault : out.car->faults().all())
    if (fault.severity == Severity::fault) throw std::runtime_error(fault.path + ": " + fault.problem);
  std::vector<CourseFault> faults;
  const Course course = make_course("validation", duty, {}, faults);
  if (!faults.empty()) throw std::runtime_error(std::string(faults.front().key) + ": " + faults.front().problem);
  out.trace = run_duty(*out.car, course, nullptr);
  if (!out.trace.summary.usable()) throw std::runtime_error("a run did not come through: " + out.trace.summary.reason);
  return out;
}

bool Doubtful::holds(double measured) const { return std::abs(measured - value) <= half_width; }

namespace {
/// A car that cannot be, or whose run is lost, gives no number.
double figure_or_none(const Build& b, const std::function<double(const Build&)>& figure) {
  try {
    return figure(b);
  } catch (const std::runtime_error&) {
    return std::numeric_limits<double>::quiet_NaN();
  }
}
bool begins_with_any(const std::string& path, const std::vector<std::string>& of) {
  return of.empty() || std::any_of(of.begin(), of.end(), [&](auto& start) { return path.starts_with(start); });
}
}  // namespace

Doubtful with_doubt(const Build& build, const std::function<double(const Build&)>& figure, DoubtOptions& options) {
  Doubtful out{figure(build), 0};
  double squares = 0;
  for (auto& [path, evidence] : build.evidence) {
    if (!(evidence.half_width > 0) || !begins_with_any(path, options.of)) continue;
    double most = 0;
    for (double by : {evidence.half_width, -evidence.half_width}) {
      Build moved = build;
      if (!shift(moved, path, by)) continue;
      const double change = figure_or_none(moved, figure) - out.value;
      if (std::isnan(change))
        ++options.lost;
      else
        most = std::max(most, std::abs(change));
    }
    squares += most * most;
  }
  out.half_width = std::sqrt(squares);
  return out;
}

std::vector<double> in_celsius(std::vector<double> kelvin) {
  for (double& t : kelvin) t -= 273.15;
  return kelvin;
}

}  // namespace sw::validation
