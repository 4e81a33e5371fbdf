#pragma once
// Tube fittings: dash sizes, and the threads and flares that meet them.
// Dash size n: a tube of n sixteenths of an inch outside (SAE J514 and AS4395, their convention of sizes, from memory).
// Flares: 37 deg to the axis by SAE J514 (74 deg included, read in stored texts), 45 deg inverted by SAE J512 (90 deg
// included, from memory). Threads: J514 from memory; J512 as a stored page on fittings prints them, tube by tube from
// memory. A size the table has not gives nothing; none is made up from its neighbours.
#include <cmath>
#include <optional>

#include "physics/law.hpp"

namespace sw::physics {

/// Whether two dimensions of a tube are one size: a drawn tube keeps to 0.04 mm, and 8 mm (0.3150 in) is no 5/16 in
/// (0.3125 in).
inline bool same_size(double a_m, double b_m) { return std::abs(a_m - b_m) < 0.04e-3; }

/// Outside diameter of a dash size, m; slope: m a dash. valid: a size fittings are made in (2 to 32).
Slope dash_od_m(double dash);
/// The dash size of a diameter, not rounded; slope: 1/m. valid: as above, of that size.
Slope dash_of(double od_m);

enum class FlareStyle { degrees_37, inverted_45 };
struct Flare {
  double included_angle;    ///< rad, of the tube's cone
  double thread_m;          ///< outside diameter of the nut's or sleeve's thread
  double threads_per_inch;  ///< the pitch as inch threads count it
};
double flare_angle(FlareStyle style);
std::optional<Flare> flare(FlareStyle style, double od_m);

}  // namespace sw::physics
