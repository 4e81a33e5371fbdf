#include <algorithm>
#include <cmath>

#include "systems/clearance/clearance.hpp"

namespace sw::clearance {
namespace {

const Model& of(const void* model) { return *static_cast<const Model*>(model); }

/// Tells what closes a gap, and leaves out what does not.
void tell_closings(const GapModel& g, const EngineMoved& moved, Verdict& v) {
  v.because.push_back(inches("gap at rest", g.gap_m));
  if (g.engine != Engine::apart && moved.at_all()) {
    v.because.push_back(inches("engine there, up", moved.rise_m(g.ahead_m)));
    v.because.push_back(inches("engine at its front mounts, up", moved.front_rise_m));
    v.because.push_back(told("engine's nose down", moved.pitch_rad, kind::angle, "deg"));
  }
  const auto closes = [&](const char* what, double by) {
    if (by > 0) v.because.push_back(inches(what, by));
  };
  closes("closed by the engine's roll", g.roll_m);
  closes("closed at full bump", g.bump_m);
  closes("closed at full droop", g.droop_m);
  closes("closed at full lock", g.lock_m);
}

const char* fix_of(const GapModel& g, const EngineMoved& moved) {
  if (g.engine != Engine::apart && moved.at_all())
    return "the mounts first: what they did to this gap they did to all; else the part moved, bent or of another shape";
  return usual_fix(g.between);
}

/// A wire, a line or a belt is a hazard of its own, with its own caution; so each concern is looked at alone.
namespace gap {
template <Concern concern>
void evaluate(const void* model, const Evidenced& run, std::vector<Verdict>& out) {
  const EngineMoved moved = moved_in(run);
  for (auto& g : of(model).gaps) {
    if (concern_of(g.between) != concern) continue;
    Verdict v{.place = g.place, .scale = std::max(g.wanted_m, 1e-3), .fix_hint = fix_of(g, moved)};
    v.missing = g.missing;
    if (v.missing.empty() && (g.engine == Engine::apart || engine_known(run))) {
      v.predicted = g.least_m(moved);
      v.low = g.wanted_m;
      tell_closings(g, moved, v);
    }
    out.push_back(std::move(v));
  }
}
}  // namespace gap

/// Heat across a gap: looked at where either figure was given.
namespace heat {
template <Concern concern>
void evaluate(const void* model, const Evidenced&, std::vector<Verdict>& out) {
  for (auto& g : of(model).gaps) {
    if (concern_of(g.between) != concern || (!g.comes_to_k && !g.stands_k)) continue;
    constexpr double scale_k = 50;
    Verdict v{.place = g.place,
              .scale = scale_k,
              .fix_hint = "a shield with air behind it, more distance, or a part that stands the heat"};
    if (!g.comes_to_k) v.missing.push_back(g.comes_to_path);
    if (!g.stands_k) v.missing.push_back(g.stands_path);
    if (v.missing.empty()) {
      v.predicted = *g.comes_to_k;
      v.high = *g.stands_k;
    }
    out.push_back(std::move(v));
  }
}
}  // namespace heat

/// What is left of a stack's space, how far it may be off both ways of reckoning, and which length to measure again.
namespace stack {
void tell(const StackModel& s, const EngineMoved& moved, Verdict& v) {
  const double left = s.left_m(moved);
  v.because.push_back(inches("space", s.space.size_m));
  for (auto& p : s.pieces) v.because.push_back(inches(p.name, p.size_m));
  if (s.shims.size_m > 0) v.because.push_back(inches(s.shims.name, s.shims.size_m));
  if (s.roll.size_m > 0) v.because.push_back(inches(s.roll.name, s.roll.size_m));
  if (s.on_intake && moved.intake_raised_m != 0) v.because.push_back(inches("intake raised", moved.intake_raised_m));
  const auto doubtful = s.doubtful();
  if (doubtful.empty()) return;
  const auto t = s.band();
  const double sign = v.low ? -1 : 1;  // toward the limit
  v.because.push_back(inches("left with every length off at once", left + sign * t.worst_case));
  v.because.push_back(inches("left statistically", left + sign * t.statistical));
  v.because.push_back(inches("measured again first: " + doubtful[t.greatest].name + ", which may be off by",
                             doubtful[t.greatest].half_m));
}

template <bool too_loose>
void evaluate(const void* model, const Evidenced& run, std::vector<Verdict>& out) {
  const EngineMoved moved = moved_in(run);
  for (auto& s : of(model).stacks) {
    if (too_loose && !s.most_m) continue;
    Verdict v{.place = s.place, .scale = std::max(s.wanted_m, 1e-3), .worst_case = s.by_worst_case()};
    v.fix_hint = too_loose
                     ? "shims or a spacer: `streetwright solve stack`"
                     : "a flatter piece, or more space; clay on top and the lid latched, before anything is bought";
    v.missing = s.missing;
    if (v.missing.empty() && (!s.on_intake || engine_known(run))) {
      v.predicted = s.left_m(moved);
      (too_loose ? v.high : v.low) = too_loose ? *s.most_m : s.wanted_m;
      tell(s, moved, v);
    }
    out.push_back(std::move(v));
  }
}
}  // namespace stack

namespace panel {
void evaluate(const void* model, const Evidenced&, std::vector<Verdict>& out) {
  for (auto& p : of(model).panels) {
    Verdict v{.place = p.place, .scale = std::max(p.within_m, 1e-4)};
    v.missing = p.missing;
    if (v.missing.empty()) {
      v.predicted = p.opened_m();
      v.low = -p.within_m;
      v.high = p.within_m;
      const double wanted = p.shim_m > 0 ? std::round(p.moved_m / p.shim_m) : 0;
      v.fix_hint = std::to_string(static_cast<int>(wanted)) +
                   " shims a side before the radiator is filled; gaps written down before anything is taken off";
      v.because.push_back(inches("what it hangs on was moved", p.moved_m));
      v.because.push_back(inches("shims put in", p.shims * p.shim_m));
      v.because.push_back(inches("each shim brings back", p.shim_m * p.lever));
    }
    out.push_back(std::move(v));
  }
}
}  // namespace panel

constexpr std::string_view gap_formula =
    "gap at rest + engine's rise there - roll - the greater of bump and droop - lock; the engine turns as a rigid body "
    "about its mounts";
constexpr std::string_view envelope_formula =
    "least distance of two solids over every roll, bump, droop and lock at once, each carried as a rigid body; proven "
    "over the whole range to a fiftieth of an inch";

constexpr std::string_view stack_formula =
    "space - pieces - shims - lift by the engine's roll - intake raised; up to four lengths in doubt are judged by the "
    "worst case, more by the root of the sum of squares";

/// A gap, measured or found from what moves.
constexpr Requirement distance(std::string_view id, std::string_view title, Caution caution, std::string_view source,
                               std::string_view formula,
                               void (*judge)(const void*, const Evidenced&, std::vector<Verdict>&)) {
  return {.id = id,
          .title = title,
          .kind = RequirementKind::least,
          .hazard = Hazard::harm,
          .caution = caution,
          .quantity = &kind::length,
          .unit = "in",
          .source = source,
          .formula = formula,
          .needs = needs,
          .may_lack = engine_may_lack,
          .own_missing = true,
          .evaluate = judge};
}
constexpr Requirement stands(std::string_view id, std::string_view title, Caution caution,
                             void (*judge)(const void*, const Evidenced&, std::vector<Verdict>&)) {
  return {.id = id,
          .title = title,
          .kind = RequirementKind::most,
          .hazard = Hazard::harm,
          .caution = caution,
          .quantity = &kind::temperature,
          .unit = "degC",
          .source = "data sheet of the part, its insulation or sleeve",
          .formula = "as measured or estimated there",
          .own_missing = true,
          .evaluate = judge};
}
constexpr std::string_view gap_source = "clearance.gap.….wanted; common practice";
constexpr std::string_view envelope_source = "clearance.envelope.….wanted; common practice";

constexpr Requirement all[] = {
    distance("clearance.gap", "gap with everything against it", Caution::steering_loss, gap_source, gap_formula,
             gap::evaluate<Concern::parts>),
    distance("clearance.wire", "gap of a wire to a hot part", Caution::electrical_fire, gap_source, gap_formula,
             gap::evaluate<Concern::wire>),
    distance("clearance.brake-line", "gap of a brake line to a hot part", Caution::braking_loss, gap_source,
             gap_formula, gap::evaluate<Concern::brakes>),
    distance("clearance.fuel-line", "gap of a fuel line to a hot part", Caution::fuel_fire, gap_source, gap_formula,
             gap::evaluate<Concern::fuel>),
    distance("clearance.fan", "gap of a fan or belt", Caution::belts_pulleys, gap_source, gap_formula,
             gap::evaluate<Concern::belts>),
    distance("clearance.envelope", "gap wherever both may stand", Caution::steering_loss, envelope_source,
             envelope_formula, envelope::evaluate<Concern::parts>),
    distance("clearance.wire-envelope", "gap of a wire to a hot part wherever both may stand", Caution::electrical_fire,
             envelope_source, envelope_formula, envelope::evaluate<Concern::wire>),
    distance("clearance.brake-line-envelope", "gap of a brake line to a hot part wherever both may stand",
             Caution::braking_loss, envelope_source, envelope_formula, envelope::evaluate<Concern::brakes>),
    distance("clearance.fuel-line-envelope", "gap of a fuel line to a hot part wherever both may stand",
             Caution::fuel_fire, envelope_source, envelope_formula, envelope::evaluate<Concern::fuel>),
    distance("clearance.fan-envelope", "gap of a fan or belt wherever both may stand", Caution::belts_pulleys,
             envelope_source, envelope_formula, envelope::evaluate<Concern::belts>),
    stands("clearance.heat", "stands the heat beside it", Caution::steering_loss, heat::evaluate<Concern::parts>),
    stands("clearance.wire-heat", "wire stands the heat beside it", Caution::electrical_fire,
           heat::evaluate<Concern::wire>),
    stands("clearance.brake-line-heat", "brake line stands the heat beside it", Caution::braking_loss,
           heat::evaluate<Concern::brakes>),
    stands("clearance.fuel-line-heat", "fuel line stands the heat beside it", Caution::fuel_fire,
           heat::evaluate<Concern::fuel>),
    stands("clearance.fan-heat", "fan or belt stands the heat beside it", Caution::belts_pulleys,
           heat::evaluate<Concern::belts>),
    {.id = "clearance.stack",
     .title = "stack fits its space",
     .kind = RequirementKind::least,
     .hazard = Hazard::damage,
     .caution = Caution::belts_pulleys,
     .quantity = &kind::length,
     .unit = "in",
     .source = "common practice: 1/2 in where the engine moves",
     .formula = stack_formula,
     .needs = needs,
     .may_lack = engine_may_lack,
     .own_missing = true,
     .evaluate = stack::evaluate<false>},
    {.id = "clearance.stack-loose",
     .title = "stack is not too loose in its space",
     .kind = RequirementKind::most,
     .hazard = Hazard::damage,
     .caution = Caution::belts_pulleys,
     .quantity = &kind::length,
     .unit = "in",
     .source = "clearance.stack.….most",
     .formula = stack_formula,
     .needs = needs,
     .may_lack = engine_may_lack,
     .own_missing = true,
     .evaluate = stack::evaluate<true>},
    {.id = "clearance.panel",
     .title = "panel gap as it was",
     .kind = RequirementKind::band,
     .hazard = Hazard::nuisance,
     .quantity = &kind::length,
     .unit = "mm",
     .source = "common practice: 1 mm",
     .formula = "(moved - shims) x distance of the gap from the fixed end / distance of what was moved",
     .own_missing = true,
     .evaluate = panel::evaluate},
};

}  // namespace

std::span<const Requirement> System::requirements() { return all; }

}  // namespace sw::clearance
