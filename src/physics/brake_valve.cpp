#include "physics/brake_valve.hpp"

namespace sw::physics {
namespace {

Slope reduce(const BrakeValve& v, double p) {
  const bool valid = p >= 0 && v.knee_pa >= 0 && v.slope >= 0 && v.slope <= 1;
  if (p < v.knee_pa) return {p, 1, valid};
  return {v.knee_pa + v.slope * (p - v.knee_pa), v.slope, valid};
}

Slope hold_off(const BrakeValve& v, double p) {
  const bool valid = p >= 0 && v.knee_pa >= 0 && v.full_pa > v.knee_pa;
  if (p >= v.full_pa) return {p, 1, valid};
  if (p < v.knee_pa) return {0, 0, valid};
  const double rise = v.full_pa / (v.full_pa - v.knee_pa);
  return {rise * (p - v.knee_pa), rise, valid};
}

}  // namespace

Slope brake_valve(const BrakeValve& valve, double inlet_pa) {
  return valve.kind == BrakeValveKind::reduces ? reduce(valve, inlet_pa) : hold_off(valve, inlet_pa);
}

Slope brake_valves(std::span<const BrakeValve> in_series, double inlet_pa) {
  Slope line{inlet_pa, 1, inlet_pa >= 0};
  for (auto& v : in_series) {
    const Slope next = brake_valve(v, line.value);
    line = {next.value, next.slope * line.slope, next.valid && line.valid};
  }
  return line;
}

}  // namespace sw::physics
