#include "physics/fluid.hpp"

#include <cmath>
#include <numbers>

#include "physics/atmosphere.hpp"
#include "physics/gasoline.hpp"
#include "quantity/customary.hpp"

namespace sw::physics {
namespace {

constexpr double table_end_k = zero_celsius_k + 140;
constexpr double water_fit_pressure_pa = 4e5;  // above saturation at 140 degC; liquid properties hardly know pressure

struct Eval {
  double value, slope;
};
Eval horner(const std::array<double, 6>& c, double t) {
  double v = c[5], s = 0;
  for (int k = 4; k >= 0; --k) {
    s = s * t + v;
    v = v * t + c[static_cast<std::size_t>(k)];
  }
  return {v, s};
}

std::array<double, 6> widen(const std::array<double, 4>& c) { return {c[0], c[1], c[2], c[3], 0, 0}; }

FluidState air(double temperature_k, double pressure_pa) {
  return {air_density(pressure_pa, temperature_k), air_specific_heat_j_kg_k, air_conductivity(temperature_k),
          air_viscosity(temperature_k), air_valid(pressure_pa, temperature_k)};
}

}  // namespace

FluidState fluid_state(Fluid fluid, double mass_fraction, double temperature_k, double pressure_pa) {
  switch (fluid) {
    case Fluid::water:
      return water(temperature_k, pressure_pa);
    case Fluid::ethylene_glycol:
    case Fluid::propylene_glycol:
      return glycol_water(glycol_of(fluid), mass_fraction, temperature_k);
    case Fluid::air:
      return air(temperature_k, pressure_pa);
    case Fluid::gasoline:
      return gasoline(temperature_k);
  }
  return {.valid = false};
}

Slope freezing_temperature(Fluid fluid, double mass_fraction) {
  if (is_glycol(fluid)) return glycol_freezing(glycol_of(fluid), mass_fraction);
  return {zero_celsius_k, 0, fluid == Fluid::water};
}

Slope boiling_temperature(Fluid fluid, double mass_fraction, double pressure_pa) {
  if (is_glycol(fluid)) return glycol_boiling_temperature(glycol_of(fluid), mass_fraction, pressure_pa);
  Slope t = water_saturation_temperature(pressure_pa);
  t.valid = t.valid && fluid == Fluid::water;
  return t;
}

Slope boiling_pressure(Fluid fluid, double mass_fraction, double temperature_k) {
  if (is_glycol(fluid)) return glycol_vapour_pressure(glycol_of(fluid), mass_fraction, temperature_k);
  Slope p = water_saturation_pressure(temperature_k);
  p.valid = p.valid && fluid == Fluid::water;
  return p;
}

// Interpolation at six Chebyshev nodes (near the best fit), turned into powers of t by divided differences.
CoolantTable::Poly CoolantTable::fit_water(double (*property)(double), double base_k, double half_k) {
  constexpr std::size_t n = 6;
  Poly t{}, f{};
  for (std::size_t k = 0; k < n; ++k) {
    t[k] = half_k * std::cos(std::numbers::pi * (2.0 * static_cast<double>(k) + 1) / (2.0 * n));
    f[k] = property(base_k + t[k]);
  }
  for (std::size_t order = 1; order < n; ++order)
    for (std::size_t k = n - 1; k >= order; --k) f[k] = (f[k] - f[k - 1]) / (t[k] - t[k - order]);
  Poly c{};
  for (std::size_t k = n; k-- > 0;) {  // c <- c * (t - t_k) + f_k
    for (std::size_t j = n - 1; j > 0; --j) c[j] = c[j - 1] - t[k] * c[j];
    c[0] = f[k] - t[k] * c[0];
  }
  return c;
}

std::optional<CoolantTable> CoolantTable::make(Fluid fluid, double mass_fraction) {
  const bool plain = fluid == Fluid::water || (is_glycol(fluid) && mass_fraction == 0);
  if (!plain && (!is_glycol(fluid) || !(mass_fraction > 0 && mass_fraction <= 0.6))) return std::nullopt;
  CoolantTable c;
  if (plain) {
    c.base_k_ = zero_celsius_k + 70;
    c.low_k_ = zero_celsius_k;
    c.data_end_k_ = table_end_k;
    c.density_ = fit_water([](double t) { return water(t, water_fit_pressure_pa).density_kg_m3; }, c.base_k_, 70);
    c.specific_heat_ =
        fit_water([](double t) { return water(t, water_fit_pressure_pa).specific_heat_j_kg_k; }, c.base_k_, 70);
    c.conductivity_ =
        fit_water([](double t) { return water(t, water_fit_pressure_pa).conductivity_w_m_k; }, c.base_k_, 70);
    c.log_viscosity_ =
        fit_water([](double t) { return std::log(water(t, water_fit_pressure_pa).viscosity_pa_s); }, c.base_k_, 70);
    return c;
  }
  const auto cubics = glycol_cubics(glycol_of(fluid), mass_fraction);
  c.base_k_ = cubics.base_k;
  c.low_k_ = glycol_freezing(glycol_of(fluid), mass_fraction).value;
  c.data_end_k_ = zero_celsius_k + 100;
  c.density_ = widen(cubics.density);
  c.specific_heat_ = widen(cubics.specific_heat);
  c.conductivity_ = widen(cubics.conductivity);
  c.log_viscosity_ = widen(cubics.log_viscosity);
  return c;
}

CoolantTable::State CoolantTable::at(double temperature_k) const {
  const double t = temperature_k - base_k_;
  const Eval d = horner(density_, t), c = horner(specific_heat_, t);
  return {d.value,
          d.slope,
          c.value,
          c.slope,
          temperature_k >= low_k_ && temperature_k <= table_end_k,
          temperature_k > data_end_k_ && temperature_k <= table_end_k};
}

CoolantTable::Transport CoolantTable::transport_at(double temperature_k) const {
  const double t = temperature_k - base_k_;
  return {horner(conductivity_, t).value, std::exp(horner(log_viscosity_, t).value)};
}

}  // namespace sw::physics
