#include "physics/sender.hpp"

#include <algorithm>
#include <array>
#include <cmath>
#include <string>

#include "quantity/customary.hpp"

namespace sw::physics {
namespace {

constexpr double room_k = zero_celsius_k + 25;

/// Straight line through two points, and its slope.
Slope line(double x0, double y0, double x1, double y1, double x) {
  const double slope = (y1 - y0) / (x1 - x0);
  return {y0 + slope * (x - x0), slope};
}

/// The piece of `points` that holds `x` on the axis `at`, rising or falling; the nearest end piece where none does.
std::size_t piece(const std::vector<double>& at, double x) {
  const bool rises = at.back() >= at.front();
  std::size_t k = 0;
  while (k + 2 < at.size() && (rises ? x > at[k + 1] : x < at[k + 1])) ++k;
  return k;
}

bool within(const std::vector<double>& at, double x) {
  const auto [low, high] = std::minmax(at.front(), at.back());
  return x >= low && x <= high;
}

Slope held(double value) { return {value, 0, false}; }

/// Largest error of a network, and the series resistor that makes it least for a parallel one: the middle of what each
/// pair asks for.
SenderMatch best_series(std::span<const double> from, std::span<const double> to, std::optional<double> parallel) {
  double low = HUGE_VAL, high = -HUGE_VAL;
  for (std::size_t i = 0; i < from.size(); ++i) {
    const double asks = to[i] - network_ohm({0, parallel}, from[i]).value;
    low = std::min(low, asks), high = std::max(high, asks);
  }
  const double series = std::max(0.0, 0.5 * (low + high));
  return {{series, parallel}, std::max(high - series, series - low)};
}

double largest_error(const SenderNetwork& n, std::span<const double> from, std::span<const double> to) {
  double worst = 0;
  for (std::size_t i = 0; i < from.size(); ++i)
    worst = std::max(worst, std::abs(network_ohm(n, from[i]).value - to[i]));
  return worst;
}

}  // namespace

bool monotone(const Curve& c) {
  if (c.y.size() < 2) return false;
  const double way = c.y.back() - c.y.front();
  for (std::size_t i = 1; i < c.y.size(); ++i)
    if (!((c.y[i] - c.y[i - 1]) * way > 0)) return false;
  return true;
}

Slope sender_ohm(const Curve& c, SenderLaw law, double value) {
  if (!within(c.x, value)) return held(value < c.x.front() ? c.y.front() : c.y.back());
  const std::size_t k = piece(c.x, value);
  if (law == SenderLaw::straight) return line(c.x[k], c.y[k], c.x[k + 1], c.y[k + 1], value);
  const Slope s = line(1 / c.x[k], std::log(c.y[k]), 1 / c.x[k + 1], std::log(c.y[k + 1]), 1 / value);
  const double ohm = std::exp(s.value);
  return {ohm, -ohm * s.slope / (value * value)};
}

Slope sender_value(const Curve& c, SenderLaw law, double ohm) {
  if (!within(c.y, ohm)) {
    const bool rises = c.y.back() > c.y.front();
    return held((ohm > std::max(c.y.front(), c.y.back())) == rises ? c.x.back() : c.x.front());
  }
  const std::size_t k = piece(c.y, ohm);
  if (law == SenderLaw::straight) return line(c.y[k], c.x[k], c.y[k + 1], c.x[k + 1], ohm);
  const Slope s = line(std::log(c.y[k]), 1 / c.x[k], std::log(c.y[k + 1]), 1 / c.x[k + 1], std::log(ohm));
  const double value = 1 / s.value;
  return {value, -value * value * s.slope / ohm};
}

Slope network_ohm(const SenderNetwork& n, double sender) {
  if (!n.parallel_ohm) return {n.series_ohm + sender, 1};
  const double share = *n.parallel_ohm / (sender + *n.parallel_ohm);
  return {n.series_ohm + sender * share, share * share};
}

double parallel_for(double sender_ohm, double wanted_ohm) { return 1 / (1 / wanted_ohm - 1 / sender_ohm); }

SenderNode sender_node(std::span<const Reader> readers, double sender_ohm, double lift_v) {
  double driven = 0, conductance = 0;
  for (auto& r : readers) driven += r.supply_v / r.ohm, conductance += 1 / r.ohm;
  const double below = 1 + sender_ohm * conductance;
  return {(sender_ohm * driven + lift_v) / below, (driven - lift_v * conductance) / (below * below)};
}

Slope seen_ohm(const Reader& r, const SenderNode& n) {
  const double left = r.supply_v - n.volts;
  return {r.ohm * n.volts / left, r.ohm * r.supply_v / (left * left) * n.slope, left > 0 && n.volts >= 0};
}

std::vector<double> resistors(ResistorSeries series, double least, double most) {
  // IEC 60063: two figures for E12 and E24, of which some depart from the rounded power of ten; three for E96.
  static constexpr double e24[] = {1.0, 1.1, 1.2, 1.3, 1.5, 1.6, 1.8, 2.0, 2.2, 2.4, 2.7, 3.0,
                                   3.3, 3.6, 3.9, 4.3, 4.7, 5.1, 5.6, 6.2, 6.8, 7.5, 8.2, 9.1};
  std::vector<double> all;
  for (double decade = 0.1; decade < 1e8; decade *= 10)
    for (int i = 0; i < (series == ResistorSeries::e96 ? 96 : 24); ++i) {
      if (series == ResistorSeries::e12 && i % 2) continue;
      const double step = series == ResistorSeries::e96 ? std::round(100 * std::pow(10.0, i / 96.0)) / 100 : e24[i];
      const double ohm = std::stod(std::to_string(step * decade));  // no trail of binary dust
      if (ohm >= least * (1 - 1e-9) && ohm <= most * (1 + 1e-9)) all.push_back(ohm);
    }
  return all;
}

SenderMatch match_any(std::span<const double> from, std::span<const double> to) {
  SenderMatch best = best_series(from, to, std::nullopt);
  // Coarse over the decades, then the best two neighbours are narrowed.
  constexpr double least_log = -2, most_log = 6;
  constexpr int steps = 400;
  const auto at = [&](double log10) { return best_series(from, to, std::pow(10.0, log10)); };
  double centre = 0;
  bool found = false;
  for (int i = 0; i <= steps; ++i) {
    const double log10 = least_log + (most_log - least_log) * i / steps;
    const SenderMatch m = at(log10);
    if (m.largest_error_ohm < best.largest_error_ohm) best = m, centre = log10, found = true;
  }
  if (!found) return best;
  double low = centre - (most_log - least_log) / steps, high = centre + (most_log - least_log) / steps;
  for (int i = 0; i < 100; ++i) {
    const double a = low + (high - low) / 3, b = high - (high - low) / 3;
    if (at(a).largest_error_ohm < at(b).largest_error_ohm)
      high = b;
    else
      low = a;
  }
  const SenderMatch fine = at(0.5 * (low + high));
  return fine.largest_error_ohm < best.largest_error_ohm ? fine : best;
}

SenderMatch match_of(std::span<const double> values, std::span<const double> from, std::span<const double> to) {
  SenderMatch best{{}, largest_error({}, from, to)};
  const auto parallel = [&](std::optional<double> p) {
    // The error over series resistors has one valley: only the values on either side of its middle can be best.
    const double middle = best_series(from, to, p).network.series_ohm;
    const auto above = std::lower_bound(values.begin(), values.end(), middle);
    std::array<double, 3> tried{0.0, above != values.end() ? *above : 0.0,
                                above != values.begin() ? *(above - 1) : 0.0};
    for (double s : tried)
      if (const double e = largest_error({s, p}, from, to); e < best.largest_error_ohm) best = {{s, p}, e};
  };
  parallel(std::nullopt);
  for (double p : values) parallel(p);
  return best;
}

Curve points_of(const ThermistorFamily& f) {
  Curve c;
  for (std::size_t i = 0; i < f.points; ++i) c.x.push_back(zero_celsius_k + f.celsius[i]), c.y.push_back(f.ohm[i]);
  return c;
}
Curve points_of(const EndFamily& f, double low, double high) {
  return {{low, 0.5 * (low + high), high}, {f.low_ohm, f.half_ohm, f.high_ohm}};
}

Slope thermistor_ohm(double r25, double beta, double t) {
  const double ohm = r25 * std::exp(beta * (1 / t - 1 / room_k));
  return {ohm, -ohm * beta / (t * t)};
}
double thermistor_beta(double r1, double t1, double r2, double t2) { return std::log(r1 / r2) / (1 / t1 - 1 / t2); }
Slope thermistor_k(double a, double b, double c, double ohm) {
  const double l = std::log(ohm), t = 1 / (a + b * l + c * l * l * l);
  return {t, -t * t * (b + 3 * c * l * l) / ohm};
}

Slope thermistor_k_by_beta(double r25, double beta, double ohm) {
  const double t = 1 / (1 / room_k + std::log(ohm / r25) / beta);
  return {t, -t * t / (beta * ohm)};
}
double thermistor_ohm_of(double a, double b, double c, double t) {
  // c l^3 + b l + (a - 1/T) = 0 rises with l: Newton from the straight part, then as far as doubles go.
  double l = (1 / t - a) / b;
  for (int i = 0; i < 100; ++i) {
    const double step = (a + b * l + c * l * l * l - 1 / t) / (b + 3 * c * l * l);
    l -= step;
    if (std::abs(step) <= 1e-15 * std::abs(l)) break;
  }
  return std::exp(l);
}
std::array<double, 3> steinhart_hart(const std::array<double, 3>& ohm, const std::array<double, 3>& t) {
  // Divided differences of 1/T over ln R, then back: (g3 - g2) / (l3 - l2) = c (l1 + l2 + l3).
  double l[3], y[3];
  for (std::size_t i = 0; i < 3; ++i) l[i] = std::log(ohm[i]), y[i] = 1 / t[i];
  const double g2 = (y[1] - y[0]) / (l[1] - l[0]), g3 = (y[2] - y[0]) / (l[2] - l[0]);
  const double c = (g3 - g2) / (l[2] - l[1]) / (l[0] + l[1] + l[2]);
  const double b = g2 - c * (l[0] * l[0] + l[0] * l[1] + l[1] * l[1]);
  return {y[0] - (b + l[0] * l[0] * c) * l[0], b, c};
}

}  // namespace sw::physics
