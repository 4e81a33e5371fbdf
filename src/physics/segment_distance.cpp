#include "physics/segment_distance.hpp"

#include <algorithm>
#include <limits>

namespace sw::physics {
namespace {

double point_to_segment_m(const Vec3& p, const Vec3& from, const Vec3& to) {
  const Vec3 along = to - from;
  const double length2 = dot(along, along);
  const double share = length2 > 0 ? std::clamp(dot(p - from, along) / length2, 0.0, 1.0) : 0.0;
  return norm(p - (from + share * along));
}

}  // namespace

double segment_distance_m(const Vec3& a_from, const Vec3& a_to, const Vec3& b_from, const Vec3& b_to) {
  // The least lies at an end of one of them or, where both lines cross over between their ends, on their common normal.
  double least = std::min({point_to_segment_m(a_from, b_from, b_to), point_to_segment_m(a_to, b_from, b_to),
                           point_to_segment_m(b_from, a_from, a_to), point_to_segment_m(b_to, a_from, a_to)});
  const Vec3 a = a_to - a_from, b = b_to - b_from, normal = cross(a, b), between = b_from - a_from;
  const double n2 = dot(normal, normal);
  constexpr double parallel = 1e-24;  // share of the lengths' product squared: below it rounding alone tells a normal
  if (n2 <= parallel * dot(a, a) * dot(b, b)) return least;
  const double on_a = dot(cross(between, b), normal) / n2, on_b = dot(cross(between, a), normal) / n2;
  if (on_a < 0 || on_a > 1 || on_b < 0 || on_b > 1) return least;
  return std::min(least, std::abs(dot(between, normal)) / std::sqrt(n2));
}

double chain_distance_m(std::span<const Vec3> a, std::span<const Vec3> b) {
  double least = std::numeric_limits<double>::infinity();
  for (std::size_t i = 0; i + 1 < a.size(); ++i)
    for (std::size_t j = 0; j + 1 < b.size(); ++j)
      least = std::min(least, segment_distance_m(a[i], a[i + 1], b[j], b[j + 1]));
  return least;
}

}  // namespace sw::physics
