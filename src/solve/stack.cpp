// The shims or spacers that bring what is left of a stack's space to the middle of its band.
#include <algorithm>
#include <cmath>

#include "model/told.hpp"
#include "physics/shim_stack.hpp"
#include "solve/list.hpp"
#include "solve/model_of.hpp"
#include "solve/shim_words.hpp"

namespace sw {
namespace {

using clearance::EngineMoved;
using clearance::StackModel;

/// Slotted shim and flat spacer stock, in (common practice): where nobody says what is on hand.
constexpr double trade_in[] = {0.005, 0.010, 0.015, 0.020, 0.025, 0.031, 0.062, 0.125, 0.250};
constexpr int most_in_a_stack = 3;

std::vector<physics::ShimKind> to_choose_from(const Build& build) {
  std::vector<physics::ShimKind> all;
  for (auto& [name, s] : std::get<clearance::Input>(build.inputs).shim)
    if (s.thickness) all.push_back({s.thickness->si, s.count.value_or(clearance::usual_shims_on_hand)});
  if (all.empty())
    for (double t : trade_in) all.push_back({t * inch_m, most_in_a_stack});
  return all;
}

/// What was chosen is no longer on hand for the next stack.
void take(std::vector<physics::ShimKind>& kinds, const std::vector<double>& stack) {
  for (double t : stack)
    for (auto& k : kinds)
      if (k.thickness_m == t && k.count > 0) {
        --k.count;
        break;
      }
}

/// Stacks with a least and a most; a spacer under the intake lifts those on it.
std::vector<StackModel> banded(const Car& car) {
  std::vector<StackModel> all;
  for (auto& s : model_of<clearance::System>(car).stacks)
    if (s.most_m) all.push_back(s);
  return all;
}
EngineMoved stance(const Car& car) { return {.intake_raised_m = model_of<mounts::System>(car).intake_raised_m}; }

std::vector<std::string> lacking(const Car& car) {
  const auto stacks = banded(car);
  std::vector<std::string> missing;
  for (auto& s : stacks) missing.insert(missing.end(), s.missing.begin(), s.missing.end());
  if (stacks.empty()) {
    for (auto& s : model_of<clearance::System>(car).stacks) missing.push_back(s.most_path);
    if (missing.empty()) missing.push_back("clearance.stack.NAME.most");
  }
  return missing;
}
std::vector<std::string> needs(const Build& build) { return lacking(Car(build)); }

std::string in_words(double m) { return print(m, kind::length, "in", 3); }

void tell(const StackModel& s, double left, Solution& out) {
  out.because.push_back(inches(s.place + ", left with them", left));
  out.because.push_back(inches(s.place + ", middle of its band", (s.wanted_m + *s.most_m) / 2));
  const auto doubtful = s.doubtful();
  if (doubtful.empty()) return;
  const auto band = s.band();
  out.because.push_back(inches(s.place + ", off by at most, every length at once", band.worst_case));
  out.because.push_back(inches(s.place + ", off by statistically", band.statistical));
  out.because.push_back(inches(s.place + ", measured again first: " + doubtful[band.greatest].name + ", off by",
                               doubtful[band.greatest].half_m));
}

/// Why no stack of shims brings it into its band.
std::string why_none(const StackModel& s, double bare) {
  if (bare < s.wanted_m)
    return s.place + " has only " + in_words(bare) + " left with no shims in it, and wants " + in_words(s.wanted_m) +
           ": a flatter piece or more space";
  return s.place + " has " + in_words(bare) + " left, and no stack of up to three shims on hand brings it between " +
         in_words(s.wanted_m) + " and " + in_words(*s.most_m) + ": other thicknesses, or a spacer made to " +
         in_words(bare - (s.wanted_m + *s.most_m) / 2);
}

Solution solve(const Build& build, const DutySet&) {
  const Car car(build);
  Solution out;
  out.missing = lacking(car);
  if (!out.missing.empty()) return out;
  auto kinds = to_choose_from(build);
  const EngineMoved moved = stance(car);
  for (auto& s : banded(car)) {
    const double bare = s.left_m(moved) + s.shims.size_m, middle = (s.wanted_m + *s.most_m) / 2;
    const auto fill =
        physics::fill_with_shims(bare - middle, bare - *s.most_m, bare - s.wanted_m, kinds, most_in_a_stack);
    if (!fill) {
      out.settings.clear();
      out.trouble = why_none(s, bare);
      return out;
    }
    take(kinds, fill->stack);
    out.settings.push_back({s.shims_path, fill->total_m});
    out.says += (out.says.empty() ? "In " : "; in ") + s.place + ": " + stack_words(fill->stack);
    tell(s, bare - fill->total_m, out);
  }
  out.says += ".";
  return out;
}

}  // namespace

const Solver stack{.key = "stack",
                   .title = "shims that centre a stack in its space",
                   .judged_by = "clearance.stack clearance.stack-loose",
                   .caution = Caution::belts_pulleys,
                   .formula =
                       "of all stacks of the shims on hand, else of trade thicknesses, three at most: the one that "
                       "brings what is left nearest to the middle between wanted and most, then the fewest shims",
                   .source = "the requirements named; search over every stack; trade thicknesses: common practice",
                   .solve = solve,
                   .needs = needs};

}  // namespace sw
