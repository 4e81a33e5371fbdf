#include "physics/tyre.hpp"

#include <cctype>
#include <charconv>

#include "quantity/customary.hpp"

namespace sw::physics {
namespace {

std::optional<double> take_number(std::string_view& text) {
  double x = 0;
  const auto [end, error] = std::from_chars(text.data(), text.data() + text.size(), x, std::chars_format::fixed);
  if (error != std::errc{} || end == text.data() || !(x > 0)) return {};
  text.remove_prefix(static_cast<std::size_t>(end - text.data()));
  return x;
}

bool take(std::string_view& text, std::string_view any) {
  if (text.empty() || any.find(text.front()) == std::string_view::npos) return false;
  text.remove_prefix(1);
  return true;
}

/// What may follow the rim: `C`, `LT`, ` 95H`, ` 104/102 S`. Nothing of it changes the diameter.
bool is_service_text(std::string_view text) {
  for (char c : text)
    if (!std::isalnum(static_cast<unsigned char>(c)) && c != ' ' && c != '/' && c != '(' && c != ')') return false;
  return true;
}

}  // namespace

std::optional<TyreSize> tyre_size(std::string_view text) {
  for (std::string_view prefix : {"LT", "P", "T"})
    if (text.starts_with(prefix)) {
      text.remove_prefix(prefix.size());
      break;
    }
  const auto first = take_number(text);
  if (!first) return {};
  const bool flotation = take(text, "xX");
  if (!flotation && !take(text, "/")) return {};
  const auto second = take_number(text);
  if (!second) return {};
  take(text, " ");
  if (text.size() > 1 && text[1] == 'R') take(text, "QSTUHVWZ");  // the old way: speed letter before the R
  if (!take(text, "RBD-")) return {};
  take(text, " ");
  const auto rim = take_number(text);
  if (!rim || !is_service_text(text)) return {};
  if (flotation) return TyreSize{*first * inch_m, *second * inch_m, *rim * inch_m, {}};
  const double width = *first * 1e-3, aspect = *second / 100;
  return TyreSize{*rim * inch_m + 2 * width * aspect, width, *rim * inch_m, aspect};
}

double gearing_rad_m(double axle, double gear, double diameter_m, double slip) {
  return 2 * axle * gear / diameter_m / (1 - slip);
}

SpeedBand speedometer_band(double true_speed_m_s) { return {true_speed_m_s, 1.1 * true_speed_m_s + 4 / 3.6}; }

}  // namespace sw::physics
