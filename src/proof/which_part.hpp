#pragma once
// Which part to change: of all that was tried from the shelf the one that mends most of what fails, and where no single
// one mends all, two that do.
#include "proof/changed.hpp"
#include "proof/swaps.hpp"

namespace sw {

/// The car as it is, with all that is known of it.
struct Standing {
  const Build& build;
  const DutySet& set;
  const std::vector<bool>& wanted;  ///< duties looked at
  const std::vector<Judged>& base;
  const Study& study;
  std::span<const double> half_widths;  ///< of every judgement, same index as the base
  const std::vector<bool>& fails;       ///< of every judgement, clear of its doubt
};

/// `Of single shelf parts high-idle-180 as charging.alternator leaves 1 of 7 failing.` and where two together leave
/// nothing, those. Each is tried on the car in every duty looked at and with the doubt of its own sheet; none that
/// makes something else fail or takes a figure away is named. Empty where no part leaves fewer failing.
std::string which_part(const Standing& now, const std::vector<Swap>& tried);

}  // namespace sw
