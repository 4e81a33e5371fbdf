#pragma once
// Shims under several brackets at once, from the thicknesses on hand, so that every belt span runs inside its limit.
//
// A place stands `depth` behind or before the reference plane; a bracket can be moved forward by a stack of shims, a
// fixed place cannot. A pair of places (a span) is inside where |depth_a + stack_a - depth_b - stack_b| is at most its
// allowance. Of all choices that bring every pair inside, the one with the fewest shims is taken, then the one whose
// worst pair uses least of its allowance, then the thinnest. The search is exhaustive over the stacks that can be made
// (each total by its fewest shims), cut off where a pair of places already chosen is outside or the count is no better.
// Source: our own search; checked against trying out everything.
#include <optional>
#include <span>
#include <vector>

namespace sw::physics {

struct ShimPlace {
  double depth_m = 0;  ///< of the pulley's centre plane now, forward positive
  double room_m = 0;   ///< the thickest stack the bracket's bolts allow; 0: it cannot be moved
};
struct ShimPair {
  std::size_t a = 0, b = 0;
  double allowance_m = 0;  ///< greatest offset between the two
};
struct ShimKind {
  double thickness_m = 0;
  int count = 0;  ///< how many are on hand for all brackets together
};

struct ShimChoice {
  std::vector<std::vector<double>> stack;  ///< of each place: thicknesses, thickest first
  std::vector<double> total_m;             ///< of each place
  int shims = 0;
  double worst_share = 0;  ///< greatest offset over its allowance
};
/// Empty where no choice brings every pair inside. `per_stack`: most shims in one stack.
std::optional<ShimChoice> choose_shims(std::span<const ShimPlace> places, std::span<const ShimPair> pairs,
                                       std::span<const ShimKind> on_hand, int per_stack = 3);

/// One stack, and what it is thick.
struct ShimFill {
  std::vector<double> stack;  ///< thicknesses, thickest first
  double total_m = 0;
};
/// The stack, none too, whose thickness lies nearest to `wanted_m`, from `least_m` to `most_m`; of equals the one of
/// the fewest shims, of these the thinner. Empty where no stack lies between.
std::optional<ShimFill> fill_with_shims(double wanted_m, double least_m, double most_m,
                                        std::span<const ShimKind> on_hand, int per_stack = 3);

}  // namespace sw::physics
