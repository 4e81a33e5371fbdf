#pragma once
// What a law of one variable returns. Laws of several variables have result structs of their own beside them.
namespace sw::physics {

struct Slope {
  double value = 0;
  double slope = 0;   ///< d value / d argument
  bool valid = true;  ///< false: the argument lies outside the law's range; value and slope are its continuation
};

}  // namespace sw::physics
