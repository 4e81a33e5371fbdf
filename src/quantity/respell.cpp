#include "quantity/respell.hpp"

#include <algorithm>
#include <utility>

#include "quantity/unit_table.hpp"
#include "quantity/words.hpp"

namespace sw {
namespace {

using Pair = std::pair<std::string_view, std::string_view>;

/// Small letters only; each means one thing in every field. Quotients stand in brackets, so that they may be factors.
constexpr Pair names[] = {
    {"inch", "in"},       {"inches", "in"},      {"ins", "in"},      {"foot", "ft"},        {"feet", "ft"},
    {"yard", "yd"},       {"yards", "yd"},       {"miles", "mile"},  {"thous", "thou"},     {"metre", "m"},
    {"metres", "m"},      {"meter", "m"},        {"meters", "m"},    {"millimetre", "mm"},  {"millimetres", "mm"},
    {"millimeter", "mm"}, {"millimeters", "mm"}, {"mms", "mm"},      {"centimetres", "cm"}, {"centimeters", "cm"},
    {"kilometres", "km"}, {"kilometers", "km"},  {"lbs", "lb"},      {"pound", "lb"},       {"pounds", "lb"},
    {"kgs", "kg"},        {"kilo", "kg"},        {"kilos", "kg"},    {"kilogram", "kg"},    {"kilograms", "kg"},
    {"gram", "g"},        {"grams", "g"},        {"ounce", "oz"},    {"ounces", "oz"},      {"sec", "s"},
    {"secs", "s"},        {"second", "s"},       {"seconds", "s"},   {"mins", "min"},       {"minute", "min"},
    {"minutes", "min"},   {"hr", "h"},           {"hrs", "h"},       {"hour", "h"},         {"hours", "h"},
    {"days", "day"},      {"weeks", "week"},     {"years", "year"},  {"amp", "A"},          {"amps", "A"},
    {"ampere", "A"},      {"amperes", "A"},      {"milliamp", "mA"}, {"milliamps", "mA"},   {"volt", "V"},
    {"volts", "V"},       {"millivolts", "mV"},  {"watt", "W"},      {"watts", "W"},        {"kilowatt", "kW"},
    {"kilowatts", "kW"},  {"horsepower", "hp"},  {"bhp", "hp"},      {"ohms", "ohm"},       {"kohms", "kohm"},
    {"degree", "deg"},    {"degrees", "deg"},    {"degs", "deg"},    {"turn", "rev"},       {"turns", "rev"},
    {"revs", "rev"},      {"pulses", "pulse"},   {"percent", "%"},   {"gallon", "gal"},     {"gallons", "gal"},
    {"gals", "gal"},      {"quart", "qt"},       {"quarts", "qt"},   {"litre", "L"},        {"litres", "L"},
    {"liter", "L"},       {"liters", "L"},       {"ltr", "L"},       {"ccs", "cc"},         {"ccm", "cm3"},
    {"cid", "in3"},       {"lph", "(L/h)"},      {"lpm", "(L/min)"}, {"kph", "(km/h)"},     {"kmh", "(km/h)"},
    {"kmph", "(km/h)"},   {"lbft", "lb ft"},     {"ftlb", "lb ft"},  {"ftlbs", "lb ft"},
};
/// Of a unit as a whole, once its dots are blanks and its letters small.
constexpr Pair wholes[] = {
    {"in hg", "inHg"},        {"in-hg", "inHg"},       {"inches hg", "inHg"},  {"inches of mercury", "inHg"},
    {"in h2o", "inH2O"},      {"inches h2o", "inH2O"}, {"cu in", "in3"},       {"cubic inches", "in3"},
    {"cubic inch", "in3"},    {"cu ft", "ft3"},        {"cubic feet", "ft3"},  {"sq in", "in2"},
    {"square inches", "in2"}, {"sq ft", "ft2"},        {"square feet", "ft2"}, {"cu cm", "cm3"},
};
constexpr Pair temperatures[] = {
    {"c", "degC"}, {"celsius", "degC"}, {"centigrade", "degC"}, {"f", "degF"}, {"fahrenheit", "degF"}};

bool is_letter(char c) { return (c >= 'a' && c <= 'z') || (c >= 'A' && c <= 'Z'); }

std::string lower(std::string_view text) {
  std::string out(text);
  for (char& c : out)
    if (c >= 'A' && c <= 'Z') c = static_cast<char>(c - 'A' + 'a');
  return out;
}

std::string_view found(std::span<const Pair> list, std::string_view name) {
  for (auto& [written, meant] : list)
    if (written == name) return meant;
  return {};
}

/// Signs in plain letters and dots after words as blanks: `°f`, `ft.lbs`.
std::string plain(std::string_view text) {
  std::string out;
  for (std::size_t i = 0; i < text.size(); ++i) {
    if (const Sign s = sign_at(text.substr(i)); s.length > 0) {
      out += s.plain;
      i += s.length - 1;
    } else {
      const char c = text[i] == '.' && !out.empty() && is_letter(out.back()) ? ' ' : text[i];
      if (c != ' ' || (!out.empty() && out.back() != ' ')) out += c;
    }
  }
  return std::string(trimmed(out));
}

bool has_own_name(std::string_view name) {
  const auto table = named_units();
  return std::any_of(table.begin(), table.end(), [&](auto& u) { return u.name == name; });
}

/// `MA` is not `mA`: a prefix whose case was changed is another prefix.
bool other_prefix(std::string_view written, std::string_view known) {
  return (known[0] == 'm' || known[0] == 'M') && written[0] != known[0] && !has_own_name(known);
}

/// The one unit that differs from `name` in case alone; `fitting` restricts it to those of the kind.
std::string_view in_other_case(std::string_view name, const Kind& kind, bool fitting) {
  std::string_view one;
  const std::string small = lower(name);
  if (name == "M") return {};
  if (name == "MM") return "mm";  // of drawings in capitals; nobody measures in megametres
  for (auto known : unit_names()) {
    if (known.size() != name.size() || lower(known) != small) continue;
    const auto unit = find_unit(known);
    if (fitting && (unit->dimension != kind.dimension || (unit->gauge && !kind.wire_gauge))) continue;
    if (!one.empty() && find_unit(one)->factor != unit->factor) return {};
    one = known;
  }
  return one.empty() || other_prefix(name, one) ? std::string_view{} : one;
}

std::string_view letters_at(std::string_view text, std::size_t at) {
  std::size_t end = at;
  while (end < text.size() && is_letter(text[end])) ++end;
  return text.substr(at, end - at);
}

/// `KM/H` is `km/h`: a product or quotient that the kind offers, in another case.
std::string_view offered_in_other_case(std::string_view text, const Kind& kind) {
  std::string_view one;
  for (auto unit : kind.units) {
    if (unit == text || unit.size() != text.size() || lower(unit) != lower(text)) continue;
    for (std::size_t i = 0; i < unit.size(); ++i) {
      const auto name = letters_at(unit, i);
      if (name.empty()) continue;
      if (other_prefix(text.substr(i), name)) return {};
      i += name.size() - 1;
    }
    if (!one.empty()) return {};
    one = unit;
  }
  return one;
}

/// The scale after `deg`, or where a temperature is meant anyway; moves `end` beyond what it took.
std::string_view scale(std::string_view text, std::string_view name, std::size_t& end) {
  if (const auto whole = found(temperatures, lower(name)); !whole.empty()) return whole;
  const std::string small = lower(name);
  if (small != "deg" && small != "degree" && small != "degrees") return {};
  const std::size_t next = std::min(text.find_first_not_of(' ', end), text.size());
  const auto letter = letters_at(text, next);
  const auto whole = found(temperatures, lower(letter));
  if (!whole.empty()) end = next + letter.size();
  return whole;
}

}  // namespace

std::optional<std::string> respelled(std::string_view unit, const Kind& kind) {
  constexpr std::size_t longest = 40;  // no unit anybody writes is longer
  const std::string text = plain(unit);
  if (text.empty() || text.size() > longest) return std::nullopt;
  if (const auto whole = found(wholes, lower(text)); !whole.empty()) return std::string(whole);
  const bool one_name = letters_at(text, 0).size() == text.size();
  if (const auto whole = one_name ? std::string_view{} : offered_in_other_case(text, kind); !whole.empty())
    return std::string(whole);
  std::string out;
  for (std::size_t i = 0; i < text.size();) {
    const auto name = letters_at(text, i);
    std::size_t end = i + std::max<std::size_t>(name.size(), 1);
    std::string_view meant;
    if (!name.empty() && kind.dimension.temperature != 0) meant = scale(text, name, end);
    if (meant.empty() && !name.empty() && !find_unit(name)) {
      meant = found(names, lower(name));
      if (meant.empty()) meant = in_other_case(name, kind, one_name);
    }
    out += meant.empty() ? std::string_view(text).substr(i, end - i) : meant;
    i = end;
  }
  return out == unit ? std::nullopt : std::optional(out);
}

std::optional<GaugeText> gauge_in(std::string_view text) {
  const std::string small = lower(text);
  for (std::string_view ending : {"awg", "gauge", "gage", "ga.", "ga"}) {
    if (!small.ends_with(ending)) continue;
    const std::size_t at = text.size() - ending.size();
    const bool after_number = at > 0 && !is_letter(text[at - 1]);
    if (after_number || text.ends_with("AWG")) return GaugeText{trimmed(text.substr(0, at)), text.substr(at)};
  }
  if (text.size() == 3 && text.ends_with("/0")) return GaugeText{text, text.substr(text.size())};
  return std::nullopt;
}

}  // namespace sw
