#include <algorithm>
#include <cmath>
#include <numbers>

#include "model/told.hpp"
#include "quantity/customary.hpp"
#include "systems/throttle/throttle.hpp"

namespace sw::throttle {
namespace {

constexpr double degree = std::numbers::pi / 180;
const Model& of(const void* model) { return *static_cast<const Model*>(model); }

constexpr Port needs[] = {{"throttle.lift", &kind::length}};
constexpr std::string_view out_of_reach =
    "a rod does not reach or a cable has turned its lever as far as it goes: see where the linkage stands in line";

/// A verdict on the geometry: what it lacks is told, and nothing else is said then.
bool geometric(const Model& m, Verdict& v) {
  v.missing = m.missing;
  return m.told();
}
void judge(Verdict& v, std::optional<double> predicted) {
  v.predicted = predicted;
  if (!predicted) v.reason = out_of_reach;
}
EngineMoved lifted(const Evidenced& run) { return {.lift_m = run.at(0, 0)}; }
Because turned(std::string what, double rad) { return told(std::move(what), rad, kind::angle, "deg"); }

/// Slack of the throttle on its closed stop with the pedal released: below nothing it is held open.
std::optional<double> slack_rad(const Model& m, const EngineMoved& moved) {
  const auto at = m.opening_rad(0, moved);
  return at ? std::optional(-*at) : std::nullopt;
}

namespace closed {
void evaluate(const void* model, const Evidenced& run, std::vector<Verdict>& out) {
  auto& m = of(model);
  Verdict v{.low = 0,
            .scale = m.opens_rad,
            .fix_hint = "rod or cable let out until the throttle rests on its own stop with a little play left"};
  if (geometric(m, v)) {
    judge(v, slack_rad(m, lifted(run)));
    v.because.push_back(told("throttle lifted since the linkage was set", run.at(0, 0), kind::length, "in"));
  }
  out.push_back(std::move(v));
}
}  // namespace closed

/// The engine rolls one way under power and the other in reverse: the worse of both.
namespace roll {
void evaluate(const void* model, const Evidenced& run, std::vector<Verdict>& out) {
  auto& m = of(model);
  const bool any = std::any_of(m.links.begin(), m.links.end(), [](auto& l) { return l.to_engine; });
  if (m.told() && !any) return;
  Verdict v{.low = 0,
            .scale = m.opens_rad,
            .fix_hint =
                "a cable whose sheath is held on the engine beside the throttle, or a rod square to the way the "
                "engine rolls; sound mounts, and slack for what is left"};
  if (geometric(m, v)) {
    auto one = lifted(run), other = one;
    one.roll = 1, other.roll = -1;
    const auto a = slack_rad(m, one), b = slack_rad(m, other);
    judge(v, a && b ? std::optional(std::min(*a, *b)) : std::nullopt);
    if (const auto still = slack_rad(m, lifted(run)))
      v.because.push_back(turned("slack at the throttle with the engine at rest", *still));
    for (auto& l : m.links)
      if (l.to_engine) v.because.push_back(told("engine's roll along " + l.name, l.roll_m, kind::length, "in"));
  }
  out.push_back(std::move(v));
}
}  // namespace roll

namespace open {
constexpr double least_share = 0.97;
void evaluate(const void* model, const Evidenced& run, std::vector<Verdict>& out) {
  auto& m = of(model);
  Verdict v{.fix_hint =
                "a longer first arm or a shorter second one, or slack taken up; see it wide open by the pedal, "
                "engine off"};
  if (geometric(m, v)) {
    const double share = m.opened_rad(lifted(run)) / m.opens_rad;
    v.predicted = share;
    v.low = least_share;
    v.because.push_back(turned("throttle with the pedal at its stop", share * m.opens_rad));
    v.because.push_back(turned("throttle opens by", m.opens_rad));
  }
  out.push_back(std::move(v));
}
}  // namespace open

/// What the pedal goes on pulling after the throttle stands on its open stop.
namespace over {
constexpr double most_m = 0.04 * inch_m;
void evaluate(const void* model, const Evidenced& run, std::vector<Verdict>& out) {
  auto& m = of(model);
  Verdict v{.high = most_m,
            .fix_hint = "a stop under the pedal that it meets before the throttle's own, set with a foot on it"};
  if (geometric(m, v)) {
    const double arm = m.links.back().shape.driven_arm_m;
    v.scale = arm * m.opens_rad;
    const auto at = m.opening_rad(m.turns_rad, lifted(run));
    judge(v, at ? std::optional(std::max(0.0, *at - m.opens_rad) * arm) : std::nullopt);
    v.because.push_back(turned("pedal's turn at the open stop", m.pedal_at_open_rad(lifted(run))));
    v.because.push_back(turned("pedal turns by", m.turns_rad));
  }
  out.push_back(std::move(v));
}
}  // namespace over

namespace centre {
constexpr double least_rad = 20 * degree;
constexpr int steps = 60;
/// The nearest any pin of each link comes to standing in line, from released to the open stop.
std::vector<double> nearest(const Model& m, const EngineMoved& moved) {
  std::vector<double> least(m.links.size(), std::numbers::pi / 2);
  const double until = m.pedal_at_open_rad(moved);
  for (int k = 0; k <= steps; ++k) {
    double turn = until * k / steps;
    for (std::size_t i = 0; i < m.links.size(); ++i) {
      const auto at = link_at(m.links[i].shape, turn);
      least[i] = std::min(least[i], at ? at->from_dead_rad : 0.0);
      if (!at) break;
      turn = at->driven_rad;
    }
  }
  return least;
}
void evaluate(const void* model, const Evidenced& run, std::vector<Verdict>& out) {
  auto& m = of(model);
  if (!m.told()) return out.push_back({.missing = m.missing});
  const auto least = nearest(m, lifted(run));
  for (std::size_t i = 0; i < m.links.size(); ++i)
    out.push_back({.place = m.links[i].name,
                   .predicted = least[i],
                   .low = least_rad,
                   .scale = std::numbers::pi / 2,
                   .fix_hint = "the lever set on its shaft so that it swings alike to both sides of square; a longer "
                               "arm with less swing"});
}
}  // namespace centre

namespace springs {
constexpr int wanted = 2;
bool closes(const Model& m, const SpringModel& s) {
  return s.force_n * s.arm_m > 0 && (s.on == SitsOn::throttle || m.all_rods());
}
void count(const void* model, const Evidenced&, std::vector<Verdict>& out) {
  auto& m = of(model);
  Verdict v{.fix_hint = "two springs on the throttle's own lever, each of its own hooks, either enough alone"};
  v.missing = m.spring_missing;
  if (!m.springs_told) v.missing.push_back("throttle.spring: the springs that close it");
  if (m.links.empty()) v.missing.insert(v.missing.end(), m.missing.begin(), m.missing.end());
  if (v.missing.empty()) {
    const auto there = std::count_if(m.springs.begin(), m.springs.end(), [&](auto& s) { return closes(m, s); });
    v.rule = there >= wanted;
    v.reason = std::to_string(there) + (there == 1 ? " spring closes" : " springs close") +
               " the throttle by itself, two are wanted; one at the pedal does not through a cable";
  }
  out.push_back(std::move(v));
}

/// Torque of a spring at the throttle's shaft, on its closed stop.
double torque_nm(const Model& m, const SpringModel& s) {
  if (!closes(m, s)) return 0;
  if (s.on == SitsOn::throttle) return s.force_n * s.arm_m;
  const double ratio = m.ratio(0);
  return ratio > 0 ? s.force_n * s.arm_m / ratio : 0;
}
bool through_rods(const Model& m) {
  return std::any_of(m.springs.begin(), m.springs.end(), [](auto& s) { return s.on == SitsOn::pedal; });
}
constexpr double reserve = 2;
void lost(const void* model, const Evidenced&, std::vector<Verdict>& out) {
  auto& m = of(model);
  if (!m.springs_told) return;
  std::vector<std::string> missing = m.spring_missing;
  if (!m.friction_nm) missing.push_back(m.friction_path);
  if (through_rods(m)) missing.insert(missing.end(), m.missing.begin(), m.missing.end());
  double all = 0;
  if (missing.empty())
    for (auto& s : m.springs) all += torque_nm(m, s);
  for (auto& s : m.springs) {
    Verdict v{.place = s.name,
              .fix_hint =
                  "a second spring on the throttle's lever, or friction found: shaft, cable's "
                  "bends, a sheath that was melted"};
    v.missing = missing;
    if (v.missing.empty()) {
      v.predicted = all - torque_nm(m, s);
      v.low = reserve * *m.friction_nm;
      v.scale = all > 0 ? all : 1;
      v.because.push_back(told("torque of all springs", all, kind::torque, "lb-in"));
      v.because.push_back(told("friction", *m.friction_nm, kind::torque, "lb-in"));
    }
    out.push_back(std::move(v));
  }
}
}  // namespace springs

namespace effort {
constexpr double least_n = 2 * lbf_n, most_n = 15 * lbf_n;
void evaluate(const void* model, const Evidenced&, std::vector<Verdict>& out) {
  auto& m = of(model);
  if (!m.pad_m || !m.springs_told) return;
  const auto force = [&](double pedal, double SpringModel::*pull) {
    double throttle = *m.friction_nm, own = 0;
    for (auto& s : m.springs) (s.on == SitsOn::throttle ? throttle : own) += s.*pull * s.arm_m;
    return (throttle * m.ratio(pedal) + own) / *m.pad_m;
  };
  const auto judge_at = [&](const char* place, double pedal, double SpringModel::*pull) {
    out.push_back({.place = place,
                   .predicted = force(pedal, pull),
                   .low = least_n,
                   .high = most_n,
                   .scale = most_n - least_n,
                   .fix_hint = "springs of other force or arm, both kept; never one taken off for a lighter pedal"});
  };
  std::vector<std::string> missing = m.missing;
  missing.insert(missing.end(), m.spring_missing.begin(), m.spring_missing.end());
  if (!m.friction_nm) missing.push_back(m.friction_path);
  if (!missing.empty()) return out.push_back({.missing = missing});
  judge_at("off its stop", 0, &SpringModel::force_n);
  judge_at("wide open", 0.98 * m.pedal_at_open_rad(), &SpringModel::force_open_n);
}
}  // namespace effort

constexpr std::string_view standard =
    "49 CFR 571.124 (standard 124, accelerator control systems), S5.1 and S5.2: two sources of energy, each able to "
    "return the throttle to idle (from memory; S5.1 begun in a stored copy)";

constexpr Requirement all[] = {
    {.id = "throttle.closed",
     .title = "throttle rests on its closed stop",
     .kind = RequirementKind::least,
     .hazard = Hazard::harm,
     .caution = Caution::runaway_throttle,
     .quantity = &kind::angle,
     .unit = "deg",
     .source = "common practice: play left with the pedal released",
     .formula = "closed stop less where rods and cables would put the throttle, by their geometry",
     .needs = needs,
     .own_missing = true,
     .evaluate = closed::evaluate},
    {.id = "throttle.engine-roll",
     .title = "engine that rolls does not open the throttle",
     .kind = RequirementKind::least,
     .hazard = Hazard::harm,
     .caution = Caution::runaway_throttle,
     .quantity = &kind::angle,
     .unit = "deg",
     .source = "common practice: play left at full roll either way",
     .formula = "the same with the far end of what comes from the body moved by roll, either way, and by the mounts",
     .needs = needs,
     .own_missing = true,
     .evaluate = roll::evaluate},
    {.id = "throttle.full-open",
     .title = "pedal opens the throttle fully",
     .kind = RequirementKind::least,
     .hazard = Hazard::nuisance,
     .caution = Caution::runaway_throttle,
     .unit = "%",
     .source = "common practice: 97 %",
     .formula = "throttle's turn with the pedal at its stop over its turn from stop to stop",
     .needs = needs,
     .own_missing = true,
     .evaluate = open::evaluate},
    {.id = "throttle.over-travel",
     .title = "pedal stops before it bends the cable",
     .kind = RequirementKind::most,
     .hazard = Hazard::damage,
     .caution = Caution::runaway_throttle,
     .quantity = &kind::length,
     .unit = "in",
     .source = "common practice: 0.04 in at the throttle's pin",
     .formula = "(throttle's turn the pedal asks for - stop to stop) x arm",
     .needs = needs,
     .own_missing = true,
     .evaluate = over::evaluate},
    {.id = "throttle.over-centre",
     .title = "no lever comes near its dead centre",
     .kind = RequirementKind::least,
     .hazard = Hazard::harm,
     .caution = Caution::runaway_throttle,
     .quantity = &kind::angle,
     .unit = "deg",
     .source = "common practice: 20 deg",
     .formula = "least angle between each lever and its rod or cable, from released to the open stop",
     .needs = needs,
     .own_missing = true,
     .evaluate = centre::evaluate},
    {.id = "throttle.springs",
     .title = "two springs close the throttle",
     .kind = RequirementKind::rule,
     .hazard = Hazard::harm,
     .caution = Caution::runaway_throttle,
     .source = standard,
     .formula = "springs at the throttle, and at the pedal where rods alone lead from it",
     .own_missing = true,
     .evaluate = springs::count},
    {.id = "throttle.return",
     .title = "throttle closes with one spring lost",
     .kind = RequirementKind::least,
     .hazard = Hazard::harm,
     .caution = Caution::runaway_throttle,
     .quantity = &kind::torque,
     .unit = "lb-in",
     .source = "49 CFR 571.124 (standard 124) S5.2, from memory; twice the friction: common practice",
     .formula = "force x arm of the springs left, through the linkage where at the pedal, against twice the friction",
     .own_missing = true,
     .evaluate = springs::lost},
    {.id = "throttle.pedal-force",
     .title = "pedal is neither heavy nor without feel",
     .kind = RequirementKind::band,
     .hazard = Hazard::nuisance,
     .caution = Caution::runaway_throttle,
     .quantity = &kind::force,
     .unit = "lbf",
     .source = "common practice: 2 to 15 lbf",
     .formula = "((springs at the throttle + friction) x its turn for the pedal's + springs at the pedal) / pad's arm",
     .own_missing = true,
     .evaluate = effort::evaluate},
};

}  // namespace

std::span<const Requirement> System::requirements() { return all; }

}  // namespace sw::throttle
