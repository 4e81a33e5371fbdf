// What is counted instead of measured: engine and road speed, and whether the pulses are seen at all. Voltmeters too.
#include <algorithm>
#include <numbers>

#include "quantity/customary.hpp"
#include "quantity/print.hpp"
#include "systems/gauges/checks.hpp"

namespace sw::gauges {
namespace {

constexpr double pi = std::numbers::pi;

Because speed_line(std::string what, double m_s) { return told(std::move(what), m_s, kind::speed, "mph"); }
Because turns_line(std::string what, double per_m) {
  return told(std::move(what), per_m, kind::per_length, "rev/mile");
}
Because pulse_line(std::string what, double per_m) {
  return told(std::move(what), per_m, kind::pulses_per_length, "pulse/mile");
}
Because plain(std::string what, double x, std::string_view unit = "") {
  return told(std::move(what), x, kind::number, unit);
}

Verdict band_of_ratio(std::string place, double ratio) {
  return {.place = std::move(place),
          .predicted = ratio - 1,
          .low = -signals::limit,
          .high = signals::limit,
          .scale = signals::limit};
}

/// Turns a metre of what the sender or cable sits on.
double turns_of(const SpeedometerModel& m, double wheel_per_m, double axle) {
  const double shaft = wheel_per_m * axle;
  switch (m.sits_on) {
    case SitsOn::wheel:
      return wheel_per_m;
    case SitsOn::output_shaft:
      return shaft;
    default:
      return shaft * m.drive_over_driven;
  }
}

void told_of_limits(double ratio, Verdict& v) {
  using physics::us_speed_at_m_s;
  v.because.push_back(speed_line("off at 50 mph, where 49 CFR 393.82 lets a commercial car be 5 mph off",
                                 us_speed_at_m_s * (ratio - 1)));
  if (ratio < 1) v.because.push_back(said("it shows less than is true", "UN R39 never allows that"));
}

}  // namespace

namespace signals {

void engine_speed(const void* model, const Evidenced&, std::vector<Verdict>& out) {
  for (auto& m : of(model).tachometers) {
    Verdict v{.place = m.name};
    if (!m.set) v.missing.push_back(m.set_path);
    if (!m.source) v.missing.push_back(m.source_path);
    if (v.missing.empty()) {
      v = band_of_ratio(m.name, *m.source / *m.set);
      v.because.push_back(plain("pulses a turn there are", *m.source));
      v.because.push_back(plain("pulses a turn it is set to", *m.set));
      v.because.push_back(plain("shown over true", *m.source / *m.set));
      v.fix_hint = "set to " + print(*m.source, kind::number, "", 3) +
                   " pulses a turn, and checked against the controller's own figure at idle and at 3000 rpm";
    }
    out.push_back(std::move(v));
  }
}

void level(const void* model, const Evidenced&, std::vector<Verdict>& out) {
  for (auto& m : of(model).tachometers) {
    if (!m.level_v && !m.threshold_v) continue;
    Verdict v{.place = m.name, .missing = m.level_missing};
    if (v.missing.empty()) {
      v.predicted = m.at_input_v;
      v.low = *m.threshold_v;
      v.scale = *m.threshold_v;
      v.fix_hint =
          "a pull-up of 1 to 2.2 kohm from the signal to 12 V where the source may have one, or the "
          "tachometer's low-level input";
      v.because.push_back(told("level of the source alone", *m.level_v, kind::voltage, "V"));
    }
    out.push_back(std::move(v));
  }
}

void road_speed(const void* model, const Evidenced& run, std::vector<Verdict>& out) {
  for (auto& m : of(model).speedometers) {
    if (!m.missing.empty()) {
      out.push_back({.place = m.name, .missing = m.missing});
      continue;
    }
    const double wheel = 1 / (2 * pi * run.at(0, n_radius)), axle = run.at(0, n_axle);
    const double turns = turns_of(m, wheel, axle), cable = turns * m.ratio_box;
    const bool pulses = m.reads == SpeedFrom::pulses;
    const double there = pulses ? cable * m.pulses : cable, ratio = there / m.set_per_m;
    Verdict v = band_of_ratio(m.name, ratio);
    told_of_limits(ratio, v);
    v.because.push_back(turns_line("turns of the tyre", wheel));
    v.because.push_back(plain("axle ratio", axle));
    v.because.push_back(turns_line("turns of what drives it", cable));
    const auto line = pulses ? pulse_line : turns_line;
    v.because.push_back(line(pulses ? "pulses there are: the constant that is right" : "turns there are", there));
    v.because.push_back(line(pulses ? "pulses it is set to" : "turns its head wants", m.set_per_m));
    if (m.sits_on == SitsOn::cable_drive) {
      // Exact for the head, or of a pulse sender for the nominal turns most of them are made for.
      const double head = pulses ? physics::usual_head_turns_m : m.set_per_m;
      v.because.push_back(plain(pulses ? "teeth of the driven gear for exactly 1000 turns a mile"
                                       : "teeth of the driven gear that would be exact",
                                physics::exact_teeth(m.driven_teeth, cable / head)));
    }
    v.because.push_back(speed_line("shown at 60 mph", signals::told_at_mph * mph_m_s * ratio));
    if (pulses)
      v.fix_hint = "key in " + print(there, kind::pulses_per_length, "pulse/mile", 4) +
                   "; reckoned anew when tyre, axle or gear changes; checked at 30 and 60 mph by satellite, to 2 %";
    else
      v.fix_hint = "a driven gear of " +
                   print(std::round(physics::exact_teeth(m.driven_teeth, ratio)), kind::number, "", 3) +
                   " teeth where one is made, else a correcting box of " +
                   print(m.ratio_box / ratio, kind::number, "", 3) + "; checked at 30 and 60 mph by satellite, to 2 %";
    out.push_back(std::move(v));
  }
}

void listeners(const void* model, const Evidenced&, std::vector<Verdict>& out) {
  for (auto& m : of(model).sensors) {
    if (!m.missing.empty()) {
      out.push_back({.place = m.name, .missing = m.missing});
      continue;
    }
    std::vector<double> ohms;
    double conductance = 0;
    for (auto& i : m.inputs) ohms.push_back(i.ohm), conductance += 1 / i.ohm;
    for (auto& i : m.inputs) {
      const double alone[] = {i.ohm};
      Verdict v{.place = m.name + " to " + i.name,
                .predicted = physics::least_speed(m.sensor, ohms, i.threshold_v).value,
                .high = least_mph * mph_m_s,
                .scale = least_mph * mph_m_s,
                .fix_hint = "one reader alone on the sensor, with buffered square-wave outputs for the others"};
      v.because.push_back(told("coil of the sensor", m.sensor.resistance_ohm, kind::resistance, "ohm"));
      v.because.push_back(told("all inputs beside each other", 1 / conductance, kind::resistance, "ohm"));
      v.because.push_back(
          plain("share of its volts that is left", 1 / (1 + m.sensor.resistance_ohm * conductance), "%"));
      v.because.push_back(told("threshold", i.threshold_v, kind::voltage, "V"));
      if (ohms.size() > 1)
        v.because.push_back(speed_line("alone on the sensor it would see it from",
                                       physics::least_speed(m.sensor, alone, i.threshold_v).value));
      out.push_back(std::move(v));
    }
  }
}

}  // namespace signals

namespace volts {
void evaluate(const void* model, const Evidenced& run, std::vector<Verdict>& out) {
  for (auto& m : of(model).volts) {
    const auto off = [&](std::size_t r) { return run.at(r, n_cluster) + m.error_v - run.at(r, n_battery); };
    std::size_t row = 0;
    for (std::size_t r = 1; r <= run.last(); ++r)
      if (std::abs(off(r)) > std::abs(off(row))) row = r;
    Verdict v{.place = m.name,
              .predicted = off(row),
              .low = -most_v,
              .high = most_v,
              .scale = most_v,
              .row = row,
              .fix_hint = "its feed from a point that carries no load, and its ground to the battery's"};
    v.because.push_back(told("at the battery's posts", run.at(row, n_battery), kind::voltage, "V"));
    v.because.push_back(told("at the gauges", run.at(row, n_cluster), kind::voltage, "V"));
    out.push_back(std::move(v));
  }
}
}  // namespace volts

}  // namespace sw::gauges
