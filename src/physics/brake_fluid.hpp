#pragma once
// Brake fluid: where it boils. Least equilibrium reflux boiling points, dry and with 3.7 % of water ("wet"), 49 CFR
// 571.116 S5.1.1 and S5.1.2: DOT 3 205/140 degC, DOT 4 230/155, DOT 5 260/180; 5.1 is a DOT 5 not on silicone.
//
// Boiling point at another share of water w: T = 100 + (dry - 100) exp(-c w), c from the wet point, so that it falls
// from the dry point through the wet one towards the boiling point of water. The form between and beyond the two
// points is ours; it gives 132.5 degC for DOT 3 with 4.5 % water. Range 0 to 8 %. Silicone fluid takes up no water: its
// wet figure is a test, not an ageing.
#include "physics/law.hpp"

namespace sw::physics {

enum class BrakeFluid { dot_3, dot_4, dot_5, dot_5_1 };
struct BoilingPoints {
  double dry_k, wet_k;
};
BoilingPoints least_boiling(BrakeFluid grade);

inline constexpr double wet_water_share = 0.037, most_water_share = 0.08;
/// slope: d temperature / d share.
Slope boiling_at_water_k(const BoilingPoints& points, double water_share);

}  // namespace sw::physics
