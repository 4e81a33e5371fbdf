#pragma once
// How a wire is laid, its ampacity by it, and how that is told: the same figures with the same evidence wherever a wire
// is judged.
#include "physics/wire.hpp"
#include "systems/wiring/wiring.hpp"

namespace sw::wiring {

Laid laid(const Wire& w, const Resolver& r);
/// Ampacity in its zone and bundle; in the engine bay at `air_k` where that is hotter than the table's air.
physics::Ampacity ampacity(const Conductor& c, std::optional<double> air_k = {});

}  // namespace sw::wiring
