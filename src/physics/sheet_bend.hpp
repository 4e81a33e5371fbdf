#pragma once
// A strip of sheet bent to a bracket: from its flanges to the flat it is cut from.
//
// A bend turns the sheet by A. Its allowance is the arc of what neither stretches nor shrinks, A (R + K t); its
// setback, from where the outer faces would meet to where the bend begins, (R + t) tan(A/2). A flange is measured to
// where the outer faces meet; flat_i = flange_i - the setbacks at its ends; the strip is all flats and allowances. A
// deduction, measured on a trial bend, is what two flanges are longer than their flat: 2 setback - allowance. Symbols:
// m, rad; R inside radius, t thickness, K share of the thickness from the inside. Range: A above 0 and below 180 deg, K
// 0.3 to 0.5. Sources: geometry; K = 0.0078/(pi/180) of the allowance (0.0173 R + 0.0078 t) a degree of the US Navy's
// text on aircraft structural work (read in a stored copy); flats and setbacks as FAA-H-8083-31 lays out a channel (the
// example read in a stored copy).
#include <span>
#include <vector>

namespace sw::physics {

/// Of that published allowance.
inline constexpr double usual_bend_k = 0.0078 * 57.29577951308232;

double bend_allowance_m(double inside_radius_m, double thickness_m, double k, double angle);
double bend_setback_of_sheet_m(double inside_radius_m, double thickness_m, double angle);
/// The K at which a bend of that angle takes that deduction.
double k_of_deduction(double inside_radius_m, double thickness_m, double angle, double deduction_m);

struct FlatPattern {
  std::vector<double> flats_m;       ///< [i]: of flange i; below 0 where its bends run into each other
  std::vector<double> starts_m;      ///< [i]: where the flat of flange i begins, from the strip's first edge
  std::vector<double> bend_lines_m;  ///< [i]: middle of the bend after flange i
  double length_m = 0;
};
/// `angles`: one fewer than flanges.
FlatPattern flat_pattern(std::span<const double> flanges_m, std::span<const double> angles, double inside_radius_m,
                         double thickness_m, double k);

}  // namespace sw::physics
