#pragma once
// What an ignition lead puts into a wire beside it, by the electric field between them.
//
// Mutual capacitance of two long thin wires a height h above metal, a distance d apart between centres, radii a_1 and
// a_2: with potential coefficients P_11 = ln(2 h/a_1), P_22 = ln(2 h/a_2), P_12 = 1/2 ln(1 + (2 h/d)^2), each over 2 pi
// e_0, C = 2 pi e_0 P_12 / (P_11 P_22 - P_12^2) a metre (Paul, Introduction to Electromagnetic Compatibility, ch. on
// crosstalk, from memory). Insulation between wires that touch raises it; `permittivity` stands for that. An edge of
// dV/dt lasting t into a resistance R then makes u = R C dV/dt (1 - exp(-t/(R C))), for short R C the R C dV/dt of the
// trade; never more than the whole edge. Inductive coupling is left out: it matters for currents in loops, and a
// twisted pair sees to it.
#include "physics/law.hpp"

namespace sw::physics {

struct WiresBeside {
  double length_m;
  double apart_m;          ///< between centres, at least the sum of the radii
  double height_m = 0.02;  ///< above metal (common practice: lying along block or inner wing)
  double lead_radius_m = 0.6e-3, wire_radius_m = 0.6e-3;  ///< of the conductors, about 1 mm2
  double permittivity = 2;  ///< between them, relative (common practice: insulation and some air)
};
/// Farad. slope: d capacitance / d apart.
Slope mutual_capacitance_f(const WiresBeside& wires);

/// Volts across the input. slope: d volts / d capacitance.
Slope coupled_v(double capacitance_f, double input_ohm, double edge_v, double edge_s);

}  // namespace sw::physics
