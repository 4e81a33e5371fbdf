#include <algorithm>
#include <cmath>

#include "model/needed.hpp"
#include "quantity/customary.hpp"
#include "systems/clearance/clearance.hpp"

namespace sw::clearance {
namespace {

/// Gaps wanted where nobody says otherwise (common practice), in the order of `Between`, and from a sleeved wire.
constexpr double wanted_m[] = {0.5 * inch_m, 0.25 * inch_m, 2.0 * inch_m, 0.125 * inch_m};
static_assert(std::size(wanted_m) == std::size(between_names));
constexpr double sleeved_m = 0.5 * inch_m;

/// A heat sleeve is a wire's.
Between between_of(const Gap& in) {
  return in.between.value_or(in.sleeved.value_or(false) ? Between::wire_and_hot : Between::moving);
}

double wanted_of(const Gap& in) {
  if (in.wanted) return in.wanted->si;
  const Between between = between_of(in);
  if (between == Between::wire_and_hot && in.sleeved.value_or(false)) return sleeved_m;
  return wanted_m[static_cast<std::size_t>(between)];
}

GapModel gap_of(const std::string& name, const Gap& in, Resolver& r) {
  GapModel g{.place = name};
  g.gap_m = needed(in.gap, g.missing, r);
  g.between = between_of(in);
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

StackModel stack_of(const std::string& name, const Stack& in, Resolver& r) {
  StackModel s{.place = name, .on_intake = in.on_intake.value_or(false)};
  for (auto& [piece, given] : in.piece) s.pieces.emplace_back(piece, needed(given.size, s.missing, r));
  s.space_m = needed(in.space, s.missing, r);
  s.roll_m = r.get(in.roll, 0);
  s.wanted_m = r.get(in.wanted, 0);
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

double EngineMoved::rise_m(double ahead_m) const { return front_rise_m - ahead_m * std::tan(pitch_rad); }

double GapModel::least_m(const EngineMoved& moved) const {
  const double rise = moved.rise_m(ahead_m);
  const double with_engine = engine == Engine::above ? rise : engine == Engine::below ? -rise : 0;
  return gap_m + with_engine - std::max(0.0, roll_m) - std::max({0.0, bump_m, droop_m}) - std::max(0.0, lock_m);
}

double StackModel::height_m() const {
  double sum = 0;
  for (auto& [name, size] : pieces) sum += size;
  return sum;
}

double StackModel::left_m(const EngineMoved& moved) const {
  return space_m - height_m() - roll_m - (on_intake ? moved.intake_raised_m : 0);
}

Model System::resolve(const Input& in, Resolver& r) {
  Model m;
  for (auto& [name, gap] : in.gap) m.gaps.push_back(gap_of(name, gap, r));
  for (auto& [name, stack] : in.stack) m.stacks.push_back(stack_of(name, stack, r));
  for (auto& [name, panel] : in.panel) m.panels.push_back(panel_of(name, panel, r));
  return m;
}

}  // namespace sw::clearance
