#include "cli/figures.hpp"

#include <algorithm>
#include <cmath>
#include <limits>

#include "cli/page.hpp"
#include "field/evidence.hpp"
#include "field/measure.hpp"
#include "quantity/print.hpp"
#include "quantity/unit.hpp"

namespace sw::cli {
namespace {

constexpr double nothing = 1e-5;    ///< of the scale
constexpr double no_figure = 1e-6;  ///< of the unit shown: in none a workshop reads is so little anything
constexpr double even_share = 0.7;  ///< of the wider half-width: from here on both sides are told as one

/// By source, in its order.
constexpr std::string_view letters = "smdtcvr";
static_assert(letters.size() == source_names.size());

/// A figure that stands beside no limit: a sensor's and a rule of thumb's three digits, four of what is not small.
constexpr int plain_digits = 4, small_digits = 3, fewest_digits = 3, most_digits = 6;

/// Its number alone in the unit shown; of a gauge none.
std::optional<double> number_of(double si, const Kind& kind, std::string_view unit) {
  auto read = parse_unit_for(unit, kind);
  if (!std::holds_alternative<Unit>(read)) read = parse_unit_for(kind.units.empty() ? "" : kind.units[0], kind);
  const auto* found = std::get_if<Unit>(&read);
  if (!found || found->gauge) return std::nullopt;
  return in_unit(si, *found, kind);
}

/// Places before the point: 3 of 123, 0 of 0.5, -1 of 0.05.
int places(double x) { return x == 0 ? 1 : static_cast<int>(std::floor(std::log10(std::abs(x)))) + 1; }

/// Those a limit was given with; three of one that comes of a conversion or of a law.
int digits_given(double x) {
  for (int digits = 1; digits <= plain_digits + 1; ++digits)
    if (std::abs(std::stod(short_number(x, digits)) - x) <= 1e-9 * std::abs(x)) return digits;
  return fewest_digits;
}

int decimals_of(double x) {
  const std::string text = short_number(x, digits_given(x));
  const auto dot = text.find('.');
  return dot == std::string::npos || text.find('e') != std::string::npos ? 0 : static_cast<int>(text.size() - dot - 1);
}

/// Digits the doubt leaves, two of its own: it takes some away and never adds any.
int by_doubt(double si, double wide, const Finding& f) {
  const double none = std::numeric_limits<double>::quiet_NaN();
  const double value = number_of(si, *f.quantity, f.unit).value_or(none),
               doubt = std::abs(number_of(si + wide, *f.quantity, f.unit).value_or(none) - value);
  if (value == 0 || !(doubt > 0) || !std::isfinite(doubt)) return most_digits;
  return std::clamp(places(value) - places(doubt) + 2, 1, most_digits);
}

/// As it was given, and as many digits as tell it from what is predicted.
std::string limit_value(double si, const Finding& f) {
  const double none = std::numeric_limits<double>::quiet_NaN();
  const double limit = number_of(si, *f.quantity, f.unit).value_or(none),
               off = limit - number_of(f.predicted.value_or(none), *f.quantity, f.unit).value_or(none);
  int digits = std::isfinite(limit) ? digits_given(limit) : plain_digits;
  if (std::isfinite(off) && off != 0) digits = std::max(digits, places(limit) - places(off) + 1);
  return together(print(si, *f.quantity, f.unit, std::min(digits, most_digits)));
}

}  // namespace

int digits_of(double si, const Finding& f) {
  const auto value = number_of(si, *f.quantity, f.unit);
  if (!value) return plain_digits;
  int digits = fewest_digits;
  for (auto& limit : {f.low_limit, f.high_limit}) {
    const auto other = limit ? number_of(*limit, *f.quantity, f.unit) : std::nullopt;
    if (!other) continue;
    digits = std::max(digits, places(*value) + decimals_of(*other));
    if (*value != *other) digits = std::max(digits, places(*value) - places(*value - *other) + 1);
  }
  return std::min(digits, most_digits);
}

Proof in_written_units(Proof proof, const WrittenUnits& units) {
  for (auto& f : proof.findings) {
    f.unit = units.of(*f.quantity, f.unit);
    for (auto& b : f.because) b.unit = units.of(*b.kind, b.unit);
  }
  return proof;
}

std::string with_doubt(const Finding& f) {
  // What is nothing beside the scale is nothing, whatever the solver leaves of it.
  const double si = std::abs(*f.predicted) < nothing * f.scale ? 0.0 : *f.predicted, near = f.half_width,
               far = f.far_width, wide = std::max(near, far);
  const std::string value = together(print(si, *f.quantity, f.unit, std::min(digits_of(si, f), by_doubt(si, wide, f))));
  // A doubt far below the last digit shown, or nothing beside the scale, says nothing.
  if (!(wide > 0) || !std::isfinite(wide) || wide < std::max(1e-6 * std::abs(si), nothing * f.scale)) return value;
  if (std::min(near, far) >= even_share * wide || f.kind == RequirementKind::band)
    return value + together(" ± " + print(wide, step_kind(*f.quantity), f.unit, 2));
  const Span span = *span_of(f);
  auto end = [&](double x) { return together(print_with_doubt(x, wide, *f.quantity, f.unit)); };
  return value + " (" + end(span.low) + " to " + end(span.high) + ")";
}

std::string limit_words(const Finding& f) {
  if (f.low_limit && f.high_limit) return limit_value(*f.low_limit, f) + " to " + limit_value(*f.high_limit, f);
  if (f.high_limit) return limit_value(*f.high_limit, f) + " at most";
  if (f.low_limit) return limit_value(*f.low_limit, f) + " at least";
  return {};
}

std::string measure_words(const Finding& f) {
  if (!f.predicted) return {};
  std::string text = with_doubt(f);
  if (f.low_limit && f.high_limit) return text + " where " + limit_words(f) + " is wanted";
  if (f.high_limit) return text + " where " + limit_value(*f.high_limit, f) + " is the most";
  if (f.low_limit) return text + " where " + limit_value(*f.low_limit, f) + " is the least";
  return text;
}

bool flows_nothing(const Finding& f) {
  const bool electric = f.quantity == &kind::current || f.quantity == &kind::voltage;
  return electric && f.kind == RequirementKind::most && f.predicted && std::abs(*f.predicted) < 1e-6 * f.scale;
}

std::string because_value(const Because& b) {
  if (!b.text.empty()) return clean(b.text);
  const auto value = number_of(b.value, *b.kind, b.unit);
  const double shown = value && std::abs(*value) < no_figure ? 0.0 : b.value;
  return together(print(shown, *b.kind, b.unit, value && std::abs(*value) < 1 ? small_digits : plain_digits));
}

std::string EvidenceMarks::mark(Source source) {
  used_.insert(source);
  return together(" (") + letters[static_cast<std::size_t>(source)] + ")";
}

std::string EvidenceMarks::mark(const Because& b) {
  // Where nobody chose, a mark would say that somebody did.
  if (!b.evidence || (b.evidence->defaulted && b.evidence->source == Source::chosen)) return {};
  return mark(b.evidence->source);
}

std::string EvidenceMarks::legend() const {
  std::string text;
  for (Source s : used_)
    text += (text.empty() ? "(" : "   (") + std::string(1, letters[static_cast<std::size_t>(s)]) + ") " +
            std::string(name_of(s));
  return text;
}

std::string where(const Finding& f) {
  const bool in_duty = f.id.find('@') != std::string::npos;
  if (!in_duty || f.duty.empty()) return f.place;
  return f.place.empty() ? f.duty : f.place + ", " + f.duty;
}

std::string when(const Finding& f) {
  const std::string place = where(f);
  if (place.empty() || f.duty.empty() || !f.predicted) return place;
  if (f.mean_share > 0) return place + ", mean of its last " + short_number(100 * f.mean_share, 3) + " %";
  if (f.time <= 0) return place + ", at its start";
  // In the largest unit of which there is at least one.
  std::string_view unit = "s";
  for (auto [length, name] : {std::pair{60.0, "min"}, {5400.0, "h"}, {172800.0, "day"}})
    if (f.time >= length) unit = name;
  return place + ", " + together(print(f.time, kind::time, unit, 2)) + " in";
}

}  // namespace sw::cli
