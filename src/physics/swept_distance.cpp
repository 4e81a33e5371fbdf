#include "physics/swept_distance.hpp"

#include <algorithm>
#include <limits>
#include <queue>

namespace sw::physics {
namespace {

/// Outermost motions both have alike, taken away.
void strip_shared(Carried& a, Carried& b) {
  if (a.after != b.after) return;
  a.after = b.after = {};
  while (!a.settings.empty() && !b.settings.empty() && a.settings.back() == b.settings.back()) {
    a.settings.pop_back();
    b.settings.pop_back();
  }
}

struct Cell {
  std::vector<double> middle, half;
  double floor = 0;
  bool operator<(const Cell& other) const { return floor > other.floor; }  // the lowest on top of a heap
};

/// One solid and how its motions carry it.
class Mover {
 public:
  Mover(const Carried& c, const std::vector<Setting>& settings)
      : carried_(c), settings_(settings), reach_(c.settings.size()), axis_(c.settings.size()) {
    double brought = 0;  // how far the motions within may have brought a point
    for (std::size_t k = 0; k < reach_.size(); ++k) {
      const Setting& s = setting(k);
      reach_[k] = s.turns ? reach_from_axis_m(c.solid, s.point, s.direction) + brought : 1.0;
      brought += reach_[k] * std::max(std::abs(s.low), std::abs(s.high));
    }
  }

  /// Stands at `pose` from then on.
  const Solid& put(const std::vector<double>& pose) {
    RigidMotion outer = carried_.after;
    for (std::size_t k = reach_.size(); k-- > 0;) {
      const Setting& s = setting(k);
      axis_[k] = {outer.of(s.point), outer.turn(s.direction)};
      outer = then(s.at(pose[carried_.settings[k]]), outer);
    }
    move_to(carried_.solid, outer, moved_);
    return moved_;
  }
  /// How far any of its points may go within half widths.
  double way(const std::vector<double>& half) const {
    double sum = 0;
    for (std::size_t k = 0; k < reach_.size(); ++k) sum += reach_[k] * half[carried_.settings[k]];
    return sum;
  }
  /// The least n.x of a piece anywhere in the cell about where it stands.
  double least_along(const Vec3& n, const Piece& piece, const std::vector<double>& half) const {
    double least = std::numeric_limits<double>::infinity();
    const auto see = [&](const Vec3& x) { least = std::min(least, dot(n, x) - straight_way(n, x, half)); };
    if (piece.block) {
      for (unsigned signs = 0; signs < 8; ++signs) see(corner_of(*piece.block, signs));
    } else {
      see(piece.from);
      see(piece.to);
    }
    return least - bent_way(half);
  }
  void add_reach(std::vector<double>& to) const {
    for (std::size_t k = 0; k < reach_.size(); ++k) to[carried_.settings[k]] += reach_[k];
  }

 private:
  struct Axis {
    Vec3 point, direction;
  };
  const Setting& setting(std::size_t k) const { return settings_[carried_.settings[k]]; }
  double straight_way(const Vec3& n, const Vec3& x, const std::vector<double>& half) const {
    double sum = 0;
    for (std::size_t k = 0; k < reach_.size(); ++k) {
      const Vec3& d = axis_[k].direction;
      const Vec3 speed = setting(k).turns ? cross(d, x - axis_[k].point) : d;
      sum += std::abs(dot(n, speed)) * half[carried_.settings[k]];
    }
    return sum;
  }
  double bent_way(const std::vector<double>& half) const {
    double sum = 0;
    for (std::size_t outer = 0; outer < reach_.size(); ++outer) {
      if (!setting(outer).turns) continue;
      const double h = half[carried_.settings[outer]];
      sum += reach_[outer] * h * h / 2;
      for (std::size_t inner = 0; inner < outer; ++inner) sum += reach_[inner] * half[carried_.settings[inner]] * h;
    }
    return sum;
  }

  Carried carried_;
  const std::vector<Setting>& settings_;
  std::vector<double> reach_;
  std::vector<Axis> axis_;  ///< where each motion's lies now
  Solid moved_;
};

/// Where the distance of two pieces rises fastest as the first is shifted; not exactly, and any unit direction will do.
/// The zero vector where they touch.
Vec3 away_from(const Piece& a, const Piece& b, double distance) {
  constexpr double step = 1e-6;  // m
  const auto rise = [&](const Vec3& by) {
    Piece p = a, q = b;
    if (a.block) {
      q.from = q.from - by;
      q.to = q.to - by;
    } else {
      p.from = p.from + by;
      p.to = p.to + by;
    }
    return piece_distance_m(p, q) - distance;
  };
  const Vec3 slope{rise({step, 0, 0}), rise({0, step, 0}), rise({0, 0, step})};
  return norm(slope) > 0.1 * step ? unit(slope) : Vec3{};
}

class Search {
 public:
  Search(const Carried& a, const Carried& b, const std::vector<Setting>& settings, const SweptLimits& limits)
      : settings_(settings), limits_(limits), a_(a, settings), b_(b, settings), reach_(settings.size(), 0.0) {
    radii_ = a.solid.radius_m + b.solid.radius_m;
    a_.add_reach(reach_);
    b_.add_reach(reach_);
    best_.pose.assign(settings_.size(), 0.0);
    best_.least_m = std::numeric_limits<double>::infinity();
  }

