#include "drive.hpp"

#include <cmath>
#include <fstream>
#include <sstream>
#include <stdexcept>

#include "data.hpp"
#include "physics/gasoline.hpp"
#include "physics/road_load.hpp"

namespace sw::validation {
namespace {

constexpr double us_gallon_m3 = 3.785411784e-3;
constexpr double usual_first = 14;  ///< engine turns for one of the wheels in first gear (common practice)

}  // namespace

physics::SpeedTrace schedule(const std::filesystem::path& data, std::string_view name) {
  std::ostringstream text;
  text << std::ifstream(file_with(data / "cycles", name)).rdbuf();
  auto read = physics::read_speed_trace(text.str());
  if (auto* faults = std::get_if<physics::TraceFaults>(&read)) throw std::runtime_error(faults->front().problem);
  return std::get<physics::SpeedTrace>(std::move(read));
}

Curve with_middles(const std::vector<double>& time_s, const std::vector<double>& speed_m_s) {
  Curve c;
  for (std::size_t i = 0; i < time_s.size(); ++i) {
    if (i > 0) {
      c.x.push_back(0.5 * (time_s[i - 1] + time_s[i]));
      c.y.push_back(0.5 * (speed_m_s[i - 1] + speed_m_s[i]));
    }
    c.x.push_back(time_s[i]);
    c.y.push_back(speed_m_s[i]);
  }
  return c;
}

std::vector<double> fuel_by_second(const Run& run) {
  const auto fuel = run.port("engine.fuel_flow");
  std::vector<double> out;
  for (double t = 0.5; t < run.trace.time.back(); ++t) out.push_back(at(run.trace.time, fuel, t));
  return out;
}

double economy_mpg(const Run& run, const Curve& trace) {
  double fuel_kg = 0, distance_m = 0;
  for (double f : fuel_by_second(run)) fuel_kg += f;
  for (std::size_t i = 1; i < trace.x.size(); ++i)
    distance_m += 0.5 * (trace.y[i] + trace.y[i - 1]) * (trace.x[i] - trace.x[i - 1]);
  return distance_m / mile_m / (fuel_kg / physics::gasoline_15c_kg_m3 / us_gallon_m3);
}

Duty test_drive(const Curve& trace) {
  Duty d = plain_duty("cruise", cell_air_k - 273.15);
  d.speed.reset();
  d.speed_trace = trace;
  d.duration = Time{trace.x.back()};
  return d;
}

Build car_like(const Build& generic, const Known& known) {
  Build b = generic;
  auto& vehicle = std::get<vehicle::Input>(b.inputs);
  auto& engine = std::get<engine::Input>(b.inputs);
  if (known.mass_kg > 0) vehicle.weight = Mass{known.mass_kg};
  if (known.rolling > 0) vehicle.rolling = known.rolling;
  if (known.drag_area_m2 > 0) vehicle.drag_area = Area{known.drag_area_m2};
  if (known.displacement_m3 > 0) engine.displacement = Volume{known.displacement_m3};
  if (known.power_w > 0) {
    const double factor = known.power_w / Car(b).model<engine::Model>().peak_power_w;
    for (double& torque : engine.torque_curve->y) torque *= factor;
  }
  return b;
}

void give_gears(Build& build, int count, double axle, double top_rad_m, bool automatic) {
  auto& d = std::get<driveline::Input>(build.inputs);
  const double top = top_rad_m * 0.5 * d.tyre_diameter->si, step = std::pow(usual_first / top, 1.0 / (count - 1));
  d.gearbox = automatic ? driveline::Gearbox::automatic : driveline::Gearbox::manual;
  d.axle = axle;
  d.gear.entries.clear();
  for (int i = 0; i < count; ++i)
    d.gear.entries.push_back({"g" + std::to_string(i + 1), {usual_first / std::pow(step, i) / axle}});
}

Coefficients from_pounds_and_mph(double a, double b, double c) {
  return {a * lbf_n, b * lbf_n / mph_m_s, c * lbf_n / (mph_m_s * mph_m_s)};
}

TwoFigures two_figures(const Coefficients& c, double mass_kg) {
  std::vector<double> one, square, force;
  for (double v = 5 * mph_m_s; v < 70.5 * mph_m_s; v += mph_m_s) {
    one.push_back(1);
    square.push_back(v * v);
    force.push_back(c.force_n(v));
  }
  const auto fit = least_squares(one, square, force);
  TwoFigures out{fit.p / (mass_kg * standard_gravity_m_s2),
                 2 * fit.q / physics::air_density(physics::standard_atmosphere(0).pressure_pa, cell_air_k), 0};
  for (std::size_t i = 0; i < force.size(); ++i) {
    const double off = fit.p + fit.q * square[i] - force[i];
    if (std::abs(off) > std::abs(out.worst_n)) out.worst_n = off;
  }
  return out;
}

}  // namespace sw::validation
