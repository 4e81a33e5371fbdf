#pragma once
// The ruler: one sign for every verdict. The limit is a tick that always stands in the same column; the bar comes from
// the left and ends short of the tick by the margin as a share of its scale, or beyond it; the whisker is the doubt.
// The four states differ in form before colour.
#include <string>

#include "model/finding.hpp"

namespace sw::cli {

struct RulerMark {
  State state = State::unproven;
  double share = 0;   ///< margin over scale, positive on the good side
  double doubt = 0;   ///< half-width over scale
  bool bare = false;  ///< a rule without a number
};
RulerMark ruler_mark(const Finding& f);

/// Cells on either side of the tick for a page of that width: 7, 10, 14 or 18.
int ruler_reach(int page_width);

/// `2 reach + 1` cells, the tick in cell `reach` counted from 0.
std::string draw_ruler(const RulerMark& mark, int reach, bool unicode);

}  // namespace sw::cli
