#include "systems/wiring/logic.hpp"

#include <algorithm>
#include <sstream>

#include "field/tree.hpp"

namespace sw::wiring {
namespace {

std::vector<std::string_view> all_words() {
  std::vector<std::string_view> all(std::begin(condition_names), std::end(condition_names));
  all.insert(all.end(), std::begin(further_words), std::end(further_words));
  return all;
}

ConditionBits::Problem unknown(const std::string& word, const std::vector<std::string_view>& all) {
  std::string text;
  for (auto known : all) text += (text.empty() ? "" : ", ") + std::string(known);
  const auto near = nearest(word, all);
  return {"\"" + word + "\" is none of " + text,
          near.empty() ? "words are joined by \"and\", with \"not\" before those that must not be"
                       : "did you mean \"" + std::string(near) + "\"?"};
}

/// One line: words and `not` in turn with `and`.
void read_line(const std::string& line, LogicRead& out) {
  static const auto all = all_words();
  std::istringstream in(line);
  Logic::Line read;
  bool want_word = true, negated = false, sound = true;
  const auto fault = [&](std::string what, std::string hint) {
    out.problems.push_back({std::move(what), std::move(hint)});
    sound = false;
  };
  for (std::string word; sound && in >> word;) {
    if (!want_word) {
      if (word != "and")
        fault("\"" + line + "\" lacks \"and\" before \"" + word + "\"", "several lines are joined by or");
      want_word = true;
    } else if (word == "not" && !negated) {
      negated = true;
    } else {
      const auto it = std::find(all.begin(), all.end(), word);
      if (it == all.end()) {
        out.problems.push_back(unknown(word, all));
        sound = false;
      } else {
        (negated ? read.none : read.all) |= 1u << (it - all.begin());
        want_word = negated = false;
      }
    }
  }
  if (!sound) return;
  if (want_word) return fault("\"" + line + "\" ends where a word is wanted", "as in \"running and not hit\"");
  if (read.all & read.none) return fault("\"" + line + "\" asks for a word and its contrary", "it would never hold");
  out.logic.lines.push_back(read);
}

}  // namespace

bool Logic::holds(unsigned state) const {
  return std::any_of(lines.begin(), lines.end(),
                     [&](const Line& l) { return (state & l.all) == l.all && (state & l.none) == 0; });
}

unsigned Logic::words() const {
  unsigned bits = 0;
  for (auto& l : lines) bits |= l.all | l.none;
  return bits;
}

LogicRead read_logic(const std::vector<std::string>& lines) {
  LogicRead out;
  for (auto& line : lines) read_line(line, out);
  return out;
}

unsigned state_of(unsigned conditions) {
  unsigned state = conditions;
  if (conditions & (bit(Condition::running) | bit(Condition::start))) state |= bit(Word::turning);
  if (conditions & bit(Condition::running)) state |= bit(Word::oil_pressure);
  return state;
}

}  // namespace sw::wiring
