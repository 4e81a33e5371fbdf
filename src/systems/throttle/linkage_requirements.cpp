// Whether levers, rods and cables let the throttle close and open, with the engine at rest, lifted and rolled.
#include <algorithm>
#include <cmath>
#include <numbers>

#include "model/told.hpp"
#include "quantity/customary.hpp"
#include "systems/throttle/judging.hpp"

namespace sw::throttle {
namespace {

constexpr double degree = std::numbers::pi / 180;
constexpr double least_share = 0.97, most_m = 0.04 * inch_m;
const Model& of(const void* model) { return *static_cast<const Model*>(model); }

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

constexpr double least_rad = 20 * degree;
constexpr int steps = 60;
/// How near a pin of each link comes to standing in line, from released to the open stop; empty where it does not
/// reach.
using Nearest = std::vector<std::optional<double>>;
void come_near(const Model& m, const EngineMoved& moved, Nearest& least) {
  const double until = m.pedal_at_open_rad(moved);
  for (int k = 0; k <= steps; ++k) {
    double turn = until * k / steps;
    for (std::size_t i = 0; i < m.links.size(); ++i) {
      const auto at = link_at(m.links[i].shape, turn, m.links[i].apart(moved));
      if (!at) return void(least[i].reset());
      if (least[i]) least[i] = std::min(*least[i], at->from_dead_rad);
      turn = at->driven_rad;
    }
  }
}

}  // namespace

void judge_closed(const void* model, const Evidenced& run, std::vector<Verdict>& out) {
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

/// The engine rolls one way under power and the other in reverse: the worse of both.
void judge_roll(const void* model, const Evidenced& run, std::vector<Verdict>& out) {
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

void judge_open(const void* model, const Evidenced& run, std::vector<Verdict>& out) {
  auto& m = of(model);
  Verdict v{.fix_hint =
                "a longer first arm or a shorter second one, or slack taken up; see it wide open by the pedal, "
                "engine off"};
  if (geometric(m, v)) {
    const auto opened = m.opened_rad(lifted(run));
    judge(v, opened ? std::optional(*opened / m.opens_rad) : std::nullopt);
    v.low = least_share;
    if (opened) v.because.push_back(turned("throttle with the pedal at its stop", *opened));
    v.because.push_back(turned("throttle opens by", m.opens_rad));
  }
  out.push_back(std::move(v));
}

/// What the pedal goes on pulling after the throttle stands on its open stop.
void judge_over_travel(const void* model, const Evidenced& run, std::vector<Verdict>& out) {
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

void judge_over_centre(const void* model, const Evidenced& run, std::vector<Verdict>& out) {
  auto& m = of(model);
  if (!m.told()) return out.push_back({.missing = m.missing});
  Nearest least(m.links.size(), std::numbers::pi / 2);
  for (const double roll : {0.0, 1.0, -1.0}) {
    auto moved = lifted(run);
    moved.roll = roll;
    come_near(m, moved, least);
  }
  for (std::size_t i = 0; i < m.links.size(); ++i) {
    Verdict v{.place = m.links[i].name,
              .low = least_rad,
              .scale = std::numbers::pi / 2,
              .fix_hint =
                  "the lever set on its shaft so that it swings alike to both sides of square; a longer arm "
                  "with less swing"};
    judge(v, least[i]);
    out.push_back(std::move(v));
  }
}

}  // namespace sw::throttle
