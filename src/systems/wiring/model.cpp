#include <algorithm>
#include <cmath>

#include "systems/wiring/builder.hpp"
#include "systems/wiring/states.hpp"

namespace sw::wiring {
namespace {

/// Current goes with volts to this power. A filament's: Fink and Beaty, Standard Handbook for Electrical Engineers,
/// 11th ed. (1978), p. 22-8, as quoted by an encyclopedia (Lamp rerating). A fan or pump motor's lies between a torque
/// that stays (0) and one that goes with the square of a speed that goes with the volts (2): common practice.
constexpr double lamp_power = 0.55, motor_power = 1.5;
/// Share of its rated volts down to which a load keeps its constant current or power (common practice for regulated
/// electronics).
constexpr double current_kept_from = 0.45, power_kept_from = 0.6;

/// Share of the nominal volts that closes any sound relay (common practice: 8 V of 12 V).
constexpr double pull_in_share = 2.0 / 3;
/// Current of a cold filament over that of a hot one (common practice: 10 to 15).
constexpr double cold_filament = 10;
/// Until the inrush has fallen to half: a filament warms, a motor turns (common practice).
constexpr double filament_s = 0.01, spin_up_s = 0.1;
/// The machine's own ways to its exciter: the three small diodes that feed the field once it turns, and the winding
/// itself while it stands (common practice).
constexpr double trio_ohm = 0.2, field_ohm = 4;

/// Feed and ground of a load whose wire nobody gave: one wire hardly moves the bus, and its own findings wait for the
/// gauge (common practice: 2 m each way of 14 AWG with its joints).
constexpr double usual_feed_ohm = 0.04;

/// `member` is the list of lines itself, `path` where it is missing.
Logic logic_of(const std::vector<std::string>& lines, const std::string& path, Resolver& r) {
  auto read = read_logic(lines);
  for (auto& problem : read.problems) r.fault(&lines, problem.what, problem.hint);
  if (lines.empty()) r.lacks(path);
  return std::move(read.logic);
}

/// Both ends named; else what is missing is told.
bool has_ends(const std::string& from, const std::string& to, const std::string& path, Resolver& r) {
  if (from.empty()) r.lacks(path + ".from");
  if (to.empty()) r.lacks(path + ".to");
  return !from.empty() && !to.empty();
}

/// What stands for a diode in a run, besides its wire: a silicon rectifier of some amperes (common practice).
constexpr physics::dc::Diode run_diode{};

void add_runs(const Input& in, Model& m, Builder& b, Resolver& r) {
  for (auto& [name, run] : in.run) {
    if (!has_ends(run.from, run.to, "wiring.run." + name, r)) continue;
    Conductor c = b.conductor(name, run.wire, run.resistance);
    c.limit_a = r.get(run.limit, 0);
    c.stray = run.stray.value_or(false);
    const double ohm = std::max(c.resistance_ohm, 1e-5);
    dc::Branch branch{.from = b.node(run.from), .to = b.node(run.to), .law = dc::Resistor{ohm}};
    if (run.one_way.value_or(false)) branch.law = run_diode, branch.series_ohm = ohm;
    c.branch = b.add(branch);
    m.runs.push_back(std::move(c));
  }
}

void add_switches(const Input& in, Model& m, Builder& b, Resolver& r) {
  for (auto& [name, given] : in.switches) {
    const std::string path = "wiring.switch." + name;
    if (!has_ends(given.from, given.to, path, r)) continue;
    SwitchModel s{.place = name, .closed = logic_of(given.closed, path + ".closed", r)};
    s.limit_a = r.get(given.limit, 0);
    s.limit_path = r.path_of(&given.limit);
    s.pull_in_v = r.get(given.pull_in, pull_in_share * m.nominal_v);
    s.branch = b.add({.from = b.shared(given.from, &given.from),
                      .to = b.shared(given.to, &given.to),
                      .law = dc::Resistor{std::max(r.need(given.contact), 1e-4)}});
    if (!given.coil_from.empty())
      s.coil = b.add({.from = b.shared(given.coil_from, &given.coil_from),
                      .to = given.coil_to.empty() ? b.node("body") : b.shared(given.coil_to, &given.coil_to),
                      .law = dc::Resistor{r.need(given.coil)}});
    else if (!given.coil_to.empty())
      r.fault(&given.coil_to, "a coil that is grounded and fed from nowhere", "say coil_from, or take coil_to out");
    m.switches.push_back(std::move(s));
  }
}

void add_loads(const Input& in, Model& m, Builder& b, Resolver& r) {
  for (auto& [name, load] : in.load) {
    LoadModel l;
    l.when = logic_of(load.when, "wiring.load." + name + ".when", r);
    l.rated_a = r.need(load.current);
    l.wire = b.conductor(name, load.wire, std::nullopt, usual_feed_ohm);
    l.rated_v = r.get(load.at_voltage, r.usual_rated_v());
    l.share = r.get(load.share, 1);
    l.least_v = r.get(load.least_voltage, 0);
    l.behaviour = load.behaviour.value_or(Behaviour::resistance);
    l.stall_a = r.get(load.stall, 0);
    l.inrush_a = r.get(load.inrush, l.stall_a > 0                    ? l.stall_a
                                    : l.behaviour == Behaviour::lamp ? cold_filament * l.rated_a
                                                                     : 0);
    l.inrush_s = r.get(load.inrush_time, l.behaviour == Behaviour::lamp ? filament_s : spin_up_s);
    const double a = l.rated_a * l.share, v = l.rated_v;
    dc::Branch branch{.from = b.known(load.from, "bus", &load.from),
                      .to = b.known(load.to, "body", &load.to),
                      .series_ohm = l.wire.resistance_ohm};
    switch (l.behaviour) {
      case Behaviour::current:
        branch.law = dc::ConstantCurrent{a, current_kept_from * v};
        break;
      case Behaviour::resistance:
        branch.law = dc::PowerLaw{a, v, 1.0};
        break;
      case Behaviour::power:
        branch.law = dc::ConstantPower{a * v, power_kept_from * v};
        break;
      case Behaviour::motor:
        branch.law = dc::PowerLaw{a, v, motor_power};
        break;
      case Behaviour::lamp:
        branch.law = dc::PowerLaw{a, v, lamp_power};
        break;
    }
    l.wire.branch = b.add(branch);
    m.loads.push_back(std::move(l));
  }
}

/// Where a load reaches the exciter the machine holds it at its own volts while it turns.
void add_exciter(Model& m, Builder& b) {
  if (!b.joined(std::string(exciter))) return;
  const auto node = b.node(std::string(exciter));
  m.to_exciter = b.add({.from = m.n_alternator, .to = node, .closed = false, .law = dc::Resistor{trio_ohm}});
  m.field = b.add({.from = node, .to = m.n_case, .law = dc::Resistor{field_ohm}});
}

/// Findings are told apart by the name of the run, switch or load they stand for.
void check_names(const Input& in, Model& m, Resolver& r) {
  auto twice = [&](const std::string& path, const std::string& name, const char* as) {
    m.named_twice = true;
    r.fault_at(path, "\"" + name + "\" is the name of " + as + " already",
               "findings are told apart by it: take another");
  };
  for (auto& [name, load] : in.load)
    if (in.run.find(name) || name == "fans")
      twice("wiring.load." + name, name, name == "fans" ? "the fan feed" : "a run");
  for (auto& [name, contact] : in.switches)
    if (in.run.find(name) || in.load.find(name) || name == "fans")
      twice("wiring.switch." + name, name, name == "fans" ? "the fan feed" : in.run.find(name) ? "a run" : "a load");
  if (in.run.find("fans")) twice("wiring.run.fans", "fans", "the fan feed");
}

void add_sources(const Input& in, Model& m, Builder& b) {
  m.battery = b.add({.from = dc::ground, .to = m.n_battery, .law = dc::Battery{12.6, 0.01}});
  dc::Branch machine{.from = m.n_case, .to = m.n_alternator, .law = dc::RegulatedSource{14.0, 0.0}};
  const Sense sense = in.sense.value_or(Sense::own);
  machine.sense_plus = sense == Sense::own ? m.n_alternator : sense == Sense::bus ? m.n_bus : m.n_battery;
  machine.sense_minus = sense == Sense::own ? m.n_case : dc::ground;
  m.alternator = b.add(machine);
  m.starter = b.add({.from = m.n_starter, .to = m.n_block, .closed = false, .law = dc::ConstantCurrent{}});
}

/// The runs that carry the charging current: those on a shortest path from the alternator to the battery.
void find_charge_path(Model& m) {
  std::vector<int> via(dc::most_nodes, -1);
  std::vector<dc::NodeIndex> queue = {m.n_alternator};
  for (std::size_t head = 0; head < queue.size(); ++head)
    for (std::size_t i = 0; i < m.runs.size(); ++i) {
      auto& branch = m.network.branches[m.runs[i].branch];
      for (auto [from, to] : {std::pair{branch.from, branch.to}, std::pair{branch.to, branch.from}})
        if (from == queue[head] && to != m.n_alternator && via[to] < 0 && to != dc::ground) {
          via[to] = static_cast<int>(i);
          queue.push_back(to);
        }
    }
  for (dc::NodeIndex at = m.n_battery; at != m.n_alternator && via[at] >= 0;) {
    const auto i = static_cast<std::size_t>(via[at]);
    m.charge_path.push_back(i);
    auto& branch = m.network.branches[m.runs[i].branch];
    at = branch.to == at ? branch.from : branch.to;
  }
  std::reverse(m.charge_path.begin(), m.charge_path.end());
}

}  // namespace

Model System::resolve(const Input& in, Resolver& r) {
  Model m;
  m.nominal_v = r.nominal_v;
  Builder b(m, r);
  check_names(in, m, r);
  add_runs(in, m, b, r);
  add_switches(in, m, b, r);
  for (auto name : {"battery", "alternator", "block", "bus", "body", "starter"})
    if (!b.joined(name)) r.lacks(std::string("wiring.run: a run that reaches \"") + name + "\"");
  m.n_battery = b.node("battery");
  m.n_alternator = b.node("alternator");
  m.n_block = b.node("block");
  m.n_bus = b.node("bus");
  m.n_body = b.node("body");
  m.n_dash = b.joined("dash") ? b.node("dash") : m.n_body;
  m.n_support = b.joined("support") ? b.node("support") : m.n_body;
  m.n_starter = b.node("starter");
  m.n_case = b.joined("case") ? b.node("case") : m.n_block;
  add_sources(in, m, b);
  // No electric fans, no feed needed: the wire is judged only where something is given or asked of it.
  auto& f = in.fans;
  if (f.wire.gauge) {
    m.fan_feed = b.conductor("fans", f.wire, std::nullopt);
  } else {
    m.fan_feed.place = "fans";
    m.fan_feed.gauge_path = r.path_of(&f.wire.gauge);
    m.fan_feed.fuse_path = r.path_of(&f.wire.fuse);
    m.fan_feed.unfused = f.wire.unfused.value_or(false);
    m.fan_feed.resistance_ohm = r.need(f.resistance);
  }
  m.fans = b.add({.from = b.known(f.from, "bus", &f.from),
                  .to = b.known(f.to, "body", &f.to),
                  .series_ohm = m.fan_feed.resistance_ohm,
                  .law = dc::PowerLaw{1, 13.5, 1}});
  m.fan_feed.branch = m.fans;
  add_loads(in, m, b, r);
  add_exciter(m, b);
  b.check_shared();
  m.fuel_pump = load_named(m, "fuel_pump");
  m.ignition = load_named(m, "ignition");
  m.cluster = load_named(m, "cluster");
  find_charge_path(m);
  if (m.charge_path.empty()) r.lacks("wiring.run: a way from \"alternator\" to \"battery\"");
  m.pump_fed = pump_fed(m);
  return m;
}

}  // namespace sw::wiring
