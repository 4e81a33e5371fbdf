#include "physics/exchanger.hpp"

#include <cmath>

namespace sw::physics {

Slope core_conductance(double rated_w_k, double rated_face_m_s, double exponent, double face_m_s) {
  const double at = std::abs(face_m_s), value = rated_w_k * std::pow(at / rated_face_m_s, exponent);
  return {value, at > 0 ? exponent * value / at : 0.0, at >= slowest_face_m_s && at <= fastest_face_m_s};
}

namespace {

constexpr double series_limit_ntu = 500;  // exp(-N) must stay far above the smallest double

/// (1 - exp(-y)) / y and its derivative, smooth through y = 0. Every closed form below is built from it.
struct Ratio {
  double value, slope;
};
Ratio saturation(double y) {
  if (std::abs(y) < 1e-4) return {1 - y / 2 + y * y / 6, -0.5 + y / 3 - y * y / 8};
  const double value = -std::expm1(-y) / y;
  return {value, (std::exp(-y) - value) / y};
}

Effectiveness counterflow(double n, double c) {
  const double a = 1 - c, e = std::exp(-n * a);
  const Ratio r = saturation(n * a);
  const double g = n * r.value, sum = g + e;
  return {g / sum, e / (sum * sum), -(n * n * r.slope * e + g * n * e) / (sum * sum)};
}

Effectiveness parallel(double n, double c) {
  const double s = 1 + c;
  const Ratio r = saturation(s * n);
  return {n * r.value, std::exp(-s * n), n * n * r.slope};
}

Effectiveness max_mixed(double n, double c) {
  const double u = -std::expm1(-n);
  const Ratio r = saturation(c * u);
  return {u * r.value, std::exp(-c * u) * std::exp(-n), u * u * r.slope};
}

Effectiveness min_mixed(double n, double c) {
  const Ratio r = saturation(c * n);
  const double v = n * r.value, rest = std::exp(-v);
  return {-std::expm1(-v), rest * std::exp(-c * n), rest * n * n * r.slope};
}

Effectiveness unmixed(double n, double c) {
  const double x = c * n;
  if (x < 1e-8) return {-std::expm1(-n), std::exp(-n), 0, true};
  double p = std::exp(-n), q = std::exp(-x);                // exp(-N) N^n / n! and the same of C N
  double big_p = -std::expm1(-n), big_q = -std::expm1(-x);  // P_n(N), P_n(C N)
  double sum = 0, d_n = 0, d_x = 0;
  for (int k = 0; k < 5000; ++k) {
    sum += big_p * big_q;
    d_n += p * big_q;
    d_x += big_p * q;
    if (big_p * big_q < 1e-17 * sum && k > n) break;
    p *= n / (k + 1);
    q *= x / (k + 1);
    big_p = std::fmax(0, big_p - p);
    big_q = std::fmax(0, big_q - q);
  }
  const double value = sum / x;
  return {value, (d_n + c * d_x) / x - value / n, n * d_x / x - value / c, true};
}

double greatest_ntu(Arrangement a) { return a == Arrangement::crossflow_unmixed ? series_limit_ntu : 1e6; }

}  // namespace

Effectiveness effectiveness(Arrangement arrangement, double ntu, double capacity_ratio) {
  if (!(ntu >= 0 && ntu <= greatest_ntu(arrangement) && capacity_ratio >= 0 && capacity_ratio <= 1))
    return {.valid = false};
  switch (arrangement) {
    case Arrangement::counterflow:
      return counterflow(ntu, capacity_ratio);
    case Arrangement::parallel:
      return parallel(ntu, capacity_ratio);
    case Arrangement::crossflow_unmixed:
      return ntu == 0 ? Effectiveness{0, 1, 0} : unmixed(ntu, capacity_ratio);
    case Arrangement::crossflow_max_mixed:
      return max_mixed(ntu, capacity_ratio);
    case Arrangement::crossflow_min_mixed:
      return min_mixed(ntu, capacity_ratio);
  }
  return {.valid = false};
}

Effectiveness crossflow_one_term(double ntu, double capacity_ratio) {
  if (!(ntu >= 0 && capacity_ratio >= 0 && capacity_ratio <= 1)) return {.valid = false};
  if (ntu == 0) return {0, 1, 0};
  // N^0.22 / C (1 - exp(-C N^0.78)) = N f(C N^0.78), f(y) = (1 - exp(-y)) / y
  const double w = std::pow(ntu, 0.78);
  const Ratio r = saturation(capacity_ratio * w);
  const double v = ntu * r.value, rest = std::exp(-v);
  return {-std::expm1(-v), rest * (r.value + 0.78 * r.slope * capacity_ratio * w), rest * ntu * r.slope * w};
}

Ntu ntu_for(Arrangement arrangement, double eff, double capacity_ratio) {
  if (!(eff >= 0 && eff < 1 && capacity_ratio >= 0 && capacity_ratio <= 1)) return {0, false};
  if (eff == 0) return {0, true};
  double low = 0, high = 1;
  while (effectiveness(arrangement, high, capacity_ratio).value < eff) {
    low = high;
    high *= 2;
    if (high > greatest_ntu(arrangement)) return {0, false};
  }
  double n = 0.5 * (low + high);
  for (int k = 0; k < 200 && high - low > 1e-13 * high; ++k) {
    const Effectiveness e = effectiveness(arrangement, n, capacity_ratio);
    (e.value < eff ? low : high) = n;
    const double newton = e.d_ntu > 0 ? n + (eff - e.value) / e.d_ntu : low;
    if (std::abs(newton - n) <= 1e-14 * n) break;
    n = newton > low && newton < high ? newton : 0.5 * (low + high);
  }
  return {n, true};
}

MeanDifference log_mean_difference(double difference_a_k, double difference_b_k) {
  if (!(difference_a_k * difference_b_k > 0)) return {0, false};
  const double ratio = difference_a_k / difference_b_k;
  if (std::abs(ratio - 1) < 1e-6) return {0.5 * (difference_a_k + difference_b_k), true};  // the limit, to 1e-13
  return {(difference_a_k - difference_b_k) / std::log(ratio), true};
}

}  // namespace sw::physics
