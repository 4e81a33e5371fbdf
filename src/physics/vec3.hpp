#pragma once
// A vector in space, right-handed axes. A plain aggregate: points in m, directions of unit length, products of both.
#include <cmath>

namespace sw::physics {

struct Vec3 {
  double x = 0, y = 0, z = 0;
  constexpr bool operator==(const Vec3&) const = default;
};

constexpr Vec3 operator+(const Vec3& a, const Vec3& b) { return {a.x + b.x, a.y + b.y, a.z + b.z}; }
constexpr Vec3 operator-(const Vec3& a, const Vec3& b) { return {a.x - b.x, a.y - b.y, a.z - b.z}; }
constexpr Vec3 operator-(const Vec3& a) { return {-a.x, -a.y, -a.z}; }
constexpr Vec3 operator*(double k, const Vec3& a) { return {k * a.x, k * a.y, k * a.z}; }
constexpr Vec3 operator/(const Vec3& a, double k) { return {a.x / k, a.y / k, a.z / k}; }

constexpr double dot(const Vec3& a, const Vec3& b) { return a.x * b.x + a.y * b.y + a.z * b.z; }
constexpr Vec3 cross(const Vec3& a, const Vec3& b) {
  return {a.y * b.z - a.z * b.y, a.z * b.x - a.x * b.z, a.x * b.y - a.y * b.x};
}
inline double norm(const Vec3& a) { return std::sqrt(dot(a, a)); }
/// Of unit length; the zero vector has no direction and gives nan.
inline Vec3 unit(const Vec3& a) { return a / norm(a); }

/// `v` turned about the unit direction `axis`, right-handed: v cos t + (axis x v) sin t + axis (axis . v)(1 - cos t)
/// (Rodrigues' formula, any text on mechanics). Its slope by the angle is axis x (the turned v).
inline Vec3 turned(const Vec3& v, const Vec3& axis, double angle) {
  return std::cos(angle) * v + std::sin(angle) * cross(axis, v) + ((1 - std::cos(angle)) * dot(axis, v)) * axis;
}

/// Angle between two directions of any length, 0 to pi. By both products, so that it is as sharp near 0 and pi as in
/// between.
inline double angle_between(const Vec3& a, const Vec3& b) { return std::atan2(norm(cross(a, b)), dot(a, b)); }

/// Angle from `a` to `b` about the unit direction `axis`, right-handed, above -pi up to pi; the parts of both along the
/// axis are left out.
inline double angle_about(const Vec3& axis, const Vec3& a, const Vec3& b) {
  return std::atan2(dot(axis, cross(a, b)) + 0.0,  // and not -0, whose half turn is -pi
                    dot(a, b) - dot(axis, a) * dot(axis, b));
}

/// Some unit direction square to `a`: the same for the same `a`.
inline Vec3 any_square_to(const Vec3& a) {
  return unit(std::abs(a.z) < 0.9 * norm(a) ? cross({0, 0, 1}, a) : cross({1, 0, 0}, a));
}

}  // namespace sw::physics
