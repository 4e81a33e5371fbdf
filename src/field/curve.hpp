#pragma once
// A curve as the user gives it: rows of x and y, SI inside, x strictly rising (the reader sees to it).
#include <vector>

namespace sw {

struct Curve {
  std::vector<double> x, y;  ///< same length, at least two
  bool operator==(const Curve&) const = default;
};

}  // namespace sw
