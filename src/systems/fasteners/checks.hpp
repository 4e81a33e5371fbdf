#pragma once
// What the rules of fasteners share with the solver that finds their torque.
#include "systems/fasteners/fasteners.hpp"

namespace sw::fasteners {

/// The band the preload of one bolt is to lie in: enough to hold, and neither bolt nor thread past what they stand.
struct PreloadBand {
  double low_n, high_n;
  bool thread_decides;  ///< the thread strips before the bolt is at its proof load
};
PreloadBand preload_band(const JointModel& joint);

}  // namespace sw::fasteners
