#pragma once
// Oil that a draught carries away or lets fall.
//
// A sphere falls at w = sqrt(4/3 g d (rho_o - rho_g)/(rho_g C_d)), C_d = 24/Re (1 + 0.15 Re^0.687) (Schiller and
// Naumann 1933, good to Re 1000; Clift, Grace and Weber, Bubbles, Drops and Particles, from memory). In a passage the
// gas goes at Q/A; drops that settle slower than that go with it. Which drops there are under a rocker cover is a
// matter of practice.
#include "physics/law.hpp"

namespace sw::physics {

struct Mist {
  double oil_kg_m3 = 850, gas_kg_m3 = 0.98, gas_pa_s = 2.1e-5;  ///< air at 90 degC (from memory), oil hot
};
/// m/s; valid up to Re = 1000. slope: d speed / d diameter.
Slope settling_m_s(double diameter_m, const Mist& mist = {});

/// m/s through an area. slope: d speed / d flow.
Slope passage_m_s(double flow_m3_s, double area_m2);

}  // namespace sw::physics
