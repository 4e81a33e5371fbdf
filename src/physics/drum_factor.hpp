#pragma once
// Brake factor of drum brakes: drag of all shoes over the force one cylinder piston gives one shoe,
// C = torque / (p A r). Radii in m, angles in rad from the shoe's pivot along the lining.
#include "physics/law.hpp"

namespace sw::physics {

/// Of one shoe on a fixed pivot, all lengths as shares of the drum's radius.
struct Shoe {
  double pivot;       ///< pivot to the drum's centre
  double lever;       ///< pivot to the line of the actuating force
  double start, end;  ///< lining, from the line through pivot and centre
};
/// Drag over actuating force of one shoe, by the law of brake_drum: lead = f R / (N - f T), trail = f R / (N + f T),
/// with the moments' own R, N, T, so that d lead / df = lead2 (1/lead + 1/trail) / 2f, and the same with trail2.
/// Symbols: f friction. Range: 0 < f, 0 <= start < end <= pi, and N > f T for a leading shoe: beyond that it locks by
/// itself, `valid` is false and the value is not one. slope: by f.
Slope shoe_factor(const Shoe& shoe, double friction, bool leading);

enum class DrumKind { leading_trailing, two_leading, duo_servo };
/// leading_trailing: leading + trailing. two_leading: twice leading. duo_servo: the primary shoe is leading and hands
/// its drag on: about the drum's centre normal pressures have no moment, so the adjuster at `b` carries X b = F (lever
/// - b) + T, and the secondary leads on its anchor by X: C = Sp + Ss ((lever - b) + Sp) / b, both shoes of one
/// geometry. Source: equilibrium of moments on the primary shoe; form as Limpert, Brake Design and Safety, ch. 2
/// (duo-servo brake), from memory. slope: by f.
Slope drum_factor(DrumKind kind, const Shoe& shoe, double friction);

}  // namespace sw::physics
