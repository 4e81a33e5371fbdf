// What hangs on torque and speed: the alternator's slip, the grip of every pulley with the tension going round, speeds
// at the red line.
#include <algorithm>
#include <array>
#include <cmath>
#include <limits>

#include "model/told.hpp"
#include "physics/belt.hpp"
#include "physics/belt_tension.hpp"
#include "systems/belts/checks.hpp"

namespace sw::belts {
namespace {

constexpr std::size_t most_pulleys = 24;
constexpr double slowest_rad_s = 1;  ///< below it nothing turns

double alternator_use(const Evidenced& run, std::size_t row) {
  return run.at(row, slips::n_torque) / run.at(row, slips::n_grip) + run.at(row, slips::n_slip);
}

/// One row of a run on one belt: pull and contact tension by place in the belt's run.
class Going {
 public:
  Going(const OneBelt& b, const Evidenced& run) : b_(b), run_(run), n_(b.run.size()) {
    load_ = {.rest_n = b.tension_n, .arm = {}, .sprung = b.sprung, .centrifugal_n = 0};
    for (std::size_t i = 0; i < n_; ++i) {
      length_[i] = b.span_m(i);
      if (b.adjuster && b.adjuster->kind == Adjusts::arm && b.adjuster->pulley == b.run[i] && i > 0) load_.arm = i;
      auto& p = at(i);
      k_[i] = physics::belt_grip_ratio(b.friction, p.wrap, p.back ? M_PI : b.groove).ratio;
    }
  }
  const OnBelt& at(std::size_t i) const { return b_.pulley[b_.run[i]]; }
  std::size_t count() const { return n_; }
  bool set(std::size_t row) {
    const double engine = run_.at(row, round_grip::n_engine), speed = engine * b_.pulley[0].radius_m;
    if (engine < slowest_rad_s) return false;
    double all = 0;
    for (std::size_t i = 1; i < n_; ++i) all += pull_[i] = pull_of(at(i), row, speed);
    pull_[0] = -all;
    load_.centrifugal_n = physics::belt_centrifugal(b_.mass_kg_m, speed).tension_n;
    physics::contact_tensions({pull_.data(), n_}, {length_.data(), n_}, load_, {tension_.data(), n_});
    return true;
  }
  double pull(std::size_t i) const { return std::abs(pull_[i]); }
  double centrifugal() const { return load_.centrifugal_n; }
  double after(std::size_t i) const { return tension_[i]; }
  double before(std::size_t i) const { return tension_[(i + n_ - 1) % n_]; }
  double tight(std::size_t i) const { return std::max(before(i), after(i)); }
  double slack(std::size_t i) const { return std::min(before(i), after(i)); }
  /// Infinite where the belt hangs loose.
  double share(std::size_t i) const {
    return physics::grip_share(tight(i), slack(i), k_[i]).value_or(std::numeric_limits<double>::infinity());
  }

 private:
  double pull_of(const OnBelt& p, std::size_t row, double belt_speed) const {
    double n = p.torque_n_m.value.value_or(0.0) / p.radius_m;
    if (p.is(Drives::alternator)) n = run_.at(row, round_grip::n_torque) / p.radius_m;
    auto by_power = [&](Drives d, int need) {
      if (p.is(d)) n = (p.drives & (p.drives - 1) ? n : 0.0) + run_.at(row, need) / belt_speed;
    };
    by_power(Drives::coolant_pump, round_grip::n_pump);
    by_power(Drives::fan, round_grip::n_fan);
    by_power(Drives::compressor, round_grip::n_compressor);
    return n;
  }

