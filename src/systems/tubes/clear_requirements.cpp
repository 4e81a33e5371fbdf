// Tubes in space: how near they run to what is hot, and to one another. Distances are from centre line to centre line,
// bends as round as they come, less both radii.
#include <algorithm>

#include "model/keep_clear.hpp"
#include "model/told.hpp"
#include "systems/tubes/checks.hpp"

namespace sw::tubes {
namespace {

const Model& of(const void* model) { return *static_cast<const Model*>(model); }

/// What a tube keeps from hot parts (common practice): fuel and brake fluid as the fuel system asks of its runs.
double wanted_m(const HotModel& h, const std::optional<Carries>& carries) {
  if (h.wanted_m) return *h.wanted_m;
  double bare = 1 * inch_m;
  if (concern_of(carries) != Concern::other) bare = bare_to_exhaust_m;
  if (carries == Carries::vacuum) bare = 2 * inch_m;
  return h.shielded ? std::min(bare, shielded_to_exhaust_m) : bare;
}

/// The nearest two tubes may run that share no clip (common practice).
constexpr double apart_m = 0.25 * inch_m;

std::vector<std::string> lacking(const TubeModel& t) {
  auto missing = t.shape.missing;
  if (!t.outside_m) missing.push_back(t.outside_path);
  return missing;
}
void add(std::vector<std::string>& to, const std::vector<std::string>& more) {
  to.insert(to.end(), more.begin(), more.end());
}
/// Whether a rule has anything to say of it: points that cannot be are told as a fault.
bool in_space(const TubeModel& t) { return t.shape.drawn && (t.shape.good() || !t.shape.missing.empty()); }
bool share_clips(const TubeModel& a, const TubeModel& b) {
  const auto names = [](const TubeModel& t, const std::string& other) {
    return std::find(t.beside.begin(), t.beside.end(), other) != t.beside.end();
  };
  return names(a, b.place) || names(b, a.place);
}
Concern worse_of(const TubeModel& a, const TubeModel& b) {
  return std::min(concern_of(a.carries), concern_of(b.carries));
}

}  // namespace

template <Concern who>
void judge_heat(const void* model, const Evidenced&, Verdicts& out) {
  const Model& m = of(model);
  for (auto& t : m.tubes) {
    if (!in_space(t) || concern_of(t.carries) != who) continue;
    for (auto& h : m.hot) {
      Verdict v{.place = t.place + " to " + h.place,
                .scale = bare_to_exhaust_m,
                .missing = lacking(t),
                .fix_hint = "another way round: its points moved; or a shield with an air gap"};
      add(v.missing, h.missing);
      if (!t.carries) v.missing.push_back(t.carries_path);
      if (v.missing.empty()) {
        const physics::Vec3 bar[] = {h.from, h.to};
        const double middles = physics::chain_distance_m(t.shape.centre_line, bar);
        v.predicted = middles - *t.outside_m / 2 - h.radius_m;
        v.low = wanted_m(h, t.carries);
        v.because.push_back(inches("middle to middle", middles));
      }
      out.push_back(std::move(v));
    }
  }
}
template void judge_heat<Concern::brakes>(const void*, const Evidenced&, Verdicts&);
template void judge_heat<Concern::fuel>(const void*, const Evidenced&, Verdicts&);
template void judge_heat<Concern::other>(const void*, const Evidenced&, Verdicts&);

template <Concern who>
void judge_apart(const void* model, const Evidenced&, Verdicts& out) {
  const Model& m = of(model);
  for (std::size_t i = 0; i < m.tubes.size(); ++i)
    for (std::size_t j = i + 1; j < m.tubes.size(); ++j) {
      const TubeModel &a = m.tubes[i], &b = m.tubes[j];
      if (!in_space(a) || !in_space(b) || share_clips(a, b) || worse_of(a, b) != who) continue;
      Verdict v{.place = a.place + " to " + b.place,
                .scale = apart_m,
                .missing = lacking(a),
                .fix_hint = "points moved apart, or both held by one clip and named `beside` each other"};
      add(v.missing, lacking(b));
      if (v.missing.empty()) {
        v.predicted =
            physics::chain_distance_m(a.shape.centre_line, b.shape.centre_line) - (*a.outside_m + *b.outside_m) / 2;
        v.low = apart_m;
      }
      out.push_back(std::move(v));
    }
}
template void judge_apart<Concern::brakes>(const void*, const Evidenced&, Verdicts&);
template void judge_apart<Concern::fuel>(const void*, const Evidenced&, Verdicts&);
template void judge_apart<Concern::other>(const void*, const Evidenced&, Verdicts&);

}  // namespace sw::tubes
