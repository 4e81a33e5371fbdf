#include "cli/figures.hpp"

#include <algorithm>
#include <cmath>

#include "cli/page.hpp"
#include "field/evidence.hpp"
#include "field/measure.hpp"
#include "quantity/print.hpp"

namespace sw::cli {
namespace {

constexpr double even_share = 0.7;  ///< of the wider half-width: from here on both sides are told as one

struct Letter {
  std::string_view evidence;
  char letter;
};
constexpr Letter letters[] = {{name_of(Source::stated), 's'},     {name_of(Source::measured), 'm'},
                              {name_of(Source::data_sheet), 'd'}, {name_of(Source::typical), 't'},
                              {name_of(Source::chosen), 'c'},     {name_of(Source::solved), 'v'},
                              {name_of(Source::road_test), 'r'}};
static_assert(std::size(letters) == source_names.size());

/// `data sheet` of `data sheet of high-idle-140`, `typical` of `typical, nobody gave it`; null for a computed figure.
const Letter* letter_of(std::string_view evidence) {
  for (auto& l : letters) {
    if (!evidence.starts_with(l.evidence)) continue;
    const std::string_view rest = evidence.substr(l.evidence.size());
    if (rest.empty() || rest[0] == ' ' || rest[0] == ',') return &l;
  }
  return nullptr;
}

std::string limit_value(double si, const Finding& f) { return together(print(si, *f.quantity, f.unit, 5)); }

}  // namespace

std::string with_doubt(const Finding& f) {
  const double si = *f.predicted, near = f.half_width, far = f.far_width, wide = std::max(near, far);
  const std::string value = together(print_with_doubt(si, wide, *f.quantity, f.unit));
  // A doubt far below the last digit shown says nothing.
  if (!(wide > 0) || !std::isfinite(wide) || wide < 1e-6 * std::abs(si)) return value;
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
  return b.text.empty() ? together(print(b.value, *b.kind, b.unit)) : clean(b.text);
}

bool is_input(const Because& b) { return letter_of(b.evidence) != nullptr; }

std::string EvidenceMarks::mark(std::string_view evidence) {
  const Letter* found = letter_of(evidence);
  if (!found) return {};
  if (std::find(used_.begin(), used_.end(), found->evidence) == used_.end()) used_.emplace_back(found->evidence);
  return together(" (") + found->letter + ")";
}

std::string EvidenceMarks::legend() const {
  std::string text;
  for (auto& l : letters)
    if (std::find(used_.begin(), used_.end(), l.evidence) != used_.end())
      text += (text.empty() ? "(" : "   (") + std::string(1, l.letter) + ") " + std::string(l.evidence);
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
