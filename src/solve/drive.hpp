#pragma once
// The belt drive of a car, for the solvers that set it.
#include <stdexcept>

#include "car/car.hpp"
#include "systems/belts/checks.hpp"

namespace sw {

inline const belts::Model& drive_of(const Car& car) {
  for (auto& s : car.systems())
    if (s.key == belts::System::key) return *static_cast<const belts::Model*>(s.model);
  throw std::logic_error("the belt drive is not in the list of systems");
}

}  // namespace sw
