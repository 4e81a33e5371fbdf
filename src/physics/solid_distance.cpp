#include "physics/solid_distance.hpp"

#include <algorithm>
#include <limits>

#include "physics/segment_distance.hpp"

namespace sw::physics {
namespace {

/// The pieces of a rod; a ball is one without length.
void add_pieces(const Solid& rod, std::vector<Piece>& out) {
  if (rod.line.size() == 1) out.push_back({rod.line[0], rod.line[0]});
  for (std::size_t i = 0; i + 1 < rod.line.size(); ++i) out.push_back({rod.line[i], rod.line[i + 1]});
}

/// The twelve edges.
void add_edges(const Block& b, std::vector<Piece>& out) {
  for (unsigned axis = 0; axis < 3; ++axis)
    for (unsigned signs = 0; signs < 8; ++signs)
      if (!(signs >> axis & 1)) out.push_back({corner_of(b, signs), corner_of(b, signs | 1U << axis)});
}

std::vector<Piece> pieces_of(const Solid& s) {
  std::vector<Piece> all;
  if (s.block)
    all.push_back({.block = &*s.block});
  else
    add_pieces(s, all);
  return all;
}

/// How a straight piece lies to one pair of a block's sides: `from` + t `by`, the block reaching to `half` either way.
struct Across {
  double from, by, half;
  double at(double t) const { return from + t * by; }
  /// How far outside, signed.
  double outside(double t) const { return at(t) - std::clamp(at(t), -half, half); }
};

}  // namespace

double segment_block_distance_m(const Vec3& a0, const Vec3& a1, const Block& block) {
  std::array<Across, 3> across;
  std::array<double, 8> ends{0.0, 1.0};  // of the stretches in which no side's plane is crossed
  std::size_t count = 2;
  for (std::size_t i = 0; i < 3; ++i) {
    const double half = norm(block.half[i]);
    const Vec3 along = block.half[i] / half;
    across[i] = {dot(a0 - block.centre, along), dot(a1 - a0, along), half};
    for (double side : {-half, half}) {
      const double t = (side - across[i].from) / across[i].by;  // parallel: infinite or none, and not kept
      if (t > 0 && t < 1) ends[count++] = t;
    }
  }
  for (std::size_t i = count; i < ends.size(); ++i) ends[i] = 1.0;  // stretches without length at the end
  std::sort(ends.begin(), ends.end());
  const auto slope = [&](double t) {
    double sum = 0;
    for (auto& a : across) sum += a.outside(t) * a.by;
    return sum;
  };
  double best = slope(0) >= 0 ? 0.0 : 1.0;
  for (std::size_t i = 0; i + 1 < ends.size(); ++i) {
    const double low = slope(ends[i]), high = slope(ends[i + 1]);
    if (low > 0 || high < 0) continue;
    best = high > low ? ends[i] + (ends[i + 1] - ends[i]) * -low / (high - low) : ends[i];
    break;
  }
  return norm({across[0].outside(best), across[1].outside(best), across[2].outside(best)});
}

Vec3 corner_of(const Block& b, unsigned signs) {
  Vec3 p = b.centre;
  for (unsigned i = 0; i < 3; ++i) p = p + (signs >> i & 1 ? 1.0 : -1.0) * b.half[i];
  return p;
}

double piece_distance_m(const Piece& a, const Piece& b) {
  if (b.block) return segment_block_distance_m(a.from, a.to, *b.block);
  if (a.block) return segment_block_distance_m(b.from, b.to, *a.block);
  return segment_distance_m(a.from, a.to, b.from, b.to);
}

void pair_pieces(const Solid& a, const Solid& b, std::vector<std::pair<Piece, Piece>>& out) {
  out.clear();
  if (a.block && b.block) {
    std::vector<Piece> edges;
    add_edges(*a.block, edges);
    for (auto& e : edges) out.push_back({e, {.block = &*b.block}});
    edges.clear();
    add_edges(*b.block, edges);
    for (auto& e : edges) out.push_back({{.block = &*a.block}, e});
    return;
  }
  for (auto& p : pieces_of(a))
    for (auto& q : pieces_of(b)) out.push_back({p, q});
}

double solid_distance_m(const Solid& a, const Solid& b) {
  std::vector<std::pair<Piece, Piece>> pairs;
  pair_pieces(a, b, pairs);
  double least = std::numeric_limits<double>::infinity();
  for (auto& [p, q] : pairs) least = std::min(least, piece_distance_m(p, q));
  least -= a.radius_m + b.radius_m;
  return a.block || b.block ? std::max(0.0, least) : least;
}

Solid block_between(const Vec3& corner, const Vec3& opposite) {
  const Vec3 half = 0.5 * (opposite - corner);
  return {.block =
              Block{corner + half, {Vec3{std::abs(half.x), 0, 0}, {0, std::abs(half.y), 0}, {0, 0, std::abs(half.z)}}}};
}

void move_to(const Solid& rest, const RigidMotion& by, Solid& out) {
  out.radius_m = rest.radius_m;
  out.line.resize(rest.line.size());
  std::transform(rest.line.begin(), rest.line.end(), out.line.begin(), [&](const Vec3& p) { return by.of(p); });
  out.block = rest.block;
  if (!out.block) return;
  out.block->centre = by.of(rest.block->centre);
  for (std::size_t i = 0; i < 3; ++i) out.block->half[i] = by.turn(rest.block->half[i]);
}

double reach_from_axis_m(const Solid& s, const Vec3& on_axis, const Vec3& direction) {
  double most = 0;
  const auto see = [&](const Vec3& p) { most = std::max(most, distance_from_axis(p, on_axis, direction)); };
  for (auto& p : s.line) see(p);
  for (unsigned signs = 0; s.block && signs < 8; ++signs) see(corner_of(*s.block, signs));
  return most;
}

}  // namespace sw::physics
