#pragma once
// Heat transfer coefficients: forced convection in tubes, free convection on plates and cylinders.
//
//   Nu = h D / k
//   Dittus-Boelter (McAdams)   0.023 Re^0.8 Pr^n, n = 0.4 fluid heated, 0.3 cooled; Re >= 10 000, 0.6 <= Pr <= 160
//   Gnielinski                 (f/8)(Re - 1000) Pr / (1 + 12.7 sqrt(f/8) (Pr^(2/3) - 1)), f Darcy;
//                              3000 <= Re <= 5e6, 0.5 <= Pr <= 2000
//   smooth tube (Petukhov)     f = (0.790 ln Re - 1.64)^-2
//   Churchill-Chu, plate       (0.825 + 0.387 Ra^(1/6) / (1 + (0.492/Pr)^(9/16))^(8/27))^2, Ra <= 1e12
//   Churchill-Chu, cylinder    (0.60 + 0.387 Ra^(1/6) / (1 + (0.559/Pr)^(9/16))^(8/27))^2, Ra <= 1e12, lying
// Outside the range the formula is continued and `valid` is false. Slopes are to Re (forced) or Ra (free).
// Sources: McAdams, Heat Transmission (1942); Gnielinski, Int. Chem. Eng. 16 (1976) 359; Petukhov, Adv. Heat Transfer 6
// (1970); Churchill and Chu, Int. J. Heat Mass Transfer 18 (1975) 1323 and 1049; ranges as in Incropera,
// Fundamentals of Heat and Mass Transfer, ch. 8 and 9 (from memory).
#include "physics/law.hpp"

namespace sw::physics {

Slope nusselt_dittus_boelter(double reynolds, double prandtl, bool fluid_heated);
Slope nusselt_gnielinski(double reynolds, double prandtl, double darcy_factor);
double smooth_tube_factor(double reynolds);
Slope nusselt_vertical_plate(double rayleigh, double prandtl);
Slope nusselt_lying_cylinder(double rayleigh, double prandtl);

}  // namespace sw::physics
