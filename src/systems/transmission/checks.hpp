#pragma once
// What the rules of the transmission share with the solver that sets its cable's lever.
#include <cmath>

#include "systems/transmission/transmission.hpp"

namespace sw::transmission {

/// A place on the throttle's way, and the throttle-valve cable's travel there.
struct OnTheWay {
  double opening_rad = 0, travel_m = 0, wanted_m = 0;
  double off_m() const { return std::abs(travel_m - wanted_m); }
};
/// Where a lever of this radius lies furthest off the curve wanted; the model has one.
OnTheWay worst_on_the_way(const CableModel& cable, double radius_m);

}  // namespace sw::transmission
