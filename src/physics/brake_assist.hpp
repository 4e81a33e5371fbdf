#pragma once
// A vacuum booster from push rod to master cylinder, both ways. Forces in N, pressures in Pa.
#include "physics/law.hpp"

namespace sw::physics {

/// output = min(gain F, F + S), S = efficiency A dp - spring. Up to its run-out the reaction disc keeps output and push
/// rod in the ratio `gain`; beyond it the diaphragms give what the vacuum gives them and no more. Without vacuum S is
/// the spring alone and the foot works against it.
/// Symbols: F push-rod force, A area of all diaphragms together, dp vacuum in the reservoir below the air outside.
/// Range: F >= 0, 0 <= dp <= 101 kPa, gain >= 1; outside `valid` is false. The force that opens the valve (3 to 5 lbf
/// at the pad, common practice) is left out. Source: Limpert, Brake Design and Safety, ch. 5 (vacuum booster
/// characteristic), from memory.
struct BrakeBooster {
  double area_m2 = 0, gain = 1, spring_n = 0, efficiency = 1;
};
/// Assist at run-out, N; slope by the vacuum.
Slope booster_assist(const BrakeBooster& b, double vacuum_pa);
/// Output for a push-rod force; slope d output / d push rod.
Slope booster_output(const BrakeBooster& b, double vacuum_pa, double push_rod_n);
/// Push-rod force for an output; slope d push rod / d output.
Slope booster_push_rod(const BrakeBooster& b, double vacuum_pa, double output_n);
/// Push-rod force at which it runs out, S / (gain - 1); 0 where there is no assist.
double booster_run_out(const BrakeBooster& b, double vacuum_pa);

}  // namespace sw::physics
