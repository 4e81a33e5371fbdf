#pragma once
// What would make a failing finding hold: for each part or setting that weighs on it the trade size at which it does.
#include "proof/changed.hpp"

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

/// Whether it is a finding that a change of some size can mend: it fails, and by a figure.
bool can_be_asked(const Question& q);
/// The wires at the finding's own place, each in the thickness that does and that its fuse protects.
std::vector<Lever> thicker_wires(const Question& q);
/// The few other changes beside those `said`, least first.
std::vector<Lever> other_levers(const Question& q, const std::vector<Lever>& said, std::size_t most);
/// Both, wires first. Each by itself brings the judgement past its limit by more than its doubt in the changed car, and
/// breaks nothing else in any duty looked at (Trial); each tried on the car. Empty where none inside its field's range
/// does.
std::vector<Lever> levers(const Question& q, std::size_t most = 3);
/// Of the parts and settings that would do where another failing judgement did not rule it out, the one that weighs
/// most on both.
std::optional<Conflict> conflict(const Question& q);

}  // namespace sw
