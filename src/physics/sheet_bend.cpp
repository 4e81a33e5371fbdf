#include "physics/sheet_bend.hpp"

#include <cmath>

namespace sw::physics {

double bend_allowance_m(double inside_radius, double thickness, double k, double angle) {
  return angle * (inside_radius + k * thickness);
}

double bend_setback_of_sheet_m(double inside_radius, double thickness, double angle) {
  return (inside_radius + thickness) * std::tan(angle / 2);
}

double k_of_deduction(double inside_radius, double thickness, double angle, double deduction) {
  const double allowance = 2 * bend_setback_of_sheet_m(inside_radius, thickness, angle) - deduction;
  return (allowance / angle - inside_radius) / thickness;
}

FlatPattern flat_pattern(std::span<const double> flanges, std::span<const double> angles, double inside_radius,
                         double thickness, double k) {
  FlatPattern p;
  double before = 0;  // setback of the bend before
  for (std::size_t i = 0; i < flanges.size(); ++i) {
    const bool bent = i < angles.size();
    const double after = bent ? bend_setback_of_sheet_m(inside_radius, thickness, angles[i]) : 0;
    p.starts_m.push_back(p.length_m);
    p.flats_m.push_back(flanges[i] - before - after);
    p.length_m += p.flats_m.back();
    before = after;
    if (!bent) continue;
    const double allowance = bend_allowance_m(inside_radius, thickness, k, angles[i]);
    p.bend_lines_m.push_back(p.length_m + allowance / 2);
    p.length_m += allowance;
  }
  return p;
}

}  // namespace sw::physics
