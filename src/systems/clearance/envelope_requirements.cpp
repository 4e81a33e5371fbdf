#include <algorithm>
#include <cmath>

#include "systems/clearance/clearance.hpp"

namespace sw::clearance {
namespace {

const Model& of(const void* model) { return *static_cast<const Model*>(model); }

/// Where something stands in a pose, in the words of a shop: lean and lock to the left, an axle or wheel up.
Because stand(const Moves& m, double value) {
  switch (m.as) {
    case Moves::As::roll:
      return told("engine's top leans there to the left", value, kind::angle, "deg");
    case Moves::As::lock:
      return told(m.travel + " steered there to the left", value, kind::angle, "deg");
    case Moves::As::swing:
      return inches(m.travel + " up there", m.setting.at(value).of(m.hub).z - m.hub.z);
    default:
      return inches(m.travel + " up there", value);
  }
}

void tell(const EnvelopeModel& e, const EngineMoved& moved, const physics::SweptDistance& d, Verdict& v) {
  for (std::size_t i = 0; i < e.moves.size(); ++i) v.because.push_back(stand(e.moves[i], d.pose[i]));
  v.because.push_back(inches("between them there", d.least_m));
  v.because.push_back(inches("between them at rest", e.at_rest_m(moved)));
  v.because.push_back(inches("no pose brings them nearer than", d.floor_m));
  if (!e.of_engine() || !moved.at_all()) return;
  v.because.push_back(inches("engine at its front mounts, up", moved.front_rise_m));
  v.because.push_back(told("engine's nose down", moved.pitch_rad, kind::angle, "deg"));
}

/// What they surely keep. The pose found may be passed by what the search leaves open, and the whole of that is taken
/// off: the floor itself lies no lower, but goes by steps where a figure is moved a little.
double surely_kept_m(const physics::SweptDistance& d, bool left_open) {
  if (d.least_m <= 0) return d.least_m;  // they touch
  if (left_open) return d.floor_m;
  return std::max(0.0, d.least_m - physics::SweptLimits{}.tolerance_m);
}

void judge(const EnvelopeModel& e, const EngineMoved& moved, Verdict& v) {
  const physics::SweptDistance d = e.least(moved);
  const bool left_open = d.least_m - d.floor_m > physics::SweptLimits{}.tolerance_m + 1e-9;
  tell(e, moved, d, v);
  if (left_open && d.floor_m < e.wanted_m && d.least_m >= e.wanted_m) {
    v.reason =
        "between the poses tried one may bring them nearer than wanted: fewer points in the bodies, or a gap "
        "measured there instead";
    return;
  }
  v.predicted = surely_kept_m(d, left_open);
  v.low = e.wanted_m;
}

void look(const void* model, const Evidenced& run, Concern concern, std::vector<Verdict>& out) {
  const EngineMoved moved = moved_in(run);
  for (auto& e : of(model).envelopes) {
    if (concern_of(e.between) != concern) continue;
    Verdict v{.place = e.place, .scale = std::max(e.wanted_m, 1e-3), .fix_hint = usual_fix(e.between)};
    v.missing = e.missing;
    if (v.missing.empty() && (!e.of_engine() || engine_known(run))) judge(e, moved, v);
    out.push_back(std::move(v));
  }
}

}  // namespace

namespace envelope {
template <Concern concern>
void evaluate(const void* model, const Evidenced& run, std::vector<Verdict>& out) {
  look(model, run, concern, out);
}
template void evaluate<Concern::parts>(const void*, const Evidenced&, std::vector<Verdict>&);
template void evaluate<Concern::wire>(const void*, const Evidenced&, std::vector<Verdict>&);
template void evaluate<Concern::brakes>(const void*, const Evidenced&, std::vector<Verdict>&);
template void evaluate<Concern::fuel>(const void*, const Evidenced&, std::vector<Verdict>&);
template void evaluate<Concern::belts>(const void*, const Evidenced&, std::vector<Verdict>&);
}  // namespace envelope

}  // namespace sw::clearance
