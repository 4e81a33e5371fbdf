#include "physics/tolerance_stack.hpp"

#include <cmath>

namespace sw::physics {

ToleranceStack tolerance_stack(std::span<const double> half_widths) {
  ToleranceStack t;
  double squares = 0;
  for (std::size_t i = 0; i < half_widths.size(); ++i) {
    t.worst_case += half_widths[i];
    squares += half_widths[i] * half_widths[i];
    if (half_widths[i] > half_widths[t.greatest]) t.greatest = i;
  }
  t.statistical = std::sqrt(squares);
  return t;
}

}  // namespace sw::physics
