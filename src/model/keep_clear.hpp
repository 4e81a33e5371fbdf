#pragma once
// How far a line stays from the exhaust: one figure for every system that asks (common practice).
#include "quantity/customary.hpp"

namespace sw {

inline constexpr double bare_to_exhaust_m = 3 * inch_m, shielded_to_exhaust_m = 1 * inch_m;

}  // namespace sw
