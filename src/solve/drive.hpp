#pragma once
// The belt drive of a car, for the solvers that set it.
#include "solve/model_of.hpp"
#include "systems/belts/checks.hpp"

namespace sw {

inline const belts::Model& drive_of(const Car& car) { return model_of<belts::System>(car); }

}  // namespace sw
