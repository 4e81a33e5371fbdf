// Single figures from publications, and the air of three weather stations.
#include <cmath>

#include "car.hpp"
#include "compare.hpp"
#include "data.hpp"
#include "physics/alternator.hpp"
#include "physics/atmosphere.hpp"
#include "physics/fuel_pump.hpp"
#include "quantity/customary.hpp"
#include "studies.hpp"

namespace sw::validation {
namespace {

using Rows = std::vector<std::vector<std::string>>;
constexpr double rpm = M_PI / 30;

/// Output of a machine of which only the rating is told, scaled so that it gives the published 50 A cold at 2500 rpm.
void alternator(Rows& rows) {
  Build b = generic_car("small");
  auto& input = std::get<charging::Input>(b.inputs).alternator;
  input.output_curve.reset();
  const Car car(b);
  const auto& m = car.model<charging::Model>();
  const double scale = 50 / m.output->at(2500 * rpm).value, hot = m.hot.share;
  struct Point {
    double speed_rpm, current_a;
    bool hot;
  };
  for (auto [speed, current, is_hot] : {Point{1300, 24, false}, {1300, 16, true}, {2500, 41, true}, {5000, 48, true}}) {
    const double ours = scale * m.output->at(speed * rpm).value * (is_hot ? hot : 1);
    rows.push_back({std::string("alternator at ") + num(speed) + " rpm, " + (is_hot ? "hot" : "cold"),
                    num(current) + " A", num(ours, 1) + " A", off_share(ours, current)});
  }
  rows.push_back({"regulator, for each 10 K", "-0.10 V", num(10 * m.set_slope_v_k, 2) + " V",
                  off(10 * m.set_slope_v_k + 0.1, 2, "V")});
}

/// Flow at 12.0 V over that at 13.5 V, at 45 psi.
void pump(Rows& rows) {
  constexpr double litre_hour = 1e-3 / 3600, free_ratio = 1.3;
  const auto curve = physics::PumpCurve::make(480 * litre_hour, 45 * psi_pa, free_ratio);
  const double ours = physics::pump_flow(*curve, 45 * psi_pa, 12.0 / 13.5).flow_m3_s /
                      physics::pump_flow(*curve, 45 * psi_pa, 1).flow_m3_s;
  rows.push_back({"fuel pump, flow at 12.0 V over that at 13.5 V", num(700.0 / 800, 3), num(ours, 3),
                  off_share(ours, 700.0 / 800)});
}

/// Heat to the coolant of 600 cm3 at idle, by the stand-ins.
void idle_heat(Rows& rows) {
  Build b = generic_car("small");
  auto& engine = std::get<engine::Input>(b.inputs);
  engine.displacement = Volume{600e-6};
  const Car car(b);
  const auto& m = car.model<engine::Model>();
  const double ours = engine::coolant_heat_w(m, m.idle_rad_s, 0) / 1e3;
  rows.push_back(
      {"heat to the coolant at idle, 600 cm³ motorcycle", "1.49 kW", num(ours, 2) + " kW", off_share(ours, 1.49)});
}

/// Mean pressure of a typical year against the standard atmosphere's.
void pressure(const std::filesystem::path& data, Rows& rows) {
  struct Station {
    const char* name;
    double altitude_m;
  };
  for (auto [name, altitude] : {Station{"phoenix", 358}, {"daggett", 561}, {"fargo", 274}}) {
    const double seen = mean(Table(file_with(data / "weather", name)).numbers("pressure"));
    const double ours = physics::standard_atmosphere(altitude).pressure_pa / 100;
    rows.push_back({"air pressure at " + num(altitude) + " m, mean of a year", num(seen) + " mbar", num(ours) + " mbar",
                    off_share(ours, seen)});
  }
}

constexpr std::string_view text =
    R"(**Measured.** Single figures quoted from publications \[7\], and mean pressures of three weather stations \[8\]. They are few and
second-hand: limits of what is plausible, no more.

{}
**How far off, and why.** The alternator's usual shape, scaled to the published 50 A cold at 2500 rpm, gives half of what this
small machine gives at 1300 rpm and a tenth too much at 5000: a machine wound for output at a low speed has another shape
than the usual one, and **at idle the usual shape is no substitute for the supplier's curve**. What is left of it hot is
near where the speed is. The pump's law takes a little more away with the volts than the published one loses, which is
the careful side. The motorcycle's idle speed is not told; one that idles twice as fast burns more than the stand-in of
0.6 lb/h a litre, which is meant for cars.
)";

}  // namespace

void single_points(const std::filesystem::path& data, Report& report) {
  Rows rows = {{"figure", "published", "computed", "off by"}};
  alternator(rows);
  pump(rows);
  idle_heat(rows);
  pressure(data, rows);
  for (std::size_t i : {1u, 3u, 6u})
    report.headlines.push_back({"single figures", rows[i][0], rows[i][1], rows[i][2], rows[i][3]});
  report.sections.push_back({"Single published figures", fill(text, {table(rows)}), {}});
}

}  // namespace sw::validation
