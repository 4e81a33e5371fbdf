// Sums of the road: load and drive cycle.
#include <fstream>
#include <sstream>

#include "physics/cycle.hpp"
#include "physics/road_load.hpp"
#include "sum/families.hpp"
#include "sum/figures.hpp"

namespace sw {
namespace {

struct LoadIn {
  std::optional<Mass> mass;
  std::optional<double> rolling;
  std::optional<Area> drag_area;
  std::optional<Speed> speed;
  std::optional<Power> power;
  std::optional<double> road_grade;
  std::optional<Density> density;
};
struct LoadOut {
  std::optional<Power> power;
  std::optional<Speed> speed;
  std::optional<Force> force, rolling_force, drag_force, grade_force;
  std::optional<Power> drag_power;
};
constexpr Argument load_in[] = {
    positive<&LoadIn::mass>("mass", "of the car, laden", kind::mass, "kg"),
    number<&LoadIn::rolling>("rolling", "rolling resistance over weight").from(0, 1),
    quantity<&LoadIn::drag_area>("drag_area", "drag coefficient x frontal area", kind::area).in("m2").from(0, 100),
    quantity<&LoadIn::speed>("speed", "of the car", kind::speed).in("mph").from(0, 1000),
    quantity<&LoadIn::power>("power", "at the wheels", kind::power).in("kW").from(0, 1e6),
    number<&LoadIn::road_grade>("road_grade", "rise over level run").from(-1, 1).or_else(0, Source::chosen),
    positive<&LoadIn::density>("density", "of the air", kind::density, "kg/m3", 10).or_else(1.225, Source::chosen),
};
constexpr Argument load_out[] = {
    result<&LoadOut::power>("power", "at the wheels", kind::power, "kW"),
    result<&LoadOut::speed>("speed", "held by that power", kind::speed, "mph"),
    result<&LoadOut::force>("force", "of the whole load", kind::force, "N"),
    result<&LoadOut::rolling_force>("rolling_force", "rolling", kind::force, "N"),
    result<&LoadOut::drag_force>("drag_force", "air", kind::force, "N"),
    result<&LoadOut::grade_force>("grade_force", "grade", kind::force, "N"),
    result<&LoadOut::drag_power>("drag_power", "against the air", kind::power, "kW"),
};
constexpr Rule load_rules[] = {one_of("speed", "power")};

void road_load(const LoadIn& in, LoadOut& out, Remarks& say) {
  const physics::RoadLoadIn car{in.mass->si, *in.rolling, in.drag_area->si, *in.road_grade, in.density->si};
  double v = in.speed ? in.speed->si : 0;
  if (in.power) {
    const auto held = physics::road_load_speed(car, in.power->si);
    if (!held) return say.outside("no speed holds that power: the car runs away downhill or nothing opposes it");
    out.speed = Speed{v = *held};
  }
  const auto r = physics::road_load(car, v);
  if (in.speed) out.power = Power{r.power_w};
  out.force = Force{r.force_n};
  out.rolling_force = Force{r.rolling_n};
  out.drag_force = Force{r.drag_n};
  out.grade_force = Force{r.grade_n};
  out.drag_power = Power{r.drag_n * v};
}

struct CycleIn {
  std::string file;
  std::vector<double> spans;
};
struct CycleOut {
  std::optional<Time> duration;
  std::optional<Length> distance;
  std::optional<Speed> mean_speed, top_speed;
  std::optional<Acceleration> greatest_acceleration;
  std::optional<Time> idle_time;
};
constexpr Argument cycle_in[] = {
    text<&CycleIn::file>("file", "CSV with columns time_s and speed_mph or speed_kmh, or Time (s) and Speed (km/h)"),
    may(values<&CycleIn::spans>("spans", "stretches from, to, one after the other", kind::time, 2)),
};
constexpr Argument cycle_out[] = {
    result<&CycleOut::duration>("duration", "time taken", kind::time, "s"),
    result<&CycleOut::distance>("distance", "driven", kind::length, "mile"),
    result<&CycleOut::mean_speed>("mean_speed", "over the whole time", kind::speed, "mph"),
    result<&CycleOut::top_speed>("top_speed", "greatest of the rows", kind::speed, "mph"),
    result<&CycleOut::greatest_acceleration>("greatest_acceleration", "row to row", kind::acceleration, "mph/s"),
    result<&CycleOut::idle_time>("idle_time", "before rows at zero", kind::time, "s"),
};

std::optional<physics::SpeedTrace> load_trace(const std::string& file, Remarks& say) {
  std::ifstream in(file, std::ios::binary);
  std::ostringstream text;
  if (!in || !(text << in.rdbuf())) {
    say.fault("file", "\"" + file + "\" cannot be read", "name a CSV file, from the folder the program runs in");
    return {};
  }
  auto read = physics::read_speed_trace(text.str());
  if (const auto* faults = std::get_if<physics::TraceFaults>(&read)) {
    for (auto& f : *faults) say.fault("file", file + (f.line ? ":" + std::to_string(f.line) : "") + ": " + f.problem);
    return {};
  }
  return std::get<physics::SpeedTrace>(std::move(read));
}

void cycle(const CycleIn& in, CycleOut& out, Remarks& say) {
  const auto trace = load_trace(in.file, say);
  if (!trace) return;
  std::vector<physics::Span> spans;
  for (std::size_t i = 0; i + 1 < in.spans.size(); i += 2) spans.emplace_back(in.spans[i], in.spans[i + 1]);
  for (std::size_t i = 0; i < spans.size(); ++i)
    if (!physics::span_fits(*trace, spans[i]))
      say.fault("spans", "row " + std::to_string(i + 1) + " does not lie within the trace",
                "from below to, both within the file's times");
  if (!say.faults().empty()) return;
  const auto f = physics::trace_figures(*trace, spans);
  out.duration = Time{f.duration_s};
  out.distance = Length{f.distance_m};
  out.mean_speed = Speed{f.mean_speed_m_s};
  out.top_speed = Speed{f.top_speed_m_s};
  out.greatest_acceleration = Acceleration{f.greatest_acceleration_m_s2};
  out.idle_time = Time{f.idle_s};
}

constexpr Sum sums[] = {
    entry<road_load>(
        {.name = "road-load",
         .title = "Power to hold a speed, and speed a power holds",
         .inputs = load_in,
         .outputs = load_out,
         .rules = load_rules,
         .range = "steady speed, still air, up to about 130 km/h for steady rolling resistance",
         .source = "Gillespie, Fundamentals of Vehicle Dynamics, ch. 4; grade by sin(atan(grade)) (from memory)"}),
    entry<cycle>({.name = "cycle",
                  .title = "Figures of a speed trace",
                  .inputs = cycle_in,
                  .outputs = cycle_out,
                  .range = "speed straight from row to row",
                  .source = "trapezoids; schedules as in 40 CFR Part 86 Appendix I"}),
};

}  // namespace

std::span<const Sum> road_sums() { return sums; }

}  // namespace sw
