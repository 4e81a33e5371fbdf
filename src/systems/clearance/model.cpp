#include <algorithm>
#include <cmath>

#include "model/needed.hpp"
#include "quantity/customary.hpp"
#include "systems/clearance/clearance.hpp"

namespace sw::clearance {
namespace {

/// A heat sleeve is a wire's.
Between between_of(const Gap& in) {
  return in.between.value_or(in.sleeved.value_or(false) ? Between::wire_and_hot : Between::moving);
}

double wanted_of(const Gap& in) {
  if (in.wanted) return in.wanted->si;
  const Between between = between_of(in);
  if (between == Between::wire_and_hot && in.sleeved.value_or(false)) return sleeved_gap_m;
  return usual_gap_m(between);
}

/// What a gap of moving parts is asked for: one word at least of what moves it.
bool movement_told(const Gap& in) { return in.engine || in.roll || in.bump || in.droop || in.lock; }
bool moves(const GapModel& g) {
  return g.between == Between::moving || g.between == Between::steering_link || g.between == Between::fan_belt;
}

GapModel gap_of(const std::string& name, const Gap& in, Resolver& r) {
  GapModel g{.place = name};
  g.gap_m = needed(in.gap, g.missing, r);
  g.between = between_of(in);
  if (!in.between && !in.wanted && !in.sleeved.value_or(false)) g.missing.push_back(r.path_of(&in.between));
  if (moves(g) && !movement_told(in))
    g.missing.push_back(r.path_of(&in.roll) + ": or bump, droop, lock, engine; 0 in where nothing closes it");
  g.engine = in.engine.value_or(Engine::apart);
  g.wanted_m = wanted_of(in);
  g.ahead_m = r.get(in.ahead, 0);
  g.roll_m = r.get(in.roll, 0);
  g.bump_m = r.get(in.bump, 0);
  g.droop_m = r.get(in.droop, 0);
  g.lock_m = r.get(in.lock, 0);
  g.comes_to_k = given(in.comes_to);
  g.stands_k = given(in.stands);
  g.comes_to_path = r.path_of(&in.comes_to);
  g.stands_path = r.path_of(&in.stands);
  if (in.sleeved.value_or(false) && g.between != Between::wire_and_hot)
    r.fault(&in.sleeved, "only a wire beside what is hot has a heat sleeve", "between = \"wire and hot part\"",
            {&in.between});
  return g;
}

/// A measured length with the band its evidence gives it.
Dimension measured(std::string name, const std::optional<Length>& member, double value, const Resolver& r) {
  const Evidence* e = r.evidence_of(&member);
  return {std::move(name), value, e ? e->half_width : 0.0};
}

StackModel stack_of(const std::string& name, const Stack& in, Resolver& r) {
  StackModel s{.place = name, .on_intake = in.on_intake.value_or(false)};
  for (auto& [piece, given] : in.piece)
    s.pieces.push_back(measured(piece, given.size, needed(given.size, s.missing, r), r));
  s.space = measured("space", in.space, needed(in.space, s.missing, r), r);
  s.roll = measured("lifted by the engine's roll", in.roll, r.get(in.roll, 0), r);
  s.shims = measured("shims in it", in.shims, r.get(in.shims, 0), r);
  s.wanted_m = r.get(in.wanted, 0);
  s.most_m = given(in.most);
  s.shims_path = r.path_of(&in.shims);
  s.most_path = r.path_of(&in.most);
  if (s.most_m && *s.most_m <= s.wanted_m)
    r.fault(&in.most, "no more may be left than must be left at least", "a most above `wanted`", {&in.wanted});
  return s;
}

PanelModel panel_of(const std::string& name, const Panel& in, Resolver& r) {
  PanelModel p{.place = name};
  p.moved_m = needed(in.moved, p.missing, r);
  const double moved_at = needed(in.moved_at, p.missing, r), seen_at = needed(in.seen_at, p.missing, r);
  p.lever = moved_at > 0 ? seen_at / moved_at : 1;
  p.shim_m = r.get(in.shim, 0);
  p.shims = in.shims.value_or(0);
  p.within_m = r.get(in.within, 0);
  return p;
}

}  // namespace

double GapModel::least_m(const EngineMoved& moved) const {
  const double rise = moved.rise_m(ahead_m);
  const double with_engine = engine == Engine::above ? rise : engine == Engine::below ? -rise : 0;
  return gap_m + with_engine - std::max(0.0, roll_m) - std::max({0.0, bump_m, droop_m}) - std::max(0.0, lock_m);
}

double StackModel::height_m() const {
  double sum = shims.size_m;
  for (auto& p : pieces) sum += p.size_m;
  return sum;
}

double StackModel::left_m(const EngineMoved& moved) const {
  return space.size_m - height_m() - roll.size_m - (on_intake ? moved.intake_raised_m : 0);
}

std::vector<Dimension> StackModel::doubtful() const {
  std::vector<Dimension> all;
  const auto see = [&](const Dimension& d) {
    if (d.half_m > 0) all.push_back(d);
  };
  see(space);
  for (auto& p : pieces) see(p);
  see(shims);
  see(roll);
  return all;
}

physics::ToleranceStack StackModel::band() const {
  std::vector<double> halves;
  for (auto& d : doubtful()) halves.push_back(d.half_m);
  return physics::tolerance_stack(halves);
}

bool StackModel::by_worst_case() const {
  constexpr std::size_t few = 4;  // common practice
  return doubtful().size() <= few;
}

Model System::resolve(const Input& in, Resolver& r) {
  Model m;
  for (auto& [name, gap] : in.gap) m.gaps.push_back(gap_of(name, gap, r));
  m.envelopes = envelopes_of(in, r);
  for (auto& [name, stack] : in.stack) m.stacks.push_back(stack_of(name, stack, r));
  for (auto& [name, panel] : in.panel) m.panels.push_back(panel_of(name, panel, r));
  return m;
}

}  // namespace sw::clearance
