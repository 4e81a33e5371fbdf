#include "physics/water.hpp"

#include <cmath>

namespace sw::physics {
namespace {

constexpr double gas_constant_j_kg_k = 461.526;
constexpr double critical_temperature_k = 647.096, critical_density_kg_m3 = 322.0;

struct Term {
  int i, j;
  double n;
};

// IAPWS R7-97(2012), table 2.
constexpr Term region1[] = {
    {0, -2, 0.14632971213167},       {0, -1, -0.84548187169114},       {0, 0, -0.37563603672040e1},
    {0, 1, 0.33855169168385e1},      {0, 2, -0.95791963387872},        {0, 3, 0.15772038513228},
    {0, 4, -0.16616417199501e-1},    {0, 5, 0.81214629983568e-3},      {1, -9, 0.28319080123804e-3},
    {1, -7, -0.60706301565874e-3},   {1, -1, -0.18990068218419e-1},    {1, 0, -0.32529748770505e-1},
    {1, 1, -0.21841717175414e-1},    {1, 3, -0.52838357969930e-4},     {2, -3, -0.47184321073267e-3},
    {2, 0, -0.30001780793026e-3},    {2, 1, 0.47661393906987e-4},      {2, 3, -0.44141845330846e-5},
    {2, 17, -0.72694996297594e-15},  {3, -4, -0.31679644845054e-4},    {3, 0, -0.28270797985312e-5},
    {3, 6, -0.85205128120103e-9},    {4, -5, -0.22425281908000e-5},    {4, -2, -0.65171222895601e-6},
    {4, 10, -0.14341729937924e-12},  {5, -8, -0.40516996860117e-6},    {8, -11, -0.12734301741641e-8},
    {8, -6, -0.17424871230634e-9},   {21, -29, -0.68762131295531e-18}, {23, -31, 0.14478307828521e-19},
    {29, -38, 0.26335781662795e-22}, {30, -39, -0.11947622640071e-22}, {31, -40, 0.18228094581404e-23},
    {32, -41, -0.93537087292458e-25}};

// IAPWS R7-97(2012), table 34.
constexpr double sat[] = {0.11670521452767e4,  -0.72421316703206e6, -0.17073846940092e2, 0.12020824702470e5,
                          -0.32325550322333e7, 0.14915108613530e2,  -0.48232657361591e4, 0.40511340542057e6,
                          -0.23855557567849,   0.65017534844798e3};

// IAPWS R12-08, table 2.
constexpr Term viscosity_terms[] = {{0, 0, 5.20094e-1},  {1, 0, 8.50895e-2},  {2, 0, -1.08374},    {3, 0, -2.89555e-1},
                                    {0, 1, 2.22531e-1},  {1, 1, 9.99115e-1},  {2, 1, 1.88797},     {3, 1, 1.26613},
                                    {5, 1, 1.20573e-1},  {0, 2, -2.81378e-1}, {1, 2, -9.06851e-1}, {2, 2, -7.72479e-1},
                                    {3, 2, -4.89837e-1}, {4, 2, -2.57040e-1}, {0, 3, 1.61913e-1},  {1, 3, 2.57399e-1},
                                    {0, 4, -3.25372e-2}, {3, 4, 6.98452e-2},  {4, 5, 8.72102e-3},  {3, 6, -4.35673e-3},
                                    {5, 6, -5.93264e-4}};

// IAPWS R15-11, table 2, row i by column j.
constexpr double conductivity_terms[5][6] = {
    {1.60397357, -0.646013523, 0.111443906, 0.102997357, -0.0504123634, 0.00609859258},
    {2.33771842, -2.78843778, 1.53616167, -0.463045512, 0.0832827019, -0.00719201245},
    {2.19650529, -4.54580785, 3.55777244, -1.40944978, 0.275418278, -0.0205938816},
    {-1.21051378, 1.60812989, -0.621178141, 0.0716373224, 0, 0},
    {-2.7203370, 4.57586331, -3.18369245, 1.1168348, -0.19268305, 0.012913842}};

double power_sum(const double* n, int count, double x) {
  double sum = 0;
  for (int k = count - 1; k >= 0; --k) sum = sum * x + n[k];
  return sum;
}

}  // namespace

WaterCaloric water_caloric(double temperature_k, double pressure_pa) {
  const double pi = pressure_pa / 16.53e6, tau = 1386.0 / temperature_k;
  const double a = 7.1 - pi, b = tau - 1.222;
  double g_pi = 0, g_tautau = 0;
  for (auto& t : region1) {
    g_pi -= t.n * t.i * std::pow(a, t.i - 1) * std::pow(b, t.j);
    g_tautau += t.n * std::pow(a, t.i) * t.j * (t.j - 1) * std::pow(b, t.j - 2);
  }
  return {pressure_pa / (pi * g_pi * gas_constant_j_kg_k * temperature_k), -gas_constant_j_kg_k * tau * tau * g_tautau};
}

double water_viscosity(double temperature_k, double density_kg_m3) {
  constexpr double h[] = {1.67752, 2.20462, 0.6366564, -0.241605};  // IAPWS R12-08, table 1
  const double t = temperature_k / critical_temperature_k, d = density_kg_m3 / critical_density_kg_m3;
  double sum = 0;
  for (auto& k : viscosity_terms) sum += k.n * std::pow(1 / t - 1, k.i) * std::pow(d - 1, k.j);
  return 1e-6 * 100 * std::sqrt(t) / power_sum(h, 4, 1 / t) * std::exp(d * sum);
}

double water_conductivity(double temperature_k, double density_kg_m3) {
  constexpr double l[] = {2.443221e-3, 1.323095e-2, 6.770357e-3, -3.454586e-3, 4.096266e-4};  // R15-11, table 1
  const double t = temperature_k / critical_temperature_k, d = density_kg_m3 / critical_density_kg_m3;
  double sum = 0;
  for (int i = 4; i >= 0; --i) sum = sum * (1 / t - 1) + power_sum(conductivity_terms[i], 6, d - 1);
  return 1e-3 * std::sqrt(t) / power_sum(l, 5, 1 / t) * std::exp(d * sum);
}

Slope water_saturation_pressure(double temperature_k) {
  const double shift = temperature_k - sat[9];
  const double th = temperature_k + sat[8] / shift, dth = 1 - sat[8] / (shift * shift);
  const double a = th * (th + sat[0]) + sat[1], da = 2 * th + sat[0];
  const double b = th * (sat[2] * th + sat[3]) + sat[4], db = 2 * sat[2] * th + sat[3];
  const double c = th * (sat[5] * th + sat[6]) + sat[7], dc = 2 * sat[5] * th + sat[6];
  const double root = std::sqrt(b * b - 4 * a * c), droot = (b * db - 2 * (da * c + a * dc)) / root;
  const double x = 2 * c / (root - b), dx = (2 * dc - x * (droot - db)) / (root - b) * dth;
  return {1e6 * x * x * x * x, 4e6 * x * x * x * dx, temperature_k >= 273.15 && temperature_k <= 623.15};
}

Slope water_saturation_temperature(double pressure_pa) {
  const double beta = std::pow(pressure_pa / 1e6, 0.25);
  const double e = beta * (beta + sat[2]) + sat[5];
  const double f = beta * (sat[0] * beta + sat[3]) + sat[6];
  const double g = beta * (sat[1] * beta + sat[4]) + sat[7];
  const double d = 2 * g / (-f - std::sqrt(f * f - 4 * e * g));
  const double s = sat[9] + d;
  const double temperature_k = 0.5 * (s - std::sqrt(s * s - 4 * (sat[8] + sat[9] * d)));
  const Slope back = water_saturation_pressure(temperature_k);
  return {temperature_k, 1 / back.slope, back.valid};
}

FluidState water(double temperature_k, double pressure_pa) {
  const auto caloric = water_caloric(temperature_k, pressure_pa);
  FluidState s;
  s.density_kg_m3 = caloric.density_kg_m3;
  s.specific_heat_j_kg_k = caloric.specific_heat_j_kg_k;
  s.viscosity_pa_s = water_viscosity(temperature_k, s.density_kg_m3);
  s.conductivity_w_m_k = water_conductivity(temperature_k, s.density_kg_m3);
  s.valid = temperature_k >= 273.15 && temperature_k <= 473.15 && pressure_pa <= 10e6 &&
            pressure_pa >= water_saturation_pressure(temperature_k).value * (1 - 1e-9);
  return s;
}

}  // namespace sw::physics
