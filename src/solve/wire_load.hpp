#pragma once
// What each wire of a car has to carry in the duties it is put through, for the solvers that choose wires and grounds:
// the network solved at the row of each duty that decides it, electric fans on.
#include <vector>

#include "proof/wiring_feeds.hpp"

namespace sw {

/// A wire by the branch of the network it is: the greatest it carries and what is lost on either side of it.
struct WireLoad {
  double running_a = 0;   ///< for good, while it is on
  double cranking_a = 0;  ///< for the seconds of a start
  double before_v = 0;    ///< between the bus and its own start, at that current
  double after_v = 0;     ///< between its end and the body
};

class CarWires {
 public:
  CarWires(const Build& build, const DutySet& set);
  bool usable() const { return !feeds_.empty(); }
  const wiring::Model& model() const { return *model_; }
  const Car& car() const { return car_; }
  WireLoad load_of(const wiring::Conductor& c, double share = 1) const;
  /// Greatest potential of a node above the battery's earthed post, in magnitude.
  double node_v(wiring::dc::NodeIndex node, bool cranking) const;
  /// Greatest volts between two nodes while running.
  double between_v(wiring::dc::NodeIndex a, wiring::dc::NodeIndex b) const;
  double hottest_bay_k() const;
  /// Most the machine can give.
  double machine_a() const { return machine_a_; }

 private:
  struct At {
    WiringFeed feed;
    wiring::dc::Solution solution;
  };
  Car car_;
  const wiring::Model* model_;
  std::vector<At> feeds_;
  double machine_a_ = 0;
};

}  // namespace sw
