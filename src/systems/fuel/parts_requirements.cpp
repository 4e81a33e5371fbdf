// What fits what, and the rules of fire: hoses, ends, distances, cut-off, tank, filters.
#include <algorithm>

#include "model/keep_clear.hpp"
#include "quantity/customary.hpp"
#include "quantity/print.hpp"
#include "systems/fuel/checks.hpp"

namespace sw::fuel {
namespace {

constexpr double charging_share = 1.07;  ///< volts of a charging bus over the rated ones of a pump (common practice)
constexpr double oldest_s = 5 * year_s;
constexpr double coarse_m = 60e-6;  ///< before a pump no finer than this (common practice: 70 to 100 um)
constexpr double fine_m = 40e-6;  ///< injectors want at most this somewhere in the feed (common practice: 10 to 40 um)

const Model& of(const void* model) { return *static_cast<const Model*>(model); }
std::string_view name(End e) { return end_names[static_cast<std::size_t>(e)]; }

bool for_hose(End e) { return e == End::bead || e == End::barb; }
/// What helps where two ends do not meet.
const char* mend(End a, End b) {
  if (for_hose(a) && for_hose(b)) return "both are made for a hose: one between them, with two clamps";
  if (for_hose(a) != for_hose(b)) return "an adapter made for both, or one end made anew: neither seals on the other";
  return "an adapter made for both, or one end made anew: two seats of different angle seal on a line and crack";
}

bool mate(End a, End b) {
  const auto on_hose = [](End hose, End other) { return hose == End::hose && for_hose(other); };
  if (on_hose(a, b) || on_hose(b, a)) return true;
  return a == b && a != End::hose && !for_hose(a);
}

/// Pressure a run sees with the regulator stuck shut or the return blocked: all the pump can make.
std::optional<double> stuck_pa(const Model& m) {
  if (!m.pump || !m.relief_pa) return std::nullopt;
  return physics::dead_head_pa(*m.pump, m.engine_driven ? 1.0 : charging_share, m.relief_pa);
}

Verdict hose_verdict(const RunModel& r, const char* hint) {
  Verdict v{.place = r.name, .fix_hint = hint};
  if (!r.rating_pa) v.missing.push_back(r.rating_path);
  return v;
}

}  // namespace

void judge_rating(const void* model, const Evidenced&, std::vector<Verdict>& out) {
  auto& m = of(model);
  for (auto& r : m.runs) {
    if (!r.hose || r.list != "feed") continue;
    Verdict v = hose_verdict(r,
                             "hose rated for injection with rolled-edge clamps, or a crimped line; the same grade on "
                             "the return");
    // Without a regulator the feed stands at what the pump makes against a shut needle.
    std::optional<double> works = m.set_pa;
    if (m.regulator == RegulatorPlace::none || m.regulator == RegulatorPlace::in_line) works = stuck_pa(m);
    if (!works) {
      const bool by_relief = m.regulator == RegulatorPlace::none || m.regulator == RegulatorPlace::in_line;
      v.missing.push_back(by_relief ? m.relief_path : m.set_path);
    }
    if (v.missing.empty()) {
      v.predicted = *works;
      v.high = *r.rating_pa;
      v.scale = *r.rating_pa;
    }
    out.push_back(std::move(v));
  }
}

void judge_stuck(const void* model, const Evidenced&, std::vector<Verdict>& out) {
  auto& m = of(model);
  for (auto& r : m.runs) {
    if (!r.hose || r.list == "suction") continue;
    Verdict v = hose_verdict(r, "hose rated above all the pump can make, on feed and return alike");
    const auto stuck = stuck_pa(m);
    if (!m.relief_pa) v.missing.push_back(m.relief_path);
    if (v.missing.empty() && stuck) {
      v.predicted = *stuck;
      v.high = *r.rating_pa;
      v.scale = *r.rating_pa;
    }
    if (v.missing.empty() && !stuck) v.reason = "the pump's curve is not known";
    out.push_back(std::move(v));
  }
}

void judge_age(const void* model, const Evidenced&, std::vector<Verdict>& out) {
  for (auto& r : of(model).runs) {
    if (!r.hose) continue;
    Verdict v{.place = r.name, .fix_hint = "new hose by its printed date"};
    if (r.age_s) {
      v.predicted = *r.age_s;
      v.high = oldest_s;
      v.scale = oldest_s;
    } else {
      v.missing.push_back(r.age_path);
    }
    out.push_back(std::move(v));
  }
}

void judge_ends(const void* model, const Evidenced&, std::vector<Verdict>& out) {
  for (auto& j : of(model).joints) {
    Verdict v{.place = j.place, .missing = j.missing};
    if (j.first && j.second) {
      v.fix_hint = mend(*j.first, *j.second);
      v.rule = mate(*j.first, *j.second);
      v.reason = std::string(name(*j.first)) + " meets " + std::string(name(*j.second));
    }
    out.push_back(std::move(v));
  }
}

void judge_distance(const void* model, const Evidenced&, std::vector<Verdict>& out) {
  for (auto& r : of(model).runs) {
    Verdict v{.place = r.name, .fix_hint = "another way round, or a shield with an air gap; then 1 in is enough"};
    if (r.exhaust_m) {
      v.predicted = *r.exhaust_m;
      v.low = r.shielded ? shielded_to_exhaust_m : bare_to_exhaust_m;
      v.scale = bare_to_exhaust_m;
    } else {
      v.missing.push_back(r.exhaust_path);
    }
    out.push_back(std::move(v));
  }
}

namespace {
Verdict yes_verdict(const YesNo& y, const char* place, const char* yes, const char* no, const char* hint) {
  Verdict v{.place = place, .fix_hint = hint};
  if (y.value) {
    v.rule = *y.value;
    v.reason = *y.value ? yes : no;
  } else {
    v.missing.push_back(y.path);
  }
  return v;
}
}  // namespace

/// Below this a pump of a 12 V car delivers nothing that burns for long (common practice).
constexpr double pump_dead_v = 3.0;

namespace {
/// What the wiring tells of the pump goes before what somebody said of it.
Verdict stops(double volts, const YesNo& said, const char* place, const char* yes, const char* no, const char* hint) {
  if (!(volts >= 0)) return yes_verdict(said, place, yes, no, hint);
  Verdict v{.place = place, .fix_hint = hint, .rule = volts < pump_dead_v};
  v.reason = std::string(*v.rule ? yes : no) + ": its wiring leaves it " + print(volts, kind::voltage, "V", 3);
  if (said.value && *said.value != *v.rule)
    v.reason += ", though fuel.cut_off says otherwise: draw the switch that does it (`not hit`, `turning`)";
  return v;
}
}  // namespace

void judge_cut_off(const void* model, const Evidenced& run, std::vector<Verdict>& out) {
  auto& m = of(model);
  if (m.engine_driven) return;  // it stops with the engine
  out.push_back(stops(run.at(0, cut_off::n_stalled), m.stops_with_engine, "engine stopped",
                      "the pump stops with the engine", "the pump runs on with the engine stopped",
                      "a relay the controller lets go when no pulses come, or an oil-pressure switch"));
  out.push_back(stops(run.at(0, cut_off::n_hit), m.stops_on_impact, "impact", "the pump stops when the car is hit",
                      "nothing stops the pump when the car is hit",
                      "an inertia switch in the pump's feed, where it can be reset"));
}

namespace start {
namespace {
constexpr double longest_s = 3;  ///< common practice: a sound injected engine fires within
}
void evaluate(const void* model, const Evidenced& run, std::vector<Verdict>& out) {
  auto& m = of(model);
  const double cranked = run.at(0, n_cranked), primed = run.at(0, n_primed);
  if (m.engine_driven || m.carburettor || !(cranked >= 0)) return;  // a full bowl starts it; or nobody said
  const bool fed = std::max(cranked, primed) >= pump_dead_v;
  const double wait = fed ? 0 : run.at(0, n_oil), time = wait + m.prime_s;
  const std::size_t row = run.trace->highest(run.slot(n_starter));
  Verdict v{.predicted = time,
            .high = longest_s,
            .scale = longest_s,
            .row = row,
            .fix_hint =
                "the pump fed for two seconds as the key comes on and while the engine turns; an oil-pressure "
                "switch only beside that, to hold it once the engine runs"};
  if (!fed)
    v.because.push_back({.what = "cranking until the oil switch feeds the pump",
                         .value = wait,
                         .kind = &kind::time,
                         .unit = "s",
                         .path = "engine.oil_delay"});
  v.because.push_back(
      {.what = "pump alone until the rail has its pressure", .value = m.prime_s, .kind = &kind::time, .unit = "s"});
  v.because.push_back(
      {.what = "charge one start takes", .value = run.at(row, n_starter) * time, .kind = &kind::charge, .unit = "A h"});
  out.push_back(std::move(v));
}
}  // namespace start

void judge_tank_safety(const void* model, const Evidenced&, std::vector<Verdict>& out) {
  auto& m = of(model);
  out.push_back(yes_verdict(m.bonded, "bonding", "tank and filler are joined to the body",
                            "tank or filler is not joined to the body: a spark can jump in filling",
                            "a strap from filler neck and tank to clean body metal"));
  out.push_back(yes_verdict(m.rollover, "roll-over valve", "the vent shuts when the car lies over",
                            "the vent runs out when the car lies over", "a roll-over valve at the tank's top"));
}

void judge_filters(const void* model, const Evidenced&, std::vector<Verdict>& out) {
  auto& m = of(model);
  bool feed = false, fine = false;
  for (auto& f : m.filters) {
    feed = feed || !f.before_pump;
    fine = fine || (!f.before_pump && f.micron_m && *f.micron_m <= fine_m);
    Verdict v{.place = f.name, .fix_hint = "70 to 100 um before the pump, 10 to 40 um behind it"};
    if (!f.micron_m) {
      v.missing.push_back(f.micron_path);
    } else {
      v.rule = !f.before_pump || *f.micron_m >= coarse_m;
      v.reason = print(*f.micron_m, kind::length, "um", 3) + (f.before_pump ? " before the pump" : " behind the pump");
    }
    out.push_back(std::move(v));
  }
  if (m.carburettor || m.filters.empty()) return;
  out.push_back({.place = "injectors",
                 .reason = !feed  ? "no filter stands behind the pump"
                           : fine ? "a fine filter stands before the injectors"
                                  : "no filter behind the pump is as fine as injectors want",
                 .fix_hint = "a filter of 10 to 40 um in the feed",
                 .rule = fine});
}

void judge_reference(const void* model, const Evidenced&, std::vector<Verdict>& out) {
  auto& m = of(model);
  if (m.carburettor || !m.regulator_referenced || !m.calibration_referenced) return;
  const bool same = *m.regulator_referenced == *m.calibration_referenced;
  out.push_back({.reason = std::string("the regulator ") + (*m.regulator_referenced ? "follows" : "does not follow") +
                           " the manifold's vacuum, the controller reckons " +
                           (*m.calibration_referenced ? "that it does" : "that it does not"),
                 .fix_hint = "connect or plug the regulator's hose as the calibration expects",
                 .rule = same});
}

}  // namespace sw::fuel
