// The pedal ratio at which the force on the pad lies in its band and the travel still holds.
#include <algorithm>
#include <cmath>
#include <cstdio>
#include <map>

#include "proof/judge.hpp"
#include "solve/list.hpp"

namespace sw {
namespace {

constexpr double lowest = 3.0, highest = 7.0, step = 0.1;  ///< pedals that are made (common practice)
/// What a ratio moves: force first, then travel.
constexpr std::string_view by_force[] = {"brakes.pedal-force",       "brakes.booster-failed",  "brakes.circuit-lost",
                                         "brakes.stopping-distance", "brakes.engine-off-stop", "brakes.engine-off-row",
                                         "brakes.line-pressure"};
constexpr std::string_view by_travel[] = {"brakes.pedal-height", "brakes.travel-lost"};
constexpr std::string_view duties[] = {"panic-stop", "hot-idle"};

/// A ratio tried on the car: the worst margin of each requirement, in its scale, and of the two groups.
struct Tried {
  double ratio = 0;
  std::map<std::string_view, double> margin;
  std::vector<std::string> untold;  ///< what could not be judged, with its place, and why
  double least(std::span<const std::string_view> ids) const {
    double worst = HUGE_VAL;
    for (auto id : ids)
      if (auto it = margin.find(id); it != margin.end()) worst = std::min(worst, it->second);
    return worst;
  }
  double force() const { return least(by_force); }
  double travel() const { return least(by_travel); }
  double worst() const { return std::min(force(), travel()); }
};

bool one_of(std::span<const std::string_view> ids, std::string_view id) {
  return std::find(ids.begin(), ids.end(), id) != ids.end();
}

std::string one_place(double x) {
  char text[32];
  std::snprintf(text, sizeof text, "%.1f", x);
  return text;
}

class Pedals {
 public:
  Pedals(const Build& build, const DutySet& set) : build_(build), set_(set) {
    for (auto& c : set.courses)
      wanted_.push_back(std::find(std::begin(duties), std::end(duties), c.key) != std::end(duties));
    traces_ = run_duties(Car(with(lowest)), set, wanted_);
  }
  /// The runs are the same whatever the pedal: only its force hangs on it, and that is judged anew.
  Tried at(double ratio) {
    Tried t{ratio, {}};
    for (auto& j : judge(Car(with(ratio)), set_, traces_, wanted_)) {
      const auto id = j.requirement->id;
      if (!one_of(by_force, id) && !one_of(by_travel, id)) continue;
      for (auto& m : j.verdict.missing)
        if (std::find(missing.begin(), missing.end(), m) == missing.end()) missing.push_back(m);
      if (!j.verdict.predicted && j.verdict.missing.empty() && !j.verdict.reason.empty())
        t.untold.push_back(std::string(id) + (j.verdict.place.empty() ? "" : "[" + j.verdict.place + "]") + " (" +
                           j.verdict.reason + ")");
      if (const auto margin = j.margin()) {
        auto [it, fresh] = t.margin.emplace(id, *margin / j.verdict.scale);
        if (!fresh) it->second = std::min(it->second, *margin / j.verdict.scale);
      }
    }
    return t;
  }
  std::vector<std::string> missing;

 private:
  Build with(double ratio) const {
    Build b = build_;
    std::get<brakes::Input>(b.inputs).pedal.ratio = ratio;
    return b;
  }
  const Build& build_;
  const DutySet& set_;
  std::vector<bool> wanted_;
  std::vector<Trace> traces_;
};

std::string trouble(const std::vector<Tried>& all) {
  for (auto& [id, margin] : all[0].margin)
    if (std::none_of(all.begin(), all.end(), [&, which = id](auto& t) {
          const auto at = t.margin.find(which);
          return at == t.margin.end() || at->second >= 0;
        }))
      return std::string(id) + " holds at no ratio from " + one_place(lowest) + " to " + one_place(highest) +
             ": see what it says to change";
  double force = 0, travel = 0;
  for (auto& t : all) {
    if (t.force() >= 0 && force == 0) force = t.ratio;
    if (t.travel() >= 0) travel = t.ratio;
  }
  if (force == 0 || travel == 0)
    return "no one ratio suits all that hangs on it: another master bore, more or less assist";
  return "the force asks for at least " + one_place(force) + ", the travel for at most " + one_place(travel) +
         ": another master bore, more assist, or brakes that take less fluid";
}

Solution solve(const Build& build, const DutySet& set) {
  Solution out;
  Pedals pedals(build, set);
  std::vector<Tried> all;
  for (int i = 0; lowest + i * step <= highest + 1e-9; ++i) all.push_back(pedals.at(lowest + i * step));
  if (!pedals.missing.empty()) {
    out.missing = pedals.missing;
    return out;
  }
  if (!std::isfinite(all[0].force()) || !std::isfinite(all[0].travel()) || std::abs(all[0].force()) >= HUGE_VAL ||
      std::abs(all[0].travel()) >= HUGE_VAL) {
    out.trouble = "force or travel of the pedal could not be judged: see what `check` says of the brakes";
    return out;
  }
  const Tried best = *std::max_element(all.begin(), all.end(), [](auto& a, auto& b) { return a.worst() < b.worst(); });
  if (!(best.worst() >= 0)) {
    out.trouble = trouble(all);
    return out;
  }
  double least = best.ratio, most = best.ratio;
  for (auto& t : all)
    if (t.worst() >= 0) {
      least = std::min(least, t.ratio);
      most = std::max(most, t.ratio);
    }
  out.settings.push_back({"brakes.pedal.ratio", best.ratio});
  out.says = "Pedal ratio " + one_place(best.ratio) + ": force and travel both hold from " + one_place(least) + " to " +
             one_place(most) + ".";
  for (auto& u : best.untold) out.says += " Not judged: " + u + ".";
  if (best.ratio < lowest + step / 2 || best.ratio > highest - step / 2)
    out.says += " It lies at the end of the pedals that are made: " +
                std::string(best.ratio < lowest + step / 2 ? "a larger" : "a smaller") +
                " master bore would leave more to spare.";
  out.because.push_back({.what = "margin of the force, in its scale", .value = best.force(), .unit = "%"});
  out.because.push_back({.what = "margin of the travel, in its scale", .value = best.travel(), .unit = "%"});
  return out;
}

}  // namespace

const Solver pedal_ratio{
    .key = "pedal-ratio",
    .title = "pedal ratio",
    .judged_by = "brakes.pedal-force",
    .caution = Caution::braking_loss,
    .formula =
        "of the ratios from 3 to 7, in steps of a tenth, the one at which the worst of force (with and without "
        "assist, with the engine off, with a circuit lost) and travel (whole, with a circuit lost) has most to spare",
    .source = "the requirements named, each with its own source",
    .solve = solve};

}  // namespace sw
