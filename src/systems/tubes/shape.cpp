#include "systems/tubes/shape.hpp"

#include <cmath>
#include <numbers>

#include "physics/springback.hpp"
#include "physics/tube_strength.hpp"

namespace sw::tubes {
namespace {

using physics::Vec3;

constexpr double mpa = 1e6, gpa = 1e9;
/// Stress at the strain of a bend, and Young's modulus, by material (common practice), in the order of `Material`.
struct Metal {
  double flow_pa, young_pa;
};
constexpr Metal metals[] = {{380 * mpa, 200 * gpa},
                            {310 * mpa, 140 * gpa},
                            {550 * mpa, 193 * gpa},
                            {830 * mpa, 193 * gpa},
                            {150 * mpa, 69 * gpa}};
static_assert(std::size(metals) == std::size(material_names));

/// Chords of an arc, no more than 5 deg each: they lie within 1/1000 of the radius of it.
void add_arc(std::vector<Vec3>& line, const Vec3& corner, const Vec3& in, const Vec3& out, double radius,
             double angle) {
  constexpr double most = 5 * std::numbers::pi / 180;
  const Vec3 begin = corner - physics::bend_setback_m(radius, angle).value * in;
  const Vec3 inward = unit(out - dot(out, in) * in), centre = begin + radius * inward;
  const int chords = static_cast<int>(std::ceil(angle / most));
  for (int i = 0; i <= chords; ++i) {
    const double at = angle * i / chords;
    line.push_back(centre + radius * (std::sin(at) * in - std::cos(at) * inward));
  }
}

}  // namespace

physics::TubeMetal table_metal(Material material) {
  const bool soft = material == Material::aluminium || material == Material::nickel_copper;
  return soft ? physics::TubeMetal::aluminium : physics::TubeMetal::steel;
}

double least_radius_m(Material material, double outside) {
  constexpr double diameters = 3;
  // The table speaks for carbon steel and aluminium; stainless and nickel-copper are neither.
  if (material == Material::steel || material == Material::aluminium)
    if (const auto least = physics::least_bend_radius_m(outside, table_metal(material))) return *least;
  return diameters * outside;
}

double kept_by_law(const TubeModel& t) {
  const Metal& metal = metals[static_cast<std::size_t>(*t.material)];
  const double flow = t.yield_pa && t.tensile_pa ? (*t.yield_pa + *t.tensile_pa) / 2 : metal.flow_pa;
  return physics::tube_springback(flow, metal.young_pa, *t.outside_m, *t.wall_m, *t.bend_m);
}

void lay(Shape& shape, std::span<const Vec3> points, double radius) {
  shape.radius_m = radius;
  shape.cut = physics::tube_cut(shape.bends, radius);
  shape.centre_line.assign(1, points.front());
  for (std::size_t i = 0; i < shape.bends.bends.size(); ++i)
    add_arc(shape.centre_line, points[i + 1], unit(points[i + 1] - points[i]), unit(points[i + 2] - points[i + 1]),
            radius, shape.bends.bends[i]);
  shape.centre_line.push_back(points.back());
}

std::vector<Straight> straights_of(const TubeModel& t) {
  std::vector<Straight> all;
  const std::size_t last = t.shape.bends.legs_m.size() - 1;
  for (std::size_t leg = 0; leg <= last; ++leg) {
    const bool between_bends = leg > 0 && leg < last;
    const double ends = (leg == 0 ? t.ends[0].straight_m : 0) + (leg == last ? t.ends[1].straight_m : 0);
    all.push_back({&t.corners[leg].name, &t.corners[leg + 1].name, t.shape.cut.straights_m[leg],
                   between_bends ? t.grip_m : ends, between_bends && t.grip_m <= 0});
  }
  return all;
}

std::vector<CardRow> card_of(const TubeModel& t) {
  std::vector<CardRow> rows;
  double at = t.ends[0].takes_m;
  for (std::size_t i = 0; i < t.shape.bends.bends.size(); ++i) {
    at += t.shape.cut.straights_m[i];
    const double wanted = t.shape.bends.bends[i];
    rows.push_back({at, wanted, wanted / t.springback.kept, i == 0 ? 0 : t.shape.bends.rotations[i - 1]});
    at += physics::bend_arc_m(t.shape.radius_m, wanted).value;
  }
  return rows;
}

std::vector<std::string> card_lacks(const TubeModel& t) {
  auto missing = t.shape.missing;
  missing.insert(missing.end(), t.springback.missing.begin(), t.springback.missing.end());
  if (!t.shape.drawn) missing.push_back(t.points_path);
  return missing;
}

physics::FlatPattern flat_of(const BracketModel& b) {
  return physics::flat_pattern(b.flanges_m, b.angles_rad, b.radius_m, b.thickness_m, b.k);
}

Concern concern_of(const std::optional<Carries>& carries) {
  if (!carries || *carries == Carries::brake_fluid) return Concern::brakes;
  return *carries == Carries::fuel || *carries == Carries::fuel_vapour ? Concern::fuel : Concern::other;
}

}  // namespace sw::tubes
