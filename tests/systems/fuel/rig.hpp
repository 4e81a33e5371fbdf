#pragma once
// The hand car with fuel injection (fuel_car.toml), changed.
#include "systems/fuel/fuel.hpp"
#include "systems/judged.hpp"

namespace sw::rig {

inline constexpr double psi = 6894.757293168361, litre_h = 1e-3 / 3600;

inline Opened opened_fuel_car(const std::string& change) { return laid_over("fuel/fuel_car.toml", change); }
inline Build fuel_car(const std::string& change = "") {
  Opened opened = opened_fuel_car(change);
  for (auto& d : opened.faults.all()) ADD_FAILURE() << say(d, opened.files);
  return std::move(opened.build);
}
inline fuel::Model fuel_model(const std::string& change = "") {
  const Build build = fuel_car(change);
  return resolved<fuel::System>(build).model;
}

}  // namespace sw::rig
