// Flexible lines: how tightly they lie, and what is left of them where their ends stand farthest apart.
#include "model/told.hpp"
#include "systems/tubes/checks.hpp"

namespace sw::tubes {
namespace {
const Model& of(const void* model) { return *static_cast<const Model*>(model); }
}  // namespace

template <Concern who>
void judge_hose_bend(const void* model, const Evidenced&, Verdicts& out) {
  for (auto& h : of(model).hoses) {
    if ((!h.bend_m && !h.least_m) || concern_of(h.carries) != who) continue;
    Verdict v{.place = h.place, .fix_hint = "an elbow fitting, another way round, or a hose made for the radius"};
    if (!h.bend_m) v.missing.push_back(h.bend_path);
    if (!h.least_m) v.missing.push_back(h.least_path);
    if (!h.carries) v.missing.push_back(h.carries_path);
    if (v.missing.empty()) {
      v.predicted = h.bend_m;
      v.low = h.least_m;
      v.scale = *h.least_m;
    }
    out.push_back(std::move(v));
  }
}
template void judge_hose_bend<Concern::brakes>(const void*, const Evidenced&, Verdicts&);
template void judge_hose_bend<Concern::fuel>(const void*, const Evidenced&, Verdicts&);
template void judge_hose_bend<Concern::other>(const void*, const Evidenced&, Verdicts&);

template <Concern who>
void judge_hose_slack(const void* model, const Evidenced&, Verdicts& out) {
  constexpr double least = 0.05;
  for (auto& h : of(model).hoses) {
    const bool placed = h.longest_m || !h.missing.empty();
    if (!placed || concern_of(h.carries) != who) continue;
    Verdict v{.place = h.place,
              .scale = least,
              .missing = h.missing,
              .fix_hint = "a longer hose; under pressure it grows shorter, and its ends must never be what stops it"};
    if (!h.length_m) v.missing.push_back(h.length_path);
    if (!h.carries) v.missing.push_back(h.carries_path);
    if (v.missing.empty()) {
      v.predicted = 1 - *h.longest_m / *h.length_m;
      v.low = least;
      v.because.push_back(told("its way at " + h.longest_at, *h.longest_m, kind::length, "in"));
    }
    out.push_back(std::move(v));
  }
}
template void judge_hose_slack<Concern::brakes>(const void*, const Evidenced&, Verdicts&);
template void judge_hose_slack<Concern::fuel>(const void*, const Evidenced&, Verdicts&);
template void judge_hose_slack<Concern::other>(const void*, const Evidenced&, Verdicts&);

}  // namespace sw::tubes
