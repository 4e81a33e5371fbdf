#pragma once
// Where a run led outside the range of a law, and what that spoils: everything computed from it at the same instant,
// and the states it moves. What such states then do to the rest of the car is not followed: there they are as good as
// any other figure that is a little wrong, and following them would leave nothing standing.
#include "model/graph.hpp"
#include "model/trace.hpp"

namespace sw {

struct Breach {
  std::vector<bool> spoilt;  ///< by slot of the graph
  std::string says;          ///< `air temperature comes to 52 degC; the battery's figures end at 50 degC`
  std::size_t row = 0;       ///< first of the trace outside
};

/// One for each declared validity (model/block) that the run did not keep, by its first instant outside.
std::vector<Breach> breaches(const Graph& graph, const Trace& trace);

}  // namespace sw
