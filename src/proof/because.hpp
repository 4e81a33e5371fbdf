#pragma once
// Because-lists: the figures from cause to effect at the instant that decides, then the inputs that weigh most.
#include "proof/doubt.hpp"

namespace sw {

/// Figures of the requirement's chain at the deciding row, or as means where the verdict is one; cause first, those
/// that cannot be computed left out.
std::vector<Because> chain_of(const Car& car, const Judged& j, const Trace& trace);
/// The inputs that weigh most on judgement `index`, heaviest first, all by one measure. Two questions, never mixed:
/// `Role::doubt`, which uncertain input matters most, each moved by its own half-width (what to measure next);
/// `Role::choice`, which part or setting does most, each by a tenth of it (`a_tenth`), to first order (what to change).
std::vector<Because> weights_of(const Build& build, const Study& study, std::size_t index, double scale, Role role,
                                std::size_t most = 5);

}  // namespace sw
