#pragma once
// A car: every system resolved, every port joined. Const once made; many runs share it.
#include <memory>

#include "car/build.hpp"
#include "model/graph.hpp"

namespace sw {

class Car {
 public:
  explicit Car(const Build& build);
  Car(const Car&) = delete;
  Car& operator=(const Car&) = delete;

  const Graph& graph() const { return graph_; }
  const std::vector<SystemOf>& systems() const { return systems_; }
  /// Figures that are there and cannot be, or cannot be together: the build's, told with the reader's faults.
  const Diagnostics& faults() const { return faults_; }
  template <class Model>
  const Model& model() const {
    return std::get<Model>(models_);
  }

 private:
  Systems::Models models_;
  Diagnostics faults_;
  std::vector<SystemOf> systems_;
  Graph graph_;
};

/// The systems without any car: for docs, port tables and tests.
std::vector<SystemOf> bare_systems();

}  // namespace sw
