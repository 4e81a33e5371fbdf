#include "quantity/unit_table.hpp"

#include <algorithm>
#include <array>
#include <numbers>
#include <string>
#include <vector>

#include "quantity/customary.hpp"

namespace sw {
namespace {

// Defined exactly: inch (25.4 mm), pound (0.45359237 kg), gallon (231 in3), and what is built of them with standard
// gravity. International Table BTU: 1 BTU/lb = 2.326 kJ/kg and so 1055.05585262 J. Source of all: NIST SP 811 (2008),
// appendix B.8, which also has the conventional inch of mercury and of water.
constexpr double inch = inch_m, foot = foot_m, mile = mile_m;
constexpr double gallon = 231 * inch * inch * inch;
constexpr double pound = pound_kg, pound_force = lbf_n, psi = psi_pa;
constexpr double btu = 1055.05585262;
constexpr double turn = 2 * std::numbers::pi;
constexpr double circular_mil = std::numbers::pi / 4 * (inch / 1000) * (inch / 1000);
constexpr double rankine = 5.0 / 9.0;

constexpr Unit counted_from(Reference reference, double factor) {
  Unit u{dim::pressure, factor};
  u.reference = reference;
  return u;
}
constexpr Unit gauge_numbers() {
  Unit u{dim::area};
  u.gauge = true;
  return u;
}

constexpr NamedUnit table[] = {
    {"%", {dim::none, 0.01}},
    {"pulse", {dim::none, 1}},
    {"m", {dim::length, 1}, "umck"},
    {"in", {dim::length, inch}},
    {"ft", {dim::length, foot}},
    {"yd", {dim::length, 3 * foot}},
    {"mile", {dim::length, mile}},
    {"mi", {dim::length, mile}},
    {"thou", {dim::length, inch / 1000}},
    {"cmil", {dim::area, circular_mil}},
    {"AWG", gauge_numbers()},
    {"L", {dim::volume, 1e-3}, "umc"},
    {"l", {dim::volume, 1e-3}, "umc"},
    {"cc", {dim::volume, 1e-6}},
    {"gal", {dim::volume, gallon}},
    {"qt", {dim::volume, gallon / 4}},
    {"g", {dim::mass, 1e-3}, "umk"},
    {"lb", {dim::mass, pound}},
    {"lbm", {dim::mass, pound}},
    {"oz", {dim::mass, pound / 16}},
    {"slug", {dim::mass, pound_force / foot}},
    {"s", {dim::time, 1}, "um"},
    {"min", {dim::time, 60}},
    {"h", {dim::time, 3600}},
    {"day", {dim::time, 86400}},
    {"week", {dim::time, 7 * 86400.0}},
    {"year", {dim::time, year_s}},  // of 365 days, as in SP 811
    {"A", {dim::current, 1}, "umk"},
    {"K", {dim::temperature, 1}, "m"},
    {"degC", {dim::temperature, 1, zero_celsius_k}},
    {"degR", {dim::temperature, rankine}},
    {"degF", {dim::temperature, rankine, 459.67 * rankine}},
    {"rad", {dim::angle, 1}, "m"},
    {"deg", {dim::angle, turn / 360}},
    {"rev", {dim::angle, turn}},
    {"rpm", {dim::shaft_speed, turn / 60}},
    {"Hz", {dim::frequency, 1}, "kM"},
    {"mph", {dim::speed, mile / 3600}},
    {"mpg", {dim::length / dim::volume, mile / gallon}},
    {"N", {dim::force, 1}, "mkM"},
    {"lbf", {dim::force, pound_force}},
    {"kip", {dim::force, 1000 * pound_force}},
    {"Nm", {dim::torque, 1}, "k"},
    {"J", {dim::energy, 1}, "kmMu"},
    {"Wh", {dim::energy, 3600}, "k"},
    {"BTU", {dim::energy, btu}},
    {"W", {dim::power, 1}, "kmMu"},
    {"hp", {dim::power, 550 * foot* pound_force}},
    {"Pa", {dim::pressure, 1}, "kMm"},
    {"hPa", {dim::pressure, 100}},
    {"bar", {dim::pressure, 1e5}, "m"},
    {"atm", {dim::pressure, 101325}},
    {"psi", {dim::pressure, psi}},
    {"psia", counted_from(Reference::absolute, psi)},
    {"psig", counted_from(Reference::gauge, psi)},
    {"ksi", {dim::pressure, 1000 * psi}},
    {"inHg", {dim::pressure, in_hg_pa}},
    {"inH2O", {dim::pressure, 249.0889}},
    {"cfm", {dim::volume_flow, foot* foot* foot / 60}},
    {"gph", {dim::volume_flow, gallon / 3600}},
    {"gpm", {dim::volume_flow, gallon / 60}},
    {"cP", {dim::viscosity, 1e-3}},
    {"cSt", {dim::kinematic_viscosity, 1e-6}},
    {"Ah", {dim::charge, 3600}, "m"},
    {"V", {dim::voltage, 1}, "umk"},
    {"ohm", {dim::resistance, 1}, "mkuM"},
    {"H", {dim::inductance, 1}, "um"},
};

/// Spellings people use that are not in the table because they are loose or mean two things.
struct Spelling {
  std::string_view written, meant;
};
constexpr Spelling spellings[] = {
    {"\"", "in"},       {"'", "ft"},       {"C", "degC"},       {"F", "degF"},      {"R", "degR"},
    {"inch", "in"},     {"inches", "in"},  {"feet", "ft"},      {"foot", "ft"},     {"lbs", "lb"},
    {"pound", "lb"},    {"pounds", "lb"},  {"sec", "s"},        {"hr", "h"},        {"hrs", "h"},
    {"hour", "h"},      {"hours", "h"},    {"minutes", "min"},  {"amp", "A"},       {"amps", "A"},
    {"volt", "V"},      {"volts", "V"},    {"watt", "W"},       {"watts", "W"},     {"kph", "km/h"},
    {"kmh", "km/h"},    {"mil", "thou"},   {"mils", "thou"},    {"ga", "AWG"},      {"gauge", "AWG"},
    {"degrees", "deg"}, {"miles", "mile"}, {"gallon", "gal"},   {"gallons", "gal"}, {"litre", "L"},
    {"liter", "L"},     {"litres", "L"},   {"liters", "L"},     {"ccm", "cm3"},     {"cu", "in3"},
    {"sq", "in2"},      {"lph", "L/h"},    {"lpm", "L/min"},    {"CID", "in3"},     {"ci", "in3"},
    {"turn", "rev"},    {"turns", "rev"},  {"pulses", "pulse"}, {"CCA", "A"},       {"percent", "%"},
    {"in-Hg", "inHg"},  {"Hg", "inHg"},    {"weeks", "week"},   {"days", "day"},    {"years", "year"},
};

double prefix_factor(char c) {
  switch (c) {
    case 'u':
      return 1e-6;
    case 'm':
      return 1e-3;
    case 'c':
      return 1e-2;
    case 'k':
      return 1e3;
    default:
      return 1e6;  // M
  }
}

const std::vector<std::string_view>& all_names() {
  static const std::vector<std::string> prefixed = [] {
    std::vector<std::string> out;
    for (auto& u : table)
      for (char p : u.prefixes) out.push_back(p + std::string(u.name));
    return out;
  }();
  static const std::vector<std::string_view> names = [] {
    std::vector<std::string_view> out;
    for (auto& u : table) out.push_back(u.name);
    out.insert(out.end(), prefixed.begin(), prefixed.end());
    return out;
  }();
  return names;
}

std::string lower(std::string_view text) {
  std::string out(text);
  for (char& c : out)
    if (c >= 'A' && c <= 'Z') c = static_cast<char>(c - 'A' + 'a');
  return out;
}

constexpr std::size_t longest_name = 20;

/// Letters put in, left out, changed or swapped with their neighbour; both texts at most longest_name.
std::size_t edit_distance(std::string_view a, std::string_view b) {
  std::array<std::array<std::size_t, longest_name + 1>, longest_name + 1> d;
  for (std::size_t i = 0; i <= a.size(); ++i) d[i][0] = i;
  for (std::size_t j = 0; j <= b.size(); ++j) d[0][j] = j;
  for (std::size_t i = 1; i <= a.size(); ++i) {
    for (std::size_t j = 1; j <= b.size(); ++j) {
      d[i][j] = std::min({d[i - 1][j] + 1, d[i][j - 1] + 1, d[i - 1][j - 1] + (a[i - 1] != b[j - 1])});
      const bool swapped = i > 1 && j > 1 && a[i - 1] == b[j - 2] && a[i - 2] == b[j - 1];
      if (swapped) d[i][j] = std::min(d[i][j], d[i - 2][j - 2] + 1);
    }
  }
  return d[a.size()][b.size()];
}

}  // namespace

std::span<const NamedUnit> named_units() { return table; }

std::span<const std::string_view> unit_names() { return all_names(); }

std::optional<Unit> find_unit(std::string_view name) {
  for (auto& u : table)
    if (u.name == name) return u.unit;
  if (name.size() < 2) return std::nullopt;
  for (auto& u : table) {
    if (u.name != name.substr(1) || u.prefixes.find(name[0]) == std::string_view::npos) continue;
    Unit prefixed = u.unit;
    prefixed.factor *= prefix_factor(name[0]);
    return prefixed;
  }
  return std::nullopt;
}

std::string_view nearest_unit(std::string_view name) {
  if (name.empty() || name.size() > longest_name) return {};
  for (auto& s : spellings)
    if (s.written == name || s.written == lower(name)) return s.meant;
  const std::string small = lower(name);
  for (auto known : all_names())
    if (lower(known) == small) return known;
  std::string_view best;
  std::size_t least = std::max<std::size_t>(name.size() / 3, 1) + 1;
  for (auto known : all_names()) {
    if (known.size() < 2 || name.size() < 2) continue;  // one letter is near everything
    const std::size_t d = edit_distance(small, lower(known));
    if (d < least) least = d, best = known;
  }
  return best;
}

}  // namespace sw
