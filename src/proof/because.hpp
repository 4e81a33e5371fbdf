#pragma once
// Because-lists: the figures from cause to effect at the instant that decides, then the inputs that weigh most.
#include "proof/doubt.hpp"

namespace sw {

/// Figures of the requirement's chain at the deciding row, or as means where the verdict is one; cause first, those
/// that cannot be computed left out.
std::vector<Because> chain_of(const Car& car, const Judged& j, const Trace& trace);
/// The inputs that weigh most on judgement `index`, heaviest first.
std::vector<Because> weights_of(const Build& build, const Study& study, std::size_t index, double scale,
                                std::size_t most = 5);

}  // namespace sw
