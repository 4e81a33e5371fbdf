// Does the machine wake at idle, and what happens when a wire of it comes off?
#include "model/told.hpp"
#include "systems/charging/checks.hpp"

namespace sw::charging {

namespace wakes {
double wake_rad_s(const Model& m, double exciter_a) {
  if (m.excitation == Excitation::own || exciter_a < m.exciter_a) return m.usual_own_wake_rad_s;
  return m.wake_rad_s;
}
void evaluate(const void* model, const Evidenced& run, std::vector<Verdict>& out) {
  auto& m = *static_cast<const Model*>(model);
  if (m.generator) return;  // it wakes on its poles' magnetism and is flashed where it does not
  if (!m.excitation) return out.push_back({.missing = {m.excitation_path}});
  const bool own = *m.excitation == Excitation::own;
  // The usual figure is that of a machine that should have been woken: no stand-in for one that is sold to wake itself.
  if (own && !m.own_wake_rad_s) return out.push_back({.missing = {m.own_wake_path}});
  const double a = run.at(0, n_exciter), ratio = run.at(0, n_ratio), idle = run.at(0, n_idle);
  Verdict v{
      .predicted = wake_rad_s(m, a) / ratio,
      .high = idle,
      .scale = idle,
      .fix_hint = own ? "a smaller alternator pulley (mind its speed limit), or a machine with an exciter terminal"
                      : "a resistor beside the lamp's place from a switched feed (82 ohm, 5 W in a 12 V car gives "
                        "150 mA) with a diode against feeding back, or a machine that wakes itself"};
  if (!own) {
    v.because.push_back(told("current that wakes it", m.exciter_a, kind::current, "mA"));
    v.because.push_back(told("short of it by", std::max(0.0, m.exciter_a - a), kind::current, "mA"));
  }
  v.because.push_back(told("its own speed at idle", idle * ratio, kind::shaft_speed, "rpm"));
  v.because.push_back(told("its own speed from which it charges", wake_rad_s(m, a), kind::shaft_speed, "rpm"));
  out.push_back(std::move(v));
}
}  // namespace wakes

namespace cut_off {
void surge(const void* model, const Evidenced&, std::vector<Verdict>& out) {
  auto& m = *static_cast<const Model*>(model);
  if (m.generator || m.cells != 6 || (!m.clamped && !m.surge_v)) return;
  Verdict v{.scale = clamped_v,
            .fix_hint =
                "a machine with a clamped rectifier, or a surge arrester for load dump at its stud; never take the "
                "battery off while it charges"};
  if (!m.clamped) v.missing.push_back(m.clamped_path);
  if (!m.surge_v) v.missing.push_back(m.surge_path);
  if (v.missing.empty()) {
    v.predicted = *m.clamped ? clamped_v : unclamped_most_v;
    v.high = *m.surge_v;
    if (!*m.clamped) v.because.push_back(told("the mildest such surge", unclamped_least_v, kind::voltage, "V"));
  }
  out.push_back(std::move(v));
}
void sense(const void* model, const Evidenced&, std::vector<Verdict>& out) {
  auto& m = *static_cast<const Model*>(model);
  if (!m.sense_lost) return;
  const bool holds = *m.sense_lost == SenseLost::own_stud;
  out.push_back(
      {.reason = holds ? "with its sense wire open the regulator holds its own stud"
                       : "with its sense wire open the regulator drives the field full: volts rise until lamps, "
                         "battery and electronics are spoilt",
       .fix_hint = "a regulator that falls back on its own stud; the sense wire short, fused and without plugs",
       .rule = holds});
}
}  // namespace cut_off

}  // namespace sw::charging
