#include "proof/wiring_feeds.hpp"

#include "systems/wiring/checks.hpp"

namespace sw {

std::vector<WiringFeed> wiring_feeds(const Car& car, const DutySet& set, const std::vector<Trace>& runs) {
  std::vector<std::uint16_t> slots;
  for (auto& p : wiring::heat::needs) {
    const int slot = car.graph().slot(p.name);
    if (slot < 0 || car.graph().unavailable.contains(p.name)) return {};
    slots.push_back(static_cast<std::uint16_t>(slot));
  }
  std::vector<WiringFeed> all;
  for (std::size_t i = 0; i < runs.size(); ++i) {
    if (!runs[i].summary.usable() || runs[i].rows() == 0) continue;
    const Duty& duty = *set.courses[i].duty;
    const Evidenced run{&runs[i], &duty, slots.data()};
    WiringFeed one{.duty = i, .cranks = duty.engine == EngineState::cranking};
    one.feed = wiring::feed_at(run, one.cranks ? runs[i].lowest(run.slot(0)) : run.last());
    one.fans_a = run.at(run.last(), wiring::n_fitted);
    one.bay_k = wiring::bay_of(run);
    all.push_back(one);
  }
  return all;
}

}  // namespace sw
