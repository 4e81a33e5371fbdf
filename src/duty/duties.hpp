#pragma once
// The duties a build is put through: the shipped ones of stock/duties.toml, with the workshop's own over them.
#include <map>
#include <string>
#include <vector>

#include "car/car.hpp"
#include "duty/course.hpp"
#include "duty/integrate.hpp"
#include "duty/same_run.hpp"

namespace sw {

struct DutySet {
  Named<Duty> duty;             ///< in running order: a duty stands after the one it starts from
  Diagnostics faults;           ///< of the workshop's own: no duration, unknown `after`, a loop, a bad trace
  std::vector<Course> courses;  ///< same order; courses[i].duty points into `duty`
};
const Named<Duty>& shipped_duties();
/// `open` finds trace files.
std::unique_ptr<DutySet> duties_of(const Build& build, const OpenText& open);

/// A coupling cut: `port` has the value of `as` throughout, as the part's maker would assume it.
struct Cut {
  std::string_view port, as;
};

/// The runs of a first car, for cars that differ from it by little: where a run would come out the same to the last
/// bit, it is taken over (duty/same_run).
class BaseRuns {
 public:
  /// All of them outlive this.
  BaseRuns(const Car& car, const DutySet& set, const std::vector<Trace>& traces);
  /// The first car's run of a duty where the other does the same, or null.
  const Trace* same(const Car& other, std::size_t duty) const;

 private:
  const std::vector<Trace>* traces_;
  std::vector<SameRun> runs_;
};

struct RunOptions {
  StepControl (*control)(const Duty&) = step_control;
  std::optional<Cut> cut = std::nullopt;
  const BaseRuns* base = nullptr;
};
/// Runs one duty; `before` is the trace it starts from, or null. Where that did not come through, neither does this.
Trace run_duty(const Car& car, const Course& course, const Trace* before, const RunOptions& options = {});
/// Runs the duties marked in `wanted` (all where empty) and those they start from; others stay not run.
std::vector<Trace> run_duties(const Car& car, const DutySet& set, const std::vector<bool>& wanted = {},
                              const RunOptions& options = {});

}  // namespace sw
