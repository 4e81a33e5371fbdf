#include <algorithm>
#include <cmath>

#include "model/told.hpp"
#include "quantity/customary.hpp"
#include "quantity/print.hpp"
#include "systems/fasteners/checks.hpp"

namespace sw::fasteners {
namespace {

const Model& of(const void* model) { return *static_cast<const Model*>(model); }

void tell_outside(const JointModel& j, Verdict& v) {
  if (j.outside) v.reason = "its standard has no bolt of that grade and size: its strength is its maker's to tell";
}
/// Whether the clamp its torque leaves is known; if not the verdict says what is wanting.
bool clamped(const JointModel& j, Verdict& v) {
  v.missing = j.clamp_missing();
  if (!j.torque_nm) v.missing.push_back(j.torque_path);
  tell_outside(j, v);
  return j.told() && v.missing.empty();
}

namespace preload {
void evaluate(const void* model, const Evidenced&, std::vector<Verdict>& out) {
  for (auto& j : of(model).joints) {
    if (!j.by_torque()) continue;
    Verdict v{.place = j.name,
              .fix_hint =
                  "the torque its maker gives for threads in this state; else the one `solve` finds, on clean "
                  "threads, in steps and crosswise"};
    if (clamped(j, v)) {
      const PreloadBand band = preload_band(j);
      v.predicted = j.preload_n(*j.torque_nm);
      v.low = band.low_n;
      v.high = band.high_n;
      v.scale = j.proof_n();
      v.because.push_back(told("nut factor as taken", *j.factor, kind::number, ""));
      v.because.push_back(told("proof load", j.proof_n(), kind::force, "lbf"));
      v.because.push_back(told("of it", *v.predicted / j.proof_n(), kind::number, "%"));
      if (band.thread_decides) v.because.push_back(told("thread strips at", *j.strips_n(), kind::force, "lbf"));
    }
    out.push_back(std::move(v));
  }
}
}  // namespace preload

namespace engagement {
void evaluate(const void* model, const Evidenced&, std::vector<Verdict>& out) {
  for (auto& j : of(model).joints) {
    if (!j.engaged_m && j.engaged_missing.empty()) continue;
    Verdict v{.place = j.name,
              .fix_hint =
                  "a longer bolt or stud that does not reach the ground of its hole; a thread "
                  "insert where the hole is soft or worn"};
    v.missing = j.bolt_missing;
    v.missing.insert(v.missing.end(), j.engaged_missing.begin(), j.engaged_missing.end());
    tell_outside(j, v);
    if (j.told() && v.missing.empty()) {
      v.predicted = *j.engaged_m;
      v.low = j.wanted_m();
      v.scale = *v.low;
      v.because.push_back(told("wanted, in diameters", *v.low / j.thread->diameter_m, kind::number, ""));
      v.because.push_back(told("strength of what is tapped", j.tapped_pa, kind::stress, "ksi"));
    }
    out.push_back(std::move(v));
  }
}
}  // namespace engagement

namespace grade {
std::string words(const physics::Thread& t) {
  return print(t.diameter_m, kind::length, t.inch ? "in" : "mm", 4) + ", " +
         (t.inch ? print(inch_m / t.pitch_m, kind::number, "", 3) + " threads an inch"
                 : "pitch " + print(t.pitch_m, kind::length, "mm", 3));
}
void evaluate(const void* model, const Evidenced&, std::vector<Verdict>& out) {
  for (auto& j : of(model).joints) {
    Verdict v{.place = j.name,
              .fix_hint =
                  "a marked bolt of a known maker whose thread is that of the hole, run in by "
                  "hand over its whole length"};
    v.missing = j.bolt_missing;
    if (v.missing.empty()) {
      v.rule = j.fits_hole();
      v.reason = "bolt " + words(*j.thread) + (j.hole ? "; hole " + words(*j.hole) : "; hole not gauged for itself");
    }
    out.push_back(std::move(v));
  }
}
}  // namespace grade

/// What is left of the clamp where the load pulls: none of it is taken to be carried past the clamped parts.
namespace clamp {
void evaluate(const void* model, const Evidenced&, std::vector<Verdict>& out) {
  for (auto& j : of(model).joints) {
    if (!j.load_n || !j.by_torque()) continue;
    Verdict v{.place = j.name,
              .low = 0,
              .scale = *j.load_n,
              .fix_hint = "more bolts, larger or of more grade, tightened to three quarters of their proof load"};
    if (clamped(j, v)) {
      const double all = j.count * j.preload_n(*j.torque_nm);
      v.predicted = all - *j.load_n;
      v.because.push_back(told("clamp of all bolts", all, kind::force, "lbf"));
      v.because.push_back(told("pulled apart by", *j.load_n, kind::force, "lbf"));
    }
    out.push_back(std::move(v));
  }
}
}  // namespace clamp

namespace reuse {
void evaluate(const void* model, const Evidenced&, std::vector<Verdict>& out) {
  for (auto& j : of(model).joints) {
    if (j.to_yield ? !*j.to_yield : !j.used_before) continue;
    Verdict v{.place = j.name, .fix_hint = "new bolts, tightened by their maker's torque and angle"};
    v.missing = j.yield_missing;
    if (!v.missing.empty()) {
      v.reason = "used before, and nobody said whether its kind is stretched";
    } else if (!j.used_before) {
      v.missing.push_back(j.used_path);
    } else {
      v.rule = !*j.used_before;
      v.reason = *j.used_before ? "stretched for good once already" : "new";
    }
    out.push_back(std::move(v));
  }
}
}  // namespace reuse

constexpr Requirement all[] = {
    {.id = "fasteners.preload",
     .title = "bolt is tight and not beyond what it stands",
     .kind = RequirementKind::band,
     .hazard = Hazard::harm,
     .caution = Caution::bolts_let_go,
     .quantity = &kind::force,
     .unit = "lbf",
     .source = "proof loads of SAE J429 and ISO 898-1; threads FED-STD-H28/2B; least: the clamp wanted, else half the "
               "proof load (common practice)",
     .formula = "torque / (nut factor x scatter x diameter), below proof load and stripping of the thread",
     .own_missing = true,
     .evaluate = preload::evaluate},
    {.id = "fasteners.engagement",
     .title = "enough thread is engaged",
     .kind = RequirementKind::least,
     .hazard = Hazard::harm,
     .caution = Caution::bolts_let_go,
     .quantity = &kind::length,
     .unit = "in",
     .source = "the greater of FED-STD-H28/2B, the bolt breaks before a thread strips, and common practice: 1 diameter "
               "in steel, 1.5 in iron, 2 in aluminium",
     .formula = "engaged - shims, against 2 x stress area x strength over shear area a length x strength of the "
                "weaker, or the diameters of common practice where that is more",
     .own_missing = true,
     .evaluate = engagement::evaluate},
    {.id = "fasteners.grade",
     .title = "grade known, threads alike",
     .kind = RequirementKind::rule,
     .hazard = Hazard::harm,
     .caution = Caution::bolts_let_go,
     .source = "SAE J429 and ISO 898-1: marked heads; common practice",
     .formula = "grade told; thread of the bolt that of the hole where that was gauged",
     .own_missing = true,
     .evaluate = grade::evaluate},
    {.id = "fasteners.clamp",
     .title = "joint stays shut under its load",
     .kind = RequirementKind::least,
     .hazard = Hazard::harm,
     .caution = Caution::bolts_let_go,
     .quantity = &kind::force,
     .unit = "lbf",
     .source =
         "Shigley and Mischke, Mechanical Engineering Design, on joints that separate, from memory; all of the load "
         "taken off the clamp",
     .formula = "bolts x preload - load",
     .own_missing = true,
     .evaluate = clamp::evaluate},
    {.id = "fasteners.reuse",
     .title = "stretched bolts are new",
     .kind = RequirementKind::rule,
     .hazard = Hazard::harm,
     .caution = Caution::bolts_let_go,
     .source = "common practice; the maker's instructions",
     .formula = "one tightening for a bolt that is turned into yield",
     .own_missing = true,
     .evaluate = reuse::evaluate},
};

}  // namespace

PreloadBand preload_band(const JointModel& j) {
  constexpr double least_share = 0.5;
  const double proof = j.proof_n(), strips = j.strips_n().value_or(HUGE_VAL);
  const double low = j.clamp_n ? *j.clamp_n / j.count : least_share * proof;
  return {low, std::min(proof, strips), strips < proof};
}

std::span<const Requirement> System::requirements() { return all; }

}  // namespace sw::fasteners
