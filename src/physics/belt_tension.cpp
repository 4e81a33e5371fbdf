#include "physics/belt_tension.hpp"

#include <cmath>

namespace sw::physics {

void contact_tensions(std::span<const double> pull_n, std::span<const double> length_m, const BeltLoad& load,
                      std::span<double> out_n) {
  const std::size_t n = pull_n.size();
  double rise = 0, mean = 0, whole = 0;
  for (std::size_t i = 0; i < n; ++i) {
    if (i > 0) rise += pull_n[i];
    out_n[i] = rise;
    mean += rise * length_m[i];
    whole += length_m[i];
  }
  double held = mean / whole, rest = load.rest_n - load.centrifugal_n;
  if (load.sprung) {
    const std::size_t arm = load.arm.value_or(0);
    held = arm > 0 ? 0.5 * (out_n[arm - 1] + out_n[arm]) : 0.0;
    rest = load.rest_n;
  }
  for (std::size_t i = 0; i < n; ++i) out_n[i] += rest - held;
}

std::optional<double> grip_share(double tight_n, double slack_n, double ratio) {
  if (!(tight_n > 0)) return std::nullopt;
  return (tight_n - slack_n) / (tight_n * (1 - 1 / ratio));
}

double hub_load(double before_n, double after_n, double wrap) {
  return std::sqrt(std::fmax(0.0, before_n * before_n + after_n * after_n - 2 * before_n * after_n * std::cos(wrap)));
}

}  // namespace sw::physics
