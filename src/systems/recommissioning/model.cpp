#include "systems/recommissioning/recommissioning.hpp"

namespace sw::recommissioning {
namespace {

/// The steps, told by the fields' own labels.
std::vector<StepModel> steps_of(const Before& in, Resolver& r) {
  std::vector<StepModel> steps;
  for (auto& f : Before::fields()) {
    const auto done = f.access.get(&in);
    steps.push_back({.what = f.label,
                     .done = done ? std::optional(*done != 0) : std::nullopt,
                     .path = r.path_of(f.access.address(&in))});
  }
  return steps;
}

bool any_told(const Before& in) {
  for (auto& f : Before::fields())
    if (f.access.get(&in)) return true;
  return false;
}

}  // namespace

Model System::resolve(const Input& in, Resolver& r) {
  Model m;
  if (any_told(in.before)) m.steps = steps_of(in.before, r);
  for (auto& [name, h] : in.hose)
    m.hoses.push_back({.place = name,
                       .age_s = given(h.age),
                       .bore_m = given(h.bore),
                       .length_m = given(h.length),
                       .age_path = r.path_of(&h.age),
                       .length_path = r.path_of(&h.length),
                       .seal_pa = r.get(h.seal, 0),
                       .returns_m3 = r.get(h.returns, 0)});
  for (auto& [name, f] : in.feed) m.feeds.push_back({name, given(f.insulation), r.path_of(&f.insulation)});
  for (auto& [name, s] : in.splice)
    m.splices.push_back({name, given(s.resistance), given(s.current), r.path_of(&s.resistance), r.path_of(&s.current)});
  return m;
}

}  // namespace sw::recommissioning
