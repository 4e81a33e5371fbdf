#include "physics/interpolant.hpp"

#include <cmath>

namespace sw::physics {
namespace {

bool rises(const Curve& c) {
  for (std::size_t i = 1; i < c.x.size(); ++i)
    if (!(c.x[i] > c.x[i - 1])) return false;
  return true;
}

/// One-sided three-point slope at an end, never against or steeper than three times the end's own secant.
double end_slope(double h0, double h1, double s0, double s1) {
  double m = ((2 * h0 + h1) * s0 - h0 * s1) / (h0 + h1);
  if (m * s0 <= 0) return 0;
  return std::abs(m) > 3 * std::abs(s0) ? 3 * s0 : m;
}

}  // namespace

std::optional<Interpolant> Interpolant::make(const Curve& curve) {
  const std::size_t n = curve.x.size();
  if (n < 2 || n > max_points || curve.y.size() != n || !rises(curve)) return std::nullopt;

  std::array<double, max_points> h{}, s{}, m{};
  for (std::size_t k = 0; k + 1 < n; ++k) {
    h[k] = curve.x[k + 1] - curve.x[k];
    s[k] = (curve.y[k + 1] - curve.y[k]) / h[k];
  }
  for (std::size_t k = 1; k + 1 < n; ++k)
    m[k] = s[k - 1] * s[k] <= 0 ? 0 : (h[k] * s[k - 1] + h[k - 1] * s[k]) / (h[k - 1] + h[k]);
  m[0] = n == 2 ? s[0] : end_slope(h[0], h[1], s[0], s[1]);
  m[n - 1] = n == 2 ? s[0] : end_slope(h[n - 2], h[n - 3], s[n - 2], s[n - 3]);
  for (std::size_t k = 0; k + 1 < n; ++k) {
    if (s[k] == 0) continue;  // both slopes are zero already
    const double a = m[k] / s[k], b = m[k + 1] / s[k], r = std::hypot(a, b);
    if (r > 3) {
      m[k] = 3 / r * a * s[k];
      m[k + 1] = 3 / r * b * s[k];
    }
  }

  Interpolant f;
  f.count_ = static_cast<int>(n);
  for (std::size_t k = 0; k < n; ++k) {
    f.x_[k] = curve.x[k];
    f.piece_[k].y = curve.y[k];
    if (k + 1 == n) break;
    f.piece_[k].b = m[k];
    f.piece_[k].c = (3 * s[k] - 2 * m[k] - m[k + 1]) / h[k];
    f.piece_[k].d = (m[k] + m[k + 1] - 2 * s[k]) / (h[k] * h[k]);
  }
  return f;
}

Interpolant::Result Interpolant::at(double x) const {
  const auto end = static_cast<std::size_t>(count_ - 1);
  if (!(x >= x_[0])) return {piece_[0].y, 0, false};
  if (x > x_[end]) return {piece_[end].y, 0, false};
  std::size_t k = 0;
  for (std::size_t step = max_points / 2; step > 0; step /= 2)
    if (k + step < end && x_[k + step] <= x) k += step;
  const Piece& p = piece_[k];
  const double t = x - x_[k];
  return {p.y + t * (p.b + t * (p.c + t * p.d)), p.b + t * (2 * p.c + 3 * t * p.d), true};
}

}  // namespace sw::physics
