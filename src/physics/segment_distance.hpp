#pragma once
// Least distance between two straight pieces, and between two chains of them. m. Source: geometry.
#include <span>

#include "physics/vec3.hpp"

namespace sw::physics {

/// A piece whose ends are one point is that point.
double segment_distance_m(const Vec3& a_from, const Vec3& a_to, const Vec3& b_from, const Vec3& b_to);
/// Each chain of two points at least, as they follow one another.
double chain_distance_m(std::span<const Vec3> a, std::span<const Vec3> b);

}  // namespace sw::physics
