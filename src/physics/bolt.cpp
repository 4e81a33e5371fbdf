#include "physics/bolt.hpp"

#include <algorithm>
#include <charconv>
#include <cmath>
#include <numbers>

#include "quantity/customary.hpp"

namespace sw::physics {
namespace {

constexpr double inch = inch_m, mm = 1e-3, pi = std::numbers::pi;
constexpr double ksi = ksi_pa, mpa = 1e6;
constexpr double most_inch = 6, most_mm = 150;  ///< thicker is a slip of the pen

std::string_view trimmed(std::string_view t) {
  while (!t.empty() && t.front() == ' ') t.remove_prefix(1);
  while (!t.empty() && t.back() == ' ') t.remove_suffix(1);
  return t;
}

/// A number that is all of the text and above 0.
std::optional<double> plain(std::string_view t) {
  t = trimmed(t);
  double x = 0;
  const auto [end, fault] = std::from_chars(t.data(), t.data() + t.size(), x);
  if (fault != std::errc{} || end != t.data() + t.size() || !(x > 0) || !std::isfinite(x)) return std::nullopt;
  return x;
}

/// `3/8`, `0.375`, `1 1/8`, `1-1/8`.
std::optional<double> inches(std::string_view t) {
  t = trimmed(t);
  if (!t.empty() && t.front() == '#') {  // numbered sizes (ASME B1.1): 0.060 in and 0.013 in more each
    const auto number = t.substr(1) == "0" ? std::optional(0.0) : plain(t.substr(1));
    return number && *number <= 12 && *number == std::floor(*number) ? std::optional(0.060 + 0.013 * *number)
                                                                     : std::nullopt;
  }
  const auto slash = t.find('/');
  if (slash == std::string_view::npos) return plain(t);
  const auto over = plain(t.substr(slash + 1));
  std::string_view above = t.substr(0, slash);
  double whole = 0;
  if (const auto gap = above.find_last_of(" -"); gap != std::string_view::npos) {
    const auto w = plain(above.substr(0, gap));
    if (!w) return std::nullopt;
    whole = *w;
    above.remove_prefix(gap + 1);
  }
  const auto part = plain(above);
  if (!part || !over) return std::nullopt;
  return whole + *part / *over;
}

/// Without `UNC`, `UNF`, `UNEF`, `UN`, `UNS`, `UNJF` …, and a fit such as `2A`.
std::string_view without_series(std::string_view t) {
  const auto at = t.find("UN");
  return trimmed(t.substr(0, at));
}

struct Row {
  BoltGrade grade;
  double from, to;  ///< nominal diameter, in or mm
  double proof, tensile;
};
constexpr Row rows[] = {
    {BoltGrade::sae_2, 0.25, 0.75, 55 * ksi, 74 * ksi},      {BoltGrade::sae_2, 0.875, 1.5, 33 * ksi, 60 * ksi},
    {BoltGrade::sae_5, 0.25, 1, 85 * ksi, 120 * ksi},        {BoltGrade::sae_5, 1.125, 1.5, 74 * ksi, 105 * ksi},
    {BoltGrade::sae_8, 0.25, 1.5, 120 * ksi, 150 * ksi},     {BoltGrade::class_8_8, 1.6, 16, 580 * mpa, 800 * mpa},
    {BoltGrade::class_8_8, 16, 39, 600 * mpa, 830 * mpa},    {BoltGrade::class_10_9, 1.6, 39, 830 * mpa, 1040 * mpa},
    {BoltGrade::class_12_9, 1.6, 39, 970 * mpa, 1220 * mpa},
};

}  // namespace

std::optional<Thread> thread_of(std::string_view text) {
  text = trimmed(text);
  if (text.empty()) return std::nullopt;
  if (text.front() == 'M' || text.front() == 'm') {
    const auto by = text.find_first_of("xX");
    if (by == std::string_view::npos) return std::nullopt;
    const std::string_view after = text.substr(by + 1);  // a fit may follow, as in M10x1.5-6g
    const auto d = plain(text.substr(1, by - 1)), pitch = plain(after.substr(0, after.find('-')));
    if (!d || !pitch || *d > most_mm || *pitch > *d / 2) return std::nullopt;
    return Thread{*d * mm, *pitch * mm, false};
  }
  text = without_series(text);
  const auto dash = text.rfind('-');
  if (dash == std::string_view::npos) return std::nullopt;
  const auto d = inches(text.substr(0, dash)), count = plain(text.substr(dash + 1));
  if (!d || !count || *d > most_inch || 1 / *count > *d / 2) return std::nullopt;
  return Thread{*d * inch, inch / *count, true};
}

Slope stress_area_m2(const Thread& t) {
  const double d = t.diameter_m - (t.inch ? 0.9743 : 0.9382) * t.pitch_m;
  return {pi / 4 * d * d, pi / 2 * d};
}

std::optional<BoltStrength> bolt_strength(BoltGrade grade, const Thread& t) {
  if (is_inch(grade) != t.inch) return std::nullopt;
  constexpr double written = 1e-9;  // a size at the end of a row is in it
  const double size = t.diameter_m / (t.inch ? inch : mm);
  for (auto& row : rows)
    if (row.grade == grade && size > row.from - written && size < row.to + written)
      return BoltStrength{row.proof, row.tensile};
  return std::nullopt;
}

ThreadShear thread_shear_m2(const Thread& t, double engaged_m) {
  const double minor = t.diameter_m - 1.0825 * t.pitch_m;
  return {0.75 * pi * minor * engaged_m, 0.875 * pi * t.diameter_m * engaged_m};
}

double engagement_to_break_m(const Thread& t, double bolt_pa, double tapped_pa) {
  const auto one = thread_shear_m2(t, 1);
  const double area = stress_area_m2(t).value;
  return std::max(2 * area / one.bolt_m2, 2 * area * bolt_pa / (one.tapped_m2 * tapped_pa));
}

double strips_at_n(const Thread& t, double engaged_m, double bolt_pa, double tapped_pa) {
  const auto shear = thread_shear_m2(t, engaged_m);
  return std::min(shear.bolt_m2 * bolt_pa, shear.tapped_m2 * tapped_pa) / 2;
}

Slope torque_by_factor_n_m(const Thread& t, double nut_factor, double preload) {
  const double arm = nut_factor * t.diameter_m;
  return {arm * preload, arm};
}

Slope torque_by_friction_n_m(const Thread& t, double thread_friction, double head_friction, double preload) {
  const double d2 = t.diameter_m - 0.6495 * t.pitch_m, lead = t.pitch_m;
  const double f = thread_friction / std::cos(pi / 6), head = 1.25 * t.diameter_m;
  const double below = pi * d2 - f * lead;
  const double arm = d2 / 2 * (lead + pi * f * d2) / below + head_friction * head / 2;
  return {arm * preload, arm, below > 0};
}

}  // namespace sw::physics
