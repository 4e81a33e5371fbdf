#pragma once
// Thermocouples K, J and T: voltage against temperature on ITS-90.
//
// With its reference at 0 degC: E = sum c_i t^i, t in degC, E in mV, by pieces; type K above 0 degC adds a_0 exp(a_1 (t
// - a_2)^2). With its reference at another temperature: E(t) - E(reference). The way back solves that by Newton's
// method. Range: K -270 to 1372 degC, J -210 to 1200 degC, T -270 to 400 degC; outside it the nearest piece goes on,
// marked not valid. Near -270 degC the slope goes to 0 and the way back is poor. Source: NIST ITS-90 thermocouple
// database (NIST Monograph 175), coefficients as several open-source libraries print them alike and NIST's own page to
// three figures (stored copies); checked against its tables of types K and T.
#include "physics/law.hpp"

namespace sw::physics {

enum class Thermocouple { k, j, t };

/// V between a junction and a reference. slope: d V / d temperature, V/K.
Slope thermocouple_v(Thermocouple type, double temperature_k, double reference_k);
/// K of the junction. slope: d K / d V.
Slope thermocouple_k(Thermocouple type, double voltage_v, double reference_k);

struct ThermocoupleRange {
  double lowest_k, highest_k;
};
ThermocoupleRange thermocouple_range(Thermocouple type);

}  // namespace sw::physics
