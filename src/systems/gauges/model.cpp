#include <algorithm>
#include <cmath>

#include "physics/circuit.hpp"
#include "systems/gauges/gauges.hpp"

namespace sw::gauges {
namespace {

/// What of a dial's own figures are there; those that are not are named for that dial alone.
template <class D>
class DialReader {
 public:
  DialReader(const std::string& name, const std::string& list, const D& in, Resolver& r) : in_(in), r_(r) {
    m_.name = name;
    m_.path = "gauges." + list + "." + name;
  }

  DialModel read(bool by_depth) {
    auto& g = m_.gauge;
    if (!in_.how) miss(in_.how);
    g.kind = in_.how.value_or(How::bimetal);
    m_.law = g.law = std::is_same_v<D, TemperatureDial> ? physics::SenderLaw::thermistor : physics::SenderLaw::straight;
    m_.by_depth = by_depth && std::is_same_v<D, FuelDial>;
    own_circuit();
    curve_of_gauge();
    curve_of_sender();
    // A family of pressure senders is told by the ends of the scale; a tank has its own, and a thermistor its degrees.
    const bool by_ends = (!in_.sender && in_.sender_family) || (!in_.expects && in_.expects_family);
    if (by_ends && std::is_same_v<D, PressureDial>) {
      if (!in_.low) miss(in_.low);
      if (!in_.high) miss(in_.high);
    }
    around();
    range();
    return std::move(m_);
  }

