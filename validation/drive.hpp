#pragma once
// Driving a schedule with a car of given figures, and what it burns.
#include "car.hpp"
#include "compare.hpp"
#include "physics/cycle.hpp"

namespace sw::validation {

/// A drive schedule of the data's folder `cycles`.
physics::SpeedTrace schedule(const std::filesystem::path& data, std::string_view name);

/// The trace with a point midway between each two: a run has rows there, and between corners its figures do not jump.
Curve with_middles(const std::vector<double>& time_s, const std::vector<double>& speed_m_s);

/// Fuel of each second of a run along such a trace, kg/s, read in the middle of the second.
std::vector<double> fuel_by_second(const Run& run);

/// Miles to a US gallon of the program's gasoline, over a trace of whole seconds.
double economy_mpg(const Run& run, const Curve& trace);

/// Along a trace, warm, 24 degC (75 degF, the test cell's), nothing on but what always is.
Duty test_drive(const Curve& trace);

/// What is known of a measured car; zero where nothing is.
struct Known {
  double mass_kg = 0, displacement_m3 = 0, power_w = 0;
  double rolling = 0, drag_area_m2 = 0;
};
/// The generic car with these figures in place of its own; the torque curve keeps its shape.
Build car_like(const Build& generic, const Known& known);

/// Gears in even steps (each the same ratio to the next) from a usual first to a top of so many engine turns a metre.
void give_gears(Build& build, int count, double axle, double top_rad_m, bool automatic);

/// A road load A + B v + C v^2, N and m/s, as the program's two figures: least squares over 5 to 70 mph.
struct Coefficients {
  double a_n = 0, b_n_s_m = 0, c_n_s2_m2 = 0;
  double force_n(double speed_m_s) const { return a_n + speed_m_s * (b_n_s_m + speed_m_s * c_n_s2_m2); }
};
Coefficients from_pounds_and_mph(double a_lbf, double b_lbf_mph, double c_lbf_mph2);
struct TwoFigures {
  double rolling, drag_area_m2;
  double worst_n;  ///< the furthest the two are off the three
};
TwoFigures two_figures(const Coefficients& c, double mass_kg);
inline constexpr double cell_air_k = 297.15;  ///< of a test cell, 24 degC

}  // namespace sw::validation
