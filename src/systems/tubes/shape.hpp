#pragma once
// A tube's shape and its bend card, a bracket's flat, by figures alone: read by the model, the requirements and the
// solvers.
#include "physics/sheet_bend.hpp"
#include "physics/tube_strength.hpp"
#include "systems/tubes/tubes.hpp"

namespace sw::tubes {

/// Least radius its tube may be bent on: by the table where that has it, else three diameters (common practice).
double least_radius_m(Material material, double outside_m);
physics::TubeMetal table_metal(Material material);
/// Its material, outside, wall and radius known. By law: of the mean of yield and tensile stress where both are known, else of the stress usual at a bend's strain.
double kept_by_law(const TubeModel& t);

/// Fills in cut and centre line of a shape whose bends are good.
void lay(Shape& shape, std::span<const physics::Vec3> points, double radius_m);

/// A straight piece of a tube whose shape is good, between two of its points: what there is, and what is needed: the
/// die's grip between bends, flare and nut at the ends.
struct Straight {
  const std::string *from, *to;
  double there_m, wanted_m;
  bool grip_unknown;  ///< neither die nor outside tell what is gripped there
  bool enough() const { return there_m >= wanted_m; }
};
std::vector<Straight> straights_of(const TubeModel& t);

/// A row of the bend card: where the bend begins on the cut tube, what it comes to and is set to, the turn before it.
struct CardRow {
  double mark_m, wanted_rad, setting_rad, turn_rad;
};
/// Of a tube whose shape is good; in the order of its corners.
std::vector<CardRow> card_of(const TubeModel& t);

/// Of a bracket nothing is missing of.
physics::FlatPattern flat_of(const BracketModel& b);

/// What keeps a tube's card from being made.
std::vector<std::string> card_lacks(const TubeModel& t);

/// Who is hurt where the line fails.
enum class Concern : std::uint8_t { brakes, fuel, other };
/// What nobody said is taken as brake fluid, so that a harm finding shows what is missing.
Concern concern_of(const std::optional<Carries>& carries);

}  // namespace sw::tubes
