#pragma once
// Tubes for these tests: a 1/4 in steel line by points, its figures round.
#include "systems/judged.hpp"
#include "systems/tubes/shape.hpp"

namespace sw::rig {

inline std::string point(const std::string& tube, const std::string& name, double x, double y, double z) {
  const auto inches = [](double v) { return "\"" + std::to_string(v) + " in\"\n"; };
  return "[tubes.tube." + tube + ".point." + name + "]\nx = " + inches(x) + "y = " + inches(y) + "z = " + inches(z);
}

/// Along x for 10 in, then to the right for 6, then up for 8: two right angles on a die of 1 in that grips 1 in, and
/// springs back from 100 to 90 deg.
/// Of steel that carries oil, unless `more` says otherwise.
inline std::string bent_line(const std::string& more = "", double middle = 6) {
  const auto unless = [&](const char* key, const char* value) {
    return more.find(key) == std::string::npos ? std::string(key) + " = \"" + value + "\"\n" : std::string();
  };
  return "[tubes.die.quarter]\nradius = \"1 in\"\nstraight = \"1 in\"\nbent_to = \"100 deg\"\ncame_to = \"90 deg\"\n"
         "[tubes.tube.a]\noutside = \"0.25 in\"\nwall = \"0.035 in\"\ndie = \"quarter\"\n" +
         unless("material", "steel") + unless("carries", "oil") + more + point("a", "p", 0, 0, 0) + point("a", "q", 10, 0, 0) + point("a", "r", 10, middle, 0) +
         point("a", "s", 10, middle, 8);
}

inline Judging still(const std::string& change) { return Judging(hand_car(change), "hot-idle"); }
inline tubes::Model lines_of(const std::string& change) { return resolved<tubes::System>(hand_car(change)).model; }

}  // namespace sw::rig
