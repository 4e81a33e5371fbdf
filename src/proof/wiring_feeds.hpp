#pragma once
// What the wiring's network is fed with at the row of each duty that decides it: for the tools that try things on the
// network itself, outside any requirement.
#include <string>
#include <vector>

#include "duty/duties.hpp"

namespace sw {

struct WiringFeed {
  std::size_t duty = 0;  ///< index into the duty set
  bool cranks = false;
  wiring::Feed feed;  ///< at the end of the duty; while cranking at the lowest volts
  double fans_a = 0;  ///< of all electric fans that are fitted
  double bay_k = 0;   ///< air under the bonnet, late in the duty
};

/// For the duties that came through. `runs` are the traces of the whole set.
std::vector<WiringFeed> wiring_feeds(const Car& car, const DutySet& set, const std::vector<Trace>& runs);

}  // namespace sw
