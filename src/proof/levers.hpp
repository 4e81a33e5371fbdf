#pragma once
// What would make a failing finding hold: for each part or setting that weighs on it, the value at which it does.
#include "proof/doubt.hpp"

namespace sw {

struct Lever {
  std::string path;
  double now = 0, needed = 0;  ///< SI; of a curve a factor on its values (now = 1)
  bool curve = false;
  double effort = 0;  ///< relative change asked for
};

/// The few changes, least first, each of which by itself brings judgement `index` past its limit and its doubt of
/// `half_width` too, and breaks nothing else in that duty; each tried on the car. Empty where none inside its field's
/// range does.
std::vector<Lever> levers(const Build& build, const DutySet& set, const std::vector<Judged>& base, std::size_t index,
                          double half_width, const Study& study, std::size_t most = 3);
/// `cooling.fan.left.flow from 800 to 960 cfm`
std::string words(const Lever& lever);

}  // namespace sw
