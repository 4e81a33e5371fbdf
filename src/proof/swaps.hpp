#pragma once
// The car with one part changed for another of its kind from the shelf, judged again.
#include "proof/judge.hpp"

namespace sw {

struct Swap {
  std::string group, part;      ///< `charging.alternator`, `high-idle-140`
  std::optional<double> price;  ///< in the shop's own money
  Build build;                  ///< the car with it
  std::vector<Judged> judged;
};
/// Every part of the shelf in place of the one of its kind the build has, the cheapest first; parts with which the car
/// cannot be are left out. What was measured on the old part goes with it; what the shop stated or chose stays.
std::vector<Swap> swaps(const Build& build, const DutySet& set, const std::vector<bool>& wanted);

/// The build with a part's figures in `group`; false where they do not go together with the rest.
bool fit(Build& build, const std::string& group, const Node& part);

}  // namespace sw
