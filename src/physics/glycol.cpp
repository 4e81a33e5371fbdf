#include "physics/glycol.hpp"

#include <cmath>

#include "quantity/customary.hpp"

namespace sw::physics {
namespace {

constexpr double water_molar_kg_mol = 18.01528e-3, water_density_20_kg_m3 = 998.2;

// Rows in the order of the tables: C00 C01 C02 C03, C10 … C13, C20 … C23, C30 … C32, C40 C41, C50; columns freezing
// point (degC), density (kg/m3), specific heat (J/(kg K)), conductivity (W/(m K)), ln of viscosity (mPa s).
struct Row {
  int i, j;
  double freezing, density, specific_heat, conductivity, log_viscosity;
};
struct Data {
  double mean_percent, mean_c, molar_kg_mol, density_20_kg_m3;
  double antoine[3];  ///< log10(p / bar) = A - B / (T + C)
  Row rows[18];
};

constexpr Data ethylene{30.8462,
                        31.728,
                        62.068e-3,
                        1113.2,
                        {4.97012, 1914.951, -84.996},
                        {{0, 0, -15.25, 1034, 3737, 0.472, 0.4705},
                         {0, 1, -1.566e-6, -0.4781, 2.93, 8.903e-4, -0.0255},
                         {0, 2, -2.278e-7, -2.692e-3, -4.675e-3, -1.058e-6, 1.782e-4},
                         {0, 3, 2.169e-9, 4.725e-6, -1.389e-5, -2.789e-9, -7.669e-7},
                         {1, 0, -0.808, 1.311, -17.99, -4.286e-3, 0.02471},
                         {1, 1, -1.339e-6, -6.876e-3, 0.1046, -1.473e-5, -1.171e-4},
                         {1, 2, 2.047e-8, 4.805e-5, -4.147e-4, 1.059e-7, 1.052e-6},
                         {1, 3, -2.717e-11, 1.69e-8, 1.847e-7, -1.142e-10, -1.634e-8},
                         {2, 0, -0.01334, 7.49e-5, -0.09933, 1.747e-5, 3.328e-6},
                         {2, 1, 6.322e-8, 7.855e-5, 3.516e-4, 6.814e-8, 1.086e-6},
                         {2, 2, 2.373e-10, -3.995e-7, 5.109e-6, -3.612e-9, 1.051e-8},
                         {2, 3, -2.183e-12, 4.982e-9, -7.138e-8, 2.365e-12, -6.475e-10},
                         {3, 0, -7.293e-5, -1.062e-4, 2.61e-3, 3.017e-8, 1.659e-6},
                         {3, 1, 1.764e-9, 1.229e-6, -1.189e-6, -2.412e-9, 3.157e-9},
                         {3, 2, -2.442e-11, -1.153e-8, -1.643e-7, 4.004e-11, 4.063e-10},
                         {4, 0, 1.006e-6, -9.623e-7, 1.537e-5, -1.322e-9, 3.089e-8},
                         {4, 1, -7.662e-11, -7.211e-8, -4.272e-7, 2.555e-11, 1.831e-10},
                         {5, 0, 1.14e-9, 4.891e-8, -1.618e-6, 2.678e-11, -1.865e-9}}};

constexpr Data propylene{30.7031,
                         32.7083,
                         76.094e-3,
                         1036.1,
                         {6.07936, 2692.187, -17.94},
                         {{0, 0, -13.25, 1018, 3882, 0.4513, 0.6837},
                          {0, 1, -3.82e-5, -0.5406, 2.699, 7.955e-4, -0.03045},
                          {0, 2, 7.865e-7, -2.666e-3, -1.659e-3, 3.482e-8, 2.525e-4},
                          {0, 3, -1.733e-9, 1.347e-5, -1.032e-5, -5.966e-9, -1.399e-6},
                          {1, 0, -0.6631, 0.7604, -13.04, -4.795e-3, 0.03328},
                          {1, 1, 6.774e-6, -9.45e-3, 0.0507, -1.678e-5, -3.984e-4},
                          {1, 2, -6.242e-8, 5.541e-5, -4.752e-5, 8.941e-8, 4.332e-6},
                          {1, 3, -7.819e-10, -1.343e-7, 1.522e-6, 1.493e-10, -1.86e-8},
                          {2, 0, -0.01094, -2.498e-3, -0.1598, 2.076e-5, 5.453e-5},
                          {2, 1, 5.332e-8, 2.7e-5, 9.534e-5, 1.563e-7, -8.6e-8},
                          {2, 2, -4.169e-9, -4.018e-7, 1.167e-5, -4.615e-9, -1.593e-8},
                          {2, 3, 3.288e-11, 3.376e-9, -4.87e-8, 9.897e-12, -4.465e-11},
                          {3, 0, -2.283e-4, -1.55e-4, 3.539e-4, -9.083e-8, -3.9e-6},
                          {3, 1, -1.131e-8, 2.829e-6, 3.102e-5, -2.518e-9, 1.054e-7},
                          {3, 2, 1.918e-10, -7.175e-9, -2.95e-7, 6.543e-11, -1.589e-9},
                          {4, 0, -3.409e-6, -1.131e-6, 5e-5, -5.952e-10, -1.587e-8},
                          {4, 1, 8.035e-11, -2.221e-8, -7.135e-7, -3.605e-11, 4.475e-10},
                          {5, 0, 1.465e-8, 2.342e-8, -4.959e-7, 2.104e-11, 3.564e-9}}};

const Data& data(Glycol g) { return g == Glycol::ethylene ? ethylene : propylene; }

double cubic(const std::array<double, 4>& c, double t) { return c[0] + t * (c[1] + t * (c[2] + t * c[3])); }

double water_mole_fraction(const Data& d, double w) {
  const double water = (1 - w) / water_molar_kg_mol, glycol = w / d.molar_kg_mol;
  return water / (water + glycol);
}

}  // namespace

GlycolCubics glycol_cubics(Glycol glycol, double mass_fraction) {
  const Data& d = data(glycol);
  const double x = 100 * mass_fraction - d.mean_percent;
  GlycolCubics c;
  c.base_k = zero_celsius_k + d.mean_c;
  for (auto& r : d.rows) {
    const double xi = std::pow(x, r.i);
    const auto j = static_cast<std::size_t>(r.j);
    c.density[j] += r.density * xi;
    c.specific_heat[j] += r.specific_heat * xi;
    c.conductivity[j] += r.conductivity * xi;
    c.log_viscosity[j] += r.log_viscosity * xi;
  }
  c.log_viscosity[0] += std::log(1e-3);  // the tables give mPa s
  return c;
}

FluidState glycol_water(Glycol glycol, double mass_fraction, double temperature_k) {
  const auto c = glycol_cubics(glycol, mass_fraction);
  const double t = temperature_k - c.base_k;
  FluidState s;
  s.density_kg_m3 = cubic(c.density, t);
  s.specific_heat_j_kg_k = cubic(c.specific_heat, t);
  s.conductivity_w_m_k = cubic(c.conductivity, t);
  s.viscosity_pa_s = std::exp(cubic(c.log_viscosity, t));
  const Slope freezing = glycol_freezing(glycol, mass_fraction);
  s.valid = freezing.valid && temperature_k >= freezing.value && temperature_k <= zero_celsius_k + 100;
  return s;
}

Slope glycol_freezing(Glycol glycol, double mass_fraction) {
  const Data& d = data(glycol);
  const double x = 100 * mass_fraction - d.mean_percent;
  Slope f{zero_celsius_k, 0, mass_fraction >= 0 && mass_fraction <= 0.6};
  for (auto& r : d.rows) {
    if (r.j != 0) continue;
    f.value += r.freezing * std::pow(x, r.i);
    if (r.i > 0) f.slope += 100 * r.freezing * r.i * std::pow(x, r.i - 1);
  }
  return f;
}

Slope glycol_vapour_pressure(Glycol glycol, double mass_fraction, double temperature_k) {
  const Data& d = data(glycol);
  const double xw = water_mole_fraction(d, mass_fraction);
  const Slope pw = water_saturation_pressure(temperature_k);
  const double shifted = temperature_k + d.antoine[2];
  const double pg = 1e5 * std::pow(10.0, d.antoine[0] - d.antoine[1] / shifted);
  const double dpg = pg * std::log(10.0) * d.antoine[1] / (shifted * shifted);
  const bool valid = mass_fraction >= 0 && mass_fraction <= 0.7 && temperature_k >= 300 && temperature_k <= 460;
  return {xw * pw.value + (1 - xw) * pg, xw * pw.slope + (1 - xw) * dpg, valid};
}

Slope glycol_boiling_temperature(Glycol glycol, double mass_fraction, double pressure_pa) {
  // ln p is nearly straight in 1/T: Newton in these settles in a few steps from water's own boiling point.
  double t = water_saturation_temperature(pressure_pa).value;
  for (int k = 0; k < 30; ++k) {
    const Slope p = glycol_vapour_pressure(glycol, mass_fraction, t);
    const double inverse = 1 / t - std::log(pressure_pa / p.value) * p.value / (p.slope * t * t);
    const double step = 1 / inverse - t;
    t += step;
    if (std::abs(step) < 1e-10 * t) break;
  }
  const Slope p = glycol_vapour_pressure(glycol, mass_fraction, t);
  return {t, 1 / p.slope, p.valid};
}

double mass_fraction_of(Glycol glycol, double volume_fraction) {
  const double g = volume_fraction * data(glycol).density_20_kg_m3;
  return g / (g + (1 - volume_fraction) * water_density_20_kg_m3);
}

double volume_fraction_of(Glycol glycol, double mass_fraction) {
  const double g = mass_fraction / data(glycol).density_20_kg_m3;
  return g / (g + (1 - mass_fraction) / water_density_20_kg_m3);
}

}  // namespace sw::physics
