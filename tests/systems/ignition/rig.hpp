#pragma once
// The hand car with an ignition of round figures, for checks by hand.
#include "systems/judged.hpp"

namespace sw::rig {

/// Lines added to the groups of an ignition, and whole groups after it.
struct Lines {
  std::string top, coil, switching, rest;
};

/// 8 mH, 1 ohm, switched by time with 1 V across the switch.
inline std::string module_ignition(const Lines& add = {}) {
  return "[ignition]\ncylinders = 8\n" + add.top +
         "[ignition.coil]\ninductance = \"8 mH\"\nresistance = \"1 ohm\"\ntransfer = { value = 0.5, from = "
         "\"measured\" }\nmost_heat = \"20 W\"\n" +
         add.coil +
         "[ignition.switching]\nby = \"module\"\ndwell_time = \"4 ms\"\ndrop = { value = \"1 V\", from = \"data "
         "sheet\" "
         "}\nmost_current = \"8 A\"\nleast_voltage = \"6 V\"\nstanding = \"cuts off\"\n" +
         add.switching + add.rest;
}

/// 8 mH, 1.5 ohm, points closed for two thirds of the turn.
inline std::string points_ignition(const Lines& add = {}) {
  return "[ignition]\ncylinders = 8\n" + add.top +
         "[ignition.coil]\ninductance = \"8 mH\"\nresistance = \"1.5 ohm\"\n" + add.coil +
         "[ignition.switching]\nby = \"points\"\ndwell_angle = \"30 deg\"\ndrop = { value = \"0.2 V\", from = "
         "\"measured\" }\n" +
         add.switching + add.rest;
}

inline ignition::Model ignition_of(const std::string& text) { return resolved<ignition::System>(hand_car(text)).model; }

}  // namespace sw::rig
