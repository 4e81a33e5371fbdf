#pragma once
// Tyre size, rolling, gearing, speed signal.
// `205/70R14`: section width mm / aspect ratio % , construction, rim inch: free diameter = rim + 2 width x aspect
// (ETRTO and T&RA size definition). `P`, `LT` before and load or speed letters after are taken; `31x10.5R15` is a
// flotation size whose first number is the diameter in inch.
#include <optional>
#include <string_view>

namespace sw::physics {

struct TyreSize {
  double diameter_m, width_m, rim_m;
  std::optional<double> aspect;  ///< height over width; empty for a flotation size
};
std::optional<TyreSize> tyre_size(std::string_view text);

/// Engine speed over road speed, rad/s per m/s: 2 axle gear / D / (1 - slip), D the rolling diameter. The wheel's
/// drive turns faster than it rolls by converter and tyre slip.
double gearing_rad_m(double axle, double gear, double diameter_m, double slip);

/// Indication allowed by UN Regulation No. 39, 5.3: 0 <= V1 - V2 <= 0.1 V2 + 4 km/h, V1 shown, V2 true. m/s.
struct SpeedBand {
  double lowest_m_s, highest_m_s;
};
SpeedBand speedometer_band(double true_speed_m_s);
}  // namespace sw::physics
