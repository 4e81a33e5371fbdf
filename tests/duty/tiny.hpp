#pragma once
// A car of a few lines: blocks joined without any real system, and a duty that only lasts.
#include "duty/integrate.hpp"
#include "field/walk.hpp"
#include "model/outside.hpp"

namespace sw::tiny {

inline Duty lasting(double seconds) {
  Duty d;
  EvidenceMap evidence;
  fill_defaults(Duty::fields(), &d, "", evidence);
  d.duration = Time{seconds};
  return d;
}

/// Graph and duty together, since a course points to its duty.
struct Car {
  Duty duty;
  Graph graph;
  Course course;

  Car(std::span<const Block> blocks, Duty d, const void* model = nullptr) : duty(std::move(d)) {
    graph = join({{"tiny", "tiny", model, {}, {}, true, blocks, {}}}, outside::all);
    std::vector<CourseFault> faults;
    course = make_course("tiny", duty, "", faults);
    if (!graph.faults.empty()) throw std::runtime_error(graph.faults.front());
    if (!faults.empty()) throw std::runtime_error(faults.front().problem);
  }
  Trace run(const StepControl& control = {}) const {
    Course own = course;
    Rhs rhs(graph, own);
    rhs.start();
    return integrate(rhs, own, control);
  }
  std::size_t slot(std::string_view port) const { return static_cast<std::size_t>(graph.slot(port)); }
};

/// Steps of one length whatever the error.
inline StepControl every(double h) { return {.tolerance = 1e9, .first_step = h, .longest_step = h}; }

}  // namespace sw::tiny
