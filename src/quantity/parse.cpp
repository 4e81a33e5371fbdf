#include "quantity/parse.hpp"

#include <algorithm>
#include <charconv>
#include <cmath>

#include "quantity/respell.hpp"
#include "quantity/wire_gauge.hpp"
#include "quantity/words.hpp"

namespace sw {
namespace {

bool is_digit(char c) { return c >= '0' && c <= '9'; }

struct NumberTrouble {
  std::string remark, hint;
};
using NumberOrTrouble = std::variant<NumberText, NumberTrouble>;

/// Digits at `at`, as text; empty where there are none.
std::string_view digits_at(std::string_view text, std::size_t at) {
  std::size_t end = at;
  while (end < text.size() && is_digit(text[end])) ++end;
  return text.substr(std::min(at, text.size()), end - std::min(at, text.size()));
}

double whole(std::string_view digits) {
  double value = 0;  // of digits and a point, so it reads; too many of them give infinity, which is checked for
  if (std::from_chars(digits.data(), digits.data() + digits.size(), value).ec != std::errc{}) return INFINITY;
  return value;
}

/// `a/b` at `at`: both whole, nothing between. None where there is no such thing.
struct Fraction {
  double above, below;
  std::size_t end;
};
std::optional<Fraction> fraction_at(std::string_view text, std::size_t at) {
  const auto above = digits_at(text, at);
  if (above.empty() || at + above.size() >= text.size() || text[at + above.size()] != '/') return std::nullopt;
  const auto below = digits_at(text, at + above.size() + 1);
  if (below.empty()) return std::nullopt;
  return Fraction{whole(above), whole(below), at + above.size() + 1 + below.size()};
}

/// `1,500`: three digits after each comma, one to three before, and no nought in front; where it ends. So the
/// trade writes thousands; a decimal comma is told by any other count of digits.
std::optional<std::size_t> thousands_at(std::string_view text, std::size_t start) {
  const auto first = digits_at(text, start);
  if (first.empty() || first.size() > 3 || first[0] == '0') return std::nullopt;
  std::size_t end = start + first.size();
  while (end < text.size() && text[end] == ',') {
    const auto group = digits_at(text, end + 1);
    if (group.size() != 3) return std::nullopt;
    end += 4;
  }
  return end > start + first.size() ? std::optional(end) : std::nullopt;
}

NumberOrTrouble finish(double value, std::size_t used, std::string_view text) {
  if (!std::isfinite(value)) return NumberTrouble{"which is too large a number", {}};
  const std::string_view rest = text.substr(used);
  if (rest.starts_with(',') && rest.size() > 1 && is_digit(rest[1])) {
    const auto after = digits_at(rest, 1);
    const std::string before(text.substr(0, used));
    const bool point = before.find('.') != std::string::npos || rest.substr(1 + after.size()).find_first_of(".,") == 0;
    return NumberTrouble{"which has a comma in a number", point ? "write it without commas, with one decimal point"
                                                                : "write " + before + "." + shown(after)};
  }
  if (rest.starts_with('.')) return NumberTrouble{"which has a second decimal point", {}};
  return NumberText{value, used};
}

/// A number whose thousands are parted by commas; `end` is where they end.
NumberOrTrouble with_thousands(std::string_view text, std::size_t start, std::size_t end, double sign) {
  std::string plain;
  for (char c : text.substr(start, end - start))
    if (c != ',') plain += c;
  const auto places = end < text.size() && text[end] == '.' ? digits_at(text, end + 1) : std::string_view{};
  if (!places.empty()) end += 1 + places.size();
  plain.append(places.empty() ? "" : ".").append(places);
  return finish(sign * whole(plain), end, text);
}

/// The part after the sign: a fraction, a mixed number or a decimal.
NumberOrTrouble unsigned_number(std::string_view text, std::size_t start, double sign) {
  constexpr std::string_view by_zero = "which divides by zero";
  if (const auto f = fraction_at(text, start)) {
    if (f->below == 0) return NumberTrouble{std::string(by_zero), {}};
    return finish(sign * f->above / f->below, f->end, text);
  }
  if (const auto end = thousands_at(text, start)) return with_thousands(text, start, *end, sign);
  const auto first = digits_at(text, start);
  const std::size_t after = start + first.size();
  if (!first.empty() && after < text.size() && (text[after] == ' ' || text[after] == '-')) {
    if (const auto f = fraction_at(text, after + 1)) {
      if (f->below == 0) return NumberTrouble{std::string(by_zero), {}};
      if (!(f->above < f->below)) return NumberTrouble{"whose fraction is not below one", {}};
      return finish(sign * (whole(first) + f->above / f->below), f->end, text);
    }
  }
  double value = 0;
  const auto [end, error] = std::from_chars(text.data() + start, text.data() + text.size(), value);
  if (error == std::errc::invalid_argument) return NumberTrouble{"which does not begin with a number", {}};
  if (error != std::errc{}) return NumberTrouble{"whose number is too large or too small", {}};
  return finish(sign * value, static_cast<std::size_t>(end - text.data()), text);
}

NumberOrTrouble read_number(std::string_view text) {
  std::size_t start = 0;
  double sign = 1;
  if (!text.empty() && (text[0] == '-' || text[0] == '+')) {
    sign = text[0] == '-' ? -1 : 1;
    start = 1;
  }
  // from_chars would take a second sign, "inf" and "nan"; a number begins with a digit or a point.
  const bool digit = start < text.size() && is_digit(text[start]);
  const bool point = start + 1 < text.size() && text[start] == '.' && is_digit(text[start + 1]);
  if (!digit && !point) return NumberTrouble{"which does not begin with a number", {}};
  return unsigned_number(text, start, sign);
}

std::variant<Parsed, TextFault> parse_wire(std::string_view text, const GaugeText& gauge, const Kind& kind) {
  if (!kind.wire_gauge) return value_fault(text, kind, "which is a wire size");
  const auto n = parse_gauge(gauge.number);
  if (!n) return value_fault(text, kind, "which is no American wire gauge", "gauges run from 4/0 to 56");
  return Parsed{gauge_area(*n), static_cast<double>(*n), gauge.unit};
}

/// `4/0` is a gauge where a wire's size is asked; elsewhere it is a fraction that cannot be.
std::optional<GaugeText> wire_in(std::string_view text, const Kind& kind) {
  const auto gauge = gauge_in(text);
  return gauge && gauge->unit.empty() && !kind.wire_gauge ? std::nullopt : gauge;
}

/// A cold cranking current is told by the test's name: `800 CCA`.
std::string test_current(std::string_view number, std::string_view unit, const Kind& kind) {
  if (kind.dimension != dim::current) return {};
  for (std::string_view test : {"CCA", "cca", "CA", "MCA", "A CCA", "A EN"})
    if (unit == test) return "write " + std::string(trimmed(number)) + " A";
  return {};
}

/// What the text itself rules out, whatever number and unit it holds.
std::optional<TextFault> text_fault(std::string_view text, const Kind& kind) {
  if (text.empty()) return value_fault(text, kind, "which is empty");
  if (const auto foreign = foreign_character(text))
    return value_fault(text, kind, "whose character " + std::to_string(foreign->place) + " cannot stand in a value",
                       std::string(foreign->hint));
  return std::nullopt;
}

std::optional<TextFault> range_fault(std::string_view text, double si, const Kind& kind) {
  if (!std::isfinite(si)) return value_fault(text, kind, "which is beyond all measure");
  if (kind.reference != Reference::absolute || si >= 0) return std::nullopt;
  if (kind.dimension == dim::temperature) return value_fault(text, kind, "which is below absolute zero");
  return value_fault(text, kind, "which is below a perfect vacuum", "this pressure counts from a perfect vacuum");
}

}  // namespace

std::optional<NumberText> parse_number(std::string_view text) {
  auto read = read_number(text);
  if (auto* number = std::get_if<NumberText>(&read)) return *number;
  return std::nullopt;
}

std::variant<Parsed, TextFault> parse_quantity(std::string_view text, const Kind& kind) {
  text = trimmed(text);
  if (auto fault = text_fault(text, kind)) return std::move(*fault);
  if (const auto gauge = wire_in(text, kind)) return parse_wire(text, *gauge, kind);
  auto read = read_number(text);
  if (auto* trouble = std::get_if<NumberTrouble>(&read))
    return value_fault(text, kind, std::move(trouble->remark), std::move(trouble->hint));
  const NumberText number = std::get<NumberText>(read);
  const std::string_view unit_text = trimmed(text.substr(number.used));
  auto unit = parse_unit_for(unit_text, kind);
  if (auto* fault = std::get_if<TextFault>(&unit)) {
    if (unit_text.empty()) fault->remark = "which has no unit";
    if (auto hint = test_current(text.substr(0, number.used), unit_text, kind); !hint.empty()) fault->hint = hint;
    return value_fault(text, kind, std::move(fault->remark), std::move(fault->hint));
  }
  const double si = to_si(number.value, std::get<Unit>(unit));
  if (auto fault = range_fault(text, si, kind)) return std::move(*fault);
  return Parsed{si, number.value, unit_text};
}

std::variant<Guess, TextFault> parse_any(std::string_view text) {
  text = trimmed(text);
  Guess guess{};
  for (const Kind* kind : all_kinds()) {
    const auto read = parse_quantity(text, *kind);
    const auto* parsed = std::get_if<Parsed>(&read);
    if (!parsed) continue;
    if (guess.kinds.empty()) guess.si = parsed->si, guess.unit = parsed->unit;
    guess.kinds.push_back(kind);
  }
  if (!guess.kinds.empty()) return guess;
  // Either a fault, or a unit no kind has: `3 m/(km/h)^2`.
  auto fault = [text](std::string remark, std::string hint) {
    return TextFault{shown(text), "a value such as \"12.5 psi\"", std::move(remark), std::move(hint)};
  };
  const auto as_number = parse_quantity(text, kind::number);
  const auto& why = std::get<TextFault>(as_number);
  const auto number = parse_number(text);
  const auto gauge = gauge_in(text);
  if (foreign_character(text) || !number || gauge) {
    if (!gauge) return fault(why.remark, why.hint);
    return fault("which is no American wire gauge", "gauges run from 4/0 to 56");
  }
  guess.unit = trimmed(text.substr(number->used));
  auto unit = parse_unit(guess.unit);
  if (auto* bad = std::get_if<TextFault>(&unit)) return fault(std::move(bad->remark), std::move(bad->hint));
  guess.si = to_si(number->value, std::get<Unit>(unit));
  if (!std::isfinite(guess.si)) return fault("which is beyond all measure", {});
  return guess;
}

}  // namespace sw
