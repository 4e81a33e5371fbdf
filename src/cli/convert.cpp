// convert: a value in other units.
#include <algorithm>
#include <cmath>

#include "cli/page.hpp"
#include "cli/run.hpp"
#include "quantity/parse.hpp"
#include "quantity/print.hpp"

namespace sw::cli {
namespace {

constexpr int digits = 7;

struct Line {
  const Kind* kind;
  std::string value;
};

/// A gauge between two gauges is told as a number, which print() would turn into another unit.
std::string in_words(double si, const Kind& kind, std::string_view text, const Unit& unit) {
  const std::string whole = print(si, kind, text, digits);
  if (!unit.gauge || whole.ends_with("AWG")) return whole;
  return short_number(in_unit(si, unit, kind), 4) + " AWG (between gauges)";
}

int fault(Console& console, const TextFault& f) { return complain(console, "convert: " + f.sentence(), f.hint); }

/// In the one unit asked for: one line for each kind of quantity in which it comes out differently.
int to_one(std::string_view value, const Guess& guess, std::string_view unit, Console& console) {
  std::vector<Line> lines;
  std::optional<TextFault> why;
  for (const Kind* kind : guess.kinds) {
    const auto read = parse_quantity(value, *kind);
    const auto in = parse_unit_for(unit, *kind);
    if (auto* bad = std::get_if<TextFault>(&in); bad && !why) why = *bad;
    if (std::holds_alternative<TextFault>(read) || std::holds_alternative<TextFault>(in)) continue;
    const std::string shown = in_words(std::get<Parsed>(read).si, *kind, unit, std::get<Unit>(in));
    if (std::none_of(lines.begin(), lines.end(), [&](auto& l) { return l.value == shown; }))
      lines.push_back({kind, shown});
  }
  if (lines.empty()) {
    if (why) return fault(console, *why);
    return complain(console, "convert: no quantity here has the unit of \"" + std::string(value) + "\"");
  }
  Page page(console.look);
  for (auto& l : lines) page.line(lines.size() == 1 ? l.value : pad(l.kind->name, 20) + l.value);
  console.out += page.take();
  return exit_code::good;
}

/// The kinds told: first those whose usual unit was written, then those that offer it; the rest only where none does.
/// Inches of mercury are a vacuum before they are anything else, and never a stress.
std::vector<const Kind*> likely(const Guess& guess) {
  const auto rank = [&](const Kind* k) {
    const auto at = std::find(k->units.begin(), k->units.end(), guess.unit) - k->units.begin();
    return at == 0 ? 0 : at < static_cast<std::ptrdiff_t>(k->units.size()) ? 1 : 2;
  };
  auto kinds = guess.kinds;
  std::stable_sort(kinds.begin(), kinds.end(), [&](auto* a, auto* b) { return rank(a) < rank(b); });
  const auto rest = std::find_if(kinds.begin(), kinds.end(), [&](auto* k) { return rank(k) == 2; });
  if (rest != kinds.begin()) kinds.erase(rest, kinds.end());
  return kinds;
}

int to_all(std::string_view value, const Guess& guess, Console& console) {
  Page page(console.look);
  for (const Kind* kind : likely(guess)) {
    const auto read = parse_quantity(value, *kind);
    const auto* parsed = std::get_if<Parsed>(&read);
    if (!parsed) continue;
    std::string all;
    for (auto unit : kind->units) {
      const auto in = parse_unit_for(unit, *kind);
      if (auto* found = std::get_if<Unit>(&in))
        all += (all.empty() ? "" : " · ") + together(in_words(parsed->si, *kind, unit, *found));
    }
    page.text(strong(kind->name) + "  " + all, 0, 2);
  }
  console.out += page.take();
  return exit_code::good;
}

}  // namespace

int run_convert(const Args& args, Console& console) {
  const std::string& value = args.operands.front();
  const auto read = parse_any(value);
  if (auto* bad = std::get_if<TextFault>(&read)) return fault(console, *bad);
  const Guess& guess = std::get<Guess>(read);
  if (guess.kinds.empty())
    return complain(console, "convert: no quantity here has the unit \"" + std::string(guess.unit) + "\"");
  if (args.operands.size() == 1) return to_all(value, guess, console);
  const std::string& unit = args.operands[1];
  // `convert 12.5 psi`: the shell took the value apart.
  if (guess.unit.empty() && std::holds_alternative<TextFault>(parse_unit_for(unit, kind::number)) &&
      std::holds_alternative<Guess>(parse_any(value + " " + unit)))
    return complain(console, "convert: \"" + value + "\" has no unit",
                    "put value and unit in quotation marks: \"" + value + " " + unit + "\"");
  return to_one(value, guess, unit, console);
}

}  // namespace sw::cli
