#pragma once
// Where a rising function of pressure or force reaches a figure, by halving: the laws of brakes have kinks.

namespace sw::brakes {

/// The argument in 0..high at which `f` reaches `wanted`; `high` where it does not before.
template <class F>
double reach(double high, double wanted, F&& f) {
  constexpr int halvings = 60;
  double low = 0;
  if (!(f(high) > wanted)) return high;
  for (int i = 0; i < halvings; ++i) {
    const double mid = 0.5 * (low + high);
    (f(mid) < wanted ? low : high) = mid;
  }
  return 0.5 * (low + high);
}

}  // namespace sw::brakes
