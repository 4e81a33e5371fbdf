#pragma once
// Heat radiated from a hot pipe to a line beside it.
//
//   Q = F e sigma A (T_hot^4 - T^4)
// A the line's own surface, F the share of what leaves it that meets the hot pipe, e the emissivity of the two together
// (the surroundings send back little: grey surfaces, a single reflection). For two long parallel cylinders of radii r
// (the line's) and R, gap s between their surfaces, by crossed strings:
//   F = (1/2pi) [pi + sqrt(C^2 - (k+1)^2) - sqrt(C^2 - (k-1)^2)
//               + (k-1) acos((k-1)/C) - (k+1) acos((k+1)/C)],   k = R/r, C = 1 + k + s/r
// Range: s > 0, lengths many times the gap. Source: Incropera, Fundamentals of Heat and Mass Transfer, table 13.1 and
// section 13.3 (from memory).
#include "physics/law.hpp"

namespace sw::physics {

inline constexpr double stefan_boltzmann_w_m2k4 = 5.670374419e-8;  ///< exact by the SI of 2019

double parallel_cylinders_view(double radius_m, double other_radius_m, double gap_m);
/// W per m2 of the line's surface; slope to its own temperature.
Slope radiant_heat_w_m2(double view, double emissivity, double hot_k, double own_k);

}  // namespace sw::physics
