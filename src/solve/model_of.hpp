#pragma once
// A system's model in a car, for solvers that look at one by its own functions.
#include <stdexcept>

#include "car/car.hpp"

namespace sw {

template <class S>
const typename S::Model& model_of(const Car& car) {
  for (auto& s : car.systems())
    if (s.key == S::key) return *static_cast<const typename S::Model*>(s.model);
  throw std::logic_error(std::string(S::key) + " is not in the list of systems");
}
/// Whether the build says something of the system, and nothing of it is missing.
template <class S>
bool told_of(const Car& car) {
  for (auto& s : car.systems())
    if (s.key == S::key) return s.described && s.missing.empty();
  return false;
}

}  // namespace sw
