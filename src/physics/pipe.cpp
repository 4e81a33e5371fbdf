#include "physics/pipe.hpp"

#include <cmath>
#include <numbers>

namespace sw::physics {
namespace {

PipeState state(const Pipe& pipe, const PipeFluid& fluid, double flow_m3_s, const auto& factor_at) {
  const double area = pipe_area_m2(pipe.bore_m),
               per_flow = fluid.density_kg_m3 * pipe.bore_m / (fluid.viscosity_pa_s * area);
  PipeState s;
  s.flow_m3_s = flow_m3_s;
  s.speed_m_s = flow_m3_s / area;
  s.reynolds = std::abs(flow_m3_s) * per_flow;
  const double head = fluid.density_kg_m3 * s.speed_m_s * std::abs(s.speed_m_s) / 2;
  if (s.reynolds < 1e-9) {  // the limit of rest: Poiseuille's slope
    s.slope_pa_s_m3 = 128 * fluid.viscosity_pa_s * pipe.length_m / (std::numbers::pi * std::pow(pipe.bore_m, 4));
    s.pressure_drop_pa = s.slope_pa_s_m3 * flow_m3_s;
    return s;
  }
  const Slope f = factor_at(s.reynolds);
  const double l_d = pipe.length_m / pipe.bore_m;
  s.factor = f.value;
  s.valid = f.valid;
  s.pressure_drop_pa = (f.value * l_d + pipe.losses) * head;
  s.slope_pa_s_m3 = 2 * s.pressure_drop_pa / flow_m3_s + f.slope * per_flow * l_d * std::abs(head);
  return s;
}

}  // namespace

Slope colebrook_factor(double reynolds, double relative_roughness) {
  // Halley's steps in x = 1/sqrt(f) from the middle of where it can lie: one logarithm each, and three reach the last
  // digit; a start by an explicit formula would cost as much as two of them.
  const double rough = relative_roughness / 3.7, k = 2.51 / reynolds, to_log10 = 2 / std::numbers::ln10;
  double x = 7;
  for (int step = 0; step < 5; ++step) {
    const double inner = rough + k * x, slope = 1 + to_log10 * k / inner;
    const double newton = (x + to_log10 * std::log(inner)) / slope;
    const double bend = -to_log10 * k * k / (inner * inner) / slope;
    const double by = newton / (1 - 0.5 * newton * bend);
    x -= by;
    if (std::abs(by) < 1e-5) break;  // the next would change it by less than its last digit
  }
  const double inner = rough + k * x;
  const double dx = to_log10 * k * x / reynolds / inner / (1 + to_log10 * k / inner);
  const bool valid =
      reynolds >= turbulent_start_reynolds && reynolds <= 1e8 && relative_roughness >= 0 && relative_roughness <= 0.05;
  return {1 / (x * x), -2 * dx / (x * x * x), valid};
}

double haaland_factor(double reynolds, double relative_roughness) {
  const double x = -1.8 * std::log10(std::pow(relative_roughness / 3.7, 1.11) + 6.9 / reynolds);
  return 1 / (x * x);
}

Slope pipe_factor(double reynolds, double relative_roughness, Regime regime) {
  if (regime == Regime::laminar || (regime == Regime::by_reynolds && reynolds < laminar_end_reynolds))
    return {64 / reynolds, -64 / (reynolds * reynolds), true};
  Slope f = colebrook_factor(reynolds, relative_roughness);
  if (regime == Regime::turbulent && reynolds >= laminar_end_reynolds && relative_roughness <= 0.05) f.valid = true;
  return f;
}

Slope pipe_factor_smooth(double reynolds, double relative_roughness) {
  if (reynolds <= laminar_end_reynolds || reynolds >= turbulent_start_reynolds)
    return pipe_factor(reynolds, relative_roughness);
  const Slope a = pipe_factor(laminar_end_reynolds, relative_roughness, Regime::laminar);
  const Slope b = colebrook_factor(turbulent_start_reynolds, relative_roughness);
  const double h = turbulent_start_reynolds - laminar_end_reynolds, t = (reynolds - laminar_end_reynolds) / h;
  const double rise = b.value - a.value, c = 3 * rise - h * (2 * a.slope + b.slope),
               d = h * (a.slope + b.slope) - 2 * rise;
  return {a.value + t * (h * a.slope + t * (c + t * d)), a.slope + t * (2 * c + 3 * t * d) / h, true};
}

double pipe_area_m2(double bore_m) { return std::numbers::pi / 4 * bore_m * bore_m; }

PipeState pipe_drop(const Pipe& pipe, const PipeFluid& fluid, double flow_m3_s, Regime regime) {
  return state(pipe, fluid, flow_m3_s,
               [&](double re) { return pipe_factor(re, pipe.roughness_m / pipe.bore_m, regime); });
}

PipeState pipe_drop_smooth(const Pipe& pipe, const PipeFluid& fluid, double flow_m3_s) {
  return state(pipe, fluid, flow_m3_s,
               [&](double re) { return pipe_factor_smooth(re, pipe.roughness_m / pipe.bore_m); });
}

PipeState pipe_flow(const Pipe& pipe, const PipeFluid& fluid, double pressure_drop_pa, Regime regime) {
  const double wanted = std::abs(pressure_drop_pa), sign = pressure_drop_pa < 0 ? -1 : 1;
  if (wanted == 0) return pipe_drop(pipe, fluid, 0, regime);
  // Flow at Re = 1 sets the scale; the drop rises with the flow, so doubling brackets the root.
  double low = 0, high = fluid.viscosity_pa_s / fluid.density_kg_m3 * pipe_area_m2(pipe.bore_m) / pipe.bore_m;
  while (pipe_drop(pipe, fluid, high, regime).pressure_drop_pa < wanted) {
    low = high;
    high *= 2;
    if (!std::isfinite(high)) return {.valid = false};
  }
  double q = 0.5 * (low + high);
  for (int k = 0; k < 200 && high - low > 1e-14 * high; ++k) {
    const PipeState s = pipe_drop(pipe, fluid, q, regime);
    (s.pressure_drop_pa < wanted ? low : high) = q;
    const double newton = q + (wanted - s.pressure_drop_pa) / s.slope_pa_s_m3;
    if (std::abs(newton - q) <= 1e-14 * q) break;
    q = newton > low && newton < high ? newton : 0.5 * (low + high);
  }
  PipeState found = pipe_drop(pipe, fluid, sign * q, regime);
  if (std::abs(std::abs(found.pressure_drop_pa) - wanted) > 1e-8 * wanted) found.valid = false;
  return found;
}

double laminar_flow_m3_s(const Pipe& pipe, double viscosity_pa_s, double pressure_drop_pa) {
  return std::numbers::pi * std::pow(pipe.bore_m, 4) * pressure_drop_pa / (128 * viscosity_pa_s * pipe.length_m);
}

double loss_expansion(double bore_in_m, double bore_out_m) {
  const double area_ratio = bore_in_m * bore_in_m / (bore_out_m * bore_out_m);
  return (1 - area_ratio) * (1 - area_ratio);
}

}  // namespace sw::physics
