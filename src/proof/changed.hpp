#pragma once
// The car changed and judged again: what holds then, by how much doubt, and what the change would break.
#include <span>
#include <string>
#include <vector>

#include "proof/doubt.hpp"

namespace sw {

/// All that offers need to look at.
struct Question {
  const Build& build;
  const DutySet& set;
  const std::vector<Judged>& base;
  std::size_t index;  ///< the judgement that fails
  double half_width;  ///< its doubt; 0 where none is asked for
  const Study& study;
  /// Of every judgement, same index as the base: what lies inside is no clear failure. May be empty.
  std::span<const double> half_widths = {};
};

/// `cooling.coolant-temperature@hot-idle`, with its place in brackets where it has one.
std::string id_of(const Judged& j, const DutySet& set);

std::optional<double> margin_in(const std::vector<Judged>& judged, const Judged& target);
/// Whether a change breaks what held before, or makes worse what failed: in the duties judged again or among the static
/// rules. `worse` false: only what held before counts.
bool harms(const std::vector<Judged>& base, const std::vector<Judged>& changed, const Judged& target,
           bool worse = true);
/// Whether an input made `factor` of what it was only measures the finding out: its scale goes with the input, its
/// limits stay. A larger battery makes a shortage a smaller share of itself, and no less.
bool only_scales(const Judged& target, const std::vector<Judged>& changed, double factor);
/// A changed car judged in those duties and by the static rules; empty where the car cannot be.
std::optional<std::vector<Judged>> judge_changed(const Build& build, const DutySet& set,
                                                 const std::vector<bool>& wanted);
/// The same in the question's own duty (of a static rule the first); no judgement where the car cannot be.
std::vector<Judged> judge_one_duty(const Question& q, const Build& build);

/// The doubt of the judgement in a changed car, toward its limit, by moving again the inputs that made most of it
/// before and those of the `fitted` groups, each by the half-width it has in that car. A car out of its depth is in
/// more doubt than the same car mended, and a new part brings the doubt of its own sheet. Infinite where a moved car
/// gives no figure.
double doubt_in(const Question& q, const Build& changed, double margin, const std::vector<std::string>& fitted = {});

/// Other findings of the question's duty that failed and still would: `, but leaves charging.balance@hot-idle failing`,
/// or nothing.
std::string leaves_failing(const Question& q, const std::vector<Judged>& changed);

}  // namespace sw
