#pragma once
// Ethylene and propylene glycol in water.
//
//   f(x, T) = sum C_ij (x - x_m)^i (T - T_m)^j,  i + j <= 5, j <= 3     x in % by mass, T in degC
//   density f; specific heat f; conductivity f; viscosity exp(f) in mPa s; freezing point f(x, T_m)
//
// Range: 0 to 60 % by mass, freezing point to 100 degC. Above 100 degC the polynomials are continued and `valid` is
// false; at 120 degC and x = 0 they still agree with IAPWS to 0.3 % in density and 0.5 % in specific heat and
// conductivity (tested), but give a viscosity 11 % too low.
// Source: Melinder, Properties of Secondary Working Fluids for Indirect Systems, 2nd ed., IIR 2010, coefficient tables
// of ethylene glycol - water and propylene glycol - water, as transcribed in the open-source CoolProp library.
//
// Boiling (Raoult): p = x_w p_w(T) + (1 - x_w) p_g(T), x_w the mole fraction of water, p_w IAPWS saturation, p_g
// glycol's own vapour pressure by Antoine. Range: up to 70 % by mass, 300 to 460 K. Ideal mixing: at 50 % by volume
// within 1 K of the boiling points printed for coolants (ASTM D3306).
// Source of the Antoine constants: NIST Chemistry WebBook (Jones and Tamplin 1952; Stull 1947), from memory; checked
// against the normal boiling points 197.3 and 187.6 degC.
#include <array>

#include "physics/law.hpp"
#include "physics/water.hpp"

namespace sw::physics {

enum class Glycol { ethylene, propylene };

FluidState glycol_water(Glycol glycol, double mass_fraction, double temperature_k);
Slope glycol_freezing(Glycol glycol, double mass_fraction);  ///< K, K per unit mass fraction

Slope glycol_vapour_pressure(Glycol glycol, double mass_fraction, double temperature_k);    ///< Pa, Pa/K
Slope glycol_boiling_temperature(Glycol glycol, double mass_fraction, double pressure_pa);  ///< K, K/Pa

/// Volumes of the pure liquids at 20 degC taken as additive: 1113.2 (ethylene), 1036.1 (propylene), 998.2 kg/m3.
double mass_fraction_of(Glycol glycol, double volume_fraction);
double volume_fraction_of(Glycol glycol, double mass_fraction);

/// The same polynomials at one mass fraction: cubics in (T - base), for `CoolantTable`.
struct GlycolCubics {
  double base_k = 0;
  std::array<double, 4> density{}, specific_heat{}, conductivity{}, log_viscosity{};
};
GlycolCubics glycol_cubics(Glycol glycol, double mass_fraction);

}  // namespace sw::physics
