#pragma once
// What a vacuum store gives up to a booster that works with nothing to fill it: the air's balance, isothermal.
//
// At rest all of the store, S (front chambers, rear chambers, hose, reservoir), stands at one absolute pressure p. The
// foot shuts the rear chambers off, r_0 at rest, opens them to the air p_a and moves the diaphragms until they hold r:
// the air of the front is pressed from S - r_0 into S - r, so while the brakes are on the front stands at
// p_1 = p (S - r_0) / (S - r). The check valve lets out what would rise above the air. Let go, the rear hands its air
// over: p' S = p_1 (S - r) + p_a r. Boyle's law and conservation of air. The rear is taken as filled to the air's own
// pressure, which run-out does and a gentler stop of the same stroke does not: for that stroke less is left here than
// in the car.
#include "physics/law.hpp"

namespace sw::physics {

struct VacuumStore {
  double total_m3;         ///< S
  double rear_at_rest_m3;  ///< r_0, below `total_m3`
};

/// Vacuum at the diaphragms while the rear chambers hold `rear_m3` (r_0 to below S). slope: d / d vacuum at rest.
Slope applied_vacuum_pa(const VacuumStore& store, double rear_m3, double vacuum_pa, double air_pa);
/// Vacuum at rest after the foot has come up again. slope: d / d vacuum at rest before.
Slope released_vacuum_pa(const VacuumStore& store, double rear_m3, double vacuum_pa, double air_pa);

}  // namespace sw::physics
