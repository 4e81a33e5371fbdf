#pragma once
// A wax thermostat: its opening by the wax's temperature.
#include "physics/law.hpp"

namespace sw::physics {

/// Share of full opening, 0 shut to 1 open: s = t^2 (3 - 2 t), t = (T - T_opens) / (T_open - T_opens). Where it begins
/// and where it ends are its data-sheet figures; between them the melting wax expands slowly at both ends, which any
/// S-shape shows (common practice; the cubic is the plainest). Any T: shut below, open above. slope: d share / d T.
/// Not valid where T_open is not above T_opens.
Slope thermostat_opening(double wax_k, double opens_k, double open_k);

}  // namespace sw::physics
