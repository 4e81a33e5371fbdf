// The registry. Each solver's entry stands in its own file.
#include <vector>

#include "solve/list.hpp"

namespace sw {

std::span<const Solver> solvers() {
  // Entries are copied when first asked for: those of other files are then sure to be there.
  static const std::vector<Solver> all = {
      proportioning, pedal_ratio, shims,          stack,     belt_length, fan_set_points, wires,    ground_points,
      sender_match,  gauge_table, steering_phase, kick_down, bolt_torque, tube_bends,     cut_list, flat_pattern};
  return all;
}

}  // namespace sw
