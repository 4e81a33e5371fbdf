#pragma once
// What would make a failing finding hold: parts of the shelf in place of those there are, and for each part or setting
// that weighs on it the trade size at which it does.
#include "proof/changed.hpp"
#include "proof/swaps.hpp"

namespace sw {

struct Lever {
  std::string path;            ///< of several alike, moved together, with a star for their names: `cooling.fan.*.flow`
  double now = 0, needed = 0;  ///< SI; of a factor on a curve or on several figures now = 1
  bool factor = false;
  double effort = 0;   ///< relative change asked for
  std::string leaves;  ///< what still fails of the same duty (leaves_failing)
};

/// A part or setting that no value of which does: another finding that fails wants it moved the other way.
struct Conflict {
  std::string path;
  std::size_t other;  ///< the judgement that wants the opposite
};

/// The few changes, least first, each of which by itself brings the judgement past its limit by more than its
/// doubt in the changed car, and breaks nothing else in that duty; each tried on the car. Empty where none inside its
/// field's range does. A wire at the judgement's own place comes first, in the thickness that does and that its fuse
/// protects.
std::vector<Lever> levers(const Question& q, std::size_t most = 3);
/// Of the parts and settings that would do where another failing judgement did not rule it out, the one that weighs
/// most on both.
std::optional<Conflict> conflict(const Question& q);
/// Positions in `tried` of the first few with which the judgement holds by more than its doubt and nothing else breaks,
/// cheapest first.
std::vector<std::size_t> parts_that_hold(const Question& q, const std::vector<Swap>& tried, std::size_t most = 1000);

/// `cooling.fan.left.flow from 800 cfm to 960 cfm`, with what to mind.
std::string words(const Lever& lever);
/// At most `most` of them in words, a thicker wire at the place first, then parts: `Holds with shelf part high-idle-180
/// as charging.alternator; or …`, and where none does and two findings pull one figure both ways, that. Empty where
/// there is nothing to offer.
std::string offers(const Question& q, const std::vector<Swap>& tried, std::size_t most = 3);

}  // namespace sw
