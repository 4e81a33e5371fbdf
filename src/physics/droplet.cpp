#include "physics/droplet.hpp"

#include <cmath>

#include "quantity/customary.hpp"

namespace sw::physics {
namespace {

/// Speed at which drag holds the weight, by Newton on f(w) = 18 mu/d^2 (1 + 0.15 Re^0.687) w - g (rho_o - rho_g).
double fall(double d, const Mist& m) {
  const double pull = standard_gravity_m_s2 * (m.oil_kg_m3 - m.gas_kg_m3), stokes = 18 * m.gas_pa_s / (d * d);
  double w = pull / stokes;
  for (int i = 0; i < 50; ++i) {
    const double extra = 0.15 * std::pow(m.gas_kg_m3 * w * d / m.gas_pa_s, 0.687);
    const double f = stokes * w * (1 + extra) - pull, slope = stokes * (1 + 1.687 * extra);
    w -= f / slope;
    if (std::abs(f) < 1e-13 * pull) break;
  }
  return w;
}

}  // namespace

Slope settling_m_s(double d, const Mist& m) {
  const double w = fall(d, m), re = m.gas_kg_m3 * w * d / m.gas_pa_s, extra = 0.15 * std::pow(re, 0.687);
  // Stokes term falls with d^-2, the extra one rises with d^0.687: both at the weight's constant pull.
  const double slope = w / d * (2 * (1 + extra) - 0.687 * extra) / (1 + 1.687 * extra);
  return {w, slope, re <= 1000};
}

Slope passage_m_s(double flow, double area) { return {flow / area, 1 / area}; }

}  // namespace sw::physics
