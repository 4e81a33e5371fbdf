#pragma once
// Monotone piecewise cubic through a curve's points, for use in time loops: nothing is allocated, an evaluation is a
// five-step search and one cubic.
//
//   on [x_k, x_k+1], t = x - x_k:   y = y_k + t (b_k + t (c_k + t d_k)),   y' = b_k + t (2 c_k + 3 t d_k)
//
// Slopes at the points come from three-point differences, set to zero at a turn of the data and shrunk into the
// circle of radius 3 (in units of the secant), so that the curve never turns where the data do not.
// Range: first to last point. Outside: the end value, slope zero, `inside` false; the caller says what that means.
// Source: Fritsch and Carlson, Monotone Piecewise Cubic Interpolation, SIAM J. Numer. Anal. 17 (1980), 238-246.
#include <array>
#include <cstddef>
#include <optional>

#include "field/curve.hpp"

namespace sw::physics {

class Interpolant {
 public:
  static constexpr int max_points = 32;

  struct Result {
    double value = 0;
    double slope = 0;
    bool inside = false;
  };

  /// Empty where the curve has fewer than 2 or more than `max_points` points, or x does not rise strictly.
  static std::optional<Interpolant> make(const Curve& curve);

  Result at(double x) const;
  double first() const { return x_[0]; }
  double last() const { return x_[static_cast<std::size_t>(count_ - 1)]; }

 private:
  struct Piece {
    double y = 0, b = 0, c = 0, d = 0;
  };
  Interpolant() = default;

  int count_ = 0;
  std::array<double, max_points> x_{};
  std::array<Piece, max_points> piece_{};  ///< [k] from x_[k] to x_[k+1]; the last holds the end value alone
};

}  // namespace sw::physics
