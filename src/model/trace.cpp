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

Trace Trace::before(std::size_t row) const {
  return {.time = {time.begin(), time.begin() + static_cast<std::ptrdiff_t>(row)},
          .values = {values.begin(), values.begin() + static_cast<std::ptrdiff_t>(row * width)},
          .width = width,
          .summary = summary};
}

double Trace::late_mean(std::size_t slot, double share) const {
  if (rows() < 2) return rows() ? at(0, slot) : 0.0;
  const double from = time.back() - share * (time.back() - time.front());
  double sum = 0, span = 0;
  for (std::size_t r = 1; r < rows(); ++r) {
    if (time[r] <= from || time[r] == time[r - 1]) continue;
    // A straight line from row to row; where a switch or corner makes it jump there are two rows of one time.
    const double dt = time[r] - std::max(time[r - 1], from),
                 slope = (at(r, slot) - at(r - 1, slot)) / (time[r] - time[r - 1]);
    sum += (at(r, slot) - 0.5 * dt * slope) * dt;
    span += dt;
  }
  return span > 0 ? sum / span : at(rows() - 1, slot);
}

}  // namespace sw
