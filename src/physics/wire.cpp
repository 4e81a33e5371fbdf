#include "physics/wire.hpp"

#include <algorithm>
#include <array>
#include <cmath>
#include <iterator>
#include <numbers>
#include <span>

#include "quantity/customary.hpp"

namespace sw::physics {
namespace {

constexpr double mm2 = 1e-6, tabled_at_k = 293.15;
constexpr int gauges[] = {-3, -2, -1, 0, 1, 2, 4, 6, 8, 10, 12, 14, 16, 18, 20, 22, 24, 26, 28, 30};

struct TablePoint {
  double area_mm2, mohm_per_m;
};
// ISO 6722-1, greatest conductor resistance at 20 degC (from memory).
constexpr TablePoint road_vehicle[] = {{0.13, 136}, {0.22, 84.8}, {0.35, 54.4}, {0.5, 37.1}, {0.75, 24.7}, {1, 18.5},
                                       {1.5, 12.7}, {2, 9.42},    {2.5, 7.60},  {3, 6.15},   {4, 4.71},    {5, 3.94},
                                       {6, 3.14},   {8, 2.38},    {10, 1.82},   {12, 1.52},  {16, 1.16},   {20, 0.955},
                                       {25, 0.743}, {30, 0.647},  {35, 0.527},  {40, 0.473}, {50, 0.368},  {60, 0.315},
                                       {70, 0.259}, {95, 0.196},  {120, 0.153}};
// IEC 60228 table 3, class 5, plain copper, greatest resistance at 20 degC (read in stored secondary tables).
constexpr TablePoint flexible[] = {{0.5, 39.0}, {0.75, 26.0}, {1, 19.5},    {1.5, 13.3},  {2.5, 7.98},  {4, 4.95},
                                   {6, 3.30},   {10, 1.91},   {16, 1.21},   {25, 0.780},  {35, 0.554},  {50, 0.386},
                                   {70, 0.272}, {95, 0.206},  {120, 0.161}, {150, 0.129}, {185, 0.106}, {240, 0.0801}};

/// Log-log between tabled sizes, for resistance goes nearly as one over the area; the tabled value itself at a size.
std::optional<double> from_table(std::span<const TablePoint> table, double area_mm2) {
  constexpr double same = 1e-6;  // share by which a size may be off and still be that size
  if (area_mm2 < table.front().area_mm2 * (1 - same) || area_mm2 > table.back().area_mm2 * (1 + same)) return {};
  for (std::size_t i = 0; i < table.size(); ++i) {
    const TablePoint& b = table[i];
    if (std::abs(area_mm2 - b.area_mm2) <= same * b.area_mm2) return b.mohm_per_m;
    if (area_mm2 > b.area_mm2) continue;
    const TablePoint& a = table[i - 1];
    const double share = std::log(area_mm2 / a.area_mm2) / std::log(b.area_mm2 / a.area_mm2);
    return a.mohm_per_m * std::pow(b.mohm_per_m / a.mohm_per_m, share);
  }
  return table.back().mohm_per_m;
}

constexpr double zone_air_c[] = {30, 50};

/// The tabled current in hotter air; as it is where the air is no hotter than the table's.
Ampacity in_air(const Ampacity& tabled, double insulation_k, double table_k, double air_k) {
  if (air_k <= table_k) return tabled;
  const double left = insulation_k - air_k;
  if (left <= 0) return {0, tabled.tabled};
  const double current = tabled.current_a * std::sqrt(left / (insulation_k - table_k));
  return {current, tabled.tabled, -0.5 * current / left};
}

WireResistance flexible_resistance(double mohm_per_m, double temperature_k) {
  // The standard's factor brings a value measured at T back to 20 degC: 1 / (1 + 0.004 (T - 20 degC)).
  const double r20 = 1e-3 * mohm_per_m, back = 1 / (1 + 0.004 * (temperature_k - tabled_at_k));
  return {r20 / back, back, 0.004 * r20, true};
}

}  // namespace

double gauge_diameter_m(double gauge) { return 0.005 * inch_m * std::pow(92.0, (36 - gauge) / 39); }

double gauge_area_m2(double gauge) {
  const double d = gauge_diameter_m(gauge);
  return std::numbers::pi / 4 * d * d;
}

double round_diameter_m(double area_m2) { return std::sqrt(4 / std::numbers::pi * area_m2); }

double area_gauge(double area_m2) {
  return 36 - 39 * std::log(round_diameter_m(area_m2) / (0.005 * inch_m)) / std::log(92.0);
}

std::optional<int> gauge_for_area(double area_m2) {
  for (auto g = std::rbegin(gauges); g != std::rend(gauges); ++g)
    if (gauge_area_m2(*g) >= area_m2 * (1 - 1e-9)) return *g;
  return {};
}

std::optional<int> next_thicker_gauge(int gauge) {
  for (auto g = std::rbegin(gauges); g != std::rend(gauges); ++g)
    if (*g < gauge) return *g;
  return {};
}

std::string gauge_text(int gauge) {
  return (gauge <= 0 ? std::to_string(1 - gauge) + "/0" : std::to_string(gauge)) + " AWG";
}

WireResistance wire_resistance(double area_m2, Cable cable, double temperature_k, double resistivity_20c_ohm_m) {
  const double step = temperature_k - tabled_at_k;
  if (cable == Cable::flexible)
    if (const auto r = from_table(flexible, area_m2 / mm2)) return flexible_resistance(*r, temperature_k);
  double r20 = resistivity_20c_ohm_m / area_m2;
  bool tabled = cable == Cable::copper;
  if (cable == Cable::road_vehicle)
    if (const auto r = from_table(road_vehicle, area_m2 / mm2)) r20 = 1e-3 * *r, tabled = true;
  const double factor = 1 + copper_alpha_20c_per_k * step;
  return {r20 * factor, factor, r20 * copper_alpha_20c_per_k, tabled};
}

double table_air_k(Zone zone) { return zone_air_c[zone == Zone::engine_bay] + zero_celsius_k; }

Ampacity wire_ampacity(double area_m2, double insulation_k, Zone zone, int bundle, std::optional<double> air_k) {
  static constexpr std::array<double, 7> insulation_c = {60, 75, 80, 90, 105, 125, 200};
  static constexpr std::array<double, 7> engine_space = {0.58, 0.75, 0.78, 0.82, 0.85, 0.89, 1};
  struct Row {
    int gauge;
    std::array<double, 7> amps;
  };
  static constexpr Row rows[] = {{18, {10, 10, 15, 20, 20, 25, 25}},        {16, {15, 15, 20, 25, 25, 30, 35}},
                                 {14, {20, 20, 25, 30, 35, 40, 45}},        {12, {25, 25, 35, 40, 45, 50, 55}},
                                 {10, {40, 40, 50, 55, 60, 70, 70}},        {8, {55, 65, 70, 70, 80, 90, 100}},
                                 {6, {80, 95, 100, 100, 120, 125, 135}},    {4, {105, 125, 130, 135, 160, 170, 180}},
                                 {3, {120, 145, 150, 155, 180, 195, 210}},  {2, {140, 170, 175, 180, 210, 225, 240}},
                                 {1, {165, 195, 210, 210, 245, 265, 280}},  {0, {195, 230, 245, 245, 285, 305, 325}},
                                 {-1, {225, 265, 285, 285, 330, 355, 370}}, {-2, {260, 310, 330, 330, 385, 410, 430}},
                                 {-3, {300, 360, 385, 385, 445, 475, 510}}};
  const double celsius = insulation_k - zero_celsius_k + 1e-6;
  if (celsius < insulation_c.front() || area_m2 < gauge_area_m2(18) * (1 - 1e-6)) return {0, false};
  const std::size_t column =
      std::upper_bound(insulation_c.begin(), insulation_c.end(), celsius) - insulation_c.begin() - 1;
  double amps = 0;
  for (const Row& r : rows)
    if (gauge_area_m2(r.gauge) <= area_m2 * (1 + 1e-6)) amps = r.amps[column];
  if (zone == Zone::engine_bay) amps *= engine_space[column];
  amps *= bundle >= 25 ? 0.40 : bundle >= 7 ? 0.50 : bundle >= 4 ? 0.60 : bundle == 3 ? 0.70 : 1;
  const Ampacity tabled{amps, area_m2 <= gauge_area_m2(-3) * (1 + 1e-6)};
  return air_k ? in_air(tabled, insulation_k, table_air_k(zone), *air_k) : tabled;
}

namespace {
constexpr double adiabatic_a_m2 = 226e6, beta_k = 234.5 - 273.15;  // K, and beta with T in kelvin
}
double short_time_current(double area_m2, double from_k, double to_k, double time_s) {
  if (to_k <= from_k || time_s <= 0) return 0;
  return adiabatic_a_m2 * area_m2 * std::sqrt(std::log((to_k + beta_k) / (from_k + beta_k)) / time_s);
}
double short_time_temperature(double area_m2, double from_k, double current_a, double time_s) {
  const double share = current_a / (adiabatic_a_m2 * area_m2);
  return (from_k + beta_k) * std::exp(share * share * time_s) - beta_k;
}

WireRise wire_rise(double current_a, double rated_a, double rated_rise_k) {
  const double share = current_a / rated_a;
  return {rated_rise_k * share * share, 2 * rated_rise_k * share / rated_a};
}

}  // namespace sw::physics
