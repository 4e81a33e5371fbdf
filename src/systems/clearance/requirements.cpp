#include <algorithm>
#include <cmath>

#include "model/told.hpp"
#include "systems/clearance/clearance.hpp"

namespace sw::clearance {
namespace {

const Model& of(const void* model) { return *static_cast<const Model*>(model); }
Because inches(std::string what, double m) { return told(std::move(what), m, kind::length, "in"); }

enum Need { n_rise, n_pitch, n_intake, need_count };
constexpr Port needs[] = {
    {"mounts.front_rise", &kind::length}, {"mounts.pitch", &kind::angle}, {"mounts.intake_raised", &kind::length}};
static_assert(std::size(needs) == need_count);
constexpr std::size_t engine_may_lack = 0;  ///< a gap that is not the engine's does not ask how it stands

bool engine_known(const Evidenced& run) { return !run.lacks(n_rise) && !run.lacks(n_pitch) && !run.lacks(n_intake); }
EngineMoved moved_in(const Evidenced& run) {
  if (!engine_known(run)) return {};
  return {.front_rise_m = run.at(0, n_rise), .pitch_rad = run.at(0, n_pitch), .intake_raised_m = run.at(0, n_intake)};
}
bool has_moved(const EngineMoved& e) { return e.front_rise_m != 0 || e.pitch_rad != 0; }

/// Tells what closes a gap, and leaves out what does not.
void tell_closings(const GapModel& g, const EngineMoved& moved, Verdict& v) {
  v.because.push_back(inches("gap at rest", g.gap_m));
  if (g.engine != Engine::apart && has_moved(moved)) {
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
  if (g.engine != Engine::apart && has_moved(moved))
    return "the mounts first: what they did to this gap they did to all; else the part moved, bent or of another shape";
  switch (g.between) {
    case Between::steering_link:
      return "engine or pan higher, or a link and pan made for each other; clay on the pan, lock to lock at full bump";
    case Between::wire_and_hot:
      return "another way for the wire, a heat sleeve fastened at both ends, a shield; a fuse at its source";
    default:
      return "part and route chosen together; a wedge of the gap's size at full roll shows it before anything is "
             "bought";
  }
}

namespace gap {
void evaluate(const void* model, const Evidenced& run, std::vector<Verdict>& out) {
  const EngineMoved moved = moved_in(run);
  for (auto& g : of(model).gaps) {
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
void evaluate(const void* model, const Evidenced&, std::vector<Verdict>& out) {
  for (auto& g : of(model).gaps) {
    if (!g.comes_to_k && !g.stands_k) continue;
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

namespace stack {
void evaluate(const void* model, const Evidenced& run, std::vector<Verdict>& out) {
  const EngineMoved moved = moved_in(run);
  for (auto& s : of(model).stacks) {
    Verdict v{.place = s.place,
              .scale = std::max(s.wanted_m, 1e-3),
              .fix_hint = "a flatter piece, or more space; clay on top and the lid latched, before anything is bought"};
    v.missing = s.missing;
    if (v.missing.empty() && (!s.on_intake || engine_known(run))) {
      v.predicted = s.left_m(moved);
      v.low = s.wanted_m;
      v.because.push_back(inches("space", s.space_m));
      for (auto& [name, size] : s.pieces) v.because.push_back(inches(name, size));
      if (s.roll_m > 0) v.because.push_back(inches("lifted by the engine's roll", s.roll_m));
      if (s.on_intake && moved.intake_raised_m != 0)
        v.because.push_back(inches("intake raised", moved.intake_raised_m));
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

constexpr Requirement all[] = {
    {.id = "clearance.gap",
     .title = "gap with everything against it",
     .kind = RequirementKind::least,
     .hazard = Hazard::harm,
     .caution = Caution::steering_loss,
     .quantity = &kind::length,
     .unit = "in",
     .source = "clearance.gap.….wanted; common practice",
     .formula =
         "gap at rest + engine's rise there - roll - the greater of bump and droop - lock; the engine turns as a "
         "rigid body about its mounts",
     .needs = needs,
     .may_lack = engine_may_lack,
     .own_missing = true,
     .evaluate = gap::evaluate},
    {.id = "clearance.heat",
     .title = "stands the heat beside it",
     .kind = RequirementKind::most,
     .hazard = Hazard::harm,
     .caution = Caution::steering_loss,
     .quantity = &kind::temperature,
     .unit = "degC",
     .source = "data sheet of the part",
     .formula = "as measured or estimated there",
     .own_missing = true,
     .evaluate = heat::evaluate},
    {.id = "clearance.stack",
     .title = "stack fits its space",
     .kind = RequirementKind::least,
     .hazard = Hazard::nuisance,
     .quantity = &kind::length,
     .unit = "in",
     .source = "common practice: 1/2 in where the engine moves",
     .formula = "space - pieces - lift by the engine's roll - intake raised",
     .needs = needs,
     .may_lack = engine_may_lack,
     .own_missing = true,
     .evaluate = stack::evaluate},
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
