#pragma once
// Where R134a condenses, and at what pressure: as much of the circuit as the radiator, the fans and the belt feel.
//
// Saturation: ln(p/p_c) = (-7.686556 s + 2.311791 s^1.5 - 2.039554 s^2 - 3.583758 s^4)/(1 - s), s = 1 - T/374.18 K, p_c
// = 4.05629 MPa (Tillner-Roth and Baehr, J. Phys. Chem. Ref. Data 23 (1994) 657, ancillary vapour-pressure equation;
// its coefficients read in two open property libraries). 170 K to 374.18 K. Condenser: an exchanger whose refrigerant
// side stays at one temperature: Q = e C_a (T_c - T_a), e its effectiveness and C_a the air's heat flow per degree, so
// T_c = T_a + Q/(e C_a). Desuperheating and subcooling are counted as condensing, and what the pipes lose as nothing.
#include "physics/law.hpp"

namespace sw::physics {

inline constexpr double r134a_coldest_k = 170, r134a_hottest_k = 374.18;

/// Absolute, Pa; held at the ends. slope: d p / d T.
Slope r134a_saturation_pa(double temperature_k);
/// K; the inverse. slope: d T / d p.
Slope r134a_saturation_k(double pressure_pa);

/// K. slope: d T / d air's heat flow per degree.
Slope condensing_k(double air_in_k, double heat_w, double effectiveness, double air_w_k);

/// Air warmed by a leak of heat into it: Q/(m c_p), c_p of dry air. slope: d rise / d heat.
Slope air_rise_k(double heat_w, double air_kg_s);

}  // namespace sw::physics
