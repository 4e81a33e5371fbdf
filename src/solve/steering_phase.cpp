// The phases of the steering shaft's yokes at which the wheel turns the box most evenly.
#include <cmath>
#include <numbers>

#include "model/told.hpp"
#include "quantity/print.hpp"
#include "solve/list.hpp"
#include "solve/model_of.hpp"
#include "systems/steering/checks.hpp"

namespace sw {
namespace {

using steering::evenness::most, steering::evenness::unevenness;

constexpr double step_rad = std::numbers::pi / 180;  ///< what a line of paint and a protractor set (common practice)
constexpr double same = 0.01;                        ///< less than that nobody feels at the rim (common practice)

std::string share(double x) { return print(x, kind::number, "%", 2); }

/// A joint told by its angle alone bends in a plane nobody measured: no phase can be found for it.
std::vector<std::string> lacking(const steering::Model& m) {
  if (m.joints.empty()) return {"steering.joint: the joints from the column down"};
  std::vector<std::string> missing = m.missing;
  missing.insert(missing.end(), m.planes_missing.begin(), m.planes_missing.end());
  return missing;
}

std::vector<std::string> needs(const Build& build) {
  const Car car(build);
  return lacking(model_of<steering::System>(car));
}

double by_step(double rad) { return std::round(rad / step_rad) * step_rad + 0.0; }

Solution solve(const Build& build, const DutySet&) {
  const Car car(build);
  const steering::Model& m = model_of<steering::System>(car);
  Solution out;
  out.missing = lacking(m);
  if (!out.missing.empty()) return out;
  const double now = unevenness(physics::swing(m.chain));
  if (m.joints.size() == 1) {
    out.trouble = "one joint has no yoke to phase: its " + share(now) +
                  " come of its angle alone; two joints of half that angle each, in phase, undo each other";
    return out;
  }
  auto chain = m.chain;
  chain.phases_rad = physics::best_phases(m.chain);
  for (double& phase : chain.phases_rad) phase = by_step(phase);
  const double best = unevenness(physics::swing(chain));
  if (best > most(m)) {
    out.trouble = "no phase makes it even: the best leaves " + share(best) + " where " + share(most(m)) +
                  " are allowed; joints at angles nearer alike, so that they can undo each other";
    return out;
  }
  out.because.push_back(told("unevenness as built", now, kind::number, "%"));
  out.because.push_back(told("unevenness at the phases found", best, kind::number, "%"));
  if (now <= best + same) {
    out.says = "The yokes stand right as they are: " + share(now) + " between the lightest and the heaviest place.";
    return out;
  }
  for (std::size_t i = 0; i < chain.phases_rad.size(); ++i) {
    out.settings.push_back({m.phase_paths[i], chain.phases_rad[i]});
    out.says +=
        (i ? ", " : "Yokes above ") + m.joints[i + 1] + " at " + print(chain.phases_rad[i], kind::angle, "deg", 3);
  }
  out.says +=
      ", the lower yoke clockwise of the upper as seen from the steering wheel (below 0 the other way): " + share(now) +
      " become " + share(best) + ". A spline gives its nearest tooth: prove the phase it has.";
  return out;
}

}  // namespace

const Solver steering_phase{
    .key = "steering-phase",
    .title = "phases of the steering shaft's yokes",
    .judged_by = "steering.evenness",
    .caution = Caution::steering_loss,
    .formula =
        "of all phases of the middle shafts' yokes, those at which fastest and slowest turning of the box against the "
        "wheel differ least, each to a degree; all joints by exact rotation",
    .source = "the requirement named; Hooke's joint, any theory of machines",
    .solve = solve,
    .needs = needs};

}  // namespace sw
