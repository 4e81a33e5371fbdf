#include <algorithm>
#include <cmath>
#include <numbers>

#include "model/told.hpp"
#include "quantity/customary.hpp"
#include "quantity/print.hpp"
#include "systems/steering/checks.hpp"

namespace sw::steering {
namespace {

constexpr double degree = std::numbers::pi / 180;
const Model& of(const void* model) { return *static_cast<const Model*>(model); }

/// Angles the joint makers allow one joint alone and each of several (common practice).
constexpr double alone_rad = 30 * degree, each_rad = 25 * degree;
double most_rad(const Model& m) { return m.joints.size() == 1 ? alone_rad : each_rad; }

namespace angle {
void evaluate(const void* model, const Evidenced&, std::vector<Verdict>& out) {
  auto& m = of(model);
  for (std::size_t i = 0; i < m.joints.size(); ++i) {
    Verdict v{.place = m.joints[i], .scale = most_rad(m)};
    v.fix_hint = m.joints.size() == 1 ? "two joints of 20 deg and less each, in phase; planned with the headers"
                                      : "another way for the shaft, or one joint more with a bearing that holds it";
    v.missing = m.missing;
    if (m.told()) {
      v.predicted = physics::joint_angle(m.chain.shafts[i], m.chain.shafts[i + 1]);
      v.high = most_rad(m);
    }
    out.push_back(std::move(v));
  }
}
}  // namespace angle

}  // namespace

double evenness::unevenness(const physics::Swing& s) { return s.fastest / s.slowest - 1; }

double evenness::most(const Model& m) {
  constexpr double several = 0.10;
  // A single joint swings by its angle alone and may as much as at the greatest angle it may have.
  return m.joints.size() == 1 ? unevenness(physics::swing(physics::joint_bend(alone_rad))) : several;
}

namespace {

namespace even {
using evenness::most, evenness::unevenness;
void evaluate(const void* model, const Evidenced&, std::vector<Verdict>& out) {
  auto& m = of(model);
  if (m.joints.empty()) return;
  Verdict v{.scale = most(m),
            .fix_hint = "yokes turned to the phase told before the shaft is pinned; a line of paint across both"};
  v.missing = m.missing;
  v.missing.insert(v.missing.end(), m.planes_missing.begin(), m.planes_missing.end());
  if (m.told() && v.missing.empty()) {
    const auto now = physics::swing(m.chain);
    v.predicted = unevenness(now);
    v.high = v.scale;
    v.because.push_back(told("slowest, box over wheel", now.slowest, kind::number, ""));
    v.because.push_back(told("fastest", now.fastest, kind::number, ""));
    if (m.joints.size() > 1) {
      auto best = m.chain;
      best.phases_rad = physics::best_phases(m.chain);
      for (std::size_t i = 0; i < best.phases_rad.size(); ++i)
        v.because.push_back(told("best phase of " + m.joints[i + 1], best.phases_rad[i], kind::angle, "deg"));
      v.because.push_back(told("unevenness with it", unevenness(physics::swing(best)), kind::number, "%"));
    } else {
      v.fix_hint = "two joints of equal angle, in phase: they undo each other";
    }
  }
  out.push_back(std::move(v));
}
}  // namespace even

namespace bearings {
void evaluate(const void* model, const Evidenced&, std::vector<Verdict>& out) {
  auto& m = of(model);
  if (m.joints.empty()) return;
  const int wanted = std::max(0, static_cast<int>(m.joints.size()) - 2);
  Verdict v{.fix_hint = "a bearing on the shaft between two joints for each joint beyond two"};
  if (wanted > 0 && !m.bearings) {
    v.missing.push_back(m.bearings_path);
  } else {
    const int there = m.bearings.value_or(0);
    v.rule = there >= wanted;
    v.reason = std::to_string(m.joints.size()) + (m.joints.size() == 1 ? " joint" : " joints") + " want " +
               std::to_string(wanted) + " support bearings, there are " + std::to_string(there);
  }
  out.push_back(std::move(v));
}
}  // namespace bearings

namespace engagement {
void evaluate(const void* model, const Evidenced&, std::vector<Verdict>& out) {
  auto& m = of(model);
  if (!m.engaged_m) return;
  Verdict v{.predicted = *m.engaged_m - m.lost_m,
            .low = m.least_m,
            .scale = m.least_m,
            .fix_hint = "a longer shaft, its way to give in a crash kept; a dimple for the set screw, and a lock nut"};
  v.because.push_back(told("engaged at ride height", *m.engaged_m, kind::length, "in"));
  v.because.push_back(told("lost by movement", m.lost_m, kind::length, "in"));
  out.push_back(std::move(v));
}
}  // namespace engagement

namespace collapse {
constexpr double least_m = 2 * inch_m;
void evaluate(const void* model, const Evidenced&, std::vector<Verdict>& out) {
  auto& m = of(model);
  if (!m.collapse_m) return;
  out.push_back({.predicted = *m.collapse_m,
                 .low = least_m,
                 .scale = least_m,
                 .fix_hint = "a column or shaft that gives way; never one welded or pinned through its sliding part"});
}
}  // namespace collapse

constexpr Requirement all[] = {
    {.id = "steering.joint-angle",
     .title = "angle of a steering joint",
     .kind = RequirementKind::most,
     .hazard = Hazard::harm,
     .caution = Caution::steering_loss,
     .quantity = &kind::angle,
     .unit = "deg",
     .source = "common practice: 30 deg for one joint alone, 25 deg for each of several; the joint's maker",
     .formula = "between the shafts it joins, from points in space, or as measured",
     .own_missing = true,
     .evaluate = angle::evaluate},
    {.id = "steering.evenness",
     .title = "steering turns evenly",
     .kind = RequirementKind::most,
     .hazard = Hazard::harm,
     .caution = Caution::steering_loss,
     .quantity = &kind::number,
     .unit = "%",
     .source =
         "common practice: 10 % between the lightest and the heaviest place of a turn; for one joint alone what 30 "
         "deg make",
     .formula = "fastest over slowest turning of the box against the wheel, less 1, all joints by exact rotation",
     .own_missing = true,
     .evaluate = even::evaluate},
    {.id = "steering.bearings",
     .title = "shaft is held between its joints",
     .kind = RequirementKind::rule,
     .hazard = Hazard::harm,
     .caution = Caution::steering_loss,
     .source = "common practice: a bearing for each joint beyond two",
     .formula = "joints - 2",
     .own_missing = true,
     .evaluate = bearings::evaluate},
    {.id = "steering.engagement",
     .title = "sliding part stays engaged",
     .kind = RequirementKind::least,
     .hazard = Hazard::harm,
     .caution = Caution::steering_loss,
     .quantity = &kind::length,
     .unit = "in",
     .source = "steering.slide.least; common practice: 1 in at any time",
     .formula = "engaged at ride height - lost by movement",
     .own_missing = true,
     .evaluate = engagement::evaluate},
    {.id = "steering.collapse",
     .title = "shaft gives way in a crash",
     .kind = RequirementKind::least,
     .hazard = Hazard::harm,
     .caution = Caution::steering_loss,
     .quantity = &kind::length,
     .unit = "in",
     .source = "common practice: 2 in",
     .formula = "as measured",
     .own_missing = true,
     .evaluate = collapse::evaluate},
};

}  // namespace

std::span<const Requirement> System::requirements() { return all; }

}  // namespace sw::steering
