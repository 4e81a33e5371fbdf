#include "physics/thermostat.hpp"

namespace sw::physics {

Slope thermostat_opening(double wax_k, double opens_k, double open_k) {
  if (!(open_k > opens_k)) return {.value = wax_k >= opens_k ? 1.0 : 0.0, .slope = 0, .valid = false};
  const double t = (wax_k - opens_k) / (open_k - opens_k);
  if (t <= 0) return {0, 0};
  if (t >= 1) return {1, 0};
  return {t * t * (3 - 2 * t), 6 * t * (1 - t) / (open_k - opens_k)};
}

}  // namespace sw::physics
