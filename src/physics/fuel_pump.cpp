#include "physics/fuel_pump.hpp"

#include <algorithm>
#include <cmath>

namespace sw::physics {
namespace {

constexpr double relief_opens_over = 0.1;  ///< of its pressure, from opening to passing the free flow (common practice)
constexpr double search_end_pa = 5e6;      ///< no fuel pump reaches that

}  // namespace

std::optional<PumpCurve> PumpCurve::make(const Curve& c) {
  const auto f = Interpolant::make(c);
  if (!f) return std::nullopt;
  for (std::size_t i = 1; i < c.y.size(); ++i)
    if (!(c.y[i] < c.y[i - 1])) return std::nullopt;
  PumpCurve p(*f);
  const std::size_t n = c.x.size();
  p.first_slope_ = (c.y[1] - c.y[0]) / (c.x[1] - c.x[0]);
  p.last_slope_ = (c.y[n - 1] - c.y[n - 2]) / (c.x[n - 1] - c.x[n - 2]);
  p.free_m3_s_ = p.at(0).flow_m3_s;
  return p;
}

std::optional<PumpCurve> PumpCurve::make(double rated_m3_s, double rated_pa, double free_ratio) {
  if (!(rated_pa > 0) || !(free_ratio > 1)) return std::nullopt;
  return make(Curve{{0, rated_pa}, {free_ratio * rated_m3_s, rated_m3_s}});
}

PumpCurve::At PumpCurve::at(double pressure_pa) const {
  const auto r = curve_.at(std::clamp(pressure_pa, curve_.first(), curve_.last()));
  if (pressure_pa < curve_.first())
    return {r.value + first_slope_ * (pressure_pa - curve_.first()), first_slope_, false};
  if (pressure_pa > curve_.last()) return {r.value + last_slope_ * (pressure_pa - curve_.last()), last_slope_, false};
  return {r.value, r.slope, true};
}

PumpFlow pump_flow(const PumpCurve& curve, double pressure_pa, double volts_share, std::optional<double> relief_pa) {
  PumpFlow out;
  const auto rated = curve.at(pressure_pa);
  const double turned = rated.flow_m3_s - curve.free_m3_s() * (1 - volts_share);
  out.valid = volts_share >= least_volts_share && volts_share <= most_volts_share && rated.inside;
  if (turned <= 0 || volts_share <= 0) return out;
  double d_spill = 0;
  if (relief_pa && pressure_pa > *relief_pa) {
    d_spill = curve.free_m3_s() / (relief_opens_over * *relief_pa);
    out.spilt_m3_s = std::min(turned, d_spill * (pressure_pa - *relief_pa));
  }
  out.flow_m3_s = turned - out.spilt_m3_s;
  if (out.flow_m3_s <= 0) return out;
  out.d_pressure = rated.slope_m3_s_pa - d_spill;
  out.d_volts_share = curve.free_m3_s();
  return out;
}

double dead_head_pa(const PumpCurve& curve, double volts_share, std::optional<double> relief_pa) {
  double low = 0, high = search_end_pa;
  if (pump_flow(curve, high, volts_share, relief_pa).flow_m3_s > 0) return high;
  for (int k = 0; k < 80; ++k) {
    const double middle = 0.5 * (low + high);
    (pump_flow(curve, middle, volts_share, relief_pa).flow_m3_s > 0 ? low : high) = middle;
  }
  return high;
}

}  // namespace sw::physics
