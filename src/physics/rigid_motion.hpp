#pragma once
// A rigid body's change of place: every point turned, then shifted. p' = R p + s, R's columns being where the axes of
// length 1 m come to. Turns are exact (Rodrigues, vec3.hpp), so that distances inside the body stay what they are.
// Source: any text on mechanics.
#include <optional>

#include "physics/vec3.hpp"

namespace sw::physics {

struct RigidMotion {
  Vec3 x{1, 0, 0}, y{0, 1, 0}, z{0, 0, 1}, shift{};
  bool operator==(const RigidMotion&) const = default;

  /// A direction, or an edge.
  constexpr Vec3 turn(const Vec3& v) const { return v.x * x + v.y * y + v.z * z; }
  constexpr Vec3 of(const Vec3& point) const { return turn(point) + shift; }
};

/// First `a`, then `b`.
constexpr RigidMotion then(const RigidMotion& a, const RigidMotion& b) {
  return {b.turn(a.x), b.turn(a.y), b.turn(a.z), b.of(a.shift)};
}

/// About the axis through `point` along the unit `direction`, right-handed.
inline RigidMotion turned_about(const Vec3& point, const Vec3& direction, double angle) {
  const auto t = [&](const Vec3& v) { return turned(v, direction, angle); };
  return {t({1, 0, 0}), t({0, 1, 0}), t({0, 0, 1}), point - t(point)};
}

constexpr RigidMotion shifted(const Vec3& by) { return {.shift = by}; }

/// Of a point from the axis through `on_axis` along the unit `direction`.
inline double distance_from_axis(const Vec3& point, const Vec3& on_axis, const Vec3& direction) {
  return norm(cross(point - on_axis, direction));
}

/// The turn about an axis that raises a point by `rise` (z up), the nearest to none; empty where its circle does not
/// come so high or so low. With w what is square to the axis of the way to the point and q = direction x w its height
/// goes with w_z cos t + q_z sin t.
inline std::optional<double> turn_for_rise(const Vec3& point, const Vec3& on_axis, const Vec3& direction, double rise) {
  const Vec3 v = point - on_axis, w = v - dot(v, direction) * direction, q = cross(direction, w);
  const double radius = std::hypot(w.z, q.z), top = std::atan2(q.z, w.z), height = w.z + rise;
  if (radius == 0 || std::abs(height) > radius) return std::nullopt;
  const double from_top = std::acos(height / radius);
  return top >= 0 ? top - from_top : top + from_top;
}

}  // namespace sw::physics
