#pragma once
// When something is closed or on: words for what the key, the engine, the road and the weather do, joined in small
// tables. A table is a list of lines; one line that holds is enough. A line is words joined by `and`, any of them with
// `not` before it: `["start", "running and oil-pressure and not hit"]`.
#include <optional>
#include <string>
#include <string_view>
#include <vector>

#include "model/duty.hpp"

namespace sw::wiring {

/// Words beside the duty's conditions, which come first and keep their bits: `turning` while the engine turns, key on
/// or not; `oil-pressure` while the engine's oil pressure is up; `in-gear`; `hit` once the car has been hit or lies on
/// its side; `prime` for the seconds after the key comes on; `after-run` for the minutes a controller holds itself on
/// after the key went off; `hot` above the fan's set-point; `high-side` at the air conditioning's pressure switch.
enum class Word : unsigned {
  turning = static_cast<unsigned>(std::size(condition_names)),
  oil_pressure,
  in_gear,
  hit,
  prime,
  after_run,
  hot,
  high_side
};
inline constexpr std::string_view further_words[] = {"turning", "oil-pressure", "in-gear", "hit",
                                                     "prime",   "after-run",    "hot",     "high-side"};
constexpr unsigned bit(Word w) { return 1u << static_cast<unsigned>(w); }

struct Logic {
  struct Line {
    unsigned all = 0, none = 0;  ///< bits that must and must not be set
  };
  std::vector<Line> lines;
  bool holds(unsigned state) const;
  /// Every word named in it.
  unsigned words() const;
};

struct LogicRead {
  Logic logic;
  std::vector<ConditionBits::Problem> problems;
};
LogicRead read_logic(const std::vector<std::string>& lines);

/// The state a duty's conditions stand for: the engine turns while it runs or is cranked, and has oil pressure while it
/// runs; nobody has been hit.
unsigned state_of(unsigned conditions);

}  // namespace sw::wiring