 private:
  template <class T>
  void miss(const std::optional<T>& member) {
    m_.missing.push_back(r_.path_of(&member));
  }
  void own_circuit() {
    auto& g = m_.gauge;
    const bool bimetal = g.kind == How::bimetal;
    auto& own = bimetal ? in_.heater : in_.pull_up;
    g.ohm = r_.get(own, 0);
    m_.own_ohm_path = r_.path_of(&own);
    g.supply_v = r_.get(in_.supply, 0);
    g.current_low_a = given(in_.current_low);
    g.current_high_a = given(in_.current_high);
    const bool by_current = bimetal && g.current_low_a && g.current_high_a;
    if (by_current && *g.current_low_a == *g.current_high_a)
      r_.fault(&in_.current_high, "the current is the same at both ends of the scale",
               "both as measured with a substitution box", {&in_.current_low});
    g.by_volts = g.kind == How::electronic && in_.input_volts;
    // What a pull-up or heater does is asked for where it decides what is shown; otherwise where it can.
    if ((by_current || g.by_volts || !in_.other.empty()) && !own) miss(own);
    if ((by_current || own) && !in_.supply) miss(in_.supply);
  }
  bool by_current() const { return m_.gauge.kind == How::bimetal && m_.gauge.current_low_a && m_.gauge.current_high_a; }
  bool curve_ends_known() const { return in_.low && in_.high; }
  void curve_of_gauge() {
    auto& g = m_.gauge;
    // A keyed-in table is read along straight lines between its rows; a family's or a drawn scale runs as its senders
    // do.
    if (g.kind == How::electronic && in_.expects) g.law = physics::SenderLaw::straight;
    if (g.by_volts)
      g.expects = *in_.input_volts;
    else if (in_.expects)
      g.expects = *in_.expects;
    else if (in_.expects_family)
      g.expects = family(*in_.expects_family);
    else if (!by_current())
      miss(in_.expects);
    if (!g.expects.x.empty() && !physics::monotone(g.expects))
      r_.fault(g.by_volts ? static_cast<const void*>(&in_.input_volts) : &in_.expects,
               "the curve turns: one reading would stand for two values", "rows that only rise or only fall");
    const bool drawn = !g.expects.x.empty() && physics::monotone(g.expects);
    if (!drawn && by_current() && !std::is_same_v<D, FuelDial> && !curve_ends_known()) miss(in_.low), miss(in_.high);
    g.low = r_.get(in_.low, drawn ? g.expects.x.front() : 0);
    g.high = r_.get(in_.high, drawn ? g.expects.x.back() : 1);
    if (curve_ends_known() && !(g.low < g.high))
      r_.fault(&in_.high, "the scale does not rise from its low to its high end", "low and high as they stand on it");
    if (!drawn && !g.expects.x.empty()) m_.missing.push_back(m_.path + ".expects");
  }
  Curve family(Family f) const {
    const auto i = static_cast<std::size_t>(f);
    if constexpr (std::is_same_v<D, TemperatureDial>)
      return physics::points_of(physics::thermistor_families[i]);
    else
      return physics::points_of(physics::end_families[i], r_.get(in_.low, 0), r_.get(in_.high, 1));
  }
  void curve_of_sender() {
    if (in_.sender)
      m_.sender = *in_.sender;
    else if (in_.sender_family)
      m_.sender = family(*in_.sender_family);
    else
      miss(in_.sender);
    // A thermistor's law takes the logarithm of its ohms.
    const auto positive = [](const Curve& c) {
      return std::all_of(c.y.begin(), c.y.end(), [](double y) { return y > 0; });
    };
    const bool thermistor = m_.law == physics::SenderLaw::thermistor;
    if (thermistor && !positive(m_.sender)) r_.fault(&in_.sender, "a temperature sender has more than 0 ohm", "");
    if (thermistor && !m_.gauge.by_volts && !positive(m_.gauge.expects))
      r_.fault(&in_.expects, "a temperature gauge expects more than 0 ohm", "");
  }
  void around() {
    m_.network = {r_.get(in_.series, 0), given(in_.parallel)};
    m_.joint_ohm = r_.get(in_.joint, 0);
    m_.joint_path = r_.path_of(&in_.joint);
    for (auto& [name, o] : in_.other) {
      if (!o.pull_up) miss(o.pull_up);
      if (!o.supply) miss(o.supply);
      if (o.pull_up && o.supply) m_.others.push_back({o.supply->si, o.pull_up->si});
    }
    m_.ground = in_.ground.value_or(Ground::dash);
    m_.sender_ground = in_.sender_ground.value_or(Ground::block);
    m_.regulated = in_.regulated.value_or(true);
    m_.usual = given(in_.usual);
    m_.apart = given(in_.apart);
    m_.lamp_meant = given(in_.lamp_meant);
    m_.lamp_shown = given(in_.lamp_shown);
    m_.lamp_switch = given(in_.lamp_switch);
    m_.table_points = static_cast<std::size_t>(r_.get(in_.table_points, 10));
    m_.table_in_volts = in_.programs == Programs::volts;
  }
  /// Judged where both scale and sender reach.
  void range() {
    m_.from = m_.gauge.low, m_.to = m_.gauge.high;
    if (m_.sender.x.empty()) return;
    m_.from = std::max(m_.from, m_.sender.x.front());
    m_.to = std::min(m_.to, m_.sender.x.back());
    if (m_.missing.empty() && !(m_.from < m_.to))
      r_.fault(&in_.sender, "the sender's points do not reach the gauge's scale", "points over the scale's whole range",
               {&in_.low, &in_.high});
  }

