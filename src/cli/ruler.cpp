#include "cli/ruler.hpp"

#include <algorithm>
#include <cmath>
#include <vector>

namespace sw::cli {
namespace {

constexpr double linear_share = 0.5;  ///< to here distance is in proportion; beyond, all the rest is pressed together

/// Signs, one a cell. The last filled cell of a bar may be filled in part, from the left.
struct Signs {
  std::string_view bar, doubt_on_bar, whisker, tick, crossed, notch, outline_start, outline;
  std::vector<std::string_view> part;  ///< of the bar's end, thinnest first
};
const Signs& signs(bool unicode) {
  static const Signs blocks{"█", "▒", "─", "│", "┼", "▀", "╞", "═", {"▏", "▎", "▍", "▌", "▋", "▊", "▉"}};
  static const Signs plain{"#", "=", "-", "|", "+", "v", "[", "_", {}};
  return unicode ? blocks : plain;
}

/// Distance from the tick in cells, positive to the left, for a share of the scale.
double distance(double share, int reach) {
  const double linear = std::round(reach * 0.7), rest = reach - linear, size = std::abs(share);
  const double cells = size <= linear_share ? linear * size / linear_share : linear + rest * (1 - linear_share / size);
  return std::copysign(cells, share);
}

/// From the ruler's left end: where the solid bar ends, where the bar with doubt on it ends, where the whisker ends.
struct Extent {
  double solid, bar, whisker;
};

/// `clear`: cells by which bar and whisker of a settled state keep off the tick.
Extent extent(const RulerMark& m, int reach, double clear) {
  const double length = 2.0 * reach + 1, middle = reach + 0.5;
  if (m.bare) {
    const double end = m.state == State::holds ? reach - clear : length;
    return {end, end, end};
  }
  Extent e{middle - distance(m.share + m.doubt, reach), middle - distance(m.share, reach),
           middle - distance(m.share - m.doubt, reach)};
  // However near the figures come to the tick, the form says the state.
  if (m.state == State::holds) {
    const double end = reach - clear;
    e = {std::min(e.solid, end), std::min(e.bar, end), std::min(e.whisker, end)};
  } else if (m.state == State::fails) {
    const double start = reach + 1 + clear;
    e = {std::max(e.solid, start), std::max(e.bar, start), std::max(e.whisker, start)};
  } else {
    e.solid = std::min(e.solid, static_cast<double>(reach));
    e.whisker = std::max(e.whisker, reach + 1.5);
  }
  e.whisker = std::min(e.whisker, length);
  return e;
}

std::string_view cell_sign(const Extent& e, double at, const Signs& s) {
  const double filled = e.bar - at;
  if (filled > 0 && at + 0.5 >= e.solid && at + 0.5 < e.bar) return s.doubt_on_bar;
  if (filled >= 1) return s.bar;
  if (filled > 0 && e.whisker <= at + 1) {
    if (s.part.empty()) return filled >= 0.5 ? s.bar : " ";
    const auto eighths = static_cast<std::size_t>(std::lround(filled * 8));
    return eighths == 0 ? " " : eighths >= 8 ? s.bar : s.part[eighths - 1];
  }
  if (filled >= 0.5) return e.solid <= at ? s.doubt_on_bar : s.bar;
  return e.whisker > at + 0.25 ? s.whisker : " ";
}

std::string draw_outline(int reach, const Signs& s) {
  std::string out(s.outline_start);
  for (int i = 1; i < reach; ++i) out += s.outline;
  return out + std::string(s.tick) + std::string(static_cast<std::size_t>(reach), ' ');
}

}  // namespace

RulerMark ruler_mark(const Finding& f) {
  const double scale = f.scale > 0 ? f.scale : 1.0;
  return {f.state, f.share(), f.half_width / scale, !f.margin};
}

int ruler_reach(int page_width) { return page_width < 60 ? 7 : page_width < 80 ? 10 : page_width < 120 ? 14 : 18; }

std::string draw_ruler(const RulerMark& mark, int reach, bool unicode) {
  const Signs& s = signs(unicode);
  if (mark.state == State::unproven) return draw_outline(reach, s);
  const Extent e = extent(mark, reach, s.part.empty() ? 1.0 : 0.5);
  std::string out;
  for (int i = 0; i < 2 * reach + 1; ++i) {
    if (i != reach)
      out += cell_sign(e, i, s);
    else
      out += mark.state == State::holds ? s.tick : mark.state == State::fails ? s.notch : s.crossed;
  }
  return out;
}

}  // namespace sw::cli