  const OneBelt& b_;
  const Evidenced& run_;
  const std::size_t n_;
  physics::BeltLoad load_;
  std::array<double, most_pulleys> length_{}, pull_{}, tension_{}, k_{};
};

bool idle_only(const OnBelt& p) { return p.drives == 1u << static_cast<unsigned>(Drives::idler); }

Verdict judged(const OneBelt& b, Going& g, std::size_t i, std::size_t row) {
  g.set(row);
  const OnBelt& p = g.at(i);
  Verdict v{.place = on(b) + p.name,
            .high = 1.0,
            .scale = 1.0,
            .row = row,
            .fix_hint = "more wrap by an idler, more tension within the maker's limit, or a wider belt"};
  if (std::isinf(g.share(i))) {
    v.reason = "the belt hangs loose there: its own mass at this speed takes more than its tension";
    return v;
  }
  v.predicted = g.share(i);
  std::size_t longest = 0;
  for (std::size_t k = 1; k < g.count(); ++k)
    if (b.span_m(k) > b.span_m(longest)) longest = k;
  const double pluck = physics::span_frequency(b.span_m(longest), b.mass_kg_m, b.tension_n).frequency_hz;
  v.because = {told("wrap", p.wrap, kind::angle, "deg"),
               told("it pulls", g.pull(i), kind::force, "lbf"),
               told("tight strand", g.tight(i), kind::force, "lbf"),
               told("slack strand", g.slack(i), kind::force, "lbf"),
               told("the belt's own mass takes up", g.centrifugal(), kind::force, "lbf"),
               told("load on its shaft", physics::hub_load(g.before(i), g.after(i), p.wrap), kind::force, "lbf"),
               told("at rest the longest span (" + g.at(longest).name + " to " + g.at((longest + 1) % g.count()).name +
                        ") rings at",
                    pluck, kind::frequency, "Hz")};
  return v;
}

void one_belt(const OneBelt& b, const Evidenced& run, std::vector<Verdict>& out) {
  // What one pulley takes is in the strands of all.
  for (auto& p : b.pulley)
    if (p.is(Drives::steering) && !p.torque_n_m.value)
      return out.push_back({.place = on(b) + p.name, .missing = {p.torque_n_m.path}});
  Going g(b, run);
  std::array<double, most_pulleys> worst{};
  std::array<std::size_t, most_pulleys> row{};
  for (std::size_t r = 0; r < run.trace->rows(); ++r) {
    if (!g.set(r)) continue;
    for (std::size_t i = 0; i < g.count(); ++i)
      if (g.share(i) > worst[i]) worst[i] = g.share(i), row[i] = r;
  }
  for (std::size_t i = 0; i < g.count(); ++i) {
    const OnBelt& p = g.at(i);
    if (i > 0 && (idle_only(p) || p.drives == 0)) continue;
    if (worst[i] > 0) out.push_back(judged(b, g, i, row[i]));
  }
}

}  // namespace

namespace slips {
void evaluate(const void* model, const Evidenced& run, std::vector<Verdict>& out) {
  std::size_t row = 0;
  for (std::size_t i = 1; i < run.trace->rows(); ++i)
    if (alternator_use(run, i) > alternator_use(run, row)) row = i;
  out.push_back({.place = "alternator",
                 .predicted = alternator_use(run, row),
                 .high = 1.0,
                 .scale = 1.0,
                 .row = row,
                 .fix_hint = "more wrap or tension within the maker's limit, a second belt, or a ribbed belt on belt " +
                             of(model).of(Drives::alternator).belt});
}
}  // namespace slips

namespace round_grip {
void evaluate(const void* model, const Evidenced& run, std::vector<Verdict>& out) {
  auto& m = of(model);
  for (auto& b : m.belt)
    if (b.placed && b.run.size() <= most_pulleys) one_belt(b, run, out);
}
}  // namespace round_grip

namespace red_line {
void evaluate(const void* model, const Evidenced& run, std::vector<Verdict>& out) {
  auto& m = of(model);
  for (auto& b : m.belt)
    for (auto& p : b.pulley) {
      if (!p.highest_rad_s || p.radius_m <= 0) continue;
      const double ratio = b.pulley[0].radius_m / p.radius_m;
      Verdict v{.place = on(b) + p.name,
                .predicted = ratio * run.at(0, 0),
                .high = *p.highest_rad_s,
                .scale = *p.highest_rad_s,
                .fix_hint = "a larger pulley on it, or a smaller one on the crank"};
      v.because = {told("its turns for one of the crank", ratio, kind::number, ""),
                   told("red line", run.at(0, 0), kind::shaft_speed, "rpm")};
      out.push_back(std::move(v));
    }
}
}  // namespace red_line

}  // namespace sw::belts
