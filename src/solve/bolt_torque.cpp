// The torque of each bolted joint for the share of its proof load that is wanted, in the state its threads are in.
#include <algorithm>
#include <cmath>

#include "model/told.hpp"
#include "quantity/customary.hpp"
#include "quantity/print.hpp"
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

class Torques {
 public:
  explicit Torques(const Build& build) : build_(build) {}

  void joint(const JointModel& j) {
    if (j.to_yield) return refuse(j.name + ": tightened by its maker's torque and angle, which no nut factor tells");
    auto lacks = j.bolt_missing;
    lacks.insert(lacks.end(), j.engaged_missing.begin(), j.engaged_missing.end());
    if (!lacks.empty()) {
      missing_.insert(missing_.end(), lacks.begin(), lacks.end());
      return refuse(j.name + ": lacks " + lacks.front());
    }
    if (!j.told()) return refuse(j.name + ": its standard has no bolt of that grade and size");
    const auto band = fasteners::preload_band(j);
    // Where the thread is the weaker, the same share of what strips it; and never more than the scatter leaves.
    const double off = scatter_of(build_, j), wanted = std::min(j.share, 1 - off) * band.high_n;
    const double torque = set_to(wanted * j.factor * j.thread->diameter_m, j.thread->inch);
    const double clamp = torque / (j.factor * j.thread->diameter_m);
    if (clamp < band.low_n)
      return refuse(j.name + ": " + std::to_string(static_cast<int>(std::lround(100 * wanted / band.high_n))) +
                    " % of " + (band.thread_decides ? "what strips the thread" : "its proof load") + " are " +
                    force(wanted) + " a bolt, where " + force(band.low_n) + " are wanted: " +
                    (band.thread_decides ? "more thread engaged, a thread insert" : "larger bolts or of more grade"));
    solution_.settings.push_back({j.torque_path, torque});
    solution_.says += (solution_.says.empty() ? "" : " ") + j.name + ": " + torque_words(torque, j.thread->inch) +
                      ", for a clamp of " + force(clamp / (1 + off)) + " to " + force(clamp / std::max(0.01, 1 - off)) +
                      (band.thread_decides ? "; the thread decides" : "") +
                      (clamp / (1 + off) < band.low_n ? "; the scatter reaches below the clamp wanted." : ".");
    auto& because = solution_.because;
    because.push_back(told(j.name + ", clamp meant", clamp, kind::force, "lbf"));
    because.push_back(told(j.name + ", of its proof load", clamp / j.proof_n(), kind::number, "%"));
    if (band.thread_decides) because.push_back(told(j.name + ", thread strips at", *j.strips_n(), kind::force, "lbf"));
  }

  Solution take() {
    if (!solution_.settings.empty()) {
      if (!refused_.empty()) solution_.says += " Not done: " + refused_ + ".";
    } else if (!missing_.empty()) {
      solution_.missing = missing_;
    } else {
      solution_.trouble = refused_;
    }
    return std::move(solution_);
  }

 private:
  void refuse(const std::string& why) { refused_ += (refused_.empty() ? "" : ". ") + why; }
  const Build& build_;
  Solution solution_;
  std::vector<std::string> missing_;
  std::string refused_;
};

Solution solve(const Build& build, const DutySet&) {
  const Car car(build);
  auto& m = model_of<fasteners::System>(car);
  if (m.joints.empty()) return {.missing = {"fasteners.joint: bolted joints, by name"}};
  Torques torques(build);
  for (auto& j : m.joints) torques.joint(j);
  return torques.take();
}

}  // namespace

const Solver bolt_torque{
    .key = "torque",
    .title = "torque of bolted joints",
    .judged_by = "fasteners.preload",
    .caution = Caution::bolts_let_go,
    .formula =
        "share wanted, or less where the scatter would pass the limit, x (proof load, or what strips the thread "
        "where that is less) x nut factor x diameter, rounded down to what a wrench is set to",
    .source = "the requirement named; T = K F d",
    .solve = solve};

}  // namespace sw
