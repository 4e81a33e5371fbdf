#include "systems/throttle/link.hpp"

#include <algorithm>
#include <cmath>
#include <numbers>

namespace sw::throttle {
namespace {

constexpr double pi = std::numbers::pi;

double wrapped(double angle) { return std::remainder(angle, 2 * pi); }
/// From standing in line, of an angle between two directions.
double from_line(double angle) {
  const double a = std::abs(wrapped(angle));
  return std::min(a, pi - a);
}

double first_at(const LinkGeometry& l, double turn) { return l.start_rad + (l.pushes ? -turn : turn); }

/// The second lever's angle from the line back to the first, of a rocker's direction from the first's line on.
double told_of(const LinkGeometry& l, double rocker) { return wrapped(l.pins_opposite ? rocker + pi : pi - rocker); }

std::optional<LinkAt> cable_at(const LinkGeometry& l, double turn, const MovedApart& moved) {
  const double a = first_at(l, turn);
  const double pull = l.arm_m * (std::cos(l.start_rad) - std::cos(a)) - l.slack_m + moved.away_m;
  const double cosine = std::cos(l.driven_start_rad) + pull / l.driven_arm_m;
  if (cosine > 1) return std::nullopt;
  const double b = std::acos(std::max(cosine, -1.0));
  // A loose cable leaves its lever where that rests.
  return LinkAt{l.driven_start_rad - b, std::min(from_line(a), from_line(pull < 0 ? l.driven_start_rad : b))};
}

std::optional<physics::FourBarAngles> bars_at(const LinkGeometry& l, double turn, bool crossed, double line,
                                              double apart) {
  const auto at = physics::four_bar({l.arm_m, l.rod_m, l.driven_arm_m, apart}, first_at(l, turn) - line);
  if (!at) return std::nullopt;
  return crossed ? at->crossed : at->open;
}

}  // namespace

std::optional<LinkAt> link_at(const LinkGeometry& l, double turn, const MovedApart& moved) {
  if (l.cable) return cable_at(l, turn, moved);
  const double along = l.apart_m + moved.away_m, line = std::atan2(moved.square_m, along);
  const auto bars = bars_at(l, turn, l.crossed, line, std::hypot(along, moved.square_m));
  if (!bars) return std::nullopt;
  const double b = told_of(l, bars->rocker + line);
  const double opened = wrapped(l.driven_start_rad - b);
  return LinkAt{l.pushes ? -opened : opened, std::min(from_line(bars->coupler - (first_at(l, turn) - line)),
                                                      from_line(bars->coupler - bars->rocker))};
}

double rod_between_m(const LinkGeometry& l) {
  const double side = l.pins_opposite ? -1 : 1;
  const double x = l.apart_m - l.driven_arm_m * std::cos(l.driven_start_rad) - l.arm_m * std::cos(l.start_rad);
  const double y = side * l.driven_arm_m * std::sin(l.driven_start_rad) - l.arm_m * std::sin(l.start_rad);
  return std::hypot(x, y);
}

std::optional<bool> stands_crossed(const LinkGeometry& l) {
  const auto off = [&](bool crossed) -> std::optional<double> {
    const auto bars = bars_at(l, 0, crossed, 0, l.apart_m);
    if (!bars) return std::nullopt;
    return std::abs(wrapped(told_of(l, bars->rocker) - l.driven_start_rad));
  };
  const auto open = off(false), crossed = off(true);
  if (!open || !crossed) return std::nullopt;
  return *crossed < *open;
}

}  // namespace sw::throttle
