// Sums of tubes: bends, the stress in the wall, sizes and flares of fittings.
#include <cmath>

#include "physics/tube_bend.hpp"
#include "physics/tube_fitting.hpp"
#include "physics/tube_strength.hpp"
#include "sum/families.hpp"
#include "sum/figures.hpp"

namespace sw {
namespace {

constexpr std::string_view lines_burst =
    "a brake or fuel line that cracks, kinks or leaks costs the brakes or sets the car alight: tube made for the duty, "
    "no copper and no compression fittings in brake lines, proved before use; the car maker's instructions and the law "
    "of the place go before any figure here";

struct PathIn {
  std::vector<double> points;
  std::optional<Length> radius;
};
struct PathOut {
  std::vector<double> legs, bends, rotations, straights;
  std::optional<Length> cut_length;
};
constexpr Argument path_in[] = {
    values<&PathIn::points>("points", "ends and corners, in order", kind::length, 3),
    may(positive<&PathIn::radius>("radius", "of every bend, on the centre line", kind::length, "in", 1e4)),
};
constexpr Argument path_out[] = {
    values<&PathOut::legs>("legs", "point to point", kind::length),
    values<&PathOut::bends>("bends", "at each corner", kind::angle),
    values<&PathOut::rotations>("rotations", "bend to bend; 0 same way, 180 opposite, right-handed about the leg",
                                kind::angle),
    values<&PathOut::straights>("straights", "legs less tangents", kind::length),
    result<&PathOut::cut_length>("cut_length", "of the tube on its centre line", kind::length, "in"),
};

std::vector<physics::Vec3> points_of(const std::vector<double>& rows) {
  std::vector<physics::Vec3> points;
  for (std::size_t k = 0; k + 2 < rows.size(); k += 3) points.push_back({rows[k], rows[k + 1], rows[k + 2]});
  return points;
}

void path_check(const PathIn& in, Remarks& say) {
  if (in.points.empty()) return;
  const auto tube = physics::tube_bends(points_of(in.points));
  const std::string point = "point " + std::to_string(tube.where + 1);
  switch (tube.trouble) {
    using enum physics::TubeBends::Trouble;
    case none:
      return;
    case too_few:
      return say.fault("points", "one point makes no tube", "two ends, and the corners between them");
    case points_meet:
      return say.fault("points", point + " lies where the one before it does", "leave it out");
    case no_corner:
      return say.fault("points", point + " is no corner: the tube runs straight on", "leave it out");
    case folded:
      return say.fault("points", point + " turns the tube straight back", "a corner of less than 180 deg");
  }
}

void tube_bend(const PathIn& in, PathOut& out, Remarks& say) {
  const auto tube = physics::tube_bends(points_of(in.points));
  out.legs = tube.legs_m;
  out.bends = tube.bends;
  out.rotations = tube.rotations;
  if (!in.radius) return;
  const auto cut = physics::tube_cut(tube, in.radius->si);
  out.straights = cut.straights_m;
  out.cut_length = Length{cut.cut_m};
  for (std::size_t i = 0; i < cut.straights_m.size(); ++i)
    if (cut.straights_m[i] < 0)
      say.outside("leg " + std::to_string(i + 1) + " is shorter than the tangents of its bends: it cannot be bent so");
}

struct BendIn {
  std::optional<Length> radius;
  std::optional<Angle> angle;
};
struct BendOut {
  std::optional<Length> arc, setback;
};
constexpr Argument bend_in[] = {
    positive<&BendIn::radius>("radius", "on the centre line", kind::length, "in", 1e4),
    quantity<&BendIn::angle>("angle", "the tube turns by", kind::angle).in("deg").above(0, 360),
};
constexpr Argument bend_out[] = {
    result<&BendOut::arc>("arc", "on the centre line", kind::length, "in"),
    result<&BendOut::setback>("setback", "corner to tangent point", kind::length, "in"),
};

void bend(const BendIn& in, BendOut& out, Remarks& say) {
  out.arc = Length{physics::bend_arc_m(in.radius->si, in.angle->si).value};
  const auto setback = physics::bend_setback_m(in.radius->si, in.angle->si);
  if (setback.valid)
    out.setback = Length{setback.value};
  else
    say.note("from 180 deg on the legs have no corner to measure a setback from");
}

struct LeastIn {
  std::optional<Length> od;
  std::optional<physics::TubeMetal> material;
};
struct LeastOut {
  std::optional<Length> radius;
};
constexpr std::string_view metals[] = {"aluminium", "steel"};
constexpr Argument least_in[] = {
    positive<&LeastIn::od>("od", "outside diameter", kind::length, "in", 100),
    choice<&LeastIn::material>("material", "of the tube", metals),
};
constexpr Argument least_out[] = {result<&LeastOut::radius>("radius", "least, on the centre line", kind::length, "in")};

void least_bend(const LeastIn& in, LeastOut& out, Remarks& say) {
  if (const auto radius = physics::least_bend_radius_m(in.od->si, *in.material))
    out.radius = Length{*radius};
  else
    say.outside("the table has no such tube; it goes by inch sizes from 1/8 (steel 3/16) to 2 in");
}

struct StressIn {
  std::optional<Length> od, wall;
  std::optional<PressureDifference> pressure, stress;
};
struct StressOut {
  std::optional<PressureDifference> hoop_outside, hoop_mean, hoop_bore, pressure;
};
constexpr Argument stress_in[] = {
    positive<&StressIn::od>("od", "outside diameter", kind::length, "in", 1000),
    positive<&StressIn::wall>("wall", "thickness", kind::length, "in", 1000),
    quantity<&StressIn::pressure>("pressure", "inside, above the outside", kind::pressure_difference)
        .in("psi")
        .from(0, 1e6),
    positive<&StressIn::stress>("stress", "hoop stress by the outside diameter", kind::stress, "psi"),
};
constexpr Argument stress_out[] = {
    result<&StressOut::hoop_outside>("hoop_outside", "by the outside diameter", kind::stress, "psi"),
    result<&StressOut::hoop_mean>("hoop_mean", "by the mean diameter", kind::stress, "psi"),
    result<&StressOut::hoop_bore>("hoop_bore", "at the bore of a thick wall", kind::stress, "psi"),
    result<&StressOut::pressure>("pressure", "at that stress", kind::pressure_difference, "psi"),
};
constexpr Rule stress_rules[] = {one_of("pressure", "stress")};

void stress_check(const StressIn& in, Remarks& say) {
  if (in.od && in.wall && in.wall->si >= in.od->si / 2) say.fault("wall", "leaves no bore", "less than half of od");
}

void tube_stress(const StressIn& in, StressOut& out, Remarks&) {
  if (in.stress) {
    out.pressure = PressureDifference{physics::hoop_pressure_pa(in.od->si, in.wall->si, in.stress->si).value};
    return;
  }
  const auto s = physics::hoop_stress(in.od->si, in.wall->si, in.pressure->si);
  out.hoop_outside = PressureDifference{s.outside_pa};
  out.hoop_mean = PressureDifference{s.mean_pa};
  out.hoop_bore = PressureDifference{s.bore_pa};
}

/// A dash size is written `6` or `-6`: the dash is a dash and no minus.
template <auto M>
consteval FieldInfo dash_size() {
  return integer<M>("dash", "dash size, 6 or -6").from(-64, 64);
}
void dash_check(const std::optional<int>& dash, Remarks& say) {
  if (dash && *dash == 0) say.fault("dash", "0 is no size", "sixteenths of an inch, as 6 or -6");
}

struct DashIn {
  std::optional<int> dash;
  std::optional<Length> od;
};
struct DashOut {
  std::optional<Length> od;
  std::optional<double> dash;
};
constexpr Argument dash_in[] = {
    dash_size<&DashIn::dash>(),
    positive<&DashIn::od>("od", "outside diameter of the tube", kind::length, "in", 100),
};
constexpr Argument dash_out[] = {
    result<&DashOut::od>("od", "outside diameter of the tube", kind::length, "in"),
    number<&DashOut::dash>("dash", "size, in sixteenths of an inch"),
};
constexpr Rule dash_rules[] = {one_of("dash", "od")};

void dash_in_check(const DashIn& in, Remarks& say) { dash_check(in.dash, say); }

void dash_size_sum(const DashIn& in, DashOut& out, Remarks& say) {
  const auto got = in.dash ? physics::dash_od_m(std::abs(*in.dash)) : physics::dash_of(in.od->si);
  if (in.dash)
    out.od = Length{got.value};
  else
    out.dash = got.valid ? std::round(got.value) : got.value;  // a size is whole
  if (!got.valid) say.outside("fittings are made in 2, 3, 4, 5, 6, 8, 10, 12, 14, 16, 20, 24 and 32");
}

struct FlareIn {
  std::optional<physics::FlareStyle> style;
  std::optional<int> dash;
  std::optional<Length> od;
};
struct FlareOut {
  std::optional<Angle> included_angle;
  std::optional<Length> thread_diameter;
  std::optional<double> threads_per_inch;
};
constexpr std::string_view styles[] = {"37-degree", "45-inverted"};
constexpr Argument flare_in[] = {
    choice<&FlareIn::style>("style", "of the flare", styles),
    may(dash_size<&FlareIn::dash>()),
    may(positive<&FlareIn::od>("od", "outside diameter of the tube", kind::length, "in", 100)),
};
constexpr Argument flare_out[] = {
    result<&FlareOut::included_angle>("included_angle", "of the cone", kind::angle, "deg"),
    result<&FlareOut::thread_diameter>("thread_diameter", "outside, of nut or sleeve", kind::length, "in"),
    number<&FlareOut::threads_per_inch>("threads_per_inch", "of that thread"),
};
constexpr Rule flare_rules[] = {at_most_one_of("dash", "od")};

void flare_check(const FlareIn& in, Remarks& say) { dash_check(in.dash, say); }

void flare(const FlareIn& in, FlareOut& out, Remarks& say) {
  out.included_angle = Angle{physics::flare_angle(*in.style)};
  say.note("37 and 45 deg flares screw together in some sizes and leak: never mix them");
  if (!in.dash && !in.od) return;
  const double od = in.od ? in.od->si : physics::dash_od_m(std::abs(*in.dash)).value;
  const auto thread = physics::flare(*in.style, od);
  if (!thread) return say.outside("the table of this style has no thread for such a tube");
  out.thread_diameter = Length{thread->thread_m};
  out.threads_per_inch = thread->threads_per_inch;
}

constexpr Sum sums[] = {
    entry<tube_bend, path_check>({.name = "tube-bend",
                                  .title = "Bender settings of a tube from its points",
                                  .inputs = path_in,
                                  .outputs = path_out,
                                  .range = "bends above 0 and below 180 deg, all of one radius; spring-back and what "
                                           "the fittings take are left out",
                                  .source = "geometry",
                                  .caution = lines_burst}),
    entry<bend>({.name = "bend",
                 .title = "One bend of a tube",
                 .inputs = bend_in,
                 .outputs = bend_out,
                 .range = "setback below 180 deg; spring-back left out",
                 .source = "geometry: R angle and R tan(angle/2)",
                 .caution = lines_burst}),
    entry<least_bend>({.name = "least-bend",
                       .title = "Least bend of a tube",
                       .inputs = least_in,
                       .outputs = least_out,
                       .range = "inch tubes of the table: soft aluminium and annealed steel, 1/8 to 2 in",
                       .source = "FAA AC 43.13-1B, chapter 9, tube data (from memory)",
                       .caution = lines_burst}),
    entry<tube_stress, stress_check>({.name = "tube-stress",
                                      .title = "Stress in a tube's wall",
                                      .inputs = stress_in,
                                      .outputs = stress_out,
                                      .rules = stress_rules,
                                      .range = "straight round tube, elastic; a bend is thinner on its outside",
                                      .source = "Barlow; Lame, any text on strength of materials (from memory)",
                                      .caution = lines_burst}),
    entry<dash_size_sum, dash_in_check>({.name = "dash-size",
                                         .title = "Dash size and tube",
                                         .inputs = dash_in,
                                         .outputs = dash_out,
                                         .rules = dash_rules,
                                         .range = "sizes 2 to 32 that fittings are made in",
                                         .source = "SAE J514 and AS4395, convention of sizes (from memory)",
                                         .caution = lines_burst}),
    entry<flare, flare_check>(
        {.name = "flare",
         .title = "Flare and thread of a tube fitting",
         .inputs = flare_in,
         .outputs = flare_out,
         .rules = flare_rules,
         .range = "threads of the sizes in the tables alone",
         .source = "SAE J514 (37 deg), threads from memory; SAE J512 (45 deg inverted), threads as a page "
                   "on fittings prints them",
         .caution = lines_burst}),
};

}  // namespace

std::span<const Sum> tube_sums() { return sums; }

}  // namespace sw
