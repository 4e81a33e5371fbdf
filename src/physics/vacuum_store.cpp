#include "physics/vacuum_store.hpp"

#include <algorithm>

namespace sw::physics {
namespace {

bool possible(const VacuumStore& s, double rear_m3, double vacuum_pa, double air_pa) {
  return s.rear_at_rest_m3 >= 0 && rear_m3 >= s.rear_at_rest_m3 && rear_m3 < s.total_m3 && vacuum_pa >= 0 &&
         vacuum_pa <= air_pa;
}

}  // namespace

Slope applied_vacuum_pa(const VacuumStore& s, double rear_m3, double vacuum_pa, double air_pa) {
  const double pressed = (s.total_m3 - s.rear_at_rest_m3) / (s.total_m3 - rear_m3);
  const double left = air_pa - (air_pa - vacuum_pa) * pressed;
  return {std::max(0.0, left), left > 0 ? pressed : 0, possible(s, rear_m3, vacuum_pa, air_pa)};
}

Slope released_vacuum_pa(const VacuumStore& s, double rear_m3, double vacuum_pa, double air_pa) {
  const Slope on = applied_vacuum_pa(s, rear_m3, vacuum_pa, air_pa);
  const double front = 1 - rear_m3 / s.total_m3;  // the rear comes at the air's pressure: no vacuum of its own
  return {on.value * front, on.slope * front, on.valid};
}

}  // namespace sw::physics
