// Random builds: whatever a user may write inside the ranges, each finding has a number or a reason, each run ends with
// a summary, and the work of a run is bounded. How many: STREETWRIGHT_RANDOM_BUILDS, else 150. Doubt is off.
#include <chrono>
#include <cstdlib>
#include <set>

#include "proof/proof.hpp"
#include "proof/random_build.hpp"
#include "systems/rig.hpp"

using namespace sw;
using namespace sw::rig;

namespace {

std::size_t how_many() {
  const char* given = std::getenv("STREETWRIGHT_RANDOM_BUILDS");
  return given ? std::strtoul(given, nullptr, 10) : 150;
}

/// Every fourth from nothing at all; the others are the hand car with a tenth, a third or all of its leaves drawn anew.
Build draw(std::uint64_t seed) {
  static const Build sound = hand_car();
  static constexpr double changes[] = {1.0, 0.1, 0.33, 1.0};
  Build build = seed % 4 == 0 ? Build{} : sound;
  Chances chances{.change = changes[seed % 4]};
  if (seed % 4 != 0)
    chances = {.missing = seed % 8 < 4 ? 0.0 : 0.01,
               .change = changes[seed % 4],
               .grow = seed % 8 < 4 ? 0.0 : 0.2,
               .wires_stay = true};
  RandomBuild(seed, chances).fill(build);
  // Every eighth keeps what a reader would refuse: the program must stand it all the same.
  if (seed % 8 != 7) mend(build, sound);
  build.name = "random " + std::to_string(seed);
  return build;
}

std::string faults_of(const Finding& f) {
  const auto finite = [](const std::optional<double>& x) { return !x || std::isfinite(*x); };
  if (!finite(f.predicted) || !finite(f.low_limit) || !finite(f.high_limit) || !finite(f.margin))
    return "a number that is none";
  if (!std::isfinite(f.half_width) || !std::isfinite(f.scale) || f.scale <= 0 || !std::isfinite(f.time))
    return "scale, width or time that is none";
  for (auto& b : f.because)
    if (!std::isfinite(b.value) || !std::isfinite(b.weight)) return "because " + b.what + ", which is no number";
  if (f.state == State::unproven)
    return f.reason.empty() ? "unproven without a reason" : f.predicted ? "unproven with a number" : "";
  if (f.kind == RequirementKind::rule) return f.reason.empty() ? "a rule without words" : "";
  if (!f.predicted)
    return f.state == State::fails && !f.reason.empty()
               ? ""
               : "no number and no reason";  // never reached: worse than the limit
  return f.margin && (f.low_limit || f.high_limit) ? "" : "a number without a limit";
}

/// A run's summary, and the greatest work one may take.
std::string faults_of(const Trace& t) {
  // The bound of a run, a corner's and an event's share of it, and the step in which it is passed.
  const long most_evaluations = 35000 + 60 * std::min(t.summary.events, 5000l);
  if (t.summary.outcome == Outcome::not_run) return "not run, or without an outcome";
  if (!t.summary.usable() && t.summary.reason.empty()) return "lost without a reason";
  if (t.summary.evaluations > most_evaluations) return std::to_string(t.summary.evaluations) + " evaluations";
  if (!t.summary.usable()) return "";
  for (double x : t.values)
    if (!std::isfinite(x)) return "usable with a port that is no number";
  return t.summary.worst_residual < 1e-3 ? "" : "a torn loop left open by " + std::to_string(t.summary.worst_residual);
}

/// A reason without its figures, for the count of how runs ended.
std::string kind_of(const std::string& reason) {
  std::string words;
  for (char c : reason)
    if (!(c >= '0' && c <= '9')) words += c;
  return words.substr(0, 70);
}

TEST(RandomBuilds, EachFindingHasANumberOrAReason) {
  double slowest = 0;
  std::size_t slow_seed = 0, slow = 0, runs = 0, done = 0, proved = 0;
  std::map<std::string, std::size_t> ends;
  for (std::size_t seed = 1, n = how_many(); seed <= n && !HasFatalFailure(); ++seed) {
    SCOPED_TRACE("random build " + std::to_string(seed));
    const Build build = draw(seed);
    const auto set = duties_of(build, from_disk());
    if (set->faults.any_fault()) continue;  // said to the user before any proof
    const auto from = std::chrono::steady_clock::now();
    const Car car(build);
    ASSERT_TRUE(car.graph().faults.empty()) << car.graph().faults[0];
    const auto traces = run_duties(car, *set);
    for (std::size_t i = 0; i < traces.size(); ++i) {
      EXPECT_EQ(faults_of(traces[i]), "") << set->courses[i].key;
      ++runs;
      if (traces[i].summary.usable())
        ++done;
      else
        ++ends[kind_of(traces[i].summary.reason)];
    }
    const Proof p = prove(build, *set, {.doubt = false});
    const double took = std::chrono::duration<double>(std::chrono::steady_clock::now() - from).count() / 2;
    if (took > 1) ++slow;
    if (took > slowest) slowest = took, slow_seed = seed;
    std::set<std::string> ids;
    for (auto& f : p.findings) {
      EXPECT_EQ(faults_of(f), "") << f.id;
      EXPECT_TRUE(ids.insert(f.id).second) << f.id << " twice";
      if (f.state != State::unproven) ++proved;
    }
    EXPECT_FALSE(p.findings.empty());
    EXPECT_TRUE(p.exit_code() == 0 || p.exit_code() == 1 || p.exit_code() == 3);
  }
  EXPECT_GT(done, runs / 20) << "the draw is too wild to test anything";
  EXPECT_GT(proved, 0u);
  RecordProperty("slowest_s", std::to_string(slowest));
  std::printf("%zu runs, %zu done, %zu findings proved; slowest proof %.3f s (build %zu), %zu longer than a second\n",
              runs, done, proved, slowest, slow_seed, slow);
  for (auto& [reason, count] : ends) std::printf("  %6zu  %s\n", count, reason.c_str());
}

}  // namespace
