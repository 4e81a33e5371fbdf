#pragma once
// The car with one part changed for another of its kind from the shelf, judged again.
#include "proof/judge.hpp"

namespace sw {

struct Swap {
  std::string group, part;      ///< `charging.alternator`, `high-idle-140`
  std::optional<double> price;  ///< in the shop's own money
  /// Keys the group states itself that the part takes the place of: left standing, they would win over it.
  std::vector<std::string> in_place_of;
  const Node* figures = nullptr;  ///< the part's, in the build's shelf
  Build build;                    ///< the car with it
  std::vector<Judged> judged;
};
/// Every part of the shelf in place of the one of its kind the build has, the cheapest first; parts with which the car
/// cannot be are left out. What was measured on the old part goes with it; what the shop stated or chose stays.
std::vector<Swap> swaps(const Build& build, const DutySet& set, const std::vector<bool>& wanted);

/// `single-14 as cooling.fan.pair in place of its own flow and current`
std::string words(const Swap& swap);

/// The build with the figures of the part of that name in `group`, with their own evidence; false where they do not go
/// together with the rest.
bool fit(Build& build, const std::string& group, const std::string& name, const Node& part);

}  // namespace sw
