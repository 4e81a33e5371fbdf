#pragma once
// A requirement: one thing that must hold. It says where and in which duties it is looked at; `evaluate` reads the
// model and the trace and gives one verdict a place. Bands, states and because-lists are made from it elsewhere.
#include <functional>
#include <limits>
#include <span>
#include <string>
#include <string_view>
#include <vector>

#include "model/duty.hpp"
#include "model/finding.hpp"
#include "model/port.hpp"
#include "model/trace.hpp"

namespace sw {

/// One evaluated place.
struct Verdict {
  std::string place;                ///< empty for the car as a whole
  std::optional<double> predicted;  ///< SI; absent: unproven, `missing` or `reason` says why
  std::optional<double> low, high;
  double scale = 1;
  std::size_t row = 0;           ///< trace row that decides it
  bool worst_case = false;       ///< doubts of its inputs add up as they are and not in squares
  double mean_share = 0;         ///< or the time mean over this last share of the run; the row then is its end
  std::vector<Because> because;  ///< figures of its own, cause first, put before the chain's
  std::vector<std::string> missing;
  std::string reason;  ///< of a rule: what was found, in words
  std::string fix_hint;
  std::optional<bool> rule;  ///< of a rule: whether it is met
};

/// What an evaluation may look at.
struct Evidenced {
  const Trace* trace;
  const Duty* duty;
  const std::uint16_t* slots;                      ///< of the requirement's `needs`, same order
  static constexpr std::uint16_t absent = 0xffff;  ///< slot of a port that cannot be computed
  /// NaN where the port or the row is not there: only rules with `own_missing` or a `may_lack` meet that.
  double at(std::size_t row, int need) const {
    return slots[need] == absent || row >= trace->rows() ? std::numeric_limits<double>::quiet_NaN()
                                                         : trace->at(row, slots[need]);
  }
  std::size_t slot(int need) const { return slots[need]; }
  bool lacks(int need) const { return slots[need] == absent; }
  std::size_t last() const { return trace->rows() - 1; }
};

struct Requirement {
  std::string_view id;  ///< `cooling.coolant-temperature`
  std::string_view title;
  RequirementKind kind = RequirementKind::most;
  Hazard hazard = Hazard::nuisance;
  Caution caution = Caution::none;
  const Kind* quantity = &kind::number;
  std::string_view unit;
  std::string_view source;   ///< of the limit
  std::string_view formula;  ///< in words
  /// Duties it is looked at in, by key; a key with a star takes every duty of that engine state, `*running`, or
  /// those in which the brakes work, `*braking`.
  /// Empty: a static rule, looked at once, at the start of the first duty.
  std::span<const std::string_view> duties = {};
  std::span<const Port> needs = {};  ///< ports it reads
  /// Needs from here on not every car has: looked at without them too, and a verdict left without a figure is blamed on
  /// what keeps them from being computed.
  std::size_t may_lack = std::numeric_limits<std::size_t>::max();
  /// A rule on the model's own figures: looked at whatever else the car lacks. It names what is missing itself; a
  /// verdict it leaves without a figure is blamed on what keeps its ports from being computed.
  bool own_missing = false;
  /// Ports told in the because-list, cause first.
  std::span<const std::string_view> chain = {};
  /// The coupling to cut for comparison where it does not hold, and how that is told, after "alone, ": what the part's
  /// maker assumes.
  std::string_view alone_port = {}, alone_as = {}, alone_says = {};
  std::string_view alone_fix = {};  ///< what to do first where the part alone would hold
  void (*evaluate)(const void* model, const Evidenced& run, std::vector<Verdict>& out) = nullptr;
};

}  // namespace sw
