#pragma once
// Valves in a brake line: what they let through of the pressure before them. Gauge pressures in Pa.
#include <span>

#include "physics/law.hpp"

namespace sw::physics {

/// A reducing valve (of the proportioning kind). reduces: p up to the knee, above it knee + slope (p - knee): the
/// stepped piston's two areas stand as `slope` to 1. holds_off (of the metering kind): nothing up to the knee, from
/// there a straight line that meets the full pressure at `full_pa`, and all of it above.
/// Symbols: p inlet pressure, knee where the valve begins to act. Range: p >= 0, 0 <= slope <= 1, knee >= 0, for
/// holds_off full > knee; outside `valid` is false and the line is continued. Rising pressure only: on release both
/// kinds lag behind. Source: Limpert, Brake Design and Safety, ch. 5 (pressure-reducing and metering valves), from
/// memory.
enum class BrakeValveKind { reduces, holds_off };
struct BrakeValve {
  BrakeValveKind kind = BrakeValveKind::reduces;
  double knee_pa = 0;
  double slope = 1;    ///< reduces only
  double full_pa = 0;  ///< holds_off only
};
/// slope: d outlet / d inlet; at the knee that of the side above it.
Slope brake_valve(const BrakeValve& valve, double inlet_pa);
/// Valves one after another in one line, first that next to the master cylinder.
Slope brake_valves(std::span<const BrakeValve> in_series, double inlet_pa);

}  // namespace sw::physics
