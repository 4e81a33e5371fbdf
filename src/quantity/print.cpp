#include "quantity/print.hpp"

#include <algorithm>
#include <array>
#include <charconv>
#include <cmath>
#include <optional>

#include "quantity/wire_gauge.hpp"

namespace sw {
namespace {

constexpr double gauge_share = 0.005;        // area within this of a gauge is shown as that gauge
constexpr double exact_gauge_share = 1e-13;  // inside what print_exact promises
constexpr int digits_without_doubt = 6, most_digits = 17;
constexpr int clean_digits = 15;  // those a double always keeps
constexpr double dust = 1e-15;    // a few roundings of a double, far inside what print_exact promises

/// An exponent without padding: `1.5e+07` reads `1.5e7`.
std::string tidy_exponent(std::string text) {
  const auto e = text.find('e');
  if (e == std::string::npos) return text;
  std::size_t from = e + 1;
  if (text[from] == '+') text.erase(from, 1);
  if (text[from] == '-') ++from;
  while (text.size() > from + 1 && text[from] == '0') text.erase(from, 1);
  return text;
}

template <class... Format>
std::string written(double value, Format... format) {
  std::array<char, 400> buffer;  // fixed notation of the largest double has 309 digits
  const auto end = std::to_chars(buffer.data(), buffer.data() + buffer.size(), value, format...).ptr;
  return {buffer.data(), end};
}

/// The unit asked for if it measures the kind, else the kind's first: the label always fits the number beside it.
struct Chosen {
  Unit unit;
  std::string_view text;
};
Chosen choose(const Kind& kind, std::string_view unit) {
  auto asked = unit.empty() ? std::variant<Unit, TextFault>(TextFault{}) : parse_unit_for(unit, kind);
  if (auto* fits = std::get_if<Unit>(&asked)) return {*fits, unit};
  const std::string_view first = kind.units.empty() ? std::string_view{} : kind.units[0];
  auto usual = parse_unit_for(first, kind);
  if (auto* fits = std::get_if<Unit>(&usual)) return {*fits, first};
  return {Unit{kind.dimension}, first};
}

std::string with_unit(std::string number, std::string_view unit) {
  if (!unit.empty()) number += ' ' + std::string(unit);
  return number;
}

/// `10 AWG`, or the unit in which an area that is no gauge is shown instead.
std::optional<std::string> gauge_or(double si, double share, Chosen& chosen) {
  if (!chosen.unit.gauge) return std::nullopt;
  if (const auto n = nearest_gauge(si, share)) return gauge_text(*n) + " AWG";
  chosen = {Unit{dim::area, 1e-6}, "mm2"};
  return std::nullopt;
}

}  // namespace

double in_unit(double si, const Unit& unit, const Kind& kind) {
  if (unit.gauge) return gauge_number(si);
  const bool keeps_zero = kind.dimension == dim::temperature && kind.reference == Reference::absolute;
  return (si - (keeps_zero ? unit.offset : 0.0)) / unit.factor;
}

std::string exact_number(double value) { return value == 0 ? "0" : tidy_exponent(written(value)); }

std::string short_number(double value, int digits) {
  if (!std::isfinite(value)) return exact_number(value);
  // Rounded by to_chars to the decimal digits asked for, then read back, so that what is left is shortest.
  const std::string rounded = written(value, std::chars_format::scientific, std::clamp(digits, 1, most_digits) - 1);
  double v = 0;
  std::from_chars(rounded.data(), rounded.data() + rounded.size(), v);
  if (v == 0) return "0";
  const bool plain = std::abs(v) >= 1e-4 && std::abs(v) <= 1e7;
  return tidy_exponent(written(v, plain ? std::chars_format::fixed : std::chars_format::scientific));
}

std::string print(double si, const Kind& kind, std::string_view unit, int digits) {
  Chosen chosen = choose(kind, unit);
  if (auto gauge = gauge_or(si, gauge_share, chosen)) return *gauge;
  return with_unit(short_number(in_unit(si, chosen.unit, kind), digits), chosen.text);
}

std::string print_with_doubt(double si, double half_width, const Kind& kind, std::string_view unit) {
  Chosen chosen = choose(kind, unit);
  if (auto gauge = gauge_or(si, gauge_share, chosen)) return *gauge;
  const double value = std::abs(in_unit(si, chosen.unit, kind));
  const double doubt = std::abs(half_width / chosen.unit.factor);
  int digits = digits_without_doubt;
  if (doubt > 0 && std::isfinite(doubt) && value > 0)
    digits = static_cast<int>(std::clamp(std::floor(std::log10(value)) - std::floor(std::log10(doubt)) + 2, 1.0,
                                         double{digits_without_doubt}));
  return with_unit(short_number(in_unit(si, chosen.unit, kind), digits), chosen.text);
}

std::string print_exact(double si, const Kind& kind, std::string_view unit) {
  Chosen chosen = choose(kind, unit);
  if (auto gauge = gauge_or(si, exact_gauge_share, chosen)) return *gauge;
  const double value = in_unit(si, chosen.unit, kind);
  // The division leaves dust in the last digits: what was written `67.43` shall not come back as `67.42999999999999`.
  const std::string clean = short_number(value, clean_digits);
  double read = 0;
  std::from_chars(clean.data(), clean.data() + clean.size(), read);
  const bool same = std::abs(to_si(read, chosen.unit) - si) <= dust * std::abs(si);
  return with_unit(same ? clean : exact_number(value), chosen.text);
}

}  // namespace sw
