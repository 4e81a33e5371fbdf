#pragma once
// What a shop can take hold of to change a finding: a part's figure or a setting, or those of several parts alike
// moved together; and how far each may go.
#include "proof/changed.hpp"
#include "proof/levers.hpp"

namespace sw {

inline constexpr double most_effort = 0.6;  ///< relative change; beyond it another part is meant, not this one changed

/// A lever with the moves behind it: one, or those of several parts alike.
struct Handle {
  Lever lever;
  const FieldInfo* field = nullptr;
  std::vector<const Move*> moves;
  double slope = 0;   ///< of the margin, for one unit of `lever`
  double effort = 0;  ///< first-order guess of what is needed
};

/// Every handle that turns the question's margin, the least effort first.
std::vector<Handle> handles(const Question& q);
/// How much of a change a step is: a share of the value; of a temperature or of nothing, a share of the field's range.
double effort_of(const Handle& h, double step);
double effort_allowed(const FieldInfo& f);
/// Whether the lever's needed value can be and is meant: inside the field's range, nothing made weaker to cure a car.
bool in_range(const Build& build, const Handle& h);
/// The car with the lever at its needed value; empty where the change cannot be made.
std::optional<Build> changed_by(const Build& build, const Handle& h);
/// The next trade size beyond a step; empty where there is none.
std::optional<double> rounded(const Handle& h, double needed);

}  // namespace sw
