// Warm-ups from cold: standing at idle, and along recorded drives.
#include <cmath>

#include "car.hpp"
#include "compare.hpp"
#include "data.hpp"
#include "studies.hpp"

namespace sw::validation {
namespace {

struct Case {
  const char *folder, *file, *car, *name, *title;
  double air_c;
};
constexpr Case cases[] = {
    {"radiator_fan_idle", "idle43_cold", "small", "warm-up-idle", "small saloon at idle, air 28 °C", 28},
    {"roadlogs", "drive5", "small", "warm-up-town", "small saloon in town, air 26 °C", 26},
    {"roadlogs", "full_braking", "hatchback", "warm-up-summer", "hatchback on the road, air 14 °C", 14},
    {"roadlogs", "winter", "hatchback", "warm-up-winter", "hatchback on the road, air -9 °C", -9},
};
constexpr double levels_c[] = {40, 60, 80};

Duty drive(const Case& c, const Log& log) {
  Duty d = plain_duty("warm-up", c.air_c);
  d.speed.reset();
  d.speed_trace = speed_trace(log);
  d.duration = Time{d.speed_trace->x.back()};
  return d;
}

/// Time from one level to the next, or from the start to the first.
std::string took(const std::vector<double>& time, const std::vector<double>& coolant, std::size_t level) {
  const double to = first_at(time, coolant, levels_c[level]);
  const double from = level == 0 ? 0 : first_at(time, coolant, levels_c[level - 1]);
  return std::isnan(to) ? "not reached" : num(to - from);
}

/// Fuel by speed and density: what the cylinders fill with at the manifold's pressure, 80 % of it fresh air of the
/// intake's temperature (common practice at idle), with 14.7 times the fuel.
double mean_fuel_g_s(const Log& log, double displacement_m3, double to_s) {
  constexpr double filling = 0.8, air_to_fuel = 14.7, gas_j_kg_k = 287.05;
  std::vector<double> fuel;
  for (std::size_t i = 0; i < log.time_s.size() && log.time_s[i] <= to_s; ++i)
    fuel.push_back(1e6 * log.manifold_kpa[i] / (gas_j_kg_k * (log.intake_c[i] + 273.15)) * displacement_m3 *
                   log.engine_rpm[i] / 120 * filling / air_to_fuel);
  return mean(fuel);
}

constexpr std::string_view text =
    R"(**Measured.** Four logs that begin cold: the small saloon of the fan cycles standing at idle and in town \[1\]; a hatchback
(2017) on the road in summer and in winter \[2\]. Its manifold stands at outside pressure while it idles, so it has no
throttle: a diesel. The program's engine is a spark-ignition one, so the two road logs tell of thermostat and course, not of
the law of heat.

**Taken.** `validation/cars/small.toml` and `hatchback.toml`, the logs' speed as the duty `warm-up` (mean over three seconds),
everything at the temperature of the air at first. Thermostat: the stand-in, 88 °C.

{}
**How far off, and why.** At idle the coolant of the generic car has risen to {} ± {} °C when the measured one passes 80 °C:
it rises {} as fast. The log's manifold pressure and speed put its fuel over that time at about {} g/s (cylinders 80 % full of
fresh air, 14.7 to 1); the generic car burns {} g/s, for it has no fast idle when cold and no richer mixture, and the
logged car had its air conditioning on for part of the time. At the stand-in share of 45 % to the coolant the log's fuel
would warm {} kJ/K in that time; metal, oil and coolant of the generic car hold {} kJ/K. So either the logged engine has
half that to warm (it is lighter than the template's, and its sensor sees the head alone), or a cold engine gives its
coolant twice that share; one log cannot tell which. The rest is lost from sump and block, again as a larger engine
would. In town it is as slow. **A warm-up computed for an engine that idles or hardly works errs far to the slow side,
further than the doubt it carries.**

On the road 40 to 80 °C takes {} s against {} s measured in summer. In winter the generic car is far quicker than the
log from 40 °C on: a diesel has less heat to spare, and a cabin heater takes what there is at -9 °C; the program has no
heater at all. With the thermostat at work the coolant stands at {} °C, measured {} °C: that is the thermostat's figure,
and a stand-in of 88 °C happens to be right for this car. The hatchback's engine was warmer than the air when its summer
log begins, so its first 40 °C come sooner.
)";

struct Done {
  Log log;
  Run run;
  std::vector<double> coolant;
};

double between_levels(const std::vector<double>& time, const std::vector<double>& coolant) {
  return first_at(time, coolant, 80) - first_at(time, coolant, 40);
}

/// Mean of what a log or run says of its last ten minutes.
double late_mean(const std::vector<double>& time, const std::vector<double>& y) {
  double sum = 0, all = 0;
  for (std::size_t i = 1; i < time.size(); ++i)
    if (time[i] > time.back() - 600) sum += y[i] * (time[i] - time[i - 1]), all += time[i] - time[i - 1];
  return sum / all;
}

/// What warms in the generic car on the engine's side, J/K.
double heat_capacity(const Car& car) {
  constexpr double coolant_j_m3_k = 3.7e6;
  const auto& e = car.model<engine::Model>();
  return e.metal_j_k + e.oil_j_k + car.model<cooling::Model>().engine_m3 * coolant_j_m3_k;
}

std::string words(const std::vector<std::vector<std::string>>& rows, const Done& idle, const Done& road,
                  const Build& small, Report& report) {
  constexpr double share = 0.45, heating_j_g = 43.5e3;
  const double at_s = first_at(idle.log.time_s, idle.log.coolant_c, 80);
  DoubtOptions options{{"engine.", "cooling.", "vehicle.", "belts.", "charging."}};
  const Duty duty = drive(cases[0], idle.log);
  const auto then = with_doubt(
      small,
      [&](const Build& b) {
        const Run r = run(b, duty);
        return at(r.trace.time, in_celsius(r.port("cooling.engine_temperature")), at_s);
      },
      options);
  const double from = idle.log.coolant_c.front();
  const double fuel = mean_fuel_g_s(idle.log, 1496e-6, at_s);
  const double apparent = fuel * heating_j_g * share * at_s / (80 - from);
  const double seen = between_levels(road.log.time_s, road.log.coolant_c),
               ours = between_levels(road.run.trace.time, road.coolant);
  const double steady_seen = late_mean(road.log.time_s, road.log.coolant_c),
               steady_ours = late_mean(road.run.trace.time, road.coolant);
  report.headlines.push_back({"warm-up", "at idle, coolant after " + num(at_s) + " s", "80 °C",
                              num(then.value) + " ± " + num(then.half_width) + " °C", off(then.value - 80, 0, "K")});
  report.headlines.push_back(
      {"warm-up", "on the road, 40 to 80 °C", num(seen) + " s", num(ours) + " s", off_share(ours, seen)});
  report.headlines.push_back({"warm-up", "steady coolant on the road", num(steady_seen, 1) + " °C",
                              num(steady_ours, 1) + " °C", off(steady_ours - steady_seen, 1, "K")});
  return fill(
      text, {table(rows), num(then.value), num(then.half_width), num(100 * (then.value - from) / (80 - from)) + " %",
             num(fuel, 2), num(1e3 * mean(idle.run.port("engine.fuel_flow")), 2), num(apparent / 1e3),
             num(heat_capacity(*idle.run.car) / 1e3), num(ours), num(seen), num(steady_ours, 1), num(steady_seen, 1)});
}

}  // namespace

