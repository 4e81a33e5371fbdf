#include "physics/belt.hpp"

#include <cmath>
#include <numbers>

namespace sw::physics {
namespace {

constexpr double pi = std::numbers::pi;

double wedge(std::optional<double> groove_angle) { return groove_angle ? 1 / std::sin(*groove_angle / 2) : 1; }

}  // namespace

std::optional<BeltRun> belt_run(double large_diameter_m, double small_diameter_m, double centre_m, bool crossed) {
  const double D = large_diameter_m, d = small_diameter_m, C = centre_m;
  if (!(C >= (D + d) / 2)) return {};
  const double a = std::asin((crossed ? D + d : D - d) / (2 * C));
  BeltRun run{};
  run.wrap_large = pi + 2 * a;
  run.wrap_small = crossed ? pi + 2 * a : pi - 2 * a;
  run.length_m = 2 * C * std::cos(a) + D / 2 * run.wrap_large + d / 2 * run.wrap_small;
  run.length_slope = 2 * std::cos(a);  // the wraps' changes cancel, tangents being tangents
  return run;
}

std::optional<double> belt_centre(double large_diameter_m, double small_diameter_m, double length_m, bool crossed) {
  // The length rises with the centre distance ever more nearly as 2C, and bends one way: Newton from the right stays
  // on the right.
  const double least = (large_diameter_m + small_diameter_m) / 2;
  const auto shortest = belt_run(large_diameter_m, small_diameter_m, least, crossed);
  if (!shortest || length_m < shortest->length_m) return {};
  double low = least, high = length_m, c = length_m / 2;
  for (int i = 0; i < 100; ++i) {
    if (!(c > low && c < high)) c = 0.5 * (low + high);
    const BeltRun run = *belt_run(large_diameter_m, small_diameter_m, c, crossed);
    const double error = run.length_m - length_m;
    (error > 0 ? high : low) = c;
    if (std::abs(error) <= 1e-15 * length_m) break;
    c -= run.length_slope > 0 ? error / run.length_slope : 0;
  }
  return c;
}

double belt_speed_ratio(std::span<const double> driver_m, std::span<const double> driven_m, double line_difference_m,
                        double slip) {
  double ratio = 1;
  for (std::size_t i = 0; i < driver_m.size(); ++i)
    ratio *= (driver_m[i] + 2 * line_difference_m) / (driven_m[i] + 2 * line_difference_m) * (1 - slip);
  return ratio;
}

BeltRatio belt_grip_ratio(double friction, double wrap, std::optional<double> groove_angle) {
  const double w = wedge(groove_angle), ratio = std::exp(friction * wrap * w);
  return {ratio, ratio * friction * w, ratio * wrap * w};
}

double belt_grip_wrap(double friction, double ratio, std::optional<double> groove_angle) {
  return std::log(ratio) / (friction * wedge(groove_angle));
}

Slope belt_pull(BeltTension kind, double tension_n, double ratio) {
  const double k = ratio;
  if (kind == BeltTension::sprung_slack) return {tension_n * (k - 1), tension_n, k >= 1};
  return {2 * tension_n * (k - 1) / (k + 1), 4 * tension_n / ((k + 1) * (k + 1)), k >= 1};
}

BeltPull belt_centrifugal(double mass_per_length_kg_m, double belt_speed_m_s) {
  return {mass_per_length_kg_m * belt_speed_m_s * belt_speed_m_s, 2 * mass_per_length_kg_m * belt_speed_m_s};
}

SpanFrequency span_frequency(double length_m, double mass_per_length_kg_m, double tension_n) {
  const double f = std::sqrt(tension_n / mass_per_length_kg_m) / (2 * length_m);
  return {f, f / (2 * tension_n)};
}

double span_tension(double length_m, double mass_per_length_kg_m, double frequency_hz) {
  const double wave = 2 * length_m * frequency_hz;
  return mass_per_length_kg_m * wave * wave;
}

double belt_line_offset(double span_m, double angle) { return span_m * std::tan(angle); }
double belt_line_angle(double span_m, double offset_m) { return std::atan2(offset_m, span_m); }

double over_balls(double pitch_m, double groove_angle, double ball_m, double tip_radius_m) {
  const double s = 1 / std::sin(groove_angle / 2);
  return ball_m * (1 + s) - pitch_m / std::tan(groove_angle / 2) + 2 * tip_radius_m * (s - 1);
}

RibbedProfile ribbed_pk() {
  constexpr double pitch = 3.56e-3, groove = 40 * pi / 180, ball = 2.5e-3;
  return {pitch, groove, 2e-3, 45e-3, ball, over_balls(pitch, groove, ball, 0.25e-3), 0.25e-3, 0.15e-3};
}

}  // namespace sw::physics
