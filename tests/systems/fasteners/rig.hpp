#pragma once
// Joints of the fasteners' tests.
#include <string>

namespace sw::rig {

inline std::string bolted(const std::string& name, const std::string& more) {
  return "[fasteners.joint." + name + "]\n" + more;
}
/// Wheel nuts of 1/2-20 studs, grade 5, as they come: 85 ksi x 0.1599 in2 = 13,600 lbf of proof load.
inline std::string wheel(const std::string& torque) {
  return bolted("wheel", "thread = \"1/2-20\"\ngrade = \"5\"\ncount = 5\ntorque = \"" + torque + "\"\n");
}

}  // namespace sw::rig
