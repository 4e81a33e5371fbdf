#pragma once
// Belts over two pulleys: geometry, speed, grip, frequency; the ribbed PK profile.
// Lengths in m, angles in rad, tensions in N. Diameters are on the pitch line.
#include <optional>
#include <span>

#include "physics/law.hpp"

namespace sw::physics {

struct BeltRun {
  double length_m, wrap_small, wrap_large;
  double length_slope;  ///< d length / d centre distance
};
/// Open: a = asin((D - d)/2C), wraps pi -+ 2a, length 2C cos a + D/2 (pi + 2a) + d/2 (pi - 2a). Crossed: a = asin((D +
/// d)/2C), both wraps pi + 2a, length 2C cos a + (D + d)/2 (pi + 2a). Exact, by tangents (any theory of machines).
/// Empty where the pulleys overlap (C < (D + d)/2; open belts need only C > (D - d)/2, but then pulleys collide).
std::optional<BeltRun> belt_run(double large_diameter_m, double small_diameter_m, double centre_m, bool crossed);
/// The centre distance at which a belt of that length lies tight; empty where it is too short.
std::optional<double> belt_centre(double large_diameter_m, double small_diameter_m, double length_m, bool crossed);

/// Speed out over in of a train of belts: product of (D_in + 2b)/(d_out + 2b) (1 - slip). `line_difference`: pitch
/// radius less given radius (ISO 9981: b_e = 2 mm for PK). driver and driven hold one diameter a stage.
double belt_speed_ratio(std::span<const double> driver_m, std::span<const double> driven_m, double line_difference_m,
                        double slip);

/// Euler's ratio tight over slack at the point of slip, exp(f wrap / sin(groove/2)); no groove angle = flat (Euler
/// 1762; wedge form in any theory of machines). Centrifugal tension is apart: subtract m v^2 from both sides first.
struct BeltRatio {
  double ratio, slope_per_rad, slope_per_friction;
};
BeltRatio belt_grip_ratio(double friction, double wrap, std::optional<double> groove_angle);
/// The wrap at which that ratio is reached.
double belt_grip_wrap(double friction, double ratio, std::optional<double> groove_angle);
/// What a belt pulls before it slips, N, by that ratio k. Between fixed centres the strands together keep their tension
/// at rest, T + T: 2 T (k - 1)/(k + 1). With a sprung arm holding the slack strand at T: T (k - 1). Range: k >= 1.
/// slope: d pull / d k. Source: any theory of machines (Khurmi and Gupta, initial tension in the belt, from memory).
enum class BeltTension { fixed_centres, sprung_slack };
Slope belt_pull(BeltTension kind, double tension_n, double ratio);
/// Centrifugal tension m v^2, N, with slope d / d v.
struct BeltPull {
  double tension_n, slope_n_s_m;
};
BeltPull belt_centrifugal(double mass_per_length_kg_m, double belt_speed_m_s);

/// Taut string, first mode: f = sqrt(T / m) / 2L (Rayleigh, Theory of Sound). slope d f / d T.
struct SpanFrequency {
  double frequency_hz, slope_hz_n;
};
SpanFrequency span_frequency(double length_m, double mass_per_length_kg_m, double tension_n);
double span_tension(double length_m, double mass_per_length_kg_m, double frequency_hz);

/// Misalignment of a span: offset = span tan(angle).
double belt_line_offset(double span_m, double angle);
double belt_line_angle(double span_m, double offset_m);

/// Ribbed pulley, PK profile, ISO 9981:2020: least effective diameter 45 mm (5.2), groove-to-groove variation 0.15 mm
/// (5.3.2), radial and axial run-out 0.25 mm (5.3.3), line difference b_e 2 mm (5.4): read in stored excerpts. Pitch
/// 3.56 mm, groove 40 deg, measuring balls 2.5 mm and tip radius 0.25 mm (table 1) from memory.
struct RibbedProfile {
  double pitch_m, groove_angle, line_difference_m, least_diameter_m, ball_m, over_balls_m, run_out_m,
      groove_variation_m;
};
RibbedProfile ribbed_pk();
/// Diameter over balls less effective diameter (through the rounded tips of the ribs). The ball's centre stands
/// d/2 / sin(a/2) above the point where the flanks meet, the sharp crests pitch/2 / tan(a/2), and rounding takes
/// r_tip (1/sin(a/2) - 1) off a crest: 2 [d/2 (1 + 1/sin) - pitch/2 / tan + r_tip (1/sin - 1)].
double over_balls(double pitch_m, double groove_angle, double ball_m, double tip_radius_m);

}  // namespace sw::physics
