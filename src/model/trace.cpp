#include "model/trace.hpp"

#include <algorithm>

namespace sw {

std::size_t Trace::highest(std::size_t slot) const {
  std::size_t best = 0;
  for (std::size_t r = 1; r < rows(); ++r)
    if (at(r, slot) > at(best, slot)) best = r;
  return best;
}

std::size_t Trace::lowest(std::size_t slot) const {
  std::size_t best = 0;
  for (std::size_t r = 1; r < rows(); ++r)
    if (at(r, slot) < at(best, slot)) best = r;
  return best;
}

double Trace::late_mean(std::size_t slot, double share) const {
  if (rows() < 2) return rows() ? at(0, slot) : 0.0;
  const double from = time.back() - share * (time.back() - time.front());
  double sum = 0, span = 0;
  for (std::size_t r = 1; r < rows(); ++r) {
    if (time[r] <= from) continue;
    // A row holds from the step before it: switches jump there, so the mean takes the row's own value.
    const double dt = time[r] - std::max(time[r - 1], from);
    sum += at(r, slot) * dt;
    span += dt;
  }
  return span > 0 ? sum / span : at(rows() - 1, slot);
}

}  // namespace sw
