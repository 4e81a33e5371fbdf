#pragma once
// Pieces cut from sticks with the least of them opened: first the least length of stick, then the fewest sticks. Each
// cut takes `kerf`; a piece that ends where its stick ends needs none there. Exact by branch and bound from the
// first-fit-decreasing plan on; where `most_steps` are not enough, the best plan found, marked as not proved. Lengths
// of one unit. Source: the cutting-stock problem, any text on operations research.
#include <cstddef>
#include <optional>
#include <span>
#include <vector>

namespace sw::physics {

struct StickKind {
  double length;
  int count;  ///< on hand
};
struct CutPlan {
  std::vector<std::size_t> opened;    ///< [k]: kind of the k-th stick that is cut
  std::vector<std::size_t> stick_of;  ///< [i]: which of those piece i comes from
  double opened_length = 0;
  bool proved = false;  ///< that nothing less does
};

inline constexpr std::size_t most_cutting_steps = 2'000'000;

/// Empty: no plan was found; `gave_up` tells whether the search ended before all had been tried.
std::optional<CutPlan> cut_plan(std::span<const double> pieces, std::span<const StickKind> sticks, double kerf,
                                bool& gave_up, std::size_t most_steps = most_cutting_steps);

}  // namespace sw::physics
