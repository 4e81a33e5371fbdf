#include "physics/drum_factor.hpp"

#include <cmath>
#include <numbers>

namespace sw::physics {

Slope shoe_factor(const Shoe& s, double friction, bool leading) {
  const double sine2 = std::pow(std::sin(s.end), 2) - std::pow(std::sin(s.start), 2);
  const double normal = s.pivot * ((s.end - s.start) / 2 - (std::sin(2 * s.end) - std::sin(2 * s.start)) / 4);
  const double rub = std::cos(s.start) - std::cos(s.end);
  const double turn = rub - s.pivot * sine2 / 2;  // Mf / f
  const double under = normal - (leading ? 1 : -1) * friction * turn;
  const bool angles = s.start >= 0 && s.end > s.start && s.end <= std::numbers::pi;
  return {.value = friction * rub * s.lever / under,
          .slope = rub * s.lever * normal / (under * under),
          .valid = friction > 0 && angles && under > 0};
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
