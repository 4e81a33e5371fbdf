#include "systems/tubes/tubes.hpp"

namespace sw::tubes {
namespace {

/// Stretch to the break by material (common practice), in the order of `Material`.
constexpr double usual_elongation[] = {0.30, 0.40, 0.45, 0.35, 0.20};
static_assert(std::size(usual_elongation) == std::size(material_names));

EndModel end_of(const std::string& place, const End& in, Resolver& r) {
  return {.place = place,
          .flare = in.flare,
          .seat = in.seat,
          .nut = in.nut,
          .flare_path = r.path_of(&in.flare),
          .seat_path = r.path_of(&in.seat),
          .torque_path = r.path_of(&in.nut_torque),
          .thread_path = r.path_of(&in.thread),
          .ring_path = r.path_of(&in.ring_radius),
          .flared_m = given(in.flared_to),
          .torque_nm = given(in.nut_torque),
          .thread_m = given(in.thread),
          .ring_m = given(in.ring_radius),
          .attempts = in.attempts.value_or(1)};
}

}  // namespace

Model System::resolve(const Input& in, Resolver& r) {
  Model m;
  for (auto& [name, tube] : in.tube) {
    const auto material = static_cast<std::size_t>(tube.material.value_or(Material::steel));
    m.tubes.push_back({.place = name,
                       .outside_m = given(tube.outside),
                       .wall_m = given(tube.wall),
                       .bend_m = given(tube.bend_radius),
                       .yield_pa = given(tube.yield),
                       .outside_path = r.path_of(&tube.outside),
                       .wall_path = r.path_of(&tube.wall),
                       .yield_path = r.path_of(&tube.yield),
                       .elongation = r.get(tube.elongation, usual_elongation[material]),
                       .ends = {end_of(name + " start", tube.start, r), end_of(name + " end", tube.end, r)}});
    auto& t = m.tubes.back();
    if (t.outside_m && t.wall_m && 2 * *t.wall_m >= *t.outside_m)
      r.fault(&tube.wall, "a wall as thick as the tube's radius", "the wall of the tube, not its bore");
    for (const End* end : {&tube.start, &tube.end})
      if (t.outside_m && end->flared_to && end->flared_to->si <= *t.outside_m)
        r.fault(&end->flared_to, "a flare no wider than the tube", "the flare's greatest diameter");
  }
  return m;
}

}  // namespace sw::tubes
