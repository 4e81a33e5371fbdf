// When the fans come on and go off: of the set-points that fit the thermostat, those that run coolest with few starts.
#include <algorithm>
#include <cmath>
#include <limits>

#include "proof/judge.hpp"
#include "quantity/print.hpp"
#include "solve/list.hpp"

namespace sw {
namespace {

/// Tried: off above the thermostat's opening, on above off, each further stage above the one before (K).
constexpr double off_above[] = {1, 2, 3, 4, 5}, on_above_off[] = {3, 4, 5, 6, 8}, stage_above[] = {2, 3, 4};
constexpr std::string_view judged[] = {"cooling.fan-set-points", "cooling.coolant-temperature", "cooling.fan-cycling"};
constexpr std::string_view duties[] = {"hot-idle", "parade"};
/// A rule says yes or no; what is to spare of it counts as a share of this (K).
constexpr double switch_scale_k = 10;

struct Points {
  double off, apart, stage;
};

bool electric(const cooling::Fan& f) { return f.drive != cooling::Drive::engine; }

std::string celsius(double k) { return print(k, kind::temperature, "degC", 3); }

class Trying {
 public:
  Trying(const Build& build, const DutySet& set) : build_(build), set_(set) {
    auto& in = std::get<cooling::Input>(build.inputs);
    if (in.thermostat.opens) opens_ = in.thermostat.opens->si;
    for (auto& [name, f] : in.fan)
      if (electric(f)) names_.push_back(name);
    for (auto& c : set.courses)
      wanted_.push_back(std::find(std::begin(duties), std::end(duties), c.key) != std::end(duties));
  }
  std::vector<std::string> missing() const {
    std::vector<std::string> all;
    if (!opens_) all.emplace_back("cooling.thermostat.opens");
    if (names_.empty()) all.emplace_back("cooling.fan: an electric fan");
    return all;
  }
  std::vector<Setting> settings(const Points& p) const {
    std::vector<Setting> all;
    for (std::size_t i = 0; i < names_.size(); ++i) {
      const double up = p.stage * static_cast<double>(i), off = *opens_ + p.off + up;
      all.push_back({"cooling.fan." + names_[i] + ".on", off + p.apart});
      all.push_back({"cooling.fan." + names_[i] + ".off", off});
    }
    return all;
  }
  Build with(const Points& p) const {
    Build b = build_;
    for (auto& s : settings(p)) {
      const LeafTo leaf = find_leaf(build_fields(), static_cast<void*>(&b), s.path);
      leaf.field->access.set(leaf.owner, s.value);
    }
    return b;
  }
  std::vector<Judged> judge_with(const Build& b) const {
    const Car car(b);
    const auto traces = run_duties(car, set_, wanted_);
    return judge(car, set_, traces, wanted_);
  }
  /// The least margin of what is judged, in scales; empty where some of it cannot be told.
  std::optional<double> worst(const Points& p, std::vector<std::string>& lacks, std::string& which) const {
    double least = std::min(p.off, p.apart) / switch_scale_k;
    for (auto& j : judge_with(with(p))) {
      if (std::find(std::begin(judged), std::end(judged), j.requirement->id) == std::end(judged)) continue;
      for (auto& m : j.verdict.missing)
        if (std::find(lacks.begin(), lacks.end(), m) == lacks.end()) lacks.push_back(m);
      const auto margin = j.margin();
      if (!margin) return std::nullopt;
      const double share = j.verdict.rule ? (*margin < 0 ? -1.0 : 1.0) : *margin / j.verdict.scale;
      if (share < least) least = share, which = std::string(j.requirement->id);
    }
    return least;
  }
  std::size_t stages() const { return names_.size(); }
  double opens() const { return *opens_; }

 private:
  const Build& build_;
  const DutySet& set_;
  std::vector<std::string> names_;
  std::optional<double> opens_;
  std::vector<bool> wanted_;
};

std::vector<std::string> needs(const Build& build) { return Trying(build, DutySet{}).missing(); }

Solution solve(const Build& build, const DutySet& set) {
  Solution out;
  const Trying trying(build, set);
  out.missing = trying.missing();
  if (!out.missing.empty()) return out;
  std::optional<Points> best;
  double most = -std::numeric_limits<double>::infinity();
  std::string which;
  for (double off : off_above)
    for (double apart : on_above_off)
      for (double stage : stage_above) {
        if (trying.stages() < 2 && stage != stage_above[0]) continue;
        std::string here;
        const Points p{off, apart, stage};
        const auto got = trying.worst(p, out.missing, here);
        if (!out.missing.empty()) return out;
        if (got && *got > most) most = *got, best = p, which = here;
      }
  if (!best || most < 0) {
    out.trouble = which.empty() ? "the duties of idling came through with no set-points tried"
                                : which +
                                      " holds with no set-points from 1 to 5 K above the thermostat's opening: see "
                                      "what it says to change";
    return out;
  }
  out.settings = trying.settings(*best);
  for (std::size_t i = 0; i + 1 < out.settings.size(); i += 2)
    out.says += (i == 0 ? "First fan on at " : ", next on at ") + celsius(out.settings[i].value) + " and off at " +
                celsius(out.settings[i + 1].value);
  out.says += ".";
  out.because.push_back(
      {.what = "thermostat opens", .value = trying.opens(), .kind = &kind::temperature, .unit = "degC"});
  out.because.push_back({.what = "least to spare of what is judged, in its scale", .value = most, .unit = "%"});
  return out;
}

}  // namespace

const Solver fan_set_points{
    .key = "fan-set-points",
    .title = "fan set-points",
    .judged_by = "cooling.fan-set-points",
    .caution = Caution::fans_start,
    .formula =
        "of off 1 to 5 K above the thermostat's opening, on 3 to 8 K above off and each stage 2 to 4 K above the "
        "one before, those whose least margin of set-points, coolant temperature and starts an hour, idling and "
        "in a parade, is the greatest; each tried by running the duties",
    .source = "the requirements named, each with its own source; the spans tried: common practice",
    .solve = solve,
    .needs = needs};

}  // namespace sw
