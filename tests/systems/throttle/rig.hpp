#pragma once
// A cable from the pedal to a throttle lever on the engine, by hand: the pedal's arm pulls 3.2 sin 20 deg = 1.0945 in
// from square; the lever's 0.87 in swing alike to both sides of square and take 2 x 0.87 sin 39 deg = 1.0950 in for
// 78 deg.
#include <string>

namespace sw::rig {

struct ThrottleCable {
  std::string turns = "20 deg", arm = "3.2 in", driven_start = "129 deg", friction = "1.5 lb-in";
};
inline std::string throttle_cable(const std::string& more = "slack = \"0 in\"\nto_engine = false\n",
                                  const ThrottleCable& c = {}) {
  return "[throttle]\nopens = \"78 deg\"\nfriction = \"" + c.friction + "\"\n[throttle.pedal]\nturns = \"" + c.turns +
         "\"\npad = \"8 in\"\n[throttle.link.cable]\nby = \"cable\"\narm = \"" + c.arm +
         "\"\nstart = \"90 deg\"\ndriven_arm = \"0.87 in\"\ndriven_start = \"" + c.driven_start + "\"\n" + more;
}
/// Of one pull all the way.
inline std::string throttle_spring(const std::string& name, const std::string& on, const std::string& force,
                                   const std::string& arm_open = "1 in") {
  return "[throttle.spring." + name + "]\non = \"" + on + "\"\nforce = \"" + force + "\"\nforce_open = \"" + force +
         "\"\narm = \"1 in\"\narm_open = \"" + arm_open + "\"\n";
}

}  // namespace sw::rig
