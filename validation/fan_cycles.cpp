// Fan cycles of a car that idles in warm weather.
#include <algorithm>
#include <cmath>

#include "car.hpp"
#include "compare.hpp"
#include "data.hpp"
#include "studies.hpp"

namespace sw::validation {
namespace {

constexpr double ambient_c = 28;  ///< coolant and intake air of the log that begins cold
constexpr double settled_s = 300;

/// One stretch with the fan running, and what stood around it.
struct Stretch {
  double from_s, to_s;
};

constexpr double shortest_s = 8;  ///< of a run of the fan; what is shorter is something else

/// The log does not tell the fan's state. It shows in the engine's load, which the alternator raises by a point or two
/// while the fan runs, at a plain idle.
std::vector<Stretch> fan_stretches(const Log& log) {
  constexpr double rise = 0.9, gap_s = 4, plain_idle_rpm = 720, hot_c = 89.5;
  const double usual = share_point(log.load, 0.5);
  std::vector<Stretch> out;
  for (std::size_t i = 0; i < log.time_s.size(); ++i) {
    const bool on = log.load[i] > usual + rise && log.engine_rpm[i] < plain_idle_rpm && log.coolant_c[i] > hot_c;
    if (!on) continue;
    if (out.empty() || log.time_s[i] - out.back().to_s > gap_s) out.push_back({log.time_s[i], log.time_s[i]});
    out.back().to_s = log.time_s[i];
  }
  std::erase_if(out, [](auto& s) { return s.to_s - s.from_s < shortest_s; });
  return out;
}

std::vector<Stretch> fan_stretches(const Run& r) {
  const auto level = r.port("fans.level");
  std::vector<Stretch> out;
  for (std::size_t i = 0; i < level.size(); ++i) {
    if (level[i] < 0.5 || r.trace.time[i] < settled_s) continue;
    if (i == 0 || level[i - 1] < 0.5 || out.empty()) out.push_back({r.trace.time[i], r.trace.time[i]});
    out.back().to_s = r.trace.time[std::min(i + 1, level.size() - 1)];
  }
  if (!out.empty() && out.back().to_s >= r.trace.time.back()) out.pop_back();
  return out;
}

std::vector<double> between(const std::vector<double>& time, const std::vector<double>& y, double from, double to) {
  std::vector<double> out;
  for (std::size_t i = 0; i < time.size(); ++i)
    if (time[i] >= from && time[i] <= to) out.push_back(y[i]);
  return out;
}

struct Figures {
  double on_c = NAN, off_c = NAN, lowest_c = NAN, period_s = NAN, on_s = NAN, running_dip_v = NAN, starting_dip_v = NAN;
  std::size_t count = 0;
  double share() const { return on_s / period_s; }
};

double mean_or_none(const std::vector<double>& v) { return v.empty() ? NAN : mean(v); }

Figures figures_of(const std::vector<Stretch>& stretches, const std::vector<double>& time,
                   const std::vector<double>& coolant, const std::vector<double>& volts) {
  constexpr double start_s = 4, longest_cycle_s = 400;
  std::vector<double> on, off, lowest, period, ran, running, starting;
  for (std::size_t i = 0; i < stretches.size(); ++i) {
    const auto [from, to] = stretches[i];
    on.push_back(at(time, coolant, from));
    off.push_back(at(time, coolant, to));
    ran.push_back(to - from);
    const auto before = between(time, volts, from - 20, from - 3), first = between(time, volts, from, from + start_s),
               then = between(time, volts, from + start_s, to), cold = between(time, coolant, from, to + 25);
    if (!cold.empty()) lowest.push_back(*std::min_element(cold.begin(), cold.end()));
    if (!before.empty() && !then.empty()) running.push_back(share_point(before, 0.5) - share_point(then, 0.5));
    if (!before.empty() && !first.empty())
      starting.push_back(share_point(before, 0.5) - *std::min_element(first.begin(), first.end()));
    if (i > 0 && from - stretches[i - 1].from_s < longest_cycle_s) period.push_back(from - stretches[i - 1].from_s);
  }
  return {mean_or_none(on),
          mean_or_none(off),
          mean_or_none(lowest),
          mean_or_none(period),
          mean_or_none(ran),
          mean_or_none(running),
          starting.empty() ? NAN : *std::max_element(starting.begin(), starting.end()),
          stretches.size()};
}

Run idle(const Build& b) {
  Duty d = plain_duty("hot-idle", ambient_c);
  d.duration = Time{3600};
  return run(b, d);
}

Figures computed_figures(const Run& r) {
  return figures_of(fan_stretches(r), r.trace.time, in_celsius(r.port("cooling.engine_temperature")),
                    r.port("battery.voltage"));
}

std::vector<std::string> row(const std::string& name, const Figures& f) {
  return {
      name,        std::to_string(f.count), num(f.on_c, 1),       num(f.off_c, 1),         num(f.lowest_c, 1),
      num(f.on_s), num(f.period_s),         num(100 * f.share()), num(f.running_dip_v, 2), num(f.starting_dip_v, 2)};
}

constexpr std::string_view text =
    R"(**Measured.** A parked small saloon (1.5 litre, 2014) idling at 650 rpm in warm weather, two logs of its controller \[1\]. The
fan's state is not logged; it is read from the engine's load, which rises by a point or two while the fan runs.

**Taken.** `validation/cars/small.toml`: the roadster template with an electric fan of the shelf. Of the logged car it has
the displacement, the idle speed and the two temperatures between which the fan works; air of 28 °C is what its cold start
shows; no sun, no loads but those of running.

{}
The doubt of the period is what the program's own doubt of every figure of engine, cooling, belts and charging makes of
it; {} of those moves stopped the cycling altogether, which is not in the number.

**How far off, and why.** The generic car works its fan like the measured one, only slower: between two runs its coolant
rises {} as fast. Fan and radiator are near: a run takes as long in both. What is off is the heat left over at idle: the
generic car has the masses and the heat from sump and block to the air of an older and larger engine (the program's
stand-ins for those losses do not go with the size of the engine), and its thermostat is half open, so that the radiator
takes some of the heat. The sensor of the logged car goes on falling to {} °C after the fan has stopped, to {} °C in the
generic one: a slug of cold coolant from the radiator passes it, which a program that mixes each part well shows less
of. While the fan runs the volts sink by {} V in the log, by {} V in the generic car. At its start they sink by up to
{} V, as far as a sample in every second or two catches it: that is **the fan's starting current, which the program does
not compute**. The sensor tells whole degrees, the volts come in steps of 0.02 V.
)";

}  // namespace

