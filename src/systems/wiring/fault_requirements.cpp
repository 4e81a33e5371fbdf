// One fault at a time: none may send current where nothing carries it and nothing opens.
#include "systems/wiring/checks.hpp"
#include "systems/wiring/faults.hpp"

namespace sw::wiring::one_fault {
namespace {

bool burns(const Happens& h) { return h.what == Effect::burns; }

}  // namespace

void evaluate(const void* model, const Evidenced& run, std::vector<Verdict>& out) {
  auto& m = *static_cast<const Model*>(model);
  const bool cranks = run.duty->engine == EngineState::cranking;
  const std::size_t row = cranks ? run.trace->lowest(run.slot(0)) : run.last();
  Verdict v{.row = row,
            .fix_hint = "a second strap beside the one that may be lost, or a fuse where the current goes instead"};
  std::size_t tried = 0;
  for (auto& fault : try_faults(m, feed_at(run, row), cranks ? start_s : 0)) {
    ++tried;
    for (auto& h : fault.happens) {
      if (!burns(h)) continue;
      if (v.reason.empty()) v.reason = fault.fault + ": " + tell(h);
      v.because.push_back({.what = fault.fault, .text = tell(h)});
    }
  }
  if (tried == 0) return;
  v.rule = v.reason.empty();
  if (*v.rule) v.reason = std::to_string(tried) + " faults tried one at a time; streetwright faults tells each";
  out.push_back(std::move(v));
}

}  // namespace sw::wiring::one_fault
