// The torque of each bolted joint for the share of its proof load that is wanted, in the state its threads are in.
#include <algorithm>
#include <cmath>

#include "quantity/customary.hpp"
#include "quantity/print.hpp"
#include "solve/lines.hpp"
#include "solve/list.hpp"
#include "solve/model_of.hpp"
#include "systems/fasteners/checks.hpp"

namespace sw {
namespace {

using fasteners::JointModel;

/// What a wrench is set to: a pound-foot or newton-metre, halves below 20 (common practice).
double set_to(double torque, bool inch) {
  const double unit = inch ? lbf_n * foot_m : 1, step = torque < 20 * unit ? unit / 2 : unit;
  return std::max(std::floor(torque / step + 1e-9), 1.0) * step;
}

/// Half of the band the clamp scatters in, as a share.
double scatter_of(const Build& build, const JointModel& j) {
  const auto at = build.evidence.find(j.scatter_path);
  return at == build.evidence.end() ? 0 : at->second.half_width;
}

std::string force(double n) { return print(n, kind::force, "lbf", 3); }
std::string torque_words(double nm, bool inch) { return print(nm, kind::torque, inch ? "lb-ft" : "N m", 3); }

void tighten(const JointModel& j, double off, ByLine& out) {
  if (!j.by_torque())
    return out.refuse(j.name + ": tightened by its maker's torque and angle, which no nut factor tells");
  if (const auto missing = j.clamp_missing(); !missing.empty()) return out.lacks(missing);
  if (!j.told()) return out.refuse(j.name + ": its standard has no bolt of that grade and size");
  if (!j.fits_hole()) return out.refuse(j.name + ": the bolt's thread is not that of its hole: no torque for it");
  if (j.short_of_thread())
    return out.refuse(j.name + ": " + print(*j.engaged_m, kind::length, "in", 3) + " of thread engaged where " +
                      print(j.wanted_m(), kind::length, "in", 3) +
                      " are wanted: a longer bolt or a thread insert first");
  const auto band = fasteners::preload_band(j);
  // Never more than the scatter leaves. With thread enough engaged the bolt is the weaker.
  const double wanted = std::min(j.share, 1 - off) * band.high_n, arm = *j.factor * j.thread->diameter_m;
  const double torque = set_to(wanted * arm, j.thread->inch), clamp = torque / arm;
  if (clamp < band.low_n)
    return out.refuse(j.name + ": " + std::to_string(static_cast<int>(std::lround(100 * wanted / band.high_n))) +
                      " % of its proof load are " + force(wanted) + " a bolt, where " + force(band.low_n) +
                      " are wanted: larger bolts or of more grade");
  out.set({j.torque_path, torque});
  out.add(j.name + ": " + torque_words(torque, j.thread->inch) + ", for a clamp of " + force(clamp / (1 + off)) +
          " to " + force(clamp / std::max(0.01, 1 - off)) +
          (clamp / (1 + off) < band.low_n ? "; the scatter reaches below the clamp wanted." : "."));
  out.because(j.name + ", clamp meant", clamp, kind::force, "lbf");
  out.because(j.name + ", of its proof load", clamp / j.proof_n(), kind::number, "%");
}

Solution solve(const Build& build, const DutySet&) {
  const Car car(build);
  auto& m = model_of<fasteners::System>(car);
  if (m.joints.empty()) return {.missing = {"fasteners.joint: bolted joints, by name"}};
  ByLine out;
  for (auto& j : m.joints) tighten(j, scatter_of(build, j), out);
  return out.take();
}

}  // namespace

const Solver bolt_torque{
    .key = "torque",
    .title = "torque of bolted joints",
    .judged_by = "fasteners.preload fasteners.engagement fasteners.grade fasteners.clamp fasteners.reuse",
    .caution = Caution::bolts_let_go,
    .formula =
        "share wanted, or less where the scatter would pass the limit, x proof load x nut factor x diameter, rounded "
        "down to what a wrench is set to; none for a bolt that does not fit its hole or has too little thread in it",
    .source = "the requirement named; T = K F d",
    .solve = solve};

}  // namespace sw
