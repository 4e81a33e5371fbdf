// The bends: radius, wall left, straights between them, pressure the thinned wall holds, clips.
#include <algorithm>

#include "model/told.hpp"
#include "physics/forming.hpp"
#include "physics/tube_strength.hpp"
#include "systems/tubes/checks.hpp"

namespace sw::tubes {
namespace {

const Model& of(const void* model) { return *static_cast<const Model*>(model); }
void need(Verdict& v, const std::optional<double>& figure, const std::string& path) {
  if (!figure) v.missing.push_back(path);
}
bool bent(const TubeModel& t) { return t.bend_m || t.shape.bends.bends.size() > 0; }

}  // namespace

template <Concern who>
void judge_bend(const void* model, const Evidenced&, Verdicts& out) {
  for (auto& t : of(model).tubes) {
    if (!t.bend_m || concern_of(t.carries) != who) continue;
    Verdict v{.place = t.place,
              .scale = 3,
              .fix_hint =
                  "a die of more radius, straight lengths planned for it; a ball of 0.8 of the bore passes a sound "
                  "bend"};
    need(v, t.outside_m, t.outside_path);
    if (!t.material) v.missing.push_back(t.material_path);
    if (v.missing.empty()) {
      v.predicted = *t.bend_m / *t.outside_m;
      v.low = least_radius_m(*t.material, *t.outside_m) / *t.outside_m;
      v.because.push_back(
          told("stretch of the outer side", physics::bend_strain(*t.outside_m, *t.bend_m), kind::number, "%"));
    }
    out.push_back(std::move(v));
  }
}
template void judge_bend<Concern::brakes>(const void*, const Evidenced&, Verdicts&);
template void judge_bend<Concern::fuel>(const void*, const Evidenced&, Verdicts&);
template void judge_bend<Concern::other>(const void*, const Evidenced&, Verdicts&);

template <Concern who>
void judge_thinning(const void* model, const Evidenced&, Verdicts& out) {
  constexpr double least = 1 / 1.25;
  for (auto& t : of(model).tubes) {
    if (!t.bend_m || !t.wall_m || concern_of(t.carries) != who) continue;
    Verdict v{.place = t.place, .scale = least, .fix_hint = "a die of more radius, or tube of more wall"};
    need(v, t.outside_m, t.outside_path);
    if (v.missing.empty()) {
      const double left = physics::bent_wall_m(*t.outside_m, *t.wall_m, *t.bend_m);
      v.predicted = left / *t.wall_m;
      v.low = least;
      v.because.push_back(inches("wall left on the outer side", left));
    }
    out.push_back(std::move(v));
  }
}
template void judge_thinning<Concern::brakes>(const void*, const Evidenced&, Verdicts&);
template void judge_thinning<Concern::fuel>(const void*, const Evidenced&, Verdicts&);
template void judge_thinning<Concern::other>(const void*, const Evidenced&, Verdicts&);

void judge_straight(const void* model, const Evidenced&, Verdicts& out) {
  for (auto& t : of(model).tubes) {
    if (!t.shape.missing.empty()) out.push_back({.place = t.place, .missing = t.shape.missing});
    if (!t.shape.good()) continue;  // not drawn, or points that cannot be: told as a fault
    const auto straights = straights_of(t);
    for (std::size_t i = 0; i < straights.size(); ++i) {
      const Straight& s = straights[i];
      Verdict v{.place = t.place + " " + *s.from + " to " + *s.to,
                .predicted = s.there_m,
                .low = s.wanted_m,
                .scale = std::max(s.wanted_m, t.outside_m.value_or(s.wanted_m)),
                .fix_hint = "points farther apart, or a die of less radius that the tube still takes"};
      v.because.push_back(inches("corner to corner", t.shape.bends.legs_m[i]));
      v.because.push_back(inches("radius the bends come to", t.shape.radius_m));
      if (s.grip_unknown) v.predicted.reset(), v.missing.push_back(t.outside_path);
      out.push_back(std::move(v));
    }
  }
}

template <Concern who>
void judge_clips(const void* model, const Evidenced&, Verdicts& out) {
  for (auto& t : of(model).tubes) {
    if ((!t.unsupported_m && !t.clips) || concern_of(t.carries) != who) continue;
    Verdict v{.place = t.place,
              .fix_hint = "a clip more where the span is longest, lined, its screw not into a hole the tube rubs on"};
    need(v, t.outside_m, t.outside_path);
    if (!t.material) v.missing.push_back(t.material_path);
    if (!t.unsupported_m && !t.shape.good()) {
      const auto& lacks = t.shape.missing;
      v.missing.insert(v.missing.end(), lacks.begin(), lacks.end());
      if (lacks.empty()) v.missing.push_back(t.points_path);
    }
    if (v.missing.empty()) {
      const auto longest = physics::longest_span_m(*t.outside_m, table_metal(*t.material));
      v.predicted = t.unsupported_m ? *t.unsupported_m : t.shape.cut.cut_m / (*t.clips + 1);
      v.high = longest;
      v.scale = longest.value_or(1);
      if (!longest) v.predicted.reset(), v.reason = "a tube of less than 1/8 in is not in the table";
    }
    out.push_back(std::move(v));
  }
}
template void judge_clips<Concern::brakes>(const void*, const Evidenced&, Verdicts&);
template void judge_clips<Concern::fuel>(const void*, const Evidenced&, Verdicts&);
template void judge_clips<Concern::other>(const void*, const Evidenced&, Verdicts&);

/// Whether there is enough of it to ask how strong it is; every brake line is.
bool strength_told(const TubeModel& t) {
  return t.pressure_pa || t.tensile_pa || (t.carries == Carries::brake_fluid && t.outside_m);
}

template <Concern who>
void judge_burst(const void* model, const Evidenced&, Verdicts& out) {
  constexpr double factor = 4;
  for (auto& t : of(model).tubes) {
    if (!strength_told(t) || concern_of(t.carries) != who) continue;
    if (t.pressure_pa && *t.pressure_pa <= 0) continue;  // nothing presses in it
    Verdict v{.place = t.place,
              .scale = factor,
              .fix_hint = "tube made for the duty: more wall, or a stronger metal; never plain copper in a brake line"};
    need(v, t.outside_m, t.outside_path);
    need(v, t.wall_m, t.wall_path);
    need(v, t.tensile_pa, t.tensile_path);
    need(v, t.pressure_pa, t.pressure_path);
    if (v.missing.empty()) {
      const double wall = bent(t) && t.bend_m ? physics::bent_wall_m(*t.outside_m, *t.wall_m, *t.bend_m) : *t.wall_m;
      const double bursts = physics::hoop_pressure_pa(*t.outside_m, wall, *t.tensile_pa).value;
      v.predicted = bursts / *t.pressure_pa;
      v.low = factor;
      v.because.push_back(inches("wall left where it is bent", wall));
      v.because.push_back(told("bursts at", bursts, kind::pressure_difference, "psi"));
    }
    out.push_back(std::move(v));
  }
}
template void judge_burst<Concern::brakes>(const void*, const Evidenced&, Verdicts&);
template void judge_burst<Concern::fuel>(const void*, const Evidenced&, Verdicts&);
template void judge_burst<Concern::other>(const void*, const Evidenced&, Verdicts&);

}  // namespace sw::tubes
