#pragma once
// LU with partial pivoting of a small dense matrix of fixed greatest size, without allocation.
#include <array>
#include <cmath>
#include <utility>

namespace sw {

template <std::size_t N>
class SmallLu {
 public:
  /// Element (i, j), row-major: a_[i * N + j].
  double& at(std::size_t i, std::size_t j) { return a_[i * N + j]; }

  /// Factors the leading n x n part in place. False where it is singular.
  bool factor(std::size_t n) {
    n_ = n;
    for (std::size_t k = 0; k < n; ++k) {
      std::size_t best = k;
      for (std::size_t i = k + 1; i < n; ++i)
        if (std::abs(at(i, k)) > std::abs(at(best, k))) best = i;
      pivot_[k] = best;
      if (at(best, k) == 0.0) return false;
      if (best != k)
        for (std::size_t j = 0; j < n; ++j) std::swap(at(k, j), at(best, j));
      for (std::size_t i = k + 1; i < n; ++i) {
        const double m = at(i, k) / at(k, k);
        at(i, k) = m;
        if (m == 0.0) continue;
        for (std::size_t j = k + 1; j < n; ++j) at(i, j) -= m * at(k, j);
      }
    }
    return true;
  }

  /// Solves in place for one right-hand side of size n.
  void solve(double* b) const {
    for (std::size_t k = 0; k < n_; ++k) std::swap(b[k], b[pivot_[k]]);
    for (std::size_t i = 1; i < n_; ++i)
      for (std::size_t j = 0; j < i; ++j) b[i] -= a_[i * N + j] * b[j];
    for (std::size_t i = n_; i-- > 0;) {
      for (std::size_t j = i + 1; j < n_; ++j) b[i] -= a_[i * N + j] * b[j];
      b[i] /= a_[i * N + i];
    }
  }

 private:
  std::array<double, N * N> a_{};
  std::array<std::size_t, N> pivot_{};
  std::size_t n_ = 0;
};

}  // namespace sw
