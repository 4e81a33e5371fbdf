#include "quantity/wire_gauge.hpp"

#include <charconv>
#include <cmath>
#include <numbers>

namespace sw {
namespace {
constexpr double thirty_six = 0.005 * 0.0254;  // diameter of 36 AWG, m
}

double gauge_diameter(double n) { return thirty_six * std::pow(92.0, (36.0 - n) / 39.0); }

double gauge_area(double n) {
  const double d = gauge_diameter(n);
  return std::numbers::pi / 4 * d * d;
}

double gauge_number(double area) {
  const double d = std::sqrt(area * 4 / std::numbers::pi);
  return 36.0 - 39.0 * std::log(d / thirty_six) / std::log(92.0);
}

std::optional<int> nearest_gauge(double area, double share) {
  if (!(area > 0) || !std::isfinite(area)) return std::nullopt;
  const double n = std::round(gauge_number(area));
  if (!(n >= thickest_gauge && n <= thinnest_gauge)) return std::nullopt;
  if (std::abs(area / gauge_area(n) - 1) > share) return std::nullopt;
  return static_cast<int>(n);
}

std::string gauge_text(int n) { return n > 0 ? std::to_string(n) : std::to_string(1 - n) + "/0"; }

std::optional<int> parse_gauge(std::string_view text) {
  // 0000 is the other way to write 4/0.
  if (!text.empty() && text.size() <= 4 && text.find_first_not_of('0') == std::string_view::npos)
    return 1 - static_cast<int>(text.size());
  const bool zeros = text.ends_with("/0");
  if (zeros) text.remove_suffix(2);
  int n = 0;
  const auto [end, error] = std::from_chars(text.data(), text.data() + text.size(), n);
  if (error != std::errc{} || end != text.data() + text.size() || n < 1) return std::nullopt;
  if (zeros) n = n <= 4 ? 1 - n : thinnest_gauge + 1;
  return n <= thinnest_gauge ? std::optional(n) : std::nullopt;
}

}  // namespace sw
