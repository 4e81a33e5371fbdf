#pragma once
// Joints of the fasteners' tests.
#include <string>

namespace sw::rig {

inline std::string bolted(const std::string& name, const std::string& more) {
  return "[fasteners.joint." + name + "]\n" + more;
}
/// As they come, in a whole nut of the bolt's grade: nut factor 0.20, the bolt decides.
inline const std::string in_nut = "threads = \"as they come\"\ninto = \"nut\"\n";
/// Wheel nuts of 1/2-20 studs, grade 5: 85 ksi x 0.1599 in2 = 13,600 lbf of proof load.
inline std::string wheel(const std::string& torque, const std::string& threads = "as they come") {
  return bolted("wheel", "thread = \"1/2-20\"\ngrade = \"5\"\ninto = \"nut\"\ncount = 5\ntorque = \"" + torque +
                             "\"\nthreads = \"" + threads + "\"\n");
}

}  // namespace sw::rig