  SweptDistance run() {
    see_ends(0, std::vector<double>(settings_.size(), 0.0));
    std::priority_queue<Cell> cells;
    cells.push(whole());
    best_.floor_m = cells.top().floor;
    while (best_.least_m > 0) {
      const Cell cell = cells.top();
      best_.floor_m = cell.floor;
      if (cell.floor >= best_.least_m - limits_.tolerance_m || best_.poses >= limits_.poses) break;
      cells.pop();
      halve(cell, cells);
    }
    improve();
    best_.floor_m = std::min(best_.floor_m, best_.least_m);
    return best_;
  }

  double at(const std::vector<double>& pose) {
    const Solid &a = a_.put(pose), &b = b_.put(pose);
    return solid_distance_m(a, b);
  }

 private:
  double see(const std::vector<double>& pose) {
    ++best_.poses;
    const double d = at(pose);
    if (d < best_.least_m) {
      best_.least_m = d;
      best_.pose = pose;
    }
    return d;
  }
  /// Least distances mostly lie where settings end.
  void see_ends(std::size_t i, std::vector<double> pose) {
    if (i == settings_.size()) {
      see(pose);
      return;
    }
    see_ends(i + 1, pose);  // at 0
    if (reach_[i] == 0) return;
    for (double end : {settings_[i].low, settings_[i].high}) {
      pose[i] = end;
      see_ends(i + 1, pose);
    }
  }
  Cell whole() {
    Cell c;
    for (auto& s : settings_) {
      c.middle.push_back((s.low + s.high) / 2);
      c.half.push_back((s.high - s.low) / 2);
    }
    c.floor = floor_of(c);
    return c;
  }
  /// What no distance in the cell lies below.
  double floor_of(const Cell& c) {
    const double d = see(c.middle), way = a_.way(c.half) + b_.way(c.half);
    const double enough = best_.least_m - limits_.tolerance_m;
    if (d - way >= enough) return d - way;
    const Solid &a = a_.put(c.middle), &b = b_.put(c.middle);
    pair_pieces(a, b, pairs_);
    double floor = std::numeric_limits<double>::infinity();
    for (auto& [p, q] : pairs_) floor = std::min(floor, floor_of(p, q, way, enough, c.half));
    return a.block || b.block ? std::max(0.0, floor) : floor;
  }
  double floor_of(const Piece& p, const Piece& q, double way, double enough, const std::vector<double>& half) const {
    const double distance = piece_distance_m(p, q), by_reach = distance - radii_ - way;
    if (by_reach >= enough) return by_reach;
    const Vec3 n = away_from(p, q, distance);
    if (n == Vec3{}) return by_reach;
    return std::max(by_reach, a_.least_along(n, p, half) + b_.least_along(-n, q, half) - radii_);
  }
  void halve(const Cell& cell, std::priority_queue<Cell>& cells) {
    std::size_t widest = 0;
    for (std::size_t i = 1; i < reach_.size(); ++i)
      if (reach_[i] * cell.half[i] > reach_[widest] * cell.half[widest]) widest = i;
    for (double side : {-0.5, 0.5}) {
      Cell part = cell;
      part.half[widest] *= 0.5;
      part.middle[widest] += side * cell.half[widest];
      part.floor = std::max(cell.floor, floor_of(part));
      cells.push(std::move(part));
    }
  }
  /// Steps a setting at a time, each half as long when all were tried.
  void improve() {
    constexpr double first = 0.01, finest = 1e-8;  // m
    for (double way = first; way > finest; way /= 2)
      for (std::size_t i = 0; i < reach_.size(); ++i)
        for (double side : {-way, way}) {
          if (reach_[i] == 0) continue;
          std::vector<double> pose = best_.pose;
          pose[i] = std::clamp(pose[i] + side / reach_[i], settings_[i].low, settings_[i].high);
          if (pose != best_.pose) see(pose);
        }
  }

  const std::vector<Setting>& settings_;
  SweptLimits limits_;
  Mover a_, b_;
  double radii_ = 0;
  std::vector<double> reach_;
  std::vector<std::pair<Piece, Piece>> pairs_;
  SweptDistance best_;
};

}  // namespace

SweptDistance swept_distance(Carried a, Carried b, const std::vector<Setting>& settings, const SweptLimits& limits) {
  strip_shared(a, b);
  return Search(a, b, settings, limits).run();
}

double distance_at(const Carried& a, const Carried& b, const std::vector<Setting>& settings,
                   const std::vector<double>& pose) {
  return Search(a, b, settings, {}).at(pose);
}

}  // namespace sw::physics
