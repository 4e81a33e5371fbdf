#include <algorithm>

#include "model/needed.hpp"
#include "physics/tube_strength.hpp"
#include "systems/tubes/parts.hpp"
#include "systems/tubes/shape.hpp"

namespace sw::tubes {
namespace {

using physics::Vec3;

EndModel end_of(const std::string& place, const End& in, Resolver& r) {
  return {.place = place,
          .flare = in.flare,
          .seat = in.seat,
          .nut = in.nut,
          .flare_path = r.path_of(&in.flare),
          .seat_path = r.path_of(&in.seat),
          .nut_path = r.path_of(&in.nut),
          .flared_path = r.path_of(&in.flared_to),
          .attempts_path = r.path_of(&in.attempts),
          .torque_path = r.path_of(&in.nut_torque),
          .thread_path = r.path_of(&in.thread),
          .ring_path = r.path_of(&in.ring_radius),
          .flared_m = given(in.flared_to),
          .torque_nm = given(in.nut_torque),
          .thread_m = given(in.thread),
          .ring_m = given(in.ring_radius),
          .attempts = in.attempts,
          .straight_m = r.get(in.straight, 0),
          .takes_m = in.flare ? r.get(in.takes, 0) : 0};
}

TubeModel figures_of(const std::string& name, const Tube& tube, Resolver& r) {
  TubeModel t{.place = name,
              .path = group_of(r.path_of(&tube.outside)),
              .material = tube.material,
              .outside_m = given(tube.outside),
              .wall_m = given(tube.wall),
              .bend_m = given(tube.bend_radius),
              .yield_pa = given(tube.yield),
              .tensile_pa = given(tube.tensile),
              .pressure_pa = given(tube.pressure),
              .unsupported_m = given(tube.unsupported),
              .cut_m = given(tube.cut_length),
              .elongation = given(tube.elongation),
              .material_path = r.path_of(&tube.material),
              .outside_path = r.path_of(&tube.outside),
              .wall_path = r.path_of(&tube.wall),
              .bend_path = r.path_of(&tube.bend_radius),
              .yield_path = r.path_of(&tube.yield),
              .tensile_path = r.path_of(&tube.tensile),
              .pressure_path = r.path_of(&tube.pressure),
              .carries_path = r.path_of(&tube.carries),
              .cut_path = r.path_of(&tube.cut_length),
              .carries = tube.carries,
              .clips = tube.clips,
              .beside = tube.beside,
              .stick = tube.stick,
              .ends = {end_of(name + " start", tube.start, r), end_of(name + " end", tube.end, r)}};
  t.points_path = t.path + ".point";
  return t;
}

void told_wrong(const Tube& tube, const TubeModel& t, Resolver& r) {
  if (t.outside_m && t.wall_m && 2 * *t.wall_m >= *t.outside_m)
    r.fault(&tube.wall, "a wall as thick as the tube's radius", "the wall of the tube, not its bore");
  for (const End* end : {&tube.start, &tube.end})
    if (t.outside_m && end->flared_to && end->flared_to->si <= *t.outside_m)
      r.fault(&end->flared_to, "a flare no wider than the tube", "the flare's greatest diameter");
  if (tube.clips && tube.unsupported)
    r.fault(&tube.unsupported, "the longest span stands beside the clips it would come from", "one of the two");
}

/// Of a material that is known; `ratio` carries its doubt.
void stretch_by_material(TubeModel& t, double ratio) {
  if (t.elongation || !t.material) return;
  t.elongation = ratio * usual_elongations[static_cast<std::size_t>(*t.material)];
  t.usual_stretch = true;
}

/// The die's figures become the tube's.
void on_die(const Input& in, const Tube& tube, TubeModel& t, Resolver& r) {
  if (t.outside_m) t.grip_m = 2 * *t.outside_m;  // common practice, where the die tells nothing
  if (tube.die.empty()) return;
  if (tube.bend_radius)
    r.fault(&tube.bend_radius, "a radius stands beside the die the tube is bent on", "one of the two");
  const Die* die = in.die.find(tube.die);
  if (!die) {
    r.fault(&tube.die, "there is no die \"" + tube.die + "\"", "name one of tubes.die");
    return;
  }
  t.bend_m = given(die->radius);
  t.bend_path = r.path_of(&die->radius);
  t.grip_m = r.get(die->straight, t.grip_m);
  if (!die->bent_to && !die->came_to) return;
  t.springback.how = "a trial bend";
  const double set = needed(die->bent_to, t.springback.missing, r),
               came = needed(die->came_to, t.springback.missing, r);
  if (!t.springback.missing.empty()) return;
  t.springback.kept = came / set;
  if (came > set)
    r.fault(&die->came_to, "a trial bend that came to more than it was set to", "set to, then what it sprang back to",
            {&die->bent_to});
}

void spring_by_law(TubeModel& t) {
  if (!t.springback.how.empty()) return;
  t.springback.how =
      t.yield_pa && t.tensile_pa ? "law, by yield and tensile stress" : "law, by the material's usual stress";
  const auto need = [&](const std::optional<double>& figure, const std::string& path) {
    if (!figure) t.springback.missing.push_back(path);
  };
  if (!t.material) t.springback.missing.push_back(t.material_path);
  need(t.outside_m, t.outside_path);
  need(t.wall_m, t.wall_path);
  need(t.bend_m, t.bend_path);
  if (!t.springback.missing.empty() || 2 * *t.wall_m >= *t.outside_m) return;
  t.springback.kept = kept_by_law(t);
  constexpr double least = 0.5;
  if (t.springback.kept >= least) return;
  t.springback.kept = 1;
  t.springback.missing.push_back(t.bend_path + ": a trial bend; so wide a one springs back by more than half");
}

void wrong_points(const Tube& tube, const TubeModel& t, Resolver& r) {
  const auto& bends = t.shape.bends;
  if (bends.trouble == physics::TubeBends::Trouble::too_few)
    return r.fault_at(t.points_path, "one point makes no tube", "both ends, and the corners between them");
  const Corner& at = tube.point.entries[bends.where].second;
  const auto fault = [&](const char* problem, const char* hint) { r.fault(&at.x, problem, hint, {&at.y, &at.z}); };
  switch (bends.trouble) {
    case physics::TubeBends::Trouble::points_meet:
      return fault("a point in the place of the one before it", "leave one of them out");
    case physics::TubeBends::Trouble::no_corner:
      return fault("a point that is no corner: the tube runs straight on", "leave it out");
    default:
      return fault("a point that turns the tube straight back", "a corner of less than 180 deg");
  }
}

void draw(const Tube& tube, TubeModel& t, Resolver& r) {
  Shape& shape = t.shape;
  shape.drawn = !tube.point.empty();
  if (!shape.drawn) return;
  std::vector<Vec3> points;
  for (auto& [name, c] : tube.point) {
    const auto at = [&](const std::optional<Length>& member) { return needed(member, shape.missing, r); };
    points.push_back({at(c.x), at(c.y), at(c.z)});
    t.corners.push_back({name, group_of(r.path_of(&c.x)), given(c.mark), given(c.setting), given(c.turn)});
  }
  if (points.size() > 2 && !t.bend_m) shape.missing.push_back(t.bend_path);
  if (!shape.missing.empty()) return;
  shape.bends = physics::tube_bends(points);
  if (!shape.bends.good()) return wrong_points(tube, t, r);
  // The arc keeps its length when the die lets go: what it loses in angle it gains in radius.
  const double kept = t.springback.missing.empty() ? t.springback.kept : 1;
  lay(shape, points, t.bend_m && kept > 0 ? *t.bend_m / kept : 0);
}

void clipped_beside(const Input& in, const Tube& tube, Resolver& r) {
  for (auto& other : tube.beside)
    if (!in.tube.find(other))
      r.fault(&tube.beside, "there is no tube \"" + other + "\"", "names of tubes.tube it shares clips with");
}

}  // namespace

Model System::resolve(const Input& in, Resolver& r) {
  Model m{.hot = hot_parts(in, r),
          .stock = sticks(in, r),
          .kerf_m = r.get(in.kerf, 0),
          .hoses = hoses(in, r),
          .brackets = brackets(in, r)};
  for (auto& [name, tube] : in.tube) {
    TubeModel t = figures_of(name, tube, r);
    stretch_by_material(t, r.get(in.usual_elongation, 1));
    told_wrong(tube, t, r);
    on_die(in, tube, t, r);
    spring_by_law(t);
    draw(tube, t, r);
    clipped_beside(in, tube, r);
    m.tubes.push_back(std::move(t));
  }
  return m;
}

}  // namespace sw::tubes
