#include "physics/drum_factor.hpp"

#include <algorithm>
#include <numbers>

#include "physics/brake_drum.hpp"

namespace sw::physics {

Slope shoe_factor(const Shoe& s, double friction, bool leading) {
  const auto shoe = drum_shoe({.radius_m = 1,
                               .width_m = 1,
                               .friction = friction,
                               .start_rad = s.start,
                               .end_rad = s.end,
                               .peak_rad = std::min(s.end, std::numbers::pi / 2),
                               .pivot_radius_m = s.pivot,
                               .lever_m = s.lever},
                              1);
  const double lead = shoe.leading_torque_per_n, trail = shoe.trailing_torque_per_n, drag = leading ? lead : trail;
  const bool inside = friction > 0 && s.start >= 0 && s.end > s.start && s.end <= std::numbers::pi;
  return {drag, drag * drag * (1 / lead + 1 / trail) / (2 * friction), inside && (shoe.valid || !leading)};
}

Slope drum_factor(DrumKind kind, const Shoe& shoe, double friction) {
  const Slope lead = shoe_factor(shoe, friction, true);
  if (kind == DrumKind::two_leading) return {2 * lead.value, 2 * lead.slope, lead.valid};
  if (kind == DrumKind::leading_trailing) {
    const Slope trail = shoe_factor(shoe, friction, false);
    return {lead.value + trail.value, lead.slope + trail.slope, lead.valid && trail.valid};
  }
  // The adjuster's force over the cylinder's; the secondary is pressed by it at its far end, its lever as the
  // primary's.
  const double b = shoe.pivot, arm = shoe.lever - b;
  const double handed = (arm + lead.value) / b;
  return {lead.value + lead.value * handed, lead.slope * (1 + handed) + lead.value * lead.slope / b, lead.valid};
}

}  // namespace sw::physics