void warm_ups(const std::filesystem::path& data, Report& report) {
  Section s{"Warm-ups", {}, {}};
  std::vector<std::vector<std::string>> rows = {{"log", "from", "to", "measured s", "computed s"}};
  std::vector<Done> done;
  for (auto& c : cases) {
    Done d{read_log(file_with(data / c.folder, c.file)), {}, {}};
    d.run = run(generic_car(c.car), drive(c, d.log));
    d.coolant = in_celsius(d.run.port("cooling.engine_temperature"));
    for (std::size_t i = 0; i < std::size(levels_c); ++i)
      rows.push_back({c.title, i == 0 ? "start" : num(levels_c[i - 1]) + " °C", num(levels_c[i]) + " °C",
                      took(d.log.time_s, d.log.coolant_c, i), took(d.run.trace.time, d.coolant, i)});
    s.plots.push_back({c.name,
                       std::string("Warm-up: ") + c.title,
                       "time, s",
                       "coolant, °C",
                       {{"measured", Style::measured_line, d.log.time_s, d.log.coolant_c},
                        {"generic car", Style::computed_line, d.run.trace.time, d.coolant}},
                       {}});
    done.push_back(std::move(d));
  }
  s.text = words(rows, done[0], done[2], generic_car("small"), report);
  report.sections.push_back(std::move(s));
}

}  // namespace sw::validation
