#include "physics/dc_branch.hpp"

#include <algorithm>
#include <cmath>

namespace sw::physics::dc {
namespace {

struct Point {
  double value, slope;
};

/// max(0, x) with its corner rounded by a parabola over -w..w; exact outside.
Point ramp(double x, double w) {
  if (x >= w) return {x, 1};
  if (x <= -w) return {0, 0};
  return {(x + w) * (x + w) / (4 * w), (x + w) / (2 * w)};
}

/// x clamped to 0..1, both corners rounded over w.
Point unit_clamp(double x, double w) {
  const Point low = ramp(x, w), high = ramp(x - 1, w);
  return {low.value - high.value, low.slope - high.slope};
}

Point at(const ConstantCurrent& c, double v, double) {
  const double u = v / c.least_v;
  if (u >= 1) return {c.current_a, 0};
  const double slope = 2 * c.current_a / c.least_v;
  if (u <= 0) return {slope * v, slope};
  return {c.current_a * u * (2 - u), slope * (1 - u)};
}

Point at(const ConstantPower& c, double v, double series_ohm) {
  const double dropout2 = 1.21 * c.power_w * series_ohm;  // V2
  const double least = dropout2 > c.least_v * c.least_v ? std::sqrt(dropout2) : c.least_v;
  const Point over = ramp(v - least, 0.05 * least);
  const double m = least + over.value, per_square = c.power_w / (m * m);
  return {per_square * v, per_square * (1 - 2 * v * over.slope / m)};
}

Point at(const PowerLaw& p, double v, double) {
  constexpr double small = 0.02;  // share of V_rated below which the cubic stands in
  const double u = std::abs(v) / p.rated_v;
  if (u > small) {
    const double i = p.rated_a * std::exp2(p.exponent * std::log2(u));  // half the time of pow, and good to 1e-15
    return {std::copysign(i, v), p.exponent * i / std::abs(v)};
  }
  const double edge = p.rated_a * std::pow(small, p.exponent), t = u / small;
  const double a = (3 - p.exponent) / 2, b = (p.exponent - 1) / 2;
  return {std::copysign(edge * t * (a + b * t * t), v), edge * (a + 3 * b * t * t) / (small * p.rated_v)};
}

Point at(const Diode& d, double v, double) {
  constexpr double width_v = 0.05;
  const double x = (v - d.threshold_v) / width_v, r = d.resistance_ohm;
  // ln(1 + e^x) without overflow on the one side and without loss on the other.
  const double over = x > 0 ? x + std::log1p(std::exp(-x)) : std::log1p(std::exp(x));
  return {width_v / r * over + d.leakage_s * v, 1 / (r * (1 + std::exp(-x))) + d.leakage_s};
}

Point at(const RegulatedSource&, double, double) { return {0, 0}; }  // for visit alone: `regulated` answers

Flow regulated(const RegulatedSource& s, double across_v, double sense_v) {
  Flow f{.current_a = s.leakage_s * across_v, .slope_s = s.leakage_s, .load_v = across_v};
  if (s.greatest_a <= 0) return f;
  const double per_volt = 1 / (s.regulation_ohm * s.greatest_a), width = 0.1 * s.ceiling_v;
  const Point asked = unit_clamp((s.set_v - sense_v) * per_volt, 0.01);
  const Point room = unit_clamp((s.ceiling_v + across_v) / width, 0.01);  // own terminal voltage is -across_v
  f.current_a += s.greatest_a * asked.value * room.value;
  f.slope_s += s.greatest_a * asked.value * room.slope / width;
  f.sense_slope_s = -s.greatest_a * asked.slope * per_volt * room.value;
  return f;
}

/// x + R i(x) = across: x lies between 0 and across, and the left side rises with x for every law above.
template <class L>
Flow behind_leads(const L& law, double across_v, double series_ohm, double start_v) {
  double low = std::min(0.0, across_v), high = std::max(0.0, across_v);
  double x = std::clamp(start_v, low, high);
  if (!(x >= low)) x = high;  // a start that is not a number
  Point i{};
  const double enough = 1e-5 * (std::abs(across_v) + 1e-3);
  for (int step = 0; step < 60; ++step) {
    i = at(law, x, series_ohm);
    const double error = x + series_ohm * i.value - across_v;
    (error > 0 ? high : low) = x;
    double dx = -error / (1 + series_ohm * i.slope);
    if (std::abs(dx) <= enough) {  // the next error is of the square of this: the tangent is the answer
      x += dx, i.value += i.slope * dx;
      break;
    }
    x = (x + dx > low && x + dx < high) ? x + dx : 0.5 * (low + high);
  }
  return {i.value, i.slope / (1 + series_ohm * i.slope), 0, x};
}

template <class L>
Flow flow(const L& law, double across_v, double series_ohm, double start_v) {
  if (series_ohm > 0) return behind_leads(law, across_v, series_ohm, start_v);
  const Point p = at(law, across_v, 0);
  return {p.value, p.slope, 0, across_v};
}

Flow flow(const Open&, double across_v, double, double) { return {.load_v = across_v}; }

Flow flow(const Resistor& r, double across_v, double series_ohm, double) {
  const double slope = 1 / (r.resistance_ohm + series_ohm);
  return {slope * across_v, slope, 0, slope * across_v * r.resistance_ohm};
}

Flow flow(const Battery& b, double across_v, double series_ohm, double) {
  const double slope = 1 / (b.resistance_ohm + series_ohm), i = slope * (across_v + b.emf_v);
  return {i, slope, 0, across_v - i * series_ohm};
}

bool positive(double x) { return x > 0 && std::isfinite(x); }
constexpr double least_resistance_ohm = 1e-6;
bool resistance(double x) { return x >= least_resistance_ohm && std::isfinite(x); }

const char* law_fault(const Open&) { return nullptr; }
const char* law_fault(const Resistor& r) {
  return resistance(r.resistance_ohm) ? nullptr : "resistance below 1e-6 ohm";
}
const char* law_fault(const Battery& b) {
  if (!std::isfinite(b.emf_v)) return "the electromotive force is not a number";
  return resistance(b.resistance_ohm) ? nullptr : "source resistance below 1e-6 ohm";
}
const char* law_fault(const ConstantCurrent& c) {
  return c.current_a >= 0 && std::isfinite(c.current_a) && positive(c.least_v)
             ? nullptr
             : "a constant current needs a current from 0 A and a least voltage above 0 V";
}
const char* law_fault(const ConstantPower& c) {
  return c.power_w >= 0 && std::isfinite(c.power_w) && positive(c.least_v)
             ? nullptr
             : "a constant power needs a power from 0 W and a least voltage above 0 V";
}
const char* law_fault(const PowerLaw& p) {
  return p.rated_a >= 0 && std::isfinite(p.rated_a) && positive(p.rated_v) && p.exponent > 0 && p.exponent < 3
             ? nullptr
             : "a motor or lamp needs a rated current and voltage and an exponent between 0 and 3";
}
const char* law_fault(const RegulatedSource& s) {
  return std::isfinite(s.set_v) && std::isfinite(s.greatest_a) && s.leakage_s >= 0 && resistance(s.regulation_ohm) &&
                 positive(s.ceiling_v)
             ? nullptr
             : "a regulated source needs a set voltage, a greatest current, a regulation resistance and a ceiling";
}
const char* law_fault(const Diode& d) {
  return positive(d.threshold_v) && resistance(d.resistance_ohm) && d.leakage_s >= 0
             ? nullptr
             : "a diode needs a threshold above 0 V, a resistance from 1e-6 ohm and a leakage from 0 S";
}

}  // namespace

Flow evaluate(const Branch& branch, double across_v, double sense_v, double load_start_v) {
  if (!branch.closed) return {};
  if (const auto* source = std::get_if<RegulatedSource>(&branch.law)) return regulated(*source, across_v, sense_v);
  return std::visit([&](const auto& law) { return flow(law, across_v, branch.series_ohm, load_start_v); }, branch.law);
}

const char* fault(const Branch& branch) {
  if (!(branch.series_ohm >= 0) || !std::isfinite(branch.series_ohm)) return "series resistance below 0 ohm";
  return std::visit([](const auto& law) { return law_fault(law); }, branch.law);
}

}  // namespace sw::physics::dc
