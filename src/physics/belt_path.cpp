#include "physics/belt_path.hpp"

#include <algorithm>
#include <cmath>

namespace sw::physics {
namespace {

constexpr double turn = 2 * M_PI;
constexpr double closed_within = 1e-6;  ///< rad: rounding of the sum of all turns
/// More than this round one pulley is a belt that runs past it on the other side (common practice: no drive wraps
/// more).
constexpr double most_wrap = 1.75 * M_PI;

double positive_turn(double angle) {
  const double rest = std::fmod(angle, turn);
  return rest < 0 ? rest + turn : rest;
}

/// Whether two straights cross: a belt that does runs past a pulley on its other side.
bool cross(const BeltPath::Straight& a, const BeltPath::Straight& b) {
  const auto side = [](const BeltPath::Straight& s, double x, double y) {
    return (s.to_x_m - s.from_x_m) * (y - s.from_y_m) - (s.to_y_m - s.from_y_m) * (x - s.from_x_m);
  };
  return side(a, b.from_x_m, b.from_y_m) * side(a, b.to_x_m, b.to_y_m) < 0 &&
         side(b, a.from_x_m, a.from_y_m) * side(b, a.to_x_m, a.to_y_m) < 0;
}

/// The pulley between two straights that cross each other, where there is one; the most wrapped where they are not
/// neighbours; the number of pulleys where nothing crosses.
std::size_t crossed_at(const BeltPath& p) {
  const std::size_t n = p.straight.size();
  for (std::size_t i = 0; i < n; ++i)
    for (std::size_t j = i + 1; j < n; ++j) {
      if (!cross(p.straight[i], p.straight[j])) continue;
      if (j == i + 1) return j;
      if (i == 0 && j == n - 1) return 0;
      return static_cast<std::size_t>(std::max_element(p.wrap.begin(), p.wrap.end()) - p.wrap.begin());
    }
  return n;
}

/// Going round anticlockwise on faces, in the order given.
BeltPath anticlockwise(std::span<const BeltPulley> pulleys) {
  const std::size_t n = pulleys.size();
  BeltPath p;
  p.trouble = BeltPath::Trouble::none;
  auto signed_radius = [&](std::size_t i) { return pulleys[i].back ? -pulleys[i].radius_m : pulleys[i].radius_m; };
  for (std::size_t i = 0; i < n; ++i) {
    const std::size_t j = (i + 1) % n;
    const double dx = pulleys[j].x_m - pulleys[i].x_m, dy = pulleys[j].y_m - pulleys[i].y_m;
    const double distance = std::hypot(dx, dy), step = signed_radius(j) - signed_radius(i);
    if (!(distance > pulleys[i].radius_m + pulleys[j].radius_m)) {
      p.trouble = BeltPath::Trouble::overlap;
      p.where = i;
      return p;
    }
    const double t = std::atan2(dy, dx) - std::asin(step / distance);
    const double nx = -std::sin(t), ny = std::cos(t);
    p.straight.push_back({.length_m = std::sqrt(distance * distance - step * step),
                          .direction = t,
                          .from_x_m = pulleys[i].x_m - signed_radius(i) * nx,
                          .from_y_m = pulleys[i].y_m - signed_radius(i) * ny,
                          .to_x_m = pulleys[j].x_m - signed_radius(j) * nx,
                          .to_y_m = pulleys[j].y_m - signed_radius(j) * ny});
  }
  double all = 0;
  for (std::size_t i = 0; i < n; ++i) {
    const double in = p.straight[(i + n - 1) % n].direction, out = p.straight[i].direction;
    const double wrap = positive_turn(pulleys[i].back ? in - out : out - in);
    p.wrap.push_back(wrap);
    p.slope_x.push_back(std::cos(in) - std::cos(out));
    p.slope_y.push_back(std::sin(in) - std::sin(out));
    p.length_m += p.straight[i].length_m + pulleys[i].radius_m * wrap;
    all += pulleys[i].back ? -wrap : wrap;
    if (wrap > most_wrap && p.good()) {
      p.trouble = BeltPath::Trouble::off_pulley;
      p.where = i;
    }
  }
  // Once round in all: a belt that lies on every pulley turns by 360 degrees, faces less backs.
  if (p.good() && std::abs(all - turn) > closed_within) {
    p.trouble = BeltPath::Trouble::off_pulley;
    p.where = static_cast<std::size_t>(std::max_element(p.wrap.begin(), p.wrap.end()) - p.wrap.begin());
  }
  if (const std::size_t at = crossed_at(p); p.good() && at < n) {
    p.trouble = BeltPath::Trouble::off_pulley;
    p.where = at;
  }
  return p;
}

/// Straights of the path gone the other way round, put back into the order given.
BeltPath turned_round(BeltPath p) {
  const std::size_t n = p.wrap.size();
  if (p.straight.size() != n || n == 0) return p;
  std::reverse(p.wrap.begin(), p.wrap.end());
  std::reverse(p.slope_x.begin(), p.slope_x.end());
  std::reverse(p.slope_y.begin(), p.slope_y.end());
  std::vector<BeltPath::Straight> straight(n);
  for (std::size_t i = 0; i < n; ++i) {
    // Reversed pulley k is pulley n - 1 - k; its straight leads to k + 1, that is to pulley n - 2 - k.
    const auto& s = p.straight[(2 * n - 2 - i) % n];
    straight[i] = {s.length_m, s.direction + M_PI, s.to_x_m, s.to_y_m, s.from_x_m, s.from_y_m};
  }
  p.straight = std::move(straight);
  p.where = n - 1 - p.where;
  return p;
}

}  // namespace

BeltPath belt_path(std::span<const BeltPulley> pulleys) {
  if (pulleys.size() < 2) return {};
  BeltPath as_given = anticlockwise(pulleys);
  if (as_given.good()) return as_given;
  const std::vector<BeltPulley> reversed(pulleys.rbegin(), pulleys.rend());
  BeltPath other = turned_round(anticlockwise(reversed));
  return other.good() ? other : as_given.length_m <= other.length_m ? as_given : other;
}

std::string belt_trouble(const BeltPath& path, std::span<const std::string> names) {
  const auto name = [&](std::size_t i) { return i < names.size() ? names[i] : "pulley " + std::to_string(i + 1); };
  switch (path.trouble) {
    case BeltPath::Trouble::none:
      return {};
    case BeltPath::Trouble::too_few:
      return "a belt needs two pulleys at least";
    case BeltPath::Trouble::overlap:
      return name(path.where) + " and " + name((path.where + 1) % std::max<std::size_t>(names.size(), 2)) +
             " overlap: their centres are nearer than their radii together";
    case BeltPath::Trouble::off_pulley:
      return "the belt does not lie on " + name(path.where) +
             ": in this order, or on this side of the belt, it runs past it";
  }
  return {};
}

}  // namespace sw::physics
