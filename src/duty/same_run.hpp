#pragma once
// Whether another car would do in a duty exactly what a first one did, told without running it: a figure that is moved
// often touches nothing of a run, as a lining's clearance or a wire's insulation, and then the run need not be made.
#include <vector>

#include "duty/rhs.hpp"
#include "model/trace.hpp"

namespace sw {

class SameRun {
 public:
  /// `trace`: what the first car did in that course; both outlive this.
  SameRun(const Graph& graph, const Course& course, const Trace& trace);
  /// Both cars are evaluated at the same instants of the first one's run, from the same states and in the same order,
  /// so that what does not differ is equal to the last bit: every port, every rate, every switch's guard, every start.
  /// At most `most_instants` are looked at, evenly along the run; what differs only between them is not seen. False
  /// where the first run did not come through or the cars are not built alike.
  bool holds_for(const Graph& other) const;

  static constexpr std::size_t most_instants = 60;

 private:
  /// Start, then each instant: values with rates, then guards. Stops where it differs from `against`.
  bool look(const Graph& graph, std::vector<double>* write, const std::vector<double>* against) const;

  const Course* course_;
  const Trace* trace_;
  std::vector<std::size_t> rows_;
  std::vector<std::string> ports_;  ///< names by slot: cars built alike have the same
  std::vector<double> seen_;
};

}  // namespace sw
