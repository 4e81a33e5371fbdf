#pragma once
// The hand car with a small second belt whose geometry is done by hand: two 6 in pulleys 10 in apart, the second to the
// right of the crank and above it; free spans of 10 in, half round each.
#include <string>

namespace sw::rig {

inline const std::string ribbed = "section = \"ribbed\"\n";
/// `of_belt`: lines of the belt itself; what is added after it goes to the second pulley.
inline std::string two_pulleys(const std::string& of_belt = ribbed) {
  return "[belts.belt.side]\ncrank_diameter = \"6 in\"\ntension = \"90 lbf\"\n" + of_belt +
         "[belts.belt.side.pulley.steering]\ndrives = \"steering\"\ndiameter = \"6 in\"\ntorque = \"10 lb-ft\"\n"
         "x = \"8 in\"\ny = \"6 in\"\ndepth = \"0.05 in\"\n";
}

}  // namespace sw::rig
