#include "physics/gauge.hpp"

#include <algorithm>
#include <cmath>
#include <vector>

namespace sw::physics {
namespace {

Slope between_stops(const Gauge& g, Slope shown) {
  const auto [low, high] = std::minmax(g.low, g.high);
  if (shown.value < low) return {low, 0, false};
  if (shown.value > high) return {high, 0, false};
  return shown;
}

/// Wire volts with everything on it, and what the gauge itself is there.
struct Met {
  Slope sender;  ///< network and joint, ohm
  SenderNode node;
  Reader own;
};
Met met(const Gauge& g, const GaugeCircuit& c, double sender_ohm) {
  Met m{network_ohm(c.network, sender_ohm + c.joint_ohm), {}, {c.supply_v, g.ohm}};
  if (g.ohm <= 0) return m;
  std::vector<Reader> all{m.own};
  all.insert(all.end(), c.others.begin(), c.others.end());
  m.node = sender_node(all, m.sender.value, c.lift_v);
  m.node.slope *= m.sender.slope;
  return m;
}

bool by_current(const Gauge& g) { return g.kind == GaugeKind::bimetal && g.current_low_a && g.current_high_a; }

}  // namespace

Slope gauge_shown(const Gauge& g, const GaugeCircuit& c, double sender_ohm) {
  const Met m = met(g, c, sender_ohm);
  if (by_current(g)) {
    const double current = (c.supply_v - m.node.volts) / g.ohm;
    const double per_amp = (g.high - g.low) / (*g.current_high_a - *g.current_low_a);
    return between_stops(g, {g.low + (current - *g.current_low_a) * per_amp, -per_amp * m.node.slope / g.ohm});
  }
  if (g.by_volts) {
    const Slope s = sender_value(g.expects, SenderLaw::straight, m.node.volts);
    return between_stops(g, {s.value, s.slope * m.node.slope, s.valid});
  }
  Slope seen = m.sender;
  if (g.ohm > 0 && g.kind == GaugeKind::bimetal) {
    const double left = c.supply_v - m.node.volts;  // the current it draws, as ohms at the supply it was made for
    seen = {g.supply_v * g.ohm / left - g.ohm, g.supply_v * g.ohm / (left * left) * m.node.slope};
  } else if (g.ohm > 0) {
    seen = seen_ohm(m.own, m.node);
  }
  const Slope s = sender_value(g.expects, g.law, seen.value);
  return between_stops(g, {s.value, s.slope * seen.slope, s.valid});
}

double gauge_wants_ohm(const Gauge& g, double shown) {
  if (by_current(g)) {
    const double share = (shown - g.low) / (g.high - g.low);
    return g.supply_v / (*g.current_low_a + share * (*g.current_high_a - *g.current_low_a)) - g.ohm;
  }
  if (!g.by_volts) return sender_ohm(g.expects, g.law, shown).value;
  const double v = sender_ohm(g.expects, SenderLaw::straight, shown).value;
  return g.ohm * v / (g.supply_v - v);
}

double gauge_input_v(const Gauge& g, const GaugeCircuit& c, double sender_ohm) {
  return met(g, c, sender_ohm).node.volts;
}

Curve table_rows(const Curve& points, std::size_t rows) {
  const std::size_t n = points.x.size();
  if (n < 2) return points;
  std::vector<bool> taken(n, false);
  taken.front() = taken.back() = true;
  const auto table = [&] {
    Curve t;
    for (std::size_t i = 0; i < n; ++i)
      if (taken[i]) t.x.push_back(points.x[i]), t.y.push_back(points.y[i]);
    return t;
  };
  for (std::size_t count = 2; count < rows; ++count) {
    const Curve now = table();
    double worst = 1e-9 * std::abs(points.x.back() - points.x.front());
    std::size_t where = n;
    for (std::size_t i = 0; i < n; ++i)
      if (const double off = std::abs(sender_value(now, SenderLaw::straight, points.y[i]).value - points.x[i]);
          !taken[i] && off > worst)
        worst = off, where = i;
    if (where == n) break;
    taken[where] = true;
  }
  return table();
}

double exact_teeth(double driven_teeth, double shown_over_true) { return driven_teeth * shown_over_true; }

Slope least_speed(const CoilSensor& s, std::span<const double> inputs, double threshold_v) {
  double conductance = 0;
  for (double r : inputs) conductance += 1 / r;
  // R_in / (R_in + R) = 1 / (1 + R G)
  const double per_volt = s.at_speed_m_s / s.open_v * (1 + s.resistance_ohm * conductance);
  return {threshold_v * per_volt, per_volt};
}

}  // namespace sw::physics
