// Starts in the logs: how far the volts fall, and for how long.
#include <algorithm>
#include <cmath>

#include "car.hpp"
#include "compare.hpp"
#include "data.hpp"
#include "physics/battery.hpp"
#include "studies.hpp"

namespace sw::validation {
namespace {

struct Start {
  double coolant_c, rest_v, lowest_v, time_s;
};
/// Rows bring one figure anew each, so the volts of the start may come some rows after its engine speed.
Start start_of(const Log& log) {
  constexpr std::size_t later = 6;
  std::size_t runs = 0;
  while (runs + 1 < log.time_s.size() && log.engine_rpm[runs] < 500) ++runs;
  Start s{log.coolant_c.front(), log.volts.front(), log.volts.front(), log.time_s[runs]};
  for (std::size_t i = 0; i < std::min(runs + later, log.volts.size()); ++i)
    s.lowest_v = std::min(s.lowest_v, log.volts[i]);
  return s;
}

/// Volts at the bus after a second of steady cranking, from the charge the rested battery's volts tell.
double computed_v(const Build& b, const Start& start) {
  constexpr double warmest_c = 49;  ///< air beyond which the battery's figures end
  const double air_c = std::min(start.coolant_c, warmest_c);
  Duty d = plain_duty("cold-crank", air_c);
  d.duration = Time{1};
  d.charge = physics::battery_charge_from_volts(start.rest_v, air_c + 273.15);
  const auto volts = run(b, d).port("bus.voltage");
  return *std::min_element(volts.begin(), volts.end());
}

constexpr std::string_view text =
    R"(**Measured.** Five starts of the small saloon in its logs \[1\]: volts at the controller before it is cranked, and the
lowest that a sample caught. The clock tells whole seconds and a channel comes anew every second or two; the engine runs
within a second or so each time. **The lowest sample is thus no more than a bound: the true dip was as deep or deeper, and
in the last three starts it was missed.**

**Taken.** `validation/cars/small.toml` with the field table's own stand-ins of battery and starter (500 A, 180 A, each with
its wide doubt), oil and battery at the coolant's temperature, charge by the volts at rest.

{}
**How far off, and why.** The deepest sample lies {} V below what is computed for steady cranking and {} the doubt that the
stand-ins carry. What the program does not have is the first instant: a starter that stands still draws two or three
times its cranking current for a tenth of a second, and that is what the deepest samples are likely to show. **Who asks
whether a controller keeps running through a start must not read it off the steady figure**; it wants the battery's and
the starter's own figures, and a scope on the bus.
)";

}  // namespace

void cranking(const std::filesystem::path& data, Report& report) {
  constexpr std::pair<const char*, const char*> files[] = {{"roadlogs", "drive5"},
                                                           {"roadlogs", "idle1_"},
                                                           {"radiator_fan_idle", "idle43_cold"},
                                                           {"radiator_fan_idle", "idle27"},
                                                           {"radiator_fan_idle", "idle29"}};
  const Build car = generic_car("small");
  std::vector<std::vector<std::string>> rows = {
      {"start", "coolant °C", "at rest V", "lowest sample V", "computed V", "doubt V"}};
  Plot plot{"cranking", "Volts while cranking, five starts",
            "start",    "volts",
            {},         "set xrange [0.5:5.5]\nset xtics 1\nset yrange [9:14]\n"};
  plot.series = {{"at rest", Style::other_marks, {}, {}},
                 {"lowest sample", Style::measured_marks, {}, {}},
                 {"generic car, its doubt as a bar", Style::computed_bars, {}, {}, {}}};
  Start first{};
  Doubtful ours;
  for (auto& [folder, file] : files) {
    const Start m = start_of(read_log(file_with(data / folder, file)));
    DoubtOptions options{{"charging.", "wiring.", "engine."}};
    const auto computed = with_doubt(
        car, [&](const Build& b) { return computed_v(b, m); }, options);
    const double n = static_cast<double>(rows.size());
    rows.push_back({num(n), num(m.coolant_c), num(m.rest_v, 2), num(m.lowest_v, 2), num(computed.value, 2),
                    num(computed.half_width, 2)});
    for (std::size_t i = 0; i < 3; ++i) plot.series[i].x.push_back(n + 0.05 * (static_cast<double>(i) - 1));
    plot.series[0].y.push_back(m.rest_v);
    plot.series[1].y.push_back(m.lowest_v);
    plot.series[2].y.push_back(computed.value);
    plot.series[2].half.push_back(computed.half_width);
    if (rows.size() == 2) first = m, ours = computed;
  }
  Section s{
      "Cranking",
      fill(text, {table(rows), num(ours.value - first.lowest_v, 1), ours.holds(first.lowest_v) ? "inside" : "outside"}),
      {plot}};
  report.headlines.push_back({"cranking", "lowest volts, engine at 26 °C", num(first.lowest_v, 1) + " V or less",
                              num(ours.value, 1) + " ± " + num(ours.half_width, 1) + " V",
                              off(ours.value - first.lowest_v, 1, "V")});
  report.sections.push_back(std::move(s));
}

}  // namespace sw::validation
