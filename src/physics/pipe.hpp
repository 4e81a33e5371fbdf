#pragma once
// Pressure lost by a fluid in a round pipe.
//
//   Re = rho V D / mu
//   laminar          f = 64 / Re
//   Colebrook        1/sqrt(f) = -2 log10(e/3.7 + 2.51 / (Re sqrt(f))),  e relative roughness
//   Haaland          1/sqrt(f) = -1.8 log10((e/3.7)^1.11 + 6.9/Re)
//   drop             (f L/D + sum K) rho V^2 / 2
// f Darcy factor, L length m, D bore m, V mean speed m/s, K local loss coefficients on the speed in this bore.
// Range: laminar below Re 2300; Colebrook from 4000 to 1e8, e up to 0.05. Between 2300 and 4000 flow may be either:
// `pipe_factor` gives Colebrook there and `valid` false (true where the caller says turbulent); `pipe_factor_smooth`,
// for solvers and time loops, goes over from one to the other without a jump (cubic in Re, our own bridge). Source:
// Colebrook, J. Inst. Civ. Eng. 11 (1939) 133; Haaland, J. Fluids Eng. 105 (1983) 89; White, Fluid Mechanics, ch. 6
// (from memory).
#include "physics/law.hpp"

namespace sw::physics {

inline constexpr double laminar_end_reynolds = 2300;
inline constexpr double turbulent_start_reynolds = 4000;

enum class Regime { by_reynolds, laminar, turbulent };

Slope colebrook_factor(double reynolds, double relative_roughness);  ///< slope to Re
double haaland_factor(double reynolds, double relative_roughness);
Slope pipe_factor(double reynolds, double relative_roughness, Regime regime = Regime::by_reynolds);
Slope pipe_factor_smooth(double reynolds, double relative_roughness);

struct Pipe {
  double bore_m = 0;
  double length_m = 0;
  double roughness_m = 0;
  double losses = 0;  ///< sum of local coefficients
};
struct PipeFluid {
  double density_kg_m3 = 0;
  double viscosity_pa_s = 0;
};
double pipe_area_m2(double bore_m);

struct PipeState {
  double flow_m3_s = 0;
  double pressure_drop_pa = 0;
  double slope_pa_s_m3 = 0;  ///< d drop / d flow
  double speed_m_s = 0;
  double reynolds = 0;
  double factor = 0;
  bool valid = true;
};
/// Drop at a flow; the drop has the flow's sign.
PipeState pipe_drop(const Pipe& pipe, const PipeFluid& fluid, double flow_m3_s, Regime regime = Regime::by_reynolds);
/// The same with the factor that has no jump.
PipeState pipe_drop_smooth(const Pipe& pipe, const PipeFluid& fluid, double flow_m3_s);
/// Flow at a drop. Not valid where the drop lies in the jump between laminar and turbulent flow: then the state at
/// Re 2300 is given.
PipeState pipe_flow(const Pipe& pipe, const PipeFluid& fluid, double pressure_drop_pa,
                    Regime regime = Regime::by_reynolds);

/// Laminar flow at a drop needs no density (Hagen-Poiseuille): pi D^4 dp / (128 mu L).
double laminar_flow_m3_s(const Pipe& pipe, double viscosity_pa_s, double pressure_drop_pa);

/// Local loss coefficients, on the speed in the smaller bore. Source: White, Fluid Mechanics, ch. 6; Cengel and
/// Cimbala, Fluid Mechanics, table 8-4 (from memory); sudden expansion by Borda-Carnot.
inline constexpr double loss_sharp_entrance = 0.5;
inline constexpr double loss_rounded_entrance = 0.03;  ///< radius above 0.2 of the bore
inline constexpr double loss_exit = 1.0;               ///< turbulent flow
double loss_expansion(double bore_in_m, double bore_out_m);

}  // namespace sw::physics
