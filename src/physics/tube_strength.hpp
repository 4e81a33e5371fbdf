#pragma once
// What a tube's wall carries, and how tightly it may be bent.
//
// Hoop stress of a closed tube under the pressure p, outside diameter D, wall t, d = D - 2t:
//   by the outside (Barlow)  p D/2t        the largest figure, what tube makers rate by
//   on the mean diameter     p (D - t)/2t  the thin wall's figure
//   at the bore (Lame)       p (D^2 + d^2)/(D^2 - d^2)  the greatest there is in a thick elastic wall
// Symbols: Pa, m. Range: 0 < t < D/2, pressure above the surroundings, straight round tube; a bend is thinner outside.
// Sources: Barlow; Lame, any text on strength of materials (from memory). Bends: FAA AC 43.13-1B, chapter 9, table of
// tube data (from memory). Bore after bending: US Navy training text NAVEDTRA 14018, table 6-6 (read in a stored copy).
#include <optional>

#include "physics/law.hpp"

namespace sw::physics {

/// Stresses in Pa; each is proportional to the pressure, so its slope by it is stress / pressure.
struct HoopStress {
  double outside_pa, mean_pa, bore_pa;
};
HoopStress hoop_stress(double od_m, double wall_m, double pressure_pa);
/// The pressure at which the stress by the outside is `stress_pa`. slope: d / d stress.
Slope hoop_pressure_pa(double od_m, double wall_m, double stress_pa);

enum class TubeMetal { aluminium, steel };
/// Least radius of a bend, on the centre line, m; empty where the table has no such tube (1/8 to 2 in; a size it has
/// not is not made up from its neighbours).
std::optional<double> least_bend_radius_m(double od_m, TubeMetal metal);

/// Longest a tube may run free between two clips, m, by the table's next size below; empty below 1/8 in. Steel: US
/// MIL-H-8891A, table II (read in a stored copy, its 1/8 and 3/16 in from memory); aluminium: FAA AC 43.13-1B, table of
/// distances between supports (from memory), whose steel is the same.
std::optional<double> longest_span_m(double od_m, TubeMetal metal);

enum class BentTube { aluminium_6061, stainless_eighth_hard, stainless_annealed };
/// Least bore left at a bend, m, for the walls that table names; empty for any other.
std::optional<double> least_bent_bore_m(double od_m, double wall_m, BentTube metal);

/// A made-up tube is proved at this many times its working pressure where that is above `low_pressure_pa`, and at
/// `least_proof_pa` where it is not (the same text, proof pressure testing). More would strain what has to serve after.
inline constexpr double proof_over_working = 2;
inline constexpr double low_pressure_pa = 50 * 6894.757293168361;
inline constexpr double least_proof_pa = 100 * 6894.757293168361;

}  // namespace sw::physics
