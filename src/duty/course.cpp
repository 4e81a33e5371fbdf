#include "duty/course.hpp"

#include <algorithm>
#include <cmath>

#include "physics/atmosphere.hpp"
#include "physics/cycle.hpp"

namespace sw {
namespace {

constexpr double fastest_m_s = 89.408;  ///< 200 mph, as the field `speed` allows

unsigned condition_bits(const Duty& duty, std::vector<CourseFault>& faults) {
  const auto own = conditions_of(duty.conditions);
  for (auto& p : own.problems) faults.push_back({"conditions", p.what, p.hint});
  unsigned bits = own.bits | bit(Condition::always);
  if (duty.engine != EngineState::off) bits |= bit(Condition::key);
  if (duty.engine == EngineState::running) bits |= bit(Condition::running) | bit(Condition::accessory);
  if (duty.engine == EngineState::cranking) bits |= bit(Condition::start);
  if (duty.air_conditioning.value_or(false) && duty.engine == EngineState::running)
    bits |= bit(Condition::air_conditioning);
  return bits;
}

}  // namespace

std::size_t Course::first_corner_after(double t) const {
  return static_cast<std::size_t>(std::upper_bound(time.begin(), time.end(), t) - time.begin());
}

Course::Motion Course::motion(double t, std::size_t& hint) const {
  if (time.empty()) return {held_speed, 0.0};
  if (t < time.front()) return {speed.front(), 0.0};
  if (t >= time.back()) return {speed.back(), 0.0};
  if (hint + 1 >= time.size() || t < time[hint] || t >= time[hint + 1]) hint = first_corner_after(t) - 1;
  const double dt = time[hint + 1] - time[hint], slope = (speed[hint + 1] - speed[hint]) / dt;
  return {speed[hint] + slope * (t - time[hint]), slope};
}

double Course::step_limit(double t) const {
  const std::size_t next = first_corner_after(t + corner_width_s);
  return next < time.size() ? time[next] - t : duration - t;
}

bool Course::corner_at(double t) const {
  const std::size_t next = first_corner_after(t - corner_width_s);
  return next < time.size() && time[next] <= t + corner_width_s;
}

Course make_course(const std::string& key, const Duty& duty, const std::string& trace,
                   std::vector<CourseFault>& faults) {
  Course c;
  c.duty = &duty;
  c.key = key;
  c.held_speed = duty.speed ? duty.speed->si : 0.0;
  if (duty.speed_trace) {
    c.time = duty.speed_trace->x;
    c.speed = duty.speed_trace->y;
  } else if (!trace.empty()) {
    auto read = physics::read_speed_trace(trace);
    if (auto* wrong = std::get_if<physics::TraceFaults>(&read)) {
      for (auto& f : *wrong)
        faults.push_back(
            {"trace_file", duty.trace_file + (f.line ? ":" + std::to_string(f.line) : "") + ": " + f.problem, {}});
    } else {
      c.time = std::get<physics::SpeedTrace>(read).time_s;
      c.speed = std::get<physics::SpeedTrace>(read).speed_m_s;
    }
  }
  c.duration = duty.duration ? duty.duration->si : c.time.empty() ? 0.0 : c.time.back();
  if (duty.speed && (duty.speed_trace || !duty.trace_file.empty()))
    faults.push_back({"speed", "both a held speed and a trace", "give one"});
  if (!c.speed.empty() && *std::max_element(c.speed.begin(), c.speed.end()) > fastest_m_s)
    faults.push_back({duty.speed_trace ? "speed_trace" : "trace_file", "the trace goes faster than 200 mph",
                      "are its speeds in the unit of their heading?"});
  if (!(c.duration > 0) && duty.trace_file.empty())
    faults.push_back({"duration",
                      "nothing says how long it lasts",
                      "give `duration` or a speed trace",
                      {"speed_trace", "trace_file"}});
  const double altitude = duty.altitude ? duty.altitude->si : 0.0, ambient = duty.ambient ? duty.ambient->si : 298.15;
  c.pressure = physics::standard_atmosphere(altitude).pressure_pa;
  c.density = physics::air_density(c.pressure, ambient);
  c.conditions = condition_bits(duty, faults);
  c.running = duty.engine == EngineState::running;
  c.cranking = duty.engine == EngineState::cranking;
  c.pull = duty.method == Method::pull;
  c.air_conditioning = (c.conditions & bit(Condition::air_conditioning)) != 0;
  return c;
}

}  // namespace sw