void fan_cycles(const std::filesystem::path& data, Report& report) {
  std::vector<Figures> logs;
  Log shown;
  for (auto* name : {"idle27", "idle29"}) {
    shown = read_log(file_with(data / "radiator_fan_idle", name));
    logs.push_back(figures_of(fan_stretches(shown), shown.time_s, shown.coolant_c, shown.volts));
  }
  const Figures& seen = logs[1];
  const Build car = generic_car("small");
  const Run computed = idle(car);
  const Figures ours = computed_figures(computed);
  DoubtOptions of_period{{"engine.", "cooling.", "vehicle.", "belts.", "charging."}};
  const auto period = with_doubt(
      car, [](const Build& b) { return computed_figures(idle(b)).period_s; }, of_period);
  const double most_dip = std::max(logs[0].starting_dip_v, logs[1].starting_dip_v);
  const double rise = (seen.period_s - seen.on_s) / (ours.period_s - ours.on_s);
  Section s{"Fan cycles at a hot idle", {}, {}};
  s.text =
      fill(text, {table({{"", "runs", "on at °C", "off at °C", "lowest °C", "on s", "period s", "on %", "volts less V",
                          "at its start V"},
                         row("log 1", logs[0]),
                         row("log 2", logs[1]),
                         row("generic car", ours)}),
                  std::to_string(of_period.lost), num(100 * rise) + " %", num(seen.lowest_c), num(ours.lowest_c, 1),
                  num(seen.running_dip_v, 2), num(ours.running_dip_v, 2), num(most_dip, 1)});
  s.plots.push_back({"fan-cycles",
                     "Coolant at a hot idle, one log of two",
                     "time, s",
                     "coolant, °C",
                     {{"measured", Style::measured_line, shown.time_s, shown.coolant_c},
                      {"generic car", Style::computed_line, computed.trace.time,
                       in_celsius(computed.port("cooling.engine_temperature"))}},
                     "set xrange [0:1400]\nset yrange [80:98]\n"});
  const std::string name = "fan at idle";
  report.headlines.push_back({name, "from one start to the next", num(seen.period_s) + " s",
                              num(ours.period_s) + " ± " + num(period.half_width) + " s",
                              off_share(ours.period_s, seen.period_s)});
  report.headlines.push_back(
      {name, "length of a run", num(seen.on_s) + " s", num(ours.on_s) + " s", off(ours.on_s - seen.on_s, 0, "s")});
  report.headlines.push_back({name, "volts less while it runs", num(seen.running_dip_v, 2) + " V",
                              num(ours.running_dip_v, 2) + " V", off(ours.running_dip_v - seen.running_dip_v, 2, "V")});
  report.headlines.push_back({name, "volts less at its start", "to " + num(most_dip, 1) + " V", "not computed", "–"});
  report.sections.push_back(std::move(s));
}

}  // namespace sw::validation
