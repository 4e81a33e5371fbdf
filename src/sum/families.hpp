#pragma once
// The families of sums, one function a file.
#include "sum/sum.hpp"

namespace sw {

std::span<const Sum> fluid_sums();  ///< properties, boiling, vapour pressure, atmosphere
std::span<const Sum> flow_sums();   ///< friction, losses and flow in pipes
std::span<const Sum> heat_sums();   ///< convection, mean difference, coolant
std::span<const Sum> exchanger_sums();

}  // namespace sw
