#pragma once
// Cars with balls that move, in inches, for the tests of envelopes.
#include "systems/judged.hpp"

namespace sw::rig {

struct Ball {
  std::string name, goes_with;
  double x, y, z;
  std::string travel = "";
};

inline std::string inches_text(double value) { return "\"" + std::to_string(value) + " in\""; }

inline std::string point_text(const std::string& key, double x, double y, double z) {
  return "[" + key + "]\nx = " + inches_text(x) + "\ny = " + inches_text(y) + "\nz = " + inches_text(z) + "\n";
}

/// One inch across.
inline std::string ball_text(const Ball& b) {
  const std::string key = "clearance.body." + b.name;
  return "[" + key + "]\ngoes_with = \"" + b.goes_with + "\"\ndiameter = \"1 in\"\n" +
         (b.travel.empty() ? "" : "travel = \"" + b.travel + "\"\n") + point_text(key + ".point.at", b.x, b.y, b.z);
}

inline std::string pair_text(const Ball& a, const Ball& b, const std::string& more = "") {
  return "[clearance.envelope.e]\nfirst = \"" + a.name + "\"\nsecond = \"" + b.name + "\"\n" +
         (more.find("between") == std::string::npos ? "between = \"moving parts\"\n" : "") + more + ball_text(a) + ball_text(b);
}

inline const std::string wheel = "[clearance.travel.wheel]\nbump = \"4 in\"\ndroop = \"3 in\"\n";
inline const std::string steered = wheel + "lock_left = \"30 deg\"\nlock_right = \"25 deg\"\n" +
                                   point_text("clearance.travel.wheel.pin_low", 0, 5, -4) +
                                   point_text("clearance.travel.wheel.pin_high", 0, 5, 4);
inline const std::string swings = wheel + point_text("clearance.travel.wheel.hub", 20, 0, 0) +
                                  point_text("clearance.travel.wheel.pivot_front", 0, -9, 0) +
                                  point_text("clearance.travel.wheel.pivot_rear", 0, 9, 0);
inline const std::string rolls = "[clearance.roll]\nleft = \"3 deg\"\nright = \"1 deg\"\n" +
                                 point_text("clearance.roll.front", 0, 0, 0) +
                                 point_text("clearance.roll.rear", 40, 0, 0);

}  // namespace sw::rig
