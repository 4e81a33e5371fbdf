#pragma once
// A generic car and its runs.
#include <functional>
#include <memory>

#include "duty/duties.hpp"

namespace sw::validation {

/// A build of validation/cars, by name. Throws where it has faults: it is ours.
Build generic_car(std::string_view name);

/// One of the shipped duties, to be changed. Sun, air conditioning and extra loads are taken off.
Duty plain_duty(const std::string& key, double ambient_c);

/// A run that came through; throws with its reason where it did not.
struct Run {
  std::unique_ptr<Car> car;
  Trace trace;
  /// A port through time, SI.
  std::vector<double> port(std::string_view name) const;
};
Run run(const Build& build, const Duty& duty);

/// A figure of a car with what the program's own doubt of every input makes of it: each moved up and down by its
/// half-width in turn, the larger change counted, and added in squares (as src/proof/doubt does with margins).
struct Doubtful {
  double value = 0, half_width = 0;
  bool holds(double measured) const;
};
/// Inputs whose path begins with one of `of` are moved; a moved car of which `figure` is no number counts as no change,
/// and `lost` counts them.
struct DoubtOptions {
  std::vector<std::string> of;
  int lost = 0;
};
Doubtful with_doubt(const Build& build, const std::function<double(const Build&)>& figure, DoubtOptions& options);

std::vector<double> in_celsius(std::vector<double> kelvin);

}  // namespace sw::validation
