#pragma once
// Small circuits in closed form; the general case is dc_network.hpp.
#include <span>
#include <vector>

namespace sw::physics {

/// A pull-up to the supply over a sender to ground: V = supply sender / (pull_up + sender).
double divider_volts(double supply_v, double pull_up_ohm, double sender_ohm);
/// The sender behind that voltage; only for 0 <= volts < supply.
double divider_sender_ohm(double supply_v, double pull_up_ohm, double volts);

/// Wheatstone bridge: r1 over r2 on the left, r3 over r4 on the right, all in ohm; node analysis of the two middles.
struct Bridge {
  double r1, r2, r3, r4;
};
double bridge_open_volts(const Bridge& b, double supply_v);
struct BridgeLoaded {
  double detector_a, resistance_ohm;
};  ///< left to right; resistance as the supply sees it
BridgeLoaded bridge_with(const Bridge& b, double supply_v, double detector_ohm);

/// Millman: V = sum(E/R) / (sum(1/R) + 1/R_load). volts[i] and ohms[i] are source i; current out of it (E - V)/R.
struct Bus {
  double volts;
  std::vector<double> currents_a;
};
Bus bus(std::span<const double> volts, std::span<const double> ohms, double load_siemens);

}  // namespace sw::physics
