#pragma once
// The least distance between two simple solids, m.
//
// A rod is a line of points with a radius about it: a pipe, a shaft, a link; one point alone is a ball. Two rods:
//   least distance of their straight pieces - both radii; below nothing they overlap, by no more than that says.
// A block is a box with edges square to one another. Along a straight piece the square of the distance from a block is
// convex and, between the places where a side's plane is crossed, of second order: its least is found by its slope,
// which is straight there. Two blocks are as far apart as the edges of one from the other, both ways round. A block
// that is touched or cut is 0 away: how deep is not told. Exact but for rounding. Source: geometry.
#include <array>
#include <optional>
#include <utility>
#include <vector>

#include "physics/rigid_motion.hpp"
#include "physics/vec3.hpp"

namespace sw::physics {

struct Block {
  Vec3 centre;
  std::array<Vec3, 3> half;  ///< half edges, square to one another, none without length
  bool operator==(const Block&) const = default;
};

struct Solid {
  std::vector<Vec3> line;  ///< of a rod, one point at least; empty for a block
  double radius_m = 0;
  std::optional<Block> block;
  bool operator==(const Solid&) const = default;
};

/// Edges along the axes, between two opposite corners.
Solid block_between(const Vec3& corner, const Vec3& opposite);
/// By its three signs, bit by bit, 0 to 7.
Vec3 corner_of(const Block& b, unsigned signs);

/// A convex part of a solid: a straight piece of a rod, an edge, or a whole block.
struct Piece {
  Vec3 from, to;
  const Block* block = nullptr;
};
/// Not of two blocks: their edges are paired instead. Radii are not counted.
double piece_distance_m(const Piece& a, const Piece& b);
/// The pairs whose least distance is that of the two solids, radii apart; they point into the solids.
void pair_pieces(const Solid& a, const Solid& b, std::vector<std::pair<Piece, Piece>>& out);

double segment_block_distance_m(const Vec3& a0, const Vec3& a1, const Block& block);
double solid_distance_m(const Solid& a, const Solid& b);

/// `rest` moved, written over `out`, whose room is used again.
void move_to(const Solid& rest, const RigidMotion& by, Solid& out);

/// Of the solid's farthest point from an axis; the radius is not counted.
double reach_from_axis_m(const Solid& s, const Vec3& on_axis, const Vec3& direction);

}  // namespace sw::physics