  const D& in_;
  Resolver& r_;
  DialModel m_;
};

template <class D>
std::vector<DialModel> dials(const Named<D>& list, const std::string& key, bool by_depth, Resolver& r) {
  std::vector<DialModel> all;
  for (auto& [name, in] : list) all.push_back(DialReader<D>(name, key, in, r).read(by_depth));
  return all;
}

TachometerModel tachometer(const std::string& name, const Tachometer& in, Resolver& r) {
  TachometerModel m{.name = name,
                    .set_path = r.path_of(&in.set),
                    .source_path = r.path_of(&in.source),
                    .set = in.set,
                    .source = in.source,
                    .level_v = given(in.level),
                    .threshold_v = given(in.threshold),
                    .level_missing = {}};
  const auto miss = [&](const auto& member) {
    if (!member) m.level_missing.push_back(r.path_of(&member));
  };
  miss(in.level), miss(in.threshold);
  if (in.pull_up || in.pull_up_to) miss(in.pull_up), miss(in.pull_up_to), miss(in.source_resistance);
  if (!m.level_missing.empty()) return m;
  std::vector<double> volts{in.level->si}, ohms{r.get(in.source_resistance, 0)};
  if (in.pull_up) volts.push_back(in.pull_up_to->si), ohms.push_back(in.pull_up->si);
  m.at_input_v = ohms[0] > 0 ? physics::bus(volts, ohms, 1 / in.input->si).volts : volts[0];
  return m;
}

SpeedometerModel speedometer(const std::string& name, const Speedometer& in, Resolver& r) {
  SpeedometerModel m{.name = name, .missing = {}};
  const auto miss = [&](const auto& member) {
    if (!member) m.missing.push_back(r.path_of(&member));
  };
  m.reads = in.reads.value_or(SpeedFrom::pulses);
  m.sits_on = in.sits_on.value_or(SitsOn::cable_drive);
  const bool cable = m.reads == SpeedFrom::cable;
  if (cable) {
    m.sits_on = SitsOn::cable_drive;
    miss(in.head_turns);
    m.set_per_m = r.get(in.head_turns, 1);
  } else {
    miss(in.set), miss(in.pulses);
    m.set_per_m = r.get(in.set, 1);
    m.pulses = r.get(in.pulses, 1);
  }
  if (m.sits_on == SitsOn::cable_drive) {
    miss(in.drive_teeth), miss(in.driven_teeth);
    m.driven_teeth = r.get(in.driven_teeth, 1);
    m.drive_over_driven = r.get(in.drive_teeth, 1) / m.driven_teeth;
  }
  m.ratio_box = r.get(in.ratio_box, 1);
  return m;
}

SensorModel sensor(const std::string& name, const SpeedSensor& in, Resolver& r) {
  SensorModel m{.name = name, .missing = {}, .inputs = {}};
  const auto miss = [&](const auto& member) {
    if (!member) m.missing.push_back(r.path_of(&member));
  };
  miss(in.resistance), miss(in.open_voltage), miss(in.at_speed);
  if (in.listener.empty()) m.missing.push_back("gauges.speed_sensor." + name + ".listener: what reads it");
  for (auto& [who, l] : in.listener) {
    miss(l.input), miss(l.threshold);
    m.inputs.push_back({who, r.get(l.input, 1), r.get(l.threshold, 1)});
  }
  m.sensor = {r.get(in.resistance, 1), r.get(in.open_voltage, 1), r.get(in.at_speed, 1)};
  return m;
}

}  // namespace

double TankShape::depth(double fuel) const {
  const Curve shape{{0, at_quarter, at_half, at_three_quarters, 1}, {0, 0.25, 0.5, 0.75, 1}};
  return physics::sender_ohm(shape, physics::SenderLaw::straight, fuel).value;
}

double sender_ohm_at(const DialModel& m, double value, const TankShape& tank) {
  return physics::sender_ohm(m.sender, m.law, m.by_depth ? tank.depth(value) : value).value;
}

physics::GaugeCircuit circuit_of(const DialModel& m, const Instant& at) {
  return {m.network, m.joint_ohm, m.others, at.lift_v, at.supply_v.value_or(m.gauge.supply_v)};
}

physics::Slope shown(const DialModel& m, double value, const Instant& at) {
  return physics::gauge_shown(m.gauge, circuit_of(m, at), sender_ohm_at(m, value, at.tank));
}

Worst worst_error(const DialModel& m, const Instant& at) {
  Worst w{0, m.from, m.from};
  for (int i = 0; i <= steps_of_range; ++i) {
    const double value = value_at(m, i), s = shown(m, value, at).value;
    if (i == 0 || std::abs(s - value) > std::abs(w.error)) w = {s - value, value, s};
  }
  return w;
}

Model System::resolve(const Input& in, Resolver& r) {
  Model m;
  const bool by_depth = in.float_by == Float::depth;
  m.fuel = dials(in.fuel, "fuel", by_depth, r);
  m.temperature = dials(in.temperature, "temperature", false, r);
  m.pressure = dials(in.pressure, "pressure", false, r);
  for (auto& [name, v] : in.volts) m.volts.push_back({name, r.get(v.error, 0)});
  for (auto& [name, t] : in.tachometer) m.tachometers.push_back(tachometer(name, t, r));
  for (auto& [name, s] : in.speedometer) m.speedometers.push_back(speedometer(name, s, r));
  for (auto& [name, s] : in.speed_sensor) m.sensors.push_back(sensor(name, s, r));
  return m;
}

std::span<const Block> System::blocks() { return {}; }

}  // namespace sw::gauges
