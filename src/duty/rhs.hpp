#pragma once
// The coupled car as one function: state in, rates out, with everything in between left in the slots. Shared by the
// integrator, the findings and the comparison with a general-purpose solver.
#include <memory>
#include <vector>

#include "duty/course.hpp"
#include "model/graph.hpp"

namespace sw {

class Rhs {
 public:
  static constexpr std::size_t most_states = 40;

  Rhs(const Graph& graph, const Course& course);

  /// Number of states alive in this duty.
  std::size_t size() const { return alive_.size(); }
  const Graph::StateSlot& state(std::size_t i) const { return graph_->states[alive_[i]]; }
  std::size_t switches() const { return graph_->switches.size(); }
  const Port& switch_port(std::size_t i) const { return graph_->switches[i].info->port; }
  /// Puts all states and switches to their start for the course's duty.
  void start();
  /// Starts from the slots another run of the same graph ended with.
  void start_from(const double* values);
  /// From now on port `slot` has the value of port `as`, whatever its block writes: a coupling cut for comparison.
  void hold(std::uint16_t slot, std::uint16_t as);
  void get(double* y) const;
  /// Rates (1/s) of the alive states at time t (s) and state y; leaves every port in values().
  void operator()(double t, const double* y, double* rates);
  const std::vector<double>& values() const { return values_; }

  /// Greatest guard of all switches at the present values, and which switch; at most 0 where none wants to move.
  double guard(std::size_t* which = nullptr);
  /// The guard of each switch at the present values.
  void guards(std::vector<double>& all);
  /// The bounded status pass: switches in fixed order, each pass re-evaluating the car, until none moves or the pass
  /// count is used up; returns how many moved, -1 if they would not settle.
  int settle(double t, const double* y, double* rates);
  long evaluations() const { return evaluations_; }
  /// Worst mismatch the last evaluation left in a torn loop, in the unit of its port.
  double tear_residual() const { return tear_residual_; }
  /// The torn port whose loop the last evaluation could not close, or null: then its values are no figures.
  const Port* open_loop() const { return open_loop_; }
  /// What went wrong in the last evaluation: what the first block says that has no figures though it was fed with some;
  /// else the first port, in order of evaluation, that holds no number. Empty where every port holds one.
  std::string no_number() const;

 private:
  /// What a block was last fed with and what it answered, twice: at the state a Jacobian is taken at most blocks are
  /// fed the same for every state that is moved.
  struct Memory {
    std::vector<double> fed[2], gave[2];
    unsigned newest = 0, filled = 0;
  };
  bool recall(std::size_t index);
  void remember(std::size_t index);
  View view(const Graph::Step& step, std::size_t index);
  void run(std::size_t first, std::size_t last);
  double guard_of(std::size_t i);
  void close(const Graph::Tear& tear);

  const Graph* graph_;
  const Course* course_;
  std::size_t stretch_ = 0;  ///< of the trace, where it was looked at last
  std::vector<double> values_;
  std::vector<std::size_t> alive_;
  std::vector<std::shared_ptr<void>> scratch_;
  std::vector<Memory> memory_;  ///< of each step
  std::vector<std::uint16_t> outside_;
  int held_ = -1;
  std::uint16_t held_as_ = 0;
  std::size_t holder_ = ~std::size_t{0};  ///< the step that writes the held port
  long evaluations_ = 0;
  double tear_residual_ = 0;
  const Port* open_loop_ = nullptr;
};

}  // namespace sw
