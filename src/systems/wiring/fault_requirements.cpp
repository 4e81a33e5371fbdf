// One fault at a time: none may send current where nothing carries it and nothing opens.
#include "systems/wiring/checks.hpp"
#include "systems/wiring/faults.hpp"

namespace sw::wiring::one_fault {
namespace {

/// How long a start is held at most before it is given up (common practice).
constexpr double start_s = 10;

struct Worst {
  const FaultRun* run = nullptr;
  const Happens* happens = nullptr;
  double share = 0;
};
Worst worst_of(const std::vector<FaultRun>& all) {
  Worst w;
  for (auto& run : all)
    for (auto& h : run.happens)
      if (h.limit && *h.limit > 0 && h.what != Effect::fuse_opens && h.is / *h.limit > w.share)
        w = {&run, &h, h.is / *h.limit};
  return w;
}

}  // namespace

void evaluate(const void* model, const Evidenced& run, std::vector<Verdict>& out) {
  auto& m = *static_cast<const Model*>(model);
  const bool cranks = run.duty->engine == EngineState::cranking;
  const std::size_t row = cranks ? run.trace->lowest(run.slot(0)) : run.last();
  const auto all = try_faults(m, feed_at(run, row), cranks ? start_s : 0);
  const Worst worst = worst_of(all);
  if (!worst.run) return;  // no fault sends current anywhere else
  Verdict v{.predicted = worst.happens->is,
            .high = *worst.happens->limit,
            .scale = *worst.happens->limit,
            .row = row,
            .reason = worst.run->fault + ": " + tell(*worst.happens),
            .fix_hint = "a second strap beside the one that may be lost, or a fuse where the current goes instead"};
  v.because.push_back({.what = "fault", .text = worst.run->fault});
  v.because.push_back({.what = "then", .text = tell(*worst.happens)});
  for (auto& r : all)
    for (auto& h : r.happens)
      if (h.what == Effect::burns && &h != worst.happens) v.because.push_back({.what = r.fault, .text = tell(h)});
  out.push_back(std::move(v));
}

}  // namespace sw::wiring::one_fault
