#pragma once
// The fluids of a car by name, and a coolant ready for a time loop.
//
// Each fluid's own header gives equations, range and source: water.hpp, glycol.hpp, atmosphere.hpp (air),
// gasoline.hpp.
#include <array>
#include <optional>

#include "physics/glycol.hpp"
#include "physics/law.hpp"
#include "physics/water.hpp"

namespace sw::physics {

enum class Fluid { water, ethylene_glycol, propylene_glycol, air, gasoline };

/// `mass_fraction` is of the glycol in water and is read for the glycols alone.
FluidState fluid_state(Fluid fluid, double mass_fraction, double temperature_k, double pressure_pa);

constexpr bool is_glycol(Fluid f) { return f == Fluid::ethylene_glycol || f == Fluid::propylene_glycol; }
constexpr Glycol glycol_of(Fluid f) { return f == Fluid::propylene_glycol ? Glycol::propylene : Glycol::ethylene; }

/// Freezing point (K) of water and coolants; boiling temperature and pressure. Water counts as a coolant of fraction 0.
Slope freezing_temperature(Fluid fluid, double mass_fraction);
Slope boiling_temperature(Fluid fluid, double mass_fraction, double pressure_pa);
Slope boiling_pressure(Fluid fluid, double mass_fraction, double temperature_k);

/// A coolant at one strength: polynomials of fifth degree in temperature, set up once, about 10 ns an evaluation, no
/// allocation. A glycol mixture is exact (its own cubics); water is fitted at 0 to 140 degC to IAPWS at 4 bar, to
/// better than 0.01 % in density, 0.05 % in specific heat, 0.2 % in conductivity and viscosity (tested).
/// Range: freezing point to 140 degC. Between 100 and 140 degC a mixture's polynomials are continued beyond their
/// data and `extrapolated` is set: at 120 degC half a percent of the specific heat, which a loop that spreads its heat
/// over 7 K feels as 0.04 K, far below the doubt of any core. Outside the range `valid` is false.
inline constexpr double coolant_hottest_k = 413.15;
class CoolantTable {
 public:
  struct State {
    double density_kg_m3 = 0, density_slope = 0;  ///< slopes: a kelvin
    double specific_heat_j_kg_k = 0, specific_heat_slope = 0;
    bool valid = true;
    bool extrapolated = false;
  };
  struct Transport {
    double conductivity_w_m_k = 0, viscosity_pa_s = 0;
  };

  /// Water or a glycol in water; empty for another fluid or a mass fraction outside 0 to 0.6.
  static std::optional<CoolantTable> make(Fluid fluid, double mass_fraction);

  State at(double temperature_k) const;
  Transport transport_at(double temperature_k) const;
  double freezing_k() const { return low_k_; }

 private:
  using Poly = std::array<double, 6>;
  double base_k_ = 0, low_k_ = 0, data_end_k_ = 0;
  Poly density_{}, specific_heat_{}, conductivity_{}, log_viscosity_{};
  static Poly fit_water(double (*property)(double temperature_k), double base_k, double half_k);
};

}  // namespace sw::physics
