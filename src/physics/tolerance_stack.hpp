#pragma once
// How far a length that is put together of others may be off, from how far each of them may.
//
//   worst case    t = sum of t_i           every one off at once, and the wrong way
//   statistical   t = sqrt(sum of t_i^2)   independent, each as likely off one way as the other: for normal lengths a
//   band
//                                          of the same share as theirs
// Symbols: t_i half-widths of the bands, m or any one unit. Range: lengths that add with a factor of 1 or -1;
// statistical: several independent lengths, none of which outweighs the others. Source: Shigley's Mechanical
// Engineering Design, on dimensions and tolerances, its worked stack of a screw with three sleeves (from memory). That
// few are judged by the worst case and many statistically is common practice.
#include <cstddef>
#include <span>

namespace sw::physics {

struct ToleranceStack {
  double worst_case = 0, statistical = 0;
  std::size_t greatest = 0;  ///< which is farthest off; the first of equals
};
ToleranceStack tolerance_stack(std::span<const double> half_widths);

}  // namespace sw::physics
