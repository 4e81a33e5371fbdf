// Sender and gauge together over the range: shown against true, the reserve, the lamps, the sender's ground.
#include <algorithm>

#include "quantity/print.hpp"
#include "systems/gauges/checks.hpp"

namespace sw::gauges {
namespace {

std::string ohms(double ohm) { return print(ohm, kind::resistance, "ohm", 3); }

Because value_line(const Terms& t, std::string what, double si) { return told(std::move(what), si, t.kind, t.unit); }

/// The same gauge with one of its troubles taken away.
double error_without(DialModel m, double value, const Instant& at, void (*take)(DialModel&)) {
  take(m);
  return shown(m, value, at).value - value;
}

bool runs_against(const DialModel& m, const Instant& at) {
  return shown(m, m.to, at).value < shown(m, m.from, at).value;
}

/// What to do first: the one trouble without which it would read right; else what fits the gauge.
std::string hint(const Terms& t, const DialModel& m, double value, const Instant& at) {
  const double limit = t.limit_of(m);
  const auto alone = [&](void (*take)(DialModel&)) { return std::abs(error_without(m, value, at, take)) <= limit; };
  if (m.joint_ohm > 0 && alone([](DialModel& d) { d.joint_ohm = 0; }))
    return "sealing paste on the last threads alone and a bare contact, or a wire from the sender's body to its ground";
  if (!m.others.empty() && alone([](DialModel& d) { d.others.clear(); }))
    return "one reader with a buffered output for the others, or a second sender";
  if (m.network.parallel_ohm && alone([](DialModel& d) { d.network.parallel_ohm.reset(); }))
    return "the resistor beside the sender taken out";
  if (m.network.series_ohm > 0 && alone([](DialModel& d) { d.network.series_ohm = 0; }))
    return "the resistor in the sender's lead taken out";
  if (m.gauge.kind == How::electronic) return "key in the table of this sender: `solve gauge-table`";
  const double low = physics::gauge_wants_ohm(m.gauge, m.gauge.low),
               high = physics::gauge_wants_ohm(m.gauge, m.gauge.high);
  return "a sender whose ohms run from " + ohms(low) + " to " + ohms(high) + family_words(m, low, high) +
         ", chosen before the tank or tapping is, or an electronic converter; `solve sender-match` tells whether "
         "resistors would do";
}

/// Cause first: what it meets at a value, what it wanted to meet, and what it makes of it. A report shows the last few.
void causes(const Terms& t, const DialModel& m, double value, const Instant& at, std::vector<Because>& lines) {
  const auto ohm_line = [&](std::string what, double ohm) {
    lines.push_back(told(std::move(what), ohm, kind::resistance, "ohm"));
  };
  ohm_line("the sender's ohms there", sender_ohm_at(m, value, at.tank));
  ohm_line("what the gauge wants there", physics::gauge_wants_ohm(m.gauge, value));
  if (m.network.series_ohm > 0) ohm_line("resistor in its lead", m.network.series_ohm);
  if (m.network.parallel_ohm) ohm_line("resistor beside it", *m.network.parallel_ohm);
  for (auto& o : m.others) ohm_line("pulled up by another reader through", o.ohm);
  if (m.joint_ohm > 0) ohm_line("added in its ground", m.joint_ohm);
  lines.push_back(value_line(t, "true", value));
  lines.push_back(value_line(t, "shown", shown(m, value, at).value));
}

/// What the reader should know beside the figures: no fault of the gauge.
void asides(const Terms& t, const DialModel& m, Verdict& v) {
  if (m.from > m.gauge.low || m.to < m.gauge.high) {
    v.because.push_back(value_line(t, "judged where the sender's points reach, from", m.from));
    v.because.push_back(value_line(t, "to", m.to));
  }
  if (m.apart)
    v.because.push_back(
        told("more where this sender sits than where the other measures: no fault", *m.apart, t.step, t.step_unit));
}

void over_range(const Terms& t, const DialModel& m, const Instant& at, std::vector<Verdict>& out) {
  const Worst w = worst_error(m, at);
  const double limit = t.limit_of(m);
  Verdict v{.place = m.name, .predicted = w.error, .low = -limit, .high = limit, .scale = limit};
  asides(t, m, v);
  v.because.push_back(value_line(t, "shown at the low end", shown(m, m.from, at).value));
  v.because.push_back(value_line(t, "shown at the high end", shown(m, m.to, at).value));
  causes(t, m, w.value, at, v.because);
  if (runs_against(m, at)) {
    v.reason = "it runs the wrong way round: the needle falls where it should rise";
    v.fix_hint = "a sender that runs the same way as the gauge, or an electronic converter that turns it round";
  } else {
    v.fix_hint = hint(t, m, w.value, at);
  }
  out.push_back(std::move(v));
}

void at_usual(const Terms& t, const DialModel& m, const Instant& at, std::vector<Verdict>& out) {
  if (!m.usual || *m.usual < m.from || *m.usual > m.to) return;
  const double limit = t.limit_of(m);
  Verdict v{.place = m.name + ", usual",
            .predicted = shown(m, *m.usual, at).value - *m.usual,
            .low = -limit,
            .high = limit,
            .scale = limit,
            .fix_hint = hint(t, m, *m.usual, at)};
  asides(t, m, v);
  causes(t, m, *m.usual, at, v.because);
  out.push_back(std::move(v));
}

void readings(const Terms& t, const void* model, const Evidenced& run, std::vector<Verdict>& out) {
  for (auto& m : of(model).*t.list) {
    if (!m.usable()) {
      out.push_back({.place = m.name, .missing = m.missing});
      continue;
    }
    const Instant at{.tank = m.by_depth ? reading::tank(run) : TankShape{}};
    over_range(t, m, at, out);
    at_usual(t, m, at, out);
  }
}

/// The true value at which it shows `wanted`, between two steps; nothing where it never does.
std::optional<double> true_where_shown(const DialModel& m, double wanted, const Instant& at) {
  double before = shown(m, m.from, at).value - wanted;
  for (int i = 1; i <= steps_of_range; ++i) {
    const double now = shown(m, value_at(m, i), at).value - wanted;
    if (before == 0) return value_at(m, i - 1);
    if (before * now <= 0) return value_at(m, i - 1) + (value_at(m, i) - value_at(m, i - 1)) * before / (before - now);
    before = now;
  }
  return std::nullopt;
}

void lamps(const Terms& t, const void* model, const Evidenced& run, std::vector<Verdict>& out) {
  for (auto& m : of(model).*t.list) {
    if (!m.lamp_meant) continue;
    const double limit = t.limit_of(m);
    Verdict v{.place = m.name, .low = *m.lamp_meant - limit, .high = *m.lamp_meant + limit, .scale = limit};
    v.because.push_back(value_line(t, "wanted at", *m.lamp_meant));
    if (m.lamp_switch) {
      v.predicted = *m.lamp_switch;
      v.fix_hint = "a switch for the value that is meant";
    } else if (!m.lamp_shown || !m.usable()) {
      v.missing = m.missing;
      if (!m.lamp_shown) v.missing.push_back(m.path + ".lamp_shown");
    } else {
      const Instant at{.tank = m.by_depth ? reading::tank(run) : TankShape{}};
      v.because.push_back(value_line(t, "lit by the reading", *m.lamp_shown));
      const auto lit = true_where_shown(m, *m.lamp_shown, at);
      // Not lit anywhere: it would be beyond whichever end lies farther from what is meant.
      v.predicted = lit.value_or(*m.lamp_meant - m.from > m.to - *m.lamp_meant ? m.from : m.to);
      if (!lit) v.reason = "it does not light anywhere on the scale";
      v.fix_hint =
          "the cluster's threshold set to what it shows at the value that is meant, after the reading is right";
    }
    out.push_back(std::move(v));
  }
}

}  // namespace

namespace reading {
TankShape tank(const Evidenced& run, int first) {
  return {run.at(0, first), run.at(0, first + 1), run.at(0, first + 2)};
}
void fuel(const void* m, const Evidenced& run, std::vector<Verdict>& out) { readings(fuel_terms, m, run, out); }
void temperature(const void* m, const Evidenced& run, std::vector<Verdict>& out) {
  readings(temperature_terms, m, run, out);
}
void pressure(const void* m, const Evidenced& run, std::vector<Verdict>& out) { readings(pressure_terms, m, run, out); }
}  // namespace reading

namespace reserve {
void evaluate(const void* model, const Evidenced& run, std::vector<Verdict>& out) {
  if (run.lacks(n_out_of_reach))
    return;  // a car whose tank is not described, or lacks figures: its own findings say so
  for (auto& m : of(model).fuel) {
    if (!m.usable()) continue;  // its reading says what is missing
    const Instant at{.tank = m.by_depth ? reading::tank(run) : TankShape{}};
    const double tank = run.at(0, n_volume), left = run.at(0, n_out_of_reach) / tank;
    Verdict v{.place = m.name,
              .predicted = shown(m, left, at).value,
              .high = most_shown,
              .scale = most_shown,
              .fix_hint =
                  "the float's arm bent so that it stands on empty where the pick-up draws air, or the table or "
                  "sender put right; a lamp for the reserve"};
    v.because.push_back(told("fuel the pick-up leaves", left * tank, kind::volume, "gal"));
    v.because.push_back(told("as a share of the tank", left, kind::number, "%"));
    if (const auto mark = true_where_shown(m, m.gauge.low + needle * m.span(), at))
      v.because.push_back(told("in the tank as the needle comes to the low mark", *mark * tank, kind::volume, "gal"));
    out.push_back(std::move(v));
  }
}
}  // namespace reserve

namespace lamp {
void fuel(const void* m, const Evidenced& run, std::vector<Verdict>& out) { lamps(fuel_terms, m, run, out); }
void temperature(const void* m, const Evidenced& run, std::vector<Verdict>& out) {
  lamps(temperature_terms, m, run, out);
}
void pressure(const void* m, const Evidenced& run, std::vector<Verdict>& out) { lamps(pressure_terms, m, run, out); }
}  // namespace lamp

namespace joint {
void evaluate(const void* model, const Evidenced&, std::vector<Verdict>& out) {
  for (auto* list : {&of(model).fuel, &of(model).temperature, &of(model).pressure})
    for (auto& m : *list) {
      if (m.joint_ohm <= 0) continue;
      out.push_back(
          {.place = m.name,
           .predicted = m.joint_ohm,
           .high = most_ohm,
           .scale = most_ohm,
           .fix_hint = "paste on the last threads alone, bare contact, or a ground wire to the sender's body"});
    }
}
}  // namespace joint

}  // namespace sw::gauges
