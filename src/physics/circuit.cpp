#include "physics/circuit.hpp"

namespace sw::physics {

double divider_volts(double supply_v, double pull_up_ohm, double sender_ohm) {
  return supply_v * sender_ohm / (pull_up_ohm + sender_ohm);
}

double divider_sender_ohm(double supply_v, double pull_up_ohm, double volts) {
  return pull_up_ohm * volts / (supply_v - volts);
}

double bridge_open_volts(const Bridge& b, double supply_v) {
  return supply_v * (b.r2 / (b.r1 + b.r2) - b.r4 / (b.r3 + b.r4));
}

BridgeLoaded bridge_with(const Bridge& b, double supply_v, double detector_ohm) {
  // (1/r1 + 1/r2 + 1/rd) L - R/rd = V/r1 and the same on the right, by Cramer's rule.
  const double d = 1 / detector_ohm, left = 1 / b.r1 + 1 / b.r2 + d, right = 1 / b.r3 + 1 / b.r4 + d;
  const double in_left = supply_v / b.r1, in_right = supply_v / b.r3, det = left * right - d * d;
  const double l = (in_left * right + d * in_right) / det, r = (in_right * left + d * in_left) / det;
  return {(l - r) * d, supply_v / ((supply_v - l) / b.r1 + (supply_v - r) / b.r3)};
}

Bus bus(std::span<const double> volts, std::span<const double> ohms, double load_siemens) {
  double driven = 0, conductance = load_siemens;
  for (std::size_t i = 0; i < volts.size(); ++i) driven += volts[i] / ohms[i], conductance += 1 / ohms[i];
  Bus b{driven / conductance, {}};
  for (std::size_t i = 0; i < volts.size(); ++i) b.currents_a.push_back((volts[i] - b.volts) / ohms[i]);
  return b;
}

}  // namespace sw::physics
