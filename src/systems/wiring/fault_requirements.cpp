// One fault at a time: none may send current where nothing carries it and nothing opens.
#include <algorithm>

#include "systems/wiring/checks.hpp"
#include "systems/wiring/faults.hpp"

namespace sw::wiring::one_fault {
namespace {

bool burns(const Happens& h) { return h.what == Effect::burns; }

/// What helps against the fault that burns something.
const char* fix_of(Broken what) {
  switch (what) {
    case Broken::battery_reversed:
      return "a fuse or link at the battery's end of the wire the current takes: the machine's diodes conduct, and die";
    case Broken::nothing:
      return "what carries that current in the car as it is: streetwright faults";
    case Broken::contact:
      return "a fuse before the contact that may stick";
    case Broken::run:
    case Broken::battery_off:
      break;
  }
  return "a second strap beside the one that may be lost, or a fuse where the current goes instead";
}

}  // namespace

void evaluate(const void* model, const Evidenced& run, std::vector<Verdict>& out) {
  auto& m = *static_cast<const Model*>(model);
  const bool cranks = run.duty->engine == EngineState::cranking;
  const std::size_t row = cranks ? run.trace->lowest(run.slot(0)) : run.last();
  const Feed feed = feed_at(run, row);
  if (!solved(m, solve(m, feed), out)) return;
  Verdict v{.row = row};
  std::string burnt, lost;
  double worst = 0;  // what carries most over what it may is told
  const auto all = try_faults(m, feed, bay_of(run));
  for (auto& fault : all) {
    if (!fault.solved) lost = "the network has no solution with " + fault.fault;
    for (auto& h : fault.happens) {
      if (h.what == Effect::unknown) v.missing.push_back("wiring.run." + h.place + ".limit");
      if (!burns(h)) continue;
      const double share = h.is / h.limit.value_or(h.is);
      if (share > worst) worst = share, burnt = fault.fault + ": " + tell(h), v.fix_hint = fix_of(fault.what);
      v.because.push_back({.what = fault.fault, .text = tell(h)});
    }
  }
  std::sort(v.missing.begin(), v.missing.end());
  v.missing.erase(std::unique(v.missing.begin(), v.missing.end()), v.missing.end());
  if (!burnt.empty() || (lost.empty() && v.missing.empty())) v.rule = burnt.empty();
  if (v.rule) v.missing.clear();
  v.reason = !burnt.empty()  ? burnt
             : !lost.empty() ? lost
             : v.rule ? std::to_string(all.size()) + " faults tried one at a time; streetwright faults tells each"
                      : "";
  out.push_back(std::move(v));
}

}  // namespace sw::wiring::one_fault
